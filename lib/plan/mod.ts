/**
 * The plan: its fields, its schema, what is assumed, its form and its link.
 *
 * @module
 */
export type {
  ChoiceField,
  Common,
  Condition,
  CountField,
  Default,
  DefaultRows,
  Earlier,
  Fallback,
  Field,
  ListField,
  QuantityField,
  Row,
  RowOf,
  Section,
  Settled,
  TextField,
  ValueOf,
} from "./field.ts";
export {
  type FieldAt,
  fieldAt,
  type Piece,
  type PlanValues,
  type SectionName,
  SECTIONS,
} from "./sections.ts";
export { type Plan, PLAN_VERSION } from "./plan.ts";
export type { Typed } from "./typed.ts";
export { planJsonSchema, planReady, type PlanSchema } from "./ready.ts";
export { type Assumption, type Resolved, resolvePlan, unusedNote } from "./resolve.ts";
export type { Fault } from "./fault.ts";
export { type PartOfValues, type Reading, readPlan, valuesWithoutFault } from "./read.ts";
export { type Boxes, boxesOf, closedUp, planFromBoxes, settle } from "./form.ts";
export { belowBlankRow, type RowAt, rowAt, withBlankRow, withoutRow } from "./form_rows.ts";
export { type PieceName, PIECES } from "./piece.ts";
export { type RunName, RUNS } from "./runs.ts";
export { RATING_DENSITY_KG_M3 } from "./rating_fluid.ts";
export { fuelSpecOf, type FuelValues } from "./fuel_choice.ts";
export {
  LINK_MAX_CHARACTERS,
  type LinkFault,
  packPlan,
  type Unpacked,
  unpackPlan,
} from "./link.ts";
export { PLUG_THREADS, type PlugThread } from "./port_threads.ts";
