/** The highest pressure the rail sees when nothing is wrong. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Highest working pressure of the rail [Pa, gauge]: set pressure, boost where
 * the regulator is referenced to the manifold, and the swing of injection.
 *
 * Source: force balance of a regulator diaphragm; the allowance for swing is ours.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(highestWorkingPressure({ setPressure: 3e5, boost: 1e5, swing: 3e4 }), 4.3e5);
 * ```
 */
export const highestWorkingPressure: Method<
  Record<"setPressure" | "boost" | "swing", MethodInput>
> = method({
  id: "highest-working-pressure",
  title: "Highest working pressure of the rail",
  inputs: {
    setPressure: {
      unit: "Pa",
      min: 0,
      max: 1e6,
      says: "Set pressure of the regulator, gauge, hose to the manifold off",
      symbol: "p_\\text{set}",
    },
    boost: {
      unit: "Pa",
      min: 0,
      max: 5e5,
      says: "Highest boost, gauge; nought where the regulator is referenced to outside air",
      symbol: "p_\\text{boost}",
    },
    swing: {
      unit: "Pa",
      min: 0,
      max: 1e6,
      says: "Rise above the mean that injection makes",
      symbol: "\\Delta p_\\text{swing}",
    },
  },
  output: {
    name: "workingPressure",
    unit: "Pa",
    min: 0,
    max: 2.5e6,
    says: "Highest working pressure, gauge",
    symbol: "p_\\text{work}",
  },
  formula: "setPressure + boost + swing",
  words: "Until the waves in the rail are computed, the swing is 10 % of the set pressure (ours).",
  source: "Force balance of a regulator diaphragm; the swing allowance is ours",
  compute: ({ setPressure, boost, swing }) => setPressure + boost + swing,
});
