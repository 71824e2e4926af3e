/** How thin air is. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Viscosity of air [Pa s] near atmospheric pressure; half a percent below the
 * reference correlation at room temperature.
 *
 * Source: Sutherland's law with the constants of ISO 2533.
 *
 * @throws {InputError} When the temperature lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(airViscosity({ temperature: 293.15 }), 1.813e-5, 1e-8);
 * ```
 */
export const airViscosity: Method<Record<"temperature", MethodInput>> = method({
  id: "air-viscosity",
  title: "Viscosity of air",
  inputs: {
    temperature: {
      unit: "K",
      min: 200,
      max: 450,
      says: "Temperature of the air",
      symbol: "T",
    },
  },
  output: {
    name: "viscosity",
    unit: "Pa s",
    min: 1e-5,
    max: 3e-5,
    says: "Viscosity",
    symbol: "\\mu",
  },
  formula: "1.458e-6 * temperature^1.5 / (temperature + 110.4)",
  fit: true,
  source: "Sutherland's law with the constants of ISO 2533:1975",
  compute: ({ temperature }) => 1.458e-6 * temperature ** 1.5 / (temperature + 110.4),
});
