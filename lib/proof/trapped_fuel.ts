/** What warming does to liquid that is shut in. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Pressure rise [Pa] of liquid shut in without air and warmed.
 *
 * In a stiff metal rail it is some bar per kelvin: a liquid-filled rail is
 * never valved off and left, and a liquid test never judges by pressure fall.
 * Holds for changes small against the bulk modulus.
 *
 * Source: definitions of thermal expansion and compressibility.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Water in an aluminium rail, 1 K warmer
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const rise_Pa = trappedLiquidRise({
 *   expansion: 2.07e-4,
 *   wallExpansion: 23e-6,
 *   temperatureRise: 1,
 *   bulkModulus: 2.2e9,
 *   compliance: 0,
 * });
 *
 * assertAlmostEquals(rise_Pa, 3.04e5, 1e3);
 * ```
 */
export const trappedLiquidRise: Method<
  Record<
    "expansion" | "wallExpansion" | "temperatureRise" | "bulkModulus" | "compliance",
    MethodInput
  >
> = method({
  id: "trapped-liquid-rise",
  title: "Pressure rise of trapped liquid by warming",
  inputs: {
    expansion: {
      unit: "1/K",
      min: 5e-5,
      max: 2e-3,
      says: "Volume expansion of the liquid",
      symbol: "\\beta",
    },
    wallExpansion: {
      unit: "1/K",
      min: 0,
      max: 3e-5,
      says: "Length expansion of the wall's metal",
      symbol: "\\alpha",
    },
    temperatureRise: {
      unit: "K",
      min: -100,
      max: 100,
      says: "Rise of temperature",
      symbol: "\\Delta T",
    },
    bulkModulus: {
      unit: "Pa",
      min: 5e8,
      max: 3e9,
      says: "Bulk modulus of the liquid",
      symbol: "K",
    },
    compliance: {
      unit: "1/Pa",
      min: 0,
      max: 1e-6,
      says: "Share by which hose and walls grow per pressure",
      symbol: "c",
    },
  },
  output: {
    name: "pressureRise",
    unit: "Pa",
    min: -1e9,
    max: 1e9,
    says: "Rise of pressure",
    symbol: "\\Delta p",
  },
  formula: "(expansion - 3 * wallExpansion) * temperatureRise / (1 / bulkModulus + compliance)",
  source:
    "Definitions of thermal expansion and compressibility; constant mass in a yielding vessel",
  compute: ({ expansion, wallExpansion, temperatureRise, bulkModulus, compliance }) =>
    (expansion - 3 * wallExpansion) * temperatureRise / (1 / bulkModulus + compliance),
});
