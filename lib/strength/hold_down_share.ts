/** How the lift is shared among the hold-down screws. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const PULL: MethodInput = {
  unit: "N",
  min: -1e6,
  max: 1e6,
  says: "Pull on the screw; negative where the bar presses down",
  symbol: "R",
};

/**
 * Pull on one screw [N] when the bar is stiff and the screws give a little, each as much: the
 * lift in equal shares, and what the moment about the screws' middle adds. For two screws that
 * is the lever rule whatever gives. Negative: the bar presses down there, and the screw unloads.
 *
 * Source: rigid body on equal springs, the elastic method for bolt groups.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 240 N, its middle 55 mm off the middle of two screws 200 mm apart
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const near_N = shareOfStiffBar({
 *   lift: 240,
 *   screws: 2,
 *   moment: 240 * 0.055,
 *   offset: 0.1,
 *   spread: 2 * 0.1 ** 2,
 * });
 *
 * assertAlmostEquals(near_N, 186, 1e-9);
 * ```
 */
export const shareOfStiffBar: Method<
  Record<"lift" | "screws" | "moment" | "offset" | "spread", MethodInput>
> = method({
  id: "share-of-stiff-bar",
  title: "Pull on a screw that holds a stiff bar",
  inputs: {
    lift: { unit: "N", min: 0, max: 1e5, says: "All lifts together", symbol: "F" },
    screws: { unit: "-", min: 1, max: 50, says: "Number of screws", symbol: "n" },
    moment: {
      unit: "N m",
      min: -1e5,
      max: 1e5,
      says: "Moment of the lifts about the middle of the screws",
      symbol: "M",
    },
    offset: {
      unit: "m",
      min: -3,
      max: 3,
      says: "Distance of the screw from the middle of the screws",
      symbol: "x",
    },
    spread: {
      unit: "m^2",
      min: 1e-6,
      max: 100,
      says: "Sum of the squares of those distances",
      symbol: "\\Sigma x^2",
    },
  },
  output: {
    ...PULL,
    name: "pull",
    min: -1e12,
    max: 1e12,
    says: "Pull with a bar that doesn't bend; negative where it presses down",
    symbol: "R_1",
  },
  formula: "lift / screws + moment * offset / spread",
  source: "Rigid body on equal springs: the elastic method for bolt groups",
  compute: ({ lift, screws, moment, offset, spread }) => lift / screws + moment * offset / spread,
});

/**
 * Pull that a screw is judged by [N]: the greater of that with a bar that doesn't bend and the
 * most with one that does, however much its stands yield. With two screws they are the same.
 *
 * Source: ours; how much stands and bar yield is never known.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example The middle one of three
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(decidingPull({ stiffBar: 80, bendingBar: 130 }), 130);
 * ```
 */
export const decidingPull: Method<Record<"stiffBar" | "bendingBar", MethodInput>> = method({
  id: "deciding-pull",
  title: "Pull that a hold-down screw is judged by",
  inputs: {
    stiffBar: { ...PULL, says: "Pull with a bar that doesn't bend", symbol: "R_1" },
    bendingBar: { ...PULL, says: "Most pull with a bar that bends", symbol: "R_2" },
  },
  output: { ...PULL, name: "pull", says: "Pull that the screw is judged by" },
  formula: "max(stiffBar, bendingBar)",
  words: "The bar that bends is worked out by least work, over stands that yield by any amount.",
  source: "Ours: the greater of two bounds",
  compute: ({ stiffBar, bendingBar }) => Math.max(stiffBar, bendingBar),
});

/**
 * Preload that a screw needs [N] for a factor over its pull.
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(clampForFactor({ pull: 123, factor: 3 }), 369);
 * ```
 */
export const clampForFactor: Method<Record<"pull" | "factor", MethodInput>> = method({
  id: "clamp-for-factor",
  title: "Preload that a hold-down screw needs",
  inputs: {
    pull: { ...PULL, min: 0 },
    factor: { unit: "-", min: 1, max: 10, says: "Factor over the pull", symbol: "S" },
  },
  output: { name: "preload", unit: "N", min: 0, max: 1e7, says: "Preload needed", symbol: "F_i" },
  formula: "pull * factor",
  source: "Definition",
  compute: ({ pull, factor }) => pull * factor,
});

/**
 * Preload over pull [-].
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(preloadFactor({ preload: 4000, pull: 125 }), 32);
 * ```
 */
export const preloadFactor: Method<Record<"preload" | "pull", MethodInput>> = method({
  id: "preload-factor",
  title: "Preload of a hold-down screw over its pull",
  inputs: {
    preload: { unit: "N", min: 0, max: 1e6, says: "Preload", symbol: "F_i" },
    pull: { ...PULL, min: 1e-3 },
  },
  output: { name: "factor", unit: "-", min: 0, max: 1e9, says: "Preload over pull", symbol: "S" },
  formula: "preload / pull",
  source: "Definition",
  compute: ({ preload, pull }) => preload / pull,
});
