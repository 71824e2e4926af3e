/** The nearest place along the bar where a hole fits. */
import { InputError } from "@/lib/basics/mod.ts";
import { type Cutting, cuttingOf, type LigamentLimits, mayMeet, wantedBetween } from "./clashes.ts";
import { isEnd } from "./entry.ts";
import { tunnelOf } from "./gallery_axis.ts";
import { leastBetween } from "./least_distance.ts";
import type { Bar, Hole, Layout } from "./model.ts";
import { plus } from "./vector.ts";
import { wallOf } from "./wall.ts";

/** What must be left around a hole that is moved. */
export interface PlaceLimits extends LigamentLimits {
  /** Wall to the outside of the bar [m]. */
  readonly wall_m: number;
}

/** Places that are tried are so far apart [m]: a tenth of a millimetre can be marked out. */
const GRID_m = 1e-4;

/**
 * Finds the nearest place along the bar where a hole clashes with nothing, keeps its wall and
 * still meets the gallery it opens into. All other holes stay. Places are whole tenths of a
 * millimetre from the datum end; where the hole is already counts as it is.
 *
 * @param layout The layout.
 * @param id The hole that may move.
 * @param limits What must be left around it.
 * @returns Its place along the bar [m]; undefined when there is none.
 * @throws {InputError} When there is no such hole, or it is drilled from an end.
 *
 * @example A second screw hole of 6 mm, 3 mm of metal wanted
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const screw = (id: string, x_m: number): Hole => ({
 *   id,
 *   title: id,
 *   feature: "screw",
 *   face: "opposite",
 *   exit: "injectors",
 *   entry: [x_m, 0, 0.025],
 *   into: [0, 0, -1],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.025, fromDiameter_m: 0.006, toDiameter_m: 0.006 },
 *   ],
 *   opensInto: [],
 * });
 * const bar = { shape: "rectangular", length_m: 0.1, height_m: 0.025, width_m: 0.025 } as const;
 * const layout = { bar, holes: [screw("screw-1", 0.04), screw("screw-2", 0.042)] };
 *
 * const at_m = nearestThatFits(layout, "screw-2", {
 *   wall_m: 0.003,
 *   ligament_m: 0.003,
 *   shareOfSmaller: 0.5,
 * });
 *
 * assertAlmostEquals(at_m ?? 0, 0.049, 1e-12);
 * ```
 */
export function nearestThatFits(
  layout: Layout,
  id: string,
  limits: PlaceLimits,
): number | undefined {
  const hole = layout.holes.find((one) => one.id === id);
  if (hole === undefined || isEnd(hole.face)) {
    const rule = "must be a hole of the layout that isn't drilled from an end";
    throw new InputError("nearest place", "id", rule, id);
  }
  const others = layout.holes.filter((one) => one.id !== id)
    .map((one) => cuttingOf(one, layout.holes));
  const shortBy = (at_m: number): number => shortfall(layout, movedTo(hole, at_m), others, limits);
  const [from_m] = hole.entry;
  if (shortBy(from_m) <= 0) return from_m;
  const up = search(from_m, 1, layout.bar, shortBy);
  const down = search(from_m, -1, layout.bar, shortBy);
  if (up === undefined || down === undefined) return up ?? down;
  return up - from_m < from_m - down ? up : down;
}

/** Goes along the grid one way; no distance changes faster than the hole moves, so it may leap. */
function search(
  from_m: number,
  way: 1 | -1,
  bar: Bar,
  shortBy: (at_m: number) => number,
): number | undefined {
  const last = Math.ceil(bar.length_m / GRID_m);
  let step = way > 0 ? Math.ceil(from_m / GRID_m) : Math.floor(from_m / GRID_m);
  while (step > 0 && step < last) {
    const at_m = step * GRID_m;
    const short_m = shortBy(at_m);
    if (short_m <= 0) return at_m;
    step += way * Math.max(1, Math.floor(short_m / GRID_m));
  }
  return undefined;
}

function movedTo(hole: Hole, at_m: number): Hole {
  return { ...hole, entry: plus(hole.entry, [at_m - hole.entry[0], 0, 0]) };
}

/** Rounding of a sum that should come out as wanted [m]. */
const ROUNDING_m = 1e-9;

/** By how much the worst of all demands is missed [m]; nought or below when all are met. */
function shortfall(
  { bar, holes }: Layout,
  hole: Hole,
  others: readonly Cutting[],
  limits: PlaceLimits,
): number {
  const own = cuttingOf(hole, holes);
  const apart = others.filter((other) => !mayMeet(hole, other.hole)).map((other) => {
    const wanted_m = wantedBetween(own, other, limits);
    return wanted_m - leastBetween(own.pieces, other.pieces, wanted_m);
  });
  const wall = limits.wall_m - wallOf(hole, bar).distance_m;
  return Math.max(wall, ...apart, ...beyondGallery(hole, holes)) - ROUNDING_m;
}

/** How far a hole stands beyond the full bore of the gallery it opens into. */
function beyondGallery(hole: Hole, holes: readonly Hole[]): readonly number[] {
  return holes.filter(({ id, feature }) => feature === "gallery" && hole.opensInto.includes(id))
    .flatMap((gallery) => {
      const tunnel = tunnelOf(gallery);
      if (tunnel === undefined) return [];
      const ends = [tunnel.begins_m, tunnel.ends_m].map((t) => tunnel.from[0] + t * tunnel.axis[0]);
      const drill = hole.profile.filter(({ cut }) => cut !== "tip").at(-1);
      const depth_m = drill?.to_m ?? 0;
      const half_m = (drill?.toDiameter_m ?? 0) / 2;
      const at_m = hole.entry[0] + depth_m * hole.into[0];
      return [Math.min(...ends) - at_m + half_m, at_m + half_m - Math.max(...ends)];
    });
}
