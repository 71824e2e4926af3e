/** Tubes are sold by outside diameter and wall. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Bore of a tube [m] by its outside diameter and wall.
 *
 * @throws {InputError} When a number lies outside its range, or the walls leave no bore.
 *
 * @example 3/8 in with a wall of 0.035 in
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(tubeBore({ outside: 9.525e-3, wall: 0.889e-3 }), 7.747e-3, 1e-9);
 * ```
 */
export const tubeBore: Method<Record<"outside" | "wall", MethodInput>> = method({
  id: "tube-bore",
  title: "Bore of a tube",
  inputs: {
    outside: { unit: "m", min: 0.002, max: 0.06, says: "Outside diameter of the tube" },
    wall: { unit: "m", min: 1e-4, max: 0.01, says: "Thickness of its wall" },
  },
  output: { name: "bore", unit: "m", min: 0, max: 0.06, open: true, says: "Bore of the tube" },
  formula: "outside - 2 * wall",
  source: "Geometry of the section",
  compute: ({ outside, wall }) => outside - 2 * wall,
});
