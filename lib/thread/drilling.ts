/** Running a drill: speed, feed, time, when to clear the chips. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DRILL } from "./limits.ts";

/** From one number to another, in SI. */
export interface Band {
  /** Lower end. */
  readonly from: number;
  /** Upper end. */
  readonly to: number;
}

/** Materials of which the cutting speed is known. */
export type CutMaterial = "aluminium" | "brass" | "mild steel" | "stainless steel";

/** Cutting speeds of a material with a high-speed steel drill [m/s]. */
export interface CuttingSpeed extends Band {
  /** For deep holes, where chips and heat stay in. */
  readonly deep: number;
}

const perMinute = (from: number, to: number, deep: number): CuttingSpeed => ({
  from: from / 60,
  to: to / 60,
  deep: deep / 60,
});

/**
 * Cutting speeds of high-speed steel drills by material [m/s]. Published tables scatter widely;
 * these lie inside several of them.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(CUTTING_SPEEDS.aluminium.from * 60, 60); // m/min
 * ```
 */
export const CUTTING_SPEEDS: Readonly<Record<CutMaterial, CuttingSpeed>> = {
  aluminium: perMinute(60, 90, 45),
  brass: perMinute(45, 90, 45),
  "mild steel": perMinute(20, 34, 20),
  "stainless steel": perMinute(9, 16, 9),
};

/** Feeds to a turn [m] by largest diameter [m]: published by the inch, 1/8, 1/4, 1/2, 1. */
const FEEDS: readonly { readonly upTo_m: number; readonly feed: Band }[] = [
  { upTo_m: 0.0254 / 8, feed: { from: 0.025e-3, to: 0.075e-3 } },
  { upTo_m: 0.0254 / 4, feed: { from: 0.05e-3, to: 0.15e-3 } },
  { upTo_m: 0.0254 / 2, feed: { from: 0.1e-3, to: 0.25e-3 } },
  { upTo_m: 0.0254, feed: { from: 0.18e-3, to: 0.38e-3 } },
];

/**
 * Feed to a turn [m] of a high-speed steel drill; aluminium takes the upper half.
 * Source: published feed ranges by diameter, to 1/8, 1/4, 1/2 and 1 inch.
 *
 * @param drill_m Diameter of the drill [m], to 25.4 mm.
 * @returns The band, undefined for a larger drill.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(feedBand(0.009), { from: 1e-4, to: 2.5e-4 });
 * ```
 */
export function feedBand(drill_m: number): Band | undefined {
  return FEEDS.find(({ upTo_m }) => drill_m <= upTo_m)?.feed;
}

/** Beyond this many diameters a hole is pecked; common practice, no source. */
export const PECK_FROM_DIAMETERS = 3;

/** Beyond this many diameters a hole wants a special drill or both ends; common practice, no source. */
export const DEEP_FROM_DIAMETERS = 10;

/**
 * Speed of the spindle [rev/s] for a cutting speed. Keep to the machine's maximum.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 60 m/min at 9 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(spindleSpeed({ cuttingSpeed: 1, drill: 0.009 }) * 60, 2122, 0.1);
 * ```
 */
export const spindleSpeed: Method<Record<"cuttingSpeed" | "drill", MethodInput>> = method({
  id: "spindle-speed",
  title: "Speed of the spindle",
  inputs: {
    cuttingSpeed: {
      unit: "m/s",
      min: 0.02,
      max: 10,
      says: "Cutting speed at the drill's edge",
      symbol: "v",
    },
    drill: DRILL,
  },
  output: { name: "speed", unit: "1/s", min: 0, max: 2e4, says: "Turns per second", symbol: "n" },
  formula: "cuttingSpeed / (pi * drill)",
  source: "Kinematics: the edge runs pi d in a turn",
  compute: ({ cuttingSpeed, drill }) => cuttingSpeed / (Math.PI * drill),
});

/**
 * Speed [m/s] at which the drill goes in.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1500 rev/min, 0.2 mm to a turn
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(feedSpeed({ speed: 25, feed: 2e-4 }) * 60, 0.3, 1e-12);
 * ```
 */
export const feedSpeed: Method<Record<"speed" | "feed", MethodInput>> = method({
  id: "drill-feed-speed",
  title: "Speed at which a drill goes in",
  inputs: {
    speed: { unit: "1/s", min: 0.1, max: 1000, says: "Turns per second", symbol: "n" },
    feed: { unit: "m", min: 1e-6, max: 0.002, says: "Feed to a turn", symbol: "f" },
  },
  output: { name: "feedSpeed", unit: "m/s", min: 0, max: 2, says: "Feed speed", symbol: "v_f" },
  formula: "speed * feed",
  source: "Kinematics",
  compute: ({ speed, feed }) => speed * feed,
});

/**
 * Time [s] of a hole without clearing chips.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 150 mm at 300 mm/min
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(drillingTime({ depth: 0.15, feedSpeed: 0.005 }), 30, 1e-9);
 * ```
 */
export const drillingTime: Method<Record<"depth" | "feedSpeed", MethodInput>> = method({
  id: "drilling-time",
  title: "Time of a hole without clearing chips",
  inputs: {
    depth: { unit: "m", min: 0, max: 1, says: "Depth of the hole", symbol: "L" },
    feedSpeed: { unit: "m/s", min: 1e-5, max: 1, says: "Feed speed", symbol: "v_f" },
  },
  output: { name: "time", unit: "s", min: 0, max: 1e5, says: "Time of cutting", symbol: "t" },
  formula: "depth / feedSpeed",
  source: "Kinematics",
  compute: ({ depth, feedSpeed: speed }) => depth / speed,
});

/**
 * Depth of a hole in diameters [-]: beyond {@linkcode PECK_FROM_DIAMETERS} it is pecked,
 * beyond {@linkcode DEEP_FROM_DIAMETERS} drilled from both ends or with a special drill.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A gallery of 300 mm
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(depthRatio({ depth: 0.3, drill: 0.0127 }) > DEEP_FROM_DIAMETERS);
 * ```
 */
export const depthRatio: Method<Record<"depth" | "drill", MethodInput>> = method({
  id: "hole-depth-ratio",
  title: "Depth of a hole in diameters",
  inputs: {
    depth: { unit: "m", min: 0, max: 1, says: "Depth of the hole", symbol: "L" },
    drill: DRILL,
  },
  output: { name: "ratio", unit: "-", min: 0, max: 4000, says: "Diameters deep" },
  formula: "depth / drill",
  source: "By definition",
  compute: ({ depth, drill }) => depth / drill,
});
