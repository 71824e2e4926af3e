/** What an injector's two rings can take up between manifold and rail. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";
import { clearance, tolerance } from "./limits.ts";

const AT_RAIL = clearance("Radial clearance at the ring in the rail", "c_1");
const AT_MANIFOLD = clearance("Radial clearance at the ring in the manifold", "c_2");

/**
 * How far [m] the axes of pocket and boss may be apart while the injector still stands
 * parallel to both.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(floatPlay({ atRail: 2e-4, atManifold: 1e-4 }), 3e-4, 1e-12);
 * ```
 */
export const floatPlay: Method<Record<"atRail" | "atManifold", MethodInput>> = method({
  id: "float-play",
  title: "Sideways play of an injector",
  inputs: { atRail: AT_RAIL, atManifold: AT_MANIFOLD },
  output: { name: "play", unit: "m", min: 0, max: 0.01, says: "Distance of the axes" },
  formula: "atRail + atManifold",
  source: "Two clearances in a row, as for floating fasteners in ASME Y14.5",
  compute: ({ atRail, atManifold }) => atRail + atManifold,
});

/**
 * How far [rad] an injector may lean while pocket and boss have one axis.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.3 mm over 40 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const tilt_rad = floatTilt({ atRail: 2e-4, atManifold: 1e-4, between: 0.04 });
 *
 * assertAlmostEquals(tilt_rad, 0.0075, 1e-6);
 * ```
 */
export const floatTilt: Method<Record<"atRail" | "atManifold" | "between", MethodInput>> = method({
  id: "float-tilt",
  title: "Lean that an injector's play allows",
  inputs: {
    atRail: AT_RAIL,
    atManifold: AT_MANIFOLD,
    between: { unit: "m", min: 0.005, max: 0.3, says: "Distance of the two rings", symbol: "L" },
  },
  output: { name: "tilt", unit: "rad", min: 0, max: 1.6, says: "Lean from the axis" },
  formula: "atan((atRail + atManifold) / between)",
  source: "Geometry of a right triangle",
  compute: ({ atRail, atManifold, between }) => Math.atan((atRail + atManifold) / between),
});

/**
 * Play that is left [m] when pocket and boss are apart by so much, and the rail is true to so
 * much. Below nought the rings are forced to one side.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(floatLeft({ play: 3e-4, apart: 1e-4, trueTo: 1.5e-4 }), 5e-5, 1e-12);
 * ```
 */
export const floatLeft: Method<Record<"play" | "apart" | "trueTo", MethodInput>> = method({
  id: "float-left",
  title: "Sideways play left at an injector",
  inputs: {
    play: { unit: "m", min: 0, max: 0.01, says: "Sideways play of the injector", symbol: "p" },
    apart: { unit: "m", min: 0, max: 0.5, says: "Distance of the axes as measured", symbol: "e" },
    trueTo: tolerance("Tolerance of the places in rail and manifold together", "t"),
  },
  output: { name: "left", unit: "m", min: -1, max: 0.01, says: "Play left" },
  formula: "play - apart - trueTo",
  source: "Play less what uses it up, as for floating fasteners in ASME Y14.5",
  compute: ({ play, apart, trueTo }) => play - apart - trueTo,
});

/** What {@linkcode floatOf} needs. */
export interface FloatSpec {
  /** Radial clearance at the ring in the rail [m]. */
  readonly atRail_m: number;
  /** Radial clearance at the ring in the manifold [m]. */
  readonly atManifold_m: number;
  /** Distance of the two rings [m]. */
  readonly between_m: number;
  /** Tolerance of places in rail and manifold together, along any line [m]. */
  readonly trueTo_m: number;
  /** Pocket and boss of each injector, from one datum, in order. */
  readonly stations: readonly FloatStation[];
}

/** How pocket and boss of an injector lie to each other. */
export interface FloatStation {
  /** Pocket less boss along the bar [m]. */
  readonly along_m: number;
  /** Pocket less boss across it [m]. */
  readonly across_m: number;
}

/** What the rings of a rail's injectors can take up. */
export interface Float {
  /** Distance that the axes may be apart [m]. */
  readonly play_m: number;
  /** Lean with the axes in line [rad]. */
  readonly tilt_rad: number;
  /** Play left at each injector [m]; below 0 its rings are forced to one side. */
  readonly left_m: readonly number[];
}

/**
 * Works out the play of injectors between manifold and rail, and what of it is left at each.
 *
 * @param working Takes the record.
 * @param section What the results stand under in the record.
 * @param spec Clearances, distances and tolerance.
 * @returns Play, lean, and play left at each injector.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const { play_m, left_m } = floatOf(new Working(), "float", {
 *   atRail_m: 2e-4,
 *   atManifold_m: 3e-4,
 *   between_m: 0.04,
 *   trueTo_m: 2e-4,
 *   stations: [{ along_m: 3e-4, across_m: -4e-4 }],
 * });
 *
 * assertAlmostEquals(play_m, 5e-4, 1e-12);
 * assertAlmostEquals(left_m[0] ?? 0, -2e-4, 1e-12);
 * ```
 */
export function floatOf(working: Working, section: string, spec: FloatSpec): Float {
  const clearances = { atRail: spec.atRail_m, atManifold: spec.atManifold_m };
  const play_m = working.run(`${section}.play_m`, floatPlay, clearances);
  const tilt_rad = working.run(`${section}.tilt_rad`, floatTilt, {
    ...clearances,
    between: spec.between_m,
  });
  const left_m = spec.stations.map(({ along_m, across_m }, i) =>
    working.run(`${section}.injectors.${i}.left_m`, floatLeft, {
      play: play_m,
      apart: Math.hypot(along_m, across_m),
      trueTo: spec.trueTo_m,
    })
  );
  return { play_m, tilt_rad, left_m };
}
