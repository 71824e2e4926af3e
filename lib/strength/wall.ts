/** The wall that drilling leaves. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE } from "./limits.ts";

/**
 * How far a twist drill wanders for each length drilled [-]: 1 mm in 300 mm.
 * Common practice, no source; a gun drill does far better.
 */
export const DRIFT_PER_LENGTH = 1 / 300;

/**
 * How far a long drill may have wandered at the end of its hole [m].
 *
 * Source: common practice, no source.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 420 mm from both ends
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const drift_m = drillDrift({ length: 0.42, driftPerLength: DRIFT_PER_LENGTH, ends: 2 });
 *
 * assertAlmostEquals(drift_m, 0.7e-3, 1e-9);
 * ```
 */
export const drillDrift: Method<Record<"length" | "driftPerLength" | "ends", MethodInput>> = method(
  {
    id: "drill-drift",
    title: "Wander of a long drill",
    inputs: {
      length: { unit: "m", min: 0.005, max: 3, says: "Length of the gallery", symbol: "L" },
      driftPerLength: {
        unit: "-",
        min: 0,
        max: 0.02,
        says: "Wander for each length drilled; a twist drill 1 mm in 300 mm",
        symbol: "w",
      },
      ends: { unit: "-", min: 1, max: 2, says: "Ends drilled from, 1 or 2", symbol: "n" },
    },
    output: { name: "drift", unit: "m", min: 0, max: 0.06, says: "Wander", symbol: "\\delta" },
    formula: "length * driftPerLength / ends",
    source: "Common practice, no source",
    compute: ({ length, driftPerLength, ends }) => length * driftPerLength / ends,
  },
);

/**
 * Wall around a gallery in the middle of a bar [m]; below 0 the gallery is wider than the bar.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(centredWall({ across: 0.025, bore: 0.0127 }), 6.15e-3, 1e-9);
 * ```
 */
export const centredWall: Method<Record<"across" | "bore", MethodInput>> = method({
  id: "centred-wall",
  title: "Wall around a centred gallery",
  inputs: {
    across: {
      unit: "m",
      min: 0.002,
      max: 0.3,
      says: "Smallest size across the bar",
      symbol: "h",
    },
    bore: BORE,
  },
  output: {
    name: "wall",
    unit: "m",
    min: -0.1,
    max: 0.15,
    says: "Wall, before the drill wanders",
    symbol: "t_0",
  },
  formula: "(across - bore) / 2",
  source: "Geometry",
  compute: ({ across, bore }) => (across - bore) / 2,
});

/**
 * Wall left after the drill has wandered [m]; 0 or below, it breaks out.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(wallLeft({ wall: 6.15e-3, drift: 1e-3 }), 5.15e-3, 1e-12);
 * ```
 */
export const wallLeft: Method<Record<"wall" | "drift", MethodInput>> = method({
  id: "wall-left",
  title: "Wall left after drilling",
  inputs: {
    wall: {
      unit: "m",
      min: -0.1,
      max: 0.15,
      says: "Wall, before the drill wanders",
      symbol: "t_0",
    },
    drift: { unit: "m", min: 0, max: 0.06, says: "Wander of the drill", symbol: "\\delta" },
  },
  output: {
    name: "wallLeft",
    unit: "m",
    min: -0.16,
    max: 0.15,
    says: "Least wall left; 0 or below, the drill breaks out",
    symbol: "t",
  },
  formula: "wall - drift",
  source: "Geometry",
  compute: ({ wall, drift }) => wall - drift,
});
