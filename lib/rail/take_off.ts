/** What happens to the pressure in a gallery where an injector takes its share. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const DENSITY: MethodInput = {
  unit: "kg/m^3",
  min: 500,
  max: 1100,
  says: "Density of the fuel",
  symbol: "\\rho",
};
const VELOCITY: MethodInput = { unit: "m/s", min: 0, max: 1000, says: "", symbol: "V" };
const BEFORE: MethodInput = {
  ...VELOCITY,
  open: true,
  says: "Velocity in the gallery before the take-off",
  symbol: "V_1",
};
const AFTER: MethodInput = {
  ...VELOCITY,
  says: "Velocity in the gallery after the take-off",
  symbol: "V_2",
};

/**
 * Pressure [Pa] that comes back as the stream slows past a take-off, without loss.
 *
 * Source: D. Bernoulli, Hydrodynamica (1738); J. S. McNown, Trans. ASCE 119 (1954) 1103,
 * measured 0.8 to 1.0 of it.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example From 1 to 0.75 m/s
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const rise_Pa = takeOffRecovery({ density: 745, before: 1, after: 0.75 });
 *
 * assertAlmostEquals(rise_Pa, 162.97, 0.01);
 * ```
 */
export const takeOffRecovery: Method<Record<"density" | "before" | "after", MethodInput>> = method({
  id: "take-off-recovery",
  title: "Pressure recovered past a take-off",
  inputs: { density: DENSITY, before: BEFORE, after: AFTER },
  output: {
    name: "recovery",
    unit: "Pa",
    min: 0,
    max: 1e9,
    says: "Rise of pressure past the take-off, without loss",
    symbol: "\\Delta p_r",
  },
  formula: "density * (before^2 - after^2) / 2",
  source: "D. Bernoulli, Hydrodynamica (1738); measured 0.8 to 1.0 of it: " +
    "J. S. McNown, Trans. ASCE 119 (1954) 1103",
  compute: ({ density, before, after }) => density * (before - after) * (before + after) / 2,
});

/**
 * Pressure [Pa] lost by the stream that runs on past a take-off: 0.4 of the dynamic
 * pressure times the square of the relative slowing.
 *
 * Source: I. E. Idelchik, Handbook of Hydraulic Resistance, section 7 (straight passage
 * of a dividing tee).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example From 1 to 0.75 m/s
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(takeOffLoss({ density: 745, before: 1, after: 0.75 }), 9.31, 0.01);
 * ```
 */
export const takeOffLoss: Method<Record<"density" | "before" | "after", MethodInput>> = method({
  id: "take-off-loss",
  title: "Pressure lost past a take-off",
  inputs: { density: DENSITY, before: BEFORE, after: AFTER },
  output: {
    name: "loss",
    unit: "Pa",
    min: 0,
    max: 1e9,
    says: "Pressure that the stream running on loses",
    symbol: "\\Delta p_t",
  },
  formula: "0.4 * (1 - after / before)^2 * density * before^2 / 2",
  source:
    "I. E. Idelchik, Handbook of Hydraulic Resistance, section 7, dividing tee, straight passage",
  compute: ({ density, before, after }) => 0.2 * density * (before - after) ** 2,
});
