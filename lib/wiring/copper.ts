/** Copper: what it resists, and how much more when warm. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { RATIO } from "./limits.ts";

/** Resistivity of annealed copper at 20 °C, 100 % IACS [ohm m]. Source: IEC 60028. */
export const COPPER_RESISTIVITY_ohm_m = 1.7241e-8;

/** What a kelvin adds to the resistance of copper, of that at 20 °C [1/K]. Source: IEC 60028. */
export const COPPER_COEFFICIENT_1_K = 0.00393;

/** Temperature that resistances of wire are stated at [K]: 20 °C. Source: IEC 60228. */
export const WIRE_REFERENCE_K = 293.15;

/**
 * Resistance of warm copper over that at 20 °C [-]. Holds from -50 to 200 °C.
 *
 * Source: IEC 60028.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example At 60 °C a wire loses 16 % more than cold
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const ratio = resistanceRatio({
 *   temperature: 333.15,
 *   reference: WIRE_REFERENCE_K,
 *   coefficient: COPPER_COEFFICIENT_1_K,
 * });
 *
 * assertAlmostEquals(ratio, 1.1572, 1e-9);
 * ```
 */
export const resistanceRatio: Method<
  Record<"temperature" | "reference" | "coefficient", MethodInput>
> = method({
  id: "copper-resistance-ratio",
  title: "Resistance of warm copper over that at 20 °C",
  inputs: {
    temperature: {
      unit: "K",
      min: 223.15,
      max: 473.15,
      says: "Temperature of the conductor",
      symbol: "T",
    },
    reference: {
      unit: "K",
      min: 290,
      max: 300,
      says: "Temperature that the resistance is stated at; 293.15 is 20 °C",
      symbol: "T_{20}",
    },
    coefficient: {
      unit: "1/K",
      min: 0.0037,
      max: 0.0042,
      says: "Temperature coefficient; annealed copper 0.00393",
      symbol: "\\alpha_{20}",
    },
  },
  output: { ...RATIO, name: "ratio" },
  formula: "1 + coefficient * (temperature - reference)",
  source: "IEC 60028",
  compute: ({ temperature, reference, coefficient }) => 1 + coefficient * (temperature - reference),
});
