/** What the barometer shows up a hill. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Pressure of the standard atmosphere [Pa, absolute] at an altitude.
 *
 * Weather moves it by 3 % either way.
 *
 * Source: ISO 2533, troposphere (geopotential altitude).
 *
 * @throws {InputError} When the altitude lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * assertEquals(ambientPressure({ altitude: 0 }), 101_325);
 * assertAlmostEquals(ambientPressure({ altitude: 1000 }), 89_875, 1);
 * ```
 */
export const ambientPressure: Method<Record<"altitude", MethodInput>> = method({
  id: "ambient-pressure",
  title: "Pressure of the outside air at an altitude",
  inputs: {
    altitude: {
      unit: "m",
      min: -500,
      max: 5000,
      says: "Altitude above sea level",
      symbol: "h",
    },
  },
  output: {
    name: "ambient",
    unit: "Pa",
    min: 5e4,
    max: 1.1e5,
    says: "Pressure of the outside air, absolute",
    symbol: "p_a",
  },
  formula: "101325 * (1 - 0.0065 * altitude / 288.15)^5.25588",
  fit: true,
  source: "ISO 2533:1975, troposphere",
  compute: ({ altitude }) => 101_325 * (1 - 0.0065 * altitude / 288.15) ** 5.25588,
});
