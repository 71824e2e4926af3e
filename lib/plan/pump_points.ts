/** The rows that a pump's curve is listed by. */
import { ELECTRIC } from "./conditions.ts";
import type { Field } from "./field.ts";

/** A flow at a pressure. */
export const FLOW_AT_PRESSURE = {
  pressure: {
    type: "quantity",
    kind: "pressure",
    label: "Pressure",
    hint: "Like 4 bar or 58 psi",
    min: 0,
    max: 1.6e6,
    because: "0 to 16 bar",
  },
  flow: {
    type: "quantity",
    kind: "pumpFlow",
    label: "Flow",
    hint: "Like 340 L/h",
    min: 0,
    max: 1e-3,
    because: "0 to 3600 L/h",
  },
} as const satisfies Readonly<Record<string, Field>>;

/** The same, asked on the start page, with what a sheet may say beside it. */
export const PUMP_POINT = {
  pressure: { ...FLOW_AT_PRESSURE.pressure, first: true },
  flow: {
    ...FLOW_AT_PRESSURE.flow,
    why: "It has to exceed what the engine burns, hot and on a low battery",
    first: true,
  },
  voltage: {
    type: "quantity",
    kind: "voltage",
    label: "Voltage",
    hint: "Of this point, where the sheet has several, like 12 V; blank means that of the figures",
    optional: true,
    ...ELECTRIC,
    min: 6,
    max: 18,
    because: "pump data is stated between 6 and 18 V",
  },
  current: {
    type: "quantity",
    kind: "current",
    label: "Current",
    hint: "Of one pump at this point, like 12 A",
    optional: true,
    ...ELECTRIC,
    min: 0,
    max: 60,
    because: "0 to 60 A",
  },
} as const satisfies Readonly<Record<string, Field>>;
