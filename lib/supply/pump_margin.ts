/** What a pump has over what is asked of it. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { FLOW, PRESSURE_RISE } from "./limits.ts";

/** Standard acceleration of free fall [m/s^2]. Source: ISO 80000-3; exact by definition. */
export const STANDARD_GRAVITY_m_s2 = 9.80665;

const AVAILABLE: MethodInput = {
  ...FLOW,
  says: "Flow that the pumps deliver at the pressure they need",
  symbol: "Q_a",
};
const REQUIRED: MethodInput = { ...FLOW, says: "Flow that the engine takes", symbol: "Q_r" };

/**
 * Margin [-] of a pump: available over required flow, less one. Negative when the pump
 * can't hold the pressure.
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pumpMargin({ available: 6e-5, required: 5e-5 }), 0.2, 1e-12);
 * ```
 */
export const pumpMargin: Method<Record<"available" | "required", MethodInput>> = method({
  id: "pump-margin",
  title: "Margin of the pump",
  inputs: { available: AVAILABLE, required: { ...REQUIRED, min: 1e-9 } },
  output: { name: "margin", unit: "-", min: -1, max: 1e9, says: "Margin", symbol: "M" },
  formula: "available / required - 1",
  source: "Definition",
  compute: ({ available, required }) => available / required - 1,
});

/**
 * Flow [m^3/s] that goes back to the tank: available less required. Negative when the
 * pump can't hold the pressure: then nothing goes back and the pressure falls.
 *
 * Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(returnFlow({ available: 6e-5, required: 5e-5 }), 1e-5, 1e-15);
 * ```
 */
export const returnFlow: Method<Record<"available" | "required", MethodInput>> = method({
  id: "return-flow",
  title: "Flow that goes back to the tank",
  inputs: { available: AVAILABLE, required: REQUIRED },
  output: { ...FLOW, name: "returnFlow", min: -1, max: 1, says: "Flow back to the tank" },
  formula: "available - required",
  source: "Continuity",
  compute: ({ available, required }) => available - required,
});

/**
 * Flow [m^3/s] to ask for when buying a pump: required flow and a margin.
 *
 * Source: definition of the margin.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 20 % over 5e-5 m3/s
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pumpFlowToAskFor({ required: 5e-5, margin: 0.2 }), 6e-5, 1e-15);
 * ```
 */
export const pumpFlowToAskFor: Method<Record<"required" | "margin", MethodInput>> = method({
  id: "pump-flow-to-ask-for",
  title: "Flow to ask for when buying a pump",
  inputs: {
    required: REQUIRED,
    margin: { unit: "-", min: 0, max: 2, says: "Margin aimed at", symbol: "M" },
  },
  output: { ...FLOW, name: "flow", max: 1, says: "Flow to ask for" },
  formula: "required * (1 + margin)",
  source: "Definition of the margin",
  compute: ({ required, margin }) => required * (1 + margin),
});

/**
 * Pressure [Pa] that a pump has to add: rail pressure, losses on the way, and height.
 *
 * Source: energy equation between tank and rail, tank open to the air.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 4.5 bar in the rail, 20 kPa lost, rail 0.5 m above the fuel
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pressure_Pa = neededPressure({
 *   railPressure: 4.5e5,
 *   losses: 2e4,
 *   density: 745,
 *   gravity: STANDARD_GRAVITY_m_s2,
 *   height: 0.5,
 * });
 *
 * assertAlmostEquals(pressure_Pa, 473653, 1);
 * ```
 */
export const neededPressure: Method<
  Record<"railPressure" | "losses" | "density" | "gravity" | "height", MethodInput>
> = method({
  id: "needed-pressure",
  title: "Pressure that the pump has to add",
  inputs: {
    railPressure: { ...PRESSURE_RISE, says: "Pressure in the rail, gauge", symbol: "p_r" },
    losses: {
      ...PRESSURE_RISE,
      says: "Pressure lost between pump and rail: lines, fittings, filter",
      symbol: "\\Delta p",
    },
    density: {
      unit: "kg/m^3",
      min: 500,
      max: 1100,
      says: "Density of the fuel",
      symbol: "\\rho",
    },
    gravity: {
      unit: "m/s^2",
      min: 9.7,
      max: 9.9,
      says: "Acceleration of free fall; standard 9.80665",
      symbol: "g",
    },
    height: {
      unit: "m",
      min: -3,
      max: 3,
      says: "Height of the rail above the fuel in the tank",
      symbol: "h",
    },
  },
  output: { ...PRESSURE_RISE, name: "pressure", max: 3e7 },
  formula: "railPressure + losses + density * gravity * height",
  source: "Energy equation between tank and rail, tank open to the air",
  compute: ({ railPressure, losses, density, gravity, height }) =>
    railPressure + losses + density * gravity * height,
});
