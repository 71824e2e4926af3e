/**
 * What a fuel line is made of: hoses, tubes and fittings, and what a run of them loses.
 *
 * @module
 */
export { fittingLossCoefficient } from "./fitting_loss.ts";
export { type Fitting, type FittingKind, FITTINGS } from "./fittings.ts";
export { type FittingLoss, type NarrowPassage, narrowPassage } from "./narrow_passage.ts";
export { type DashSize, hoseBore, type HoseFamily, HOSES, type HoseSizes } from "./hose_sizes.ts";
export { CORRUGATED_FRICTION, ROUGHNESS_M, type Wall } from "./hose_wall.ts";
export {
  type DuctKind,
  isDuct,
  isStated,
  type Piece,
  type PieceKind,
  type StatedKind,
  type StatedLoss,
} from "./piece.ts";
export {
  ASSUMED_CRACKING_Pa,
  type PieceLoss,
  pieceLoss,
  type PowerLoss,
  squareOf,
} from "./piece_loss.ts";
export { stepLoss } from "./step.ts";
export { addFriction, DARCY, type Duct, type FrictionLaw, type Liquid } from "./friction_law.ts";
export { type PieceCost, Run, type RunEnds } from "./run.ts";
