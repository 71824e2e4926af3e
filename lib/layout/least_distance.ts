/** The least distance of two holes. */
import { areParallel, axisGap } from "./axes.ts";
import { convexDepth, convexDistance } from "./convex_distance.ts";
import { frustaOf, type Frustum, widest } from "./frustum.ts";
import type { Hole } from "./model.ts";
import { sideBySide } from "./side_by_side.ts";
import { along, dot, minus } from "./vector.ts";

/**
 * Finds the least distance [m] between two holes, as solids in space: what metal is left
 * between them. Nought or below when they meet: then how deep the deepest pair of their
 * pieces stand in each other, a search within about a micrometre.
 *
 * Closed form for parallel axes and for cylinders that cross; else the distance of convex
 * solids within a nanometre, never more than it is. A thread counts by its major diameter.
 *
 * @param a One hole.
 * @param b The other.
 * @returns The distance [m].
 *
 * @example A cross-drilled screw hole beside a gallery
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const bore = (id: string, diameter_m: number): Pick<Hole, "id" | "profile"> => ({
 *   id,
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.1, fromDiameter_m: diameter_m, toDiameter_m: diameter_m },
 *   ],
 * });
 * const gallery: Hole = {
 *   ...bore("gallery", 0.0127),
 *   title: "Gallery",
 *   feature: "gallery",
 *   face: "datum-end",
 *   entry: [0, 0, 0.0125],
 *   into: [1, 0, 0],
 *   opensInto: [],
 * };
 * const screw: Hole = {
 *   ...bore("screw-1", 0.0066),
 *   title: "Screw 1",
 *   feature: "screw",
 *   face: "opposite",
 *   entry: [0.05, 0.0132, 0.025],
 *   into: [0, 0, -1],
 *   opensInto: [],
 * };
 *
 * assertAlmostEquals(leastDistance(gallery, screw), 0.0132 - 0.00635 - 0.0033, 1e-12);
 * ```
 */
export function leastDistance(a: Hole, b: Hole): number {
  // Always the same one first, so that the answer is the same either way round to the last bit.
  const [first, second] = a.id <= b.id ? [a, b] : [b, a];
  return leastBetween(frustaOf(first), frustaOf(second));
}

/**
 * Finds the least distance [m] between two sets of pieces; Infinity when one is empty.
 *
 * @param first The pieces of one hole.
 * @param second The pieces of the other.
 * @param enough_m Distances from here on need no exact number [m].
 * @returns The distance, or some number from `enough_m` on that is no more than it.
 */
export function leastBetween(
  first: readonly Frustum[],
  second: readonly Frustum[],
  enough_m = Infinity,
): number {
  if (apartAtLeast(hullOf(first), hullOf(second)) >= enough_m) return enough_m;
  const pairs = first
    .flatMap((a) => second.map((b) => ({ a, b, least_m: apartAtLeast(a, b) })))
    .sort((one, other) => one.least_m - other.least_m);
  let best_m = Infinity;
  for (const { a, b, least_m } of pairs) {
    if (least_m >= best_m || least_m >= enough_m) return Math.min(best_m, least_m);
    const gap_m = gapBetween(a, b, Math.min(best_m, enough_m));
    best_m = Math.min(best_m, gap_m > 0 ? gap_m : overlapOf(a, b));
  }
  return best_m;
}

/**
 * Tells whether two sets of pieces come nearer to each other than a limit, without finding out
 * how near.
 *
 * @param first The pieces of one hole.
 * @param second The pieces of the other.
 * @param limit_m The limit [m], above nought: at nought what meets can't be told from what touches.
 * @returns True when they do.
 */
export function nearerThan(
  first: readonly Frustum[],
  second: readonly Frustum[],
  limit_m: number,
): boolean {
  return first.some((a) =>
    second.some((b) => apartAtLeast(a, b) < limit_m && gapBetween(a, b, limit_m) < limit_m)
  );
}

/** A cylinder around all pieces of a hole, which have one axis. */
function hullOf(pieces: readonly Frustum[]): Frustum {
  const [first, ...rest] = pieces;
  if (first === undefined) return NOTHING;
  let [low, high, radius_m] = [0, first.length_m, widest(first)];
  for (const piece of rest) {
    const from_m = dot(minus(piece.from, first.from), first.axis);
    low = Math.min(low, from_m);
    high = Math.max(high, from_m + piece.length_m);
    radius_m = Math.max(radius_m, widest(piece));
  }
  return {
    from: along(first.from, first.axis, low),
    axis: first.axis,
    length_m: high - low,
    fromRadius_m: radius_m,
    toRadius_m: radius_m,
  };
}

/** Farther from everything than any limit. */
const NOTHING: Frustum = {
  from: [0, 0, 1e6],
  axis: [1, 0, 0],
  length_m: 0,
  fromRadius_m: 0,
  toRadius_m: 0,
};

/** Two pieces lie in round-ended hulls about their axes, so they are no nearer than those. */
function apartAtLeast(a: Frustum, b: Frustum): number {
  return axisGap(a, b).gap_m - widest(a) - widest(b);
}

/** The distance of two pieces, or something from `enough_m` on; nought or below when they meet. */
function gapBetween(a: Frustum, b: Frustum, enough_m: number): number {
  if (areParallel(a, b)) return sideBySide(a, b);
  if (isCylinder(a) && isCylinder(b)) {
    const { gap_m, square } = axisGap(a, b);
    const left_m = gap_m - widest(a) - widest(b);
    if (square && left_m >= 0) return left_m;
  }
  return convexDistance(a, b, enough_m);
}

/** How deep two pieces that meet stand in each other, below nought. */
function overlapOf(a: Frustum, b: Frustum): number {
  return areParallel(a, b) ? sideBySide(a, b) : 0 - convexDepth(a, b);
}

function isCylinder(piece: Frustum): boolean {
  return piece.fromRadius_m === piece.toRadius_m;
}
