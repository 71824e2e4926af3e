/** Where a hole stands in the rail, from the datums that every hole is dimensioned from. */
import type { Field } from "./field.ts";

/** From the datum end, along the bar. */
const AT = {
  type: "quantity",
  kind: "length",
  label: "Distance from the datum end",
  hint: "Along the bar to its centre, like 48 mm",
  min: 0,
  max: 1.5,
  because: "0 to 1.5 m",
} as const;

/** Off the middle of the face. */
const ACROSS = {
  type: "quantity",
  kind: "length",
  label: "Off the middle",
  hint: "Across the bar, towards the front, like 3 mm; blank is the middle",
  optional: true,
  min: -0.05,
  max: 0.05,
  because: "-50 to 50 mm is half of the widest bar",
} as const;

/** The two fields that place a hole. */
export const PLACE = { at: AT, across: ACROSS } as const satisfies Readonly<Record<string, Field>>;
