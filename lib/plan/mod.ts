/**
 * The plan: its fields, its schema, what is assumed, its form and its link.
 *
 * @module
 */
export type {
  ChoiceField,
  Common,
  CountField,
  Default,
  Earlier,
  Field,
  ListField,
  QuantityField,
  RowOf,
  Section,
  Settled,
  TextField,
  ValueOf,
} from "./field.ts";
export { type FieldAt, fieldAt, type PlanValues, type SectionName, SECTIONS } from "./sections.ts";
export { type Plan, PLAN_VERSION, type Typed } from "./plan.ts";
export { planJsonSchema, planReady, type PlanSchema } from "./ready.ts";
export { type Assumption, type Resolved, resolvePlan, unusedNote } from "./resolve.ts";
export type { Fault } from "./fault.ts";
export { type Reading, readPlan } from "./read.ts";
export { type Boxes, boxesOf, planFromBoxes } from "./form.ts";
export { RATING_DENSITY_KG_M3 } from "./rating_fluid.ts";
export { fuelSpecOf, type FuelValues } from "./fuel_choice.ts";
export {
  LINK_MAX_CHARACTERS,
  type LinkFault,
  packPlan,
  type Unpacked,
  unpackPlan,
} from "./link.ts";
