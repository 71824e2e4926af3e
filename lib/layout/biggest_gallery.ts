/** The biggest gallery that a bar and its holes allow. */
import type { Frustum } from "./frustum.ts";
import { type Cutting, cuttingOf, type LigamentLimits, mayMeet, wantedBetween } from "./clashes.ts";
import { type Drift, drifted } from "./drift.ts";
import { layGallery } from "./lay_gallery.ts";
import { layRail } from "./lay_rail.ts";
import { nearerThan } from "./least_distance.ts";
import type { Bar, Hole } from "./model.ts";
import { abovePilot } from "./opening.ts";
import type { GalleryEnd, GallerySpec, RailLayoutSpec } from "./spec.ts";
import { wallOf } from "./wall.ts";

/** What must be left around a gallery. */
export interface GalleryLimits extends LigamentLimits {
  /** Wall to the outside of the bar [m]. */
  readonly wall_m: number;
  /** Metal between the gallery and a pocket's bore, a seat or a thread above it [m]. */
  readonly above_m: number;
  /** How far the drill may wander. */
  readonly drift: Drift;
}

/** The biggest gallery, and what stops it from being bigger. */
export interface BiggestGallery {
  /** Bore [m]; undefined when not even 1 mm fits. */
  readonly bore_m?: number;
  /** What stops it: a face of the bar, or the id of a hole. */
  readonly heldBy: string;
}

/** Below this no gallery is drilled [m]. */
const LEAST_BORE_m = 1e-3;

/** How closely the bore is found [m]. */
const TOLERANCE_m = 1e-7;

/**
 * Finds the biggest bore of the gallery that leaves wall, ligaments and the metal above it at
 * least as wanted, wherever the drill may have wandered. It rounds down, by a ten thousandth
 * of a millimetre at most; the next smaller drill is for the caller to choose.
 *
 * @param spec The rail; the bore it states counts for nothing here.
 * @param limits What must be left.
 * @returns Bore and what stops it from being bigger.
 * @throws {InputError} As {@linkcode layRail} does.
 *
 * @example A bare bar of 25 mm with 3 mm of wall
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const biggest = biggestGallery({
 *   bar: { shape: "rectangular", length_m: 0.3, height_m: 0.025, width_m: 0.025 },
 *   gallery: { bore_m: 0.01, across_m: 0, up_m: 0.0125, drilledFrom: "datum-end", ends: {} },
 *   stations: [],
 *   ports: [],
 *   screws: [],
 * }, {
 *   wall_m: 0.003,
 *   ligament_m: 0.003,
 *   shareOfSmaller: 0.5,
 *   above_m: 0.002,
 *   drift: { drift_m: 0.001, drilledFrom: "one" },
 * });
 *
 * assertAlmostEquals(biggest.bore_m ?? 0, 0.025 - 2 * (0.003 + 0.001), 2e-7);
 * ```
 */
export function biggestGallery(
  spec: RailLayoutSpec,
  limits: GalleryLimits,
): BiggestGallery {
  const { bar, gallery } = spec;
  const { holes } = layRail(spec);
  const others = holes.filter(({ feature }) => feature !== "gallery" && feature !== "plug")
    .map((hole): Neighbouring => ({ other: cuttingOf(hole, []), above: abovePilot(hole) }));
  const stopAt = (bore_m: number): string | undefined => {
    const hole = layGallery(bar, { ...gallery, bore_m });
    return narrowEnd(gallery, bore_m) ??
      tooNear(bar, drifted(hole, limits.drift), others, limits);
  };
  const least = stopAt(LEAST_BORE_m);
  if (least !== undefined) return { heldBy: least };
  let low = LEAST_BORE_m;
  let high = Math.max(bar.height_m, bar.width_m);
  // As wide as the bar it breaks out of a face, unless something stops it before.
  let heldBy = stopAt(high) ?? "opposite";
  while (high - low > TOLERANCE_m) {
    const middle = (low + high) / 2;
    const stop = stopAt(middle);
    if (stop === undefined) {
      low = middle;
    } else {
      high = middle;
      heldBy = stop;
    }
  }
  return { bore_m: low, heldBy };
}

/** A hole beside the gallery, and what of it lies above its pilot. */
interface Neighbouring {
  readonly other: Cutting;
  readonly above: readonly Frustum[];
}

/** The end whose plug has no hold in a gallery this wide, if any. */
function narrowEnd({ ends }: GallerySpec, bore_m: number): string | undefined {
  if (ends.datum !== undefined && bore_m > passage(ends.datum)) return "plug-datum";
  if (ends.far !== undefined && bore_m > passage(ends.far)) return "plug-far";
  return undefined;
}

function passage(end: GalleryEnd): number {
  switch (end.kind) {
    case "thread":
      return end.drill_m;
    case "ring":
      return end.bore_m;
    case "cap":
      return end.recess_m;
  }
}

/** What a gallery comes too near to, if anything. */
function tooNear(
  bar: Bar,
  gallery: Hole,
  others: readonly Neighbouring[],
  limits: GalleryLimits,
): string | undefined {
  const { face, distance_m } = wallOf(gallery, bar);
  if (distance_m < limits.wall_m) return face;
  const cutting = cuttingOf(gallery, []);
  return others.find(({ other, above }) => {
    if (mayMeet(gallery, other.hole)) return nearerThan(above, cutting.pieces, limits.above_m);
    return nearerThan(cutting.pieces, other.pieces, wantedBetween(cutting, other, limits));
  })?.other.hole.id;
}
