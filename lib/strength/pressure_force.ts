/** What pressure pushes out. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { PRESSURE } from "./limits.ts";

/**
 * Force of pressure on a round face [N]: on an end plug, or lifting the rail off an injector.
 *
 * The diameter is the one that is sealed, not the bore behind it.
 *
 * Source: definition of pressure.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A pocket of 14 mm at 10 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pressureForce({ pressure: 1e6, diameter: 0.014 }), 153.9, 0.1);
 * ```
 */
export const pressureForce: Method<Record<"pressure" | "diameter", MethodInput>> = method({
  id: "pressure-force",
  title: "Force of pressure on a plug or a pocket",
  inputs: {
    pressure: PRESSURE,
    diameter: { unit: "m", min: 1e-4, max: 0.2, says: "Diameter that is sealed", symbol: "D" },
  },
  output: { name: "force", unit: "N", min: 0, max: 7e5, says: "Force", symbol: "F" },
  formula: "pressure * pi * diameter^2 / 4",
  source: "Definition of pressure",
  compute: ({ pressure, diameter }) => pressure * Math.PI * diameter ** 2 / 4,
});
