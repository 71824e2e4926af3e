/** What is left between holes that aren't meant to meet. */
import { frustaOf, type Frustum, widest } from "./frustum.ts";
import { leastBetween } from "./least_distance.ts";
import type { Hole, Layout } from "./model.ts";
import { inMetal } from "./opening.ts";

/** What is wanted between holes. */
export interface LigamentLimits {
  /** At least this [m]. */
  readonly ligament_m: number;
  /** And at least this share of the smaller hole's widest diameter [-]. */
  readonly shareOfSmaller: number;
}

/** Two holes that come nearer to each other than wanted. */
export interface Clash {
  /** Id of the hole that comes first in the layout. */
  readonly a: string;
  /** Id of the other. */
  readonly b: string;
  /** Metal between them [m]; nought or below when they meet. */
  readonly distance_m: number;
  /** What is wanted at least [m]. */
  readonly wanted_m: number;
}

/** A hole and the one that comes nearest to it. */
export interface Neighbour {
  /** The hole's id. */
  readonly hole: string;
  /** The id of the hole nearest to it. */
  readonly other: string;
  /** Metal between them [m]. */
  readonly distance_m: number;
}

/** A hole with its pieces, as far as they are cut into metal. */
export interface Cutting {
  /** The hole as laid out. */
  readonly hole: Hole;
  /** Its pieces. */
  readonly pieces: readonly Frustum[];
  /** Its widest diameter [m]. */
  readonly diameter_m: number;
}

/** Works out the pieces of a hole, so that many pairs need it only once. */
export function cuttingOf(hole: Hole, holes: readonly Hole[]): Cutting {
  const pieces = frustaOf(inMetal(hole, holes));
  return { hole, pieces, diameter_m: 2 * Math.max(0, ...pieces.map(widest)) };
}

/** True when one of two holes is meant to open into the other. */
export function mayMeet(a: Hole, b: Hole): boolean {
  return a.opensInto.includes(b.id) || b.opensInto.includes(a.id);
}

/** What is wanted between two holes [m]. */
export function wantedBetween(a: Cutting, b: Cutting, limits: LigamentLimits): number {
  const smaller_m = Math.min(a.diameter_m, b.diameter_m);
  return Math.max(limits.ligament_m, limits.shareOfSmaller * smaller_m);
}

function pairsOf(layout: Layout): readonly (readonly [Cutting, Cutting])[] {
  const cuttings = layout.holes.map((hole) => cuttingOf(hole, layout.holes));
  return cuttings.flatMap((a, i) =>
    cuttings.slice(i + 1).filter((b) => !mayMeet(a.hole, b.hole)).map((b) => [a, b] as const)
  );
}

/**
 * Finds the pairs of holes that come nearer to each other in space than wanted. Holes that are
 * meant to meet are left out, and so is what a pilot drills once it is inside the gallery.
 *
 * @param layout The layout.
 * @param limits What is wanted.
 * @returns The clashes, in the order of the holes; none when all is well.
 *
 * @example Two screw holes of 6 mm, 8 mm apart
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const screw = (id: string, x_m: number): Hole => ({
 *   id,
 *   title: id,
 *   feature: "screw",
 *   face: "opposite",
 *   entry: [x_m, 0, 0.025],
 *   into: [0, 0, -1],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.025, fromDiameter_m: 0.006, toDiameter_m: 0.006 },
 *   ],
 *   opensInto: [],
 * });
 * const bar = { shape: "rectangular", length_m: 0.1, height_m: 0.025, width_m: 0.025 } as const;
 * const layout = { bar, holes: [screw("screw-1", 0.04), screw("screw-2", 0.048)] };
 *
 * const [clash] = clashes(layout, { ligament_m: 0.002, shareOfSmaller: 0.5 });
 *
 * assertAlmostEquals(clash?.distance_m ?? 0, 0.002, 1e-12);
 * assertEquals(clash?.wanted_m, 0.003);
 * ```
 */
export function clashes(layout: Layout, limits: LigamentLimits): readonly Clash[] {
  return pairsOf(layout).flatMap(([a, b]) => {
    const wanted_m = wantedBetween(a, b, limits);
    const distance_m = leastBetween(a.pieces, b.pieces, wanted_m);
    return distance_m < wanted_m ? [{ a: a.hole.id, b: b.hole.id, distance_m, wanted_m }] : [];
  });
}

/**
 * Finds for each hole the one nearest to it that it isn't meant to meet.
 *
 * @param layout The layout.
 * @returns Hole, neighbour and the metal between, in the order of the holes; a hole that may
 * meet all others has none.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const bar = { shape: "rectangular", length_m: 0.1, height_m: 0.025, width_m: 0.025 } as const;
 *
 * assertEquals(neighbours({ bar, holes: [] }), []);
 * ```
 */
export function neighbours(layout: Layout): readonly Neighbour[] {
  const nearest = new Map<string, Neighbour>();
  for (const [a, b] of pairsOf(layout)) {
    const best = [a, b].map(({ hole }) => nearest.get(hole.id)?.distance_m ?? Infinity);
    const distance_m = leastBetween(a.pieces, b.pieces, Math.max(...best));
    for (const [one, other] of [[a, b], [b, a]] as const) {
      const known_m = nearest.get(one.hole.id)?.distance_m ?? Infinity;
      if (distance_m >= known_m) continue;
      nearest.set(one.hole.id, { hole: one.hole.id, other: other.hole.id, distance_m });
    }
  }
  return layout.holes.flatMap(({ id }) => nearest.get(id) ?? []);
}
