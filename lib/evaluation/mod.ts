/**
 * The evaluation of a plan: results, checks with verdicts, power ceilings, the working.
 *
 * @module
 */
export {
  type Bound,
  type Check,
  type Criterion,
  judge,
  type Judged,
  type Sense,
  type Shown,
  type Step,
  type Verdict,
} from "./check.ts";
export { CRITERIA } from "./criteria.ts";
export type { Ceiling, Evaluation } from "./evaluation.ts";
export type { Results } from "./results.ts";
export type { BarResults } from "./subjects/bar.ts";
export type { DemandResults } from "./subjects/demand.ts";
export type { InjectorResults, StageResults } from "./subjects/injectors.ts";
export type { LineResults, Unsettled } from "./subjects/lines.ts";
export type { PortResults } from "./subjects/port.ts";
export type { PressureResults } from "./subjects/pressures.ts";
export type { ProofResults } from "./subjects/proof.ts";
export type { PumpResults } from "./subjects/pump.ts";
export type { RailResults } from "./subjects/rail.ts";
export { evaluate } from "./evaluate.ts";
export {
  type RailPressureRow,
  railPressureTable,
  type SensorTransfer,
  tunerSensor,
} from "./tuner.ts";
export type {
  CurveShown,
  SupplyFound,
  SupplyPoint,
  SupplyResults,
  WayStretch,
} from "./subjects/supply.ts";
export type { DrillResults } from "./drill/drill.ts";
export type { FitnessResults, FitnessRow } from "./drill/fitness.ts";
export type { FloatResults } from "./drill/float.ts";
export type { HeldResults } from "./drill/held.ts";
export { FACES, type HoleResults } from "./drill/holes.ts";
export type { PlugResults } from "./drill/plugs.ts";
export type { SealResults } from "./drill/pocket_seal.ts";
export type { StackResults } from "./drill/stack.ts";
export { SENSOR_ID } from "./drill/laid.ts";
export { type GalleryRange, galleryRange } from "./drill/biggest.ts";
export { type OpeningRow, openingRows } from "./drill/openings.ts";
export { failingPortChecks } from "./drill/port_checks.ts";
export { type Trouble, troublesOf } from "./drill/troubles.ts";
export type { PointId } from "./supply/points_of.ts";
export type { HeatResults } from "./subjects/heat.ts";
export type { SurgeResults } from "./subjects/surge.ts";
export type { VapourResults } from "./subjects/vapour.ts";
export type { WiringResults } from "./subjects/wiring.ts";
export {
  SHOPPING_PARTS,
  type ShoppingFact,
  type ShoppingFigure,
  type ShoppingItem,
  type ShoppingPart,
  type ShoppingQuantity,
  type ShoppingSense,
  type ShoppingShare,
} from "./shopping/item.ts";
export { fuelInWords } from "./shopping/fuel_in_words.ts";
export { shoppingList } from "./shopping/shopping_list.ts";
export { shoppingCsv } from "./shopping/csv.ts";
export { type ShownAmount, shownFigure, shownLength, shownQuantity } from "./shopping/shown.ts";
export {
  WORKSHOP_CAUTIONS,
  type WorkshopCaution,
  type WorkshopCautionId,
} from "./workshop/cautions.ts";
export type { Inspection, InspectionFigure, InspectionTime } from "./workshop/inspection.ts";
export type { Operation, OperationId } from "./workshop/operation.ts";
export type {
  ChipClearing,
  ToolEquivalent,
  ToolSetting,
  WorkshopTool,
  WorkshopToolKind,
} from "./workshop/tool.ts";
export { type Workshop, workshopOf } from "./workshop/workshop.ts";
export type { Change, Remedy } from "./changes/remedy.ts";
export type { Edit } from "./changes/lever.ts";
export { whatWouldDo } from "./changes/what_would_do.ts";
export {
  type AtShare,
  type BlendColumn,
  type BlendComparison,
  type BlendRow,
  type BlendsCompared,
  type BlendShares,
  blendsOf,
  type CarriedFigure,
  evaluateBlends,
  type NumberAcross,
  type WorstCase,
} from "./blends.ts";
