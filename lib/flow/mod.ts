/**
 * Flow in pipes, fittings and openings: velocity, Reynolds number, friction, minor losses,
 * orifices, leaks.
 *
 * @module
 */
export { flowAtVelocity, meanVelocity } from "./velocity.ts";
export { relativeRoughness, reynoldsNumber } from "./reynolds.ts";
export {
  colebrookFriction,
  darcyFriction,
  LAMINAR_TO,
  laminarFriction,
  type Regime,
  regimeOf,
  transitionFriction,
  TURBULENT_FROM,
} from "./friction.ts";
export { dynamicPressure, pipePressureDrop } from "./pressure_drop.ts";
export { frictionLoss, type PipeFlow, pipeFlow, type PipeSpec } from "./pipe_flow.ts";
export { jetVelocity, orificeFlow, orificeFlowInPipe, PINHOLE_DISCHARGE } from "./orifice.ts";
export { massFlow, scaledFlow, volumeFlow } from "./scaling.ts";
export { capillaryLeak, capillaryLeakWithEntry, gapLeak } from "./leak.ts";
export { hydrostaticPressure, lossReferredTo, minorLoss } from "./minor_loss.ts";
export {
  bevelledEntrance,
  EXIT_LOSS,
  projectingEntrance,
  roundedEntrance,
  roundedEntranceCrane,
  SHARP_ENTRANCE,
} from "./entrance.ts";
export { suddenContraction, suddenContractionCrane, suddenExpansion } from "./bore_step.ts";
export {
  conicalContraction,
  conicalContractionCrane,
  conicalExpansion,
  conicalExpansionCrane,
} from "./cone.ts";
export { bendLoss, cornerLoss, cornerLossCrane } from "./bend.ts";
export {
  equivalentLengthLoss,
  FITTING_LENGTHS,
  roughPipeFriction,
  STEEL_PIPE_ROUGHNESS_m,
} from "./equivalent_length.ts";
export { twoKLoss } from "./two_k.ts";
export { teeBranchLoss, teeRunLoss, wyeBranchLoss } from "./tee.ts";
export { flowAtLoss, lossCoefficientOf, statedLoss } from "./stated_loss.ts";
