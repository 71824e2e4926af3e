/** What is left between a hole and the outside of the bar. */
import { chord, isEnd, OUTWARD } from "./entry.ts";
import { frustaOf, type Frustum, reach } from "./frustum.ts";
import type { Bar, Face, Hole, Layout, Vec3 } from "./model.ts";
import { largestOverTurn } from "./over_a_turn.ts";
import { along, dot, norm, squareTo } from "./vector.ts";

/** What is left between a hole and a face. */
export interface Wall {
  /** The face that is nearest; of a round bar the side where the wall is least. */
  readonly face: Face;
  /** The least distance [m]; nought or below when the hole breaks out. */
  readonly distance_m: number;
}

/** A wall that is thinner than wanted. */
export interface ThinWall extends Wall {
  /** The hole's id. */
  readonly hole: string;
  /** What is wanted at least [m]. */
  readonly wanted_m: number;
}

/**
 * Finds the least wall between a hole and the outside of the bar, other than through its own
 * entry, and its exit if it is meant to have one. A thread counts by its major diameter.
 *
 * A hole drilled into the side of a round bar opens along its mouth however it is placed, so
 * there the wall counts from where its axis is nearest to the bar's on.
 *
 * @param hole The hole.
 * @param bar The bar.
 * @returns The face where the wall is least, and the wall [m].
 *
 * @example A gallery 1 mm off the middle of a bar of 25 mm
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * const wall = wallOf({
 *   id: "gallery",
 *   title: "Gallery",
 *   feature: "gallery",
 *   face: "datum-end",
 *   exit: "far-end",
 *   entry: [0, 0, 0.0135],
 *   into: [1, 0, 0],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.4, fromDiameter_m: 0.0127, toDiameter_m: 0.0127 },
 *   ],
 *   opensInto: [],
 * }, { shape: "rectangular", length_m: 0.4, height_m: 0.025, width_m: 0.025 });
 *
 * assertEquals(wall.face, "opposite");
 * assertAlmostEquals(wall.distance_m, 0.00515, 1e-12);
 * ```
 */
export function wallOf(hole: Hole, bar: Bar): Wall {
  return wallsOf(hole, bar).reduce((least, wall) =>
    wall.distance_m < least.distance_m ? wall : least
  );
}

/**
 * Lists the walls of a layout that are thinner than wanted.
 *
 * @param layout The layout.
 * @param wanted_m The least wall wanted [m].
 * @returns Them, in the order of the holes.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const bar = { shape: "round", length_m: 0.4, height_m: 0.02, width_m: 0.02 } as const;
 * const gallery: Hole = {
 *   id: "gallery",
 *   title: "Gallery",
 *   feature: "gallery",
 *   face: "datum-end",
 *   exit: "far-end",
 *   entry: [0, 0, 0.01],
 *   into: [1, 0, 0],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.4, fromDiameter_m: 0.018, toDiameter_m: 0.018 },
 *   ],
 *   opensInto: [],
 * };
 *
 * assertEquals(thinWalls({ bar, holes: [gallery] }, 0.002).map(({ hole }) => hole), ["gallery"]);
 * assertEquals(thinWalls({ bar, holes: [gallery] }, 0.0009), []);
 * ```
 */
export function thinWalls(layout: Layout, wanted_m: number): readonly ThinWall[] {
  return layout.holes
    .map((hole) => ({ hole: hole.id, ...wallOf(hole, layout.bar), wanted_m }))
    .filter(({ distance_m }) => distance_m < wanted_m);
}

function wallsOf(hole: Hole, bar: Bar): readonly Wall[] {
  const pieces = frustaOf(hole);
  const flat = (Object.keys(OUTWARD) as Face[])
    .filter((face) => face !== hole.face && face !== hole.exit)
    .filter((face) => bar.shape === "rectangular" || isEnd(face))
    .map((face) => ({ face, distance_m: toFace(pieces, bar, face) }));
  return bar.shape === "round" ? [...flat, ...roundWall(hole, pieces, bar)] : flat;
}

function toFace(pieces: readonly Frustum[], bar: Bar, face: Face): number {
  const outward = OUTWARD[face];
  const low: Vec3 = [0, -bar.width_m / 2, 0];
  const high: Vec3 = [bar.length_m, bar.width_m / 2, bar.height_m];
  const face_m = Math.max(dot(outward, low), dot(outward, high));
  return face_m - Math.max(...pieces.map((piece) => reach(piece, outward)));
}

/** The wall to the curved surface: a convex piece comes nearest to it with a rim. */
function roundWall(hole: Hole, pieces: readonly Frustum[], bar: Bar): readonly Wall[] {
  const radius_m = bar.height_m / 2;
  const rims = isEnd(hole.face) ? pieces.flatMap(rimsOf) : rimsBeyondMiddle(hole, pieces, radius_m);
  return rims.map(({ middle: [, y, z], axis, radius_m: rim_m }) => {
    const [[, ay, az], [, by, bz]] = squareTo(axis);
    const outAt = (turn_rad: number): Vec3 => {
      const [c, s] = [rim_m * Math.cos(turn_rad), rim_m * Math.sin(turn_rad)];
      return [0, y + c * ay + s * by, z + c * az + s * bz - radius_m];
    };
    const { value, turn_rad } = largestOverTurn((turn) => norm(outAt(turn)));
    return { face: sideOf(outAt(turn_rad)), distance_m: radius_m - value };
  });
}

interface Rim {
  readonly middle: Vec3;
  readonly axis: Vec3;
  readonly radius_m: number;
}

function rimAt(piece: Frustum, t_m: number): Rim {
  const { axis, from, fromRadius_m, length_m, toRadius_m } = piece;
  const radius_m = fromRadius_m + (toRadius_m - fromRadius_m) * t_m / length_m;
  return { middle: along(from, axis, t_m), axis, radius_m };
}

function rimsOf(piece: Frustum): readonly Rim[] {
  return [rimAt(piece, 0), rimAt(piece, piece.length_m)];
}

/** Rims from where a hole's axis is nearest to the bar's; of a hole meant to come out, that one. */
function rimsBeyondMiddle(
  hole: Hole,
  pieces: readonly Frustum[],
  radius_m: number,
): readonly Rim[] {
  const [, y, z] = hole.into;
  const toMiddle: Vec3 = [0, -hole.entry[1], radius_m - hole.entry[2]];
  const nearest_m = dot(toMiddle, hole.into) / (y * y + z * z);
  return pieces.flatMap((piece) => {
    const begins_m = dot(piece.axis, along(piece.from, hole.entry, -1));
    const from_m = nearest_m - begins_m;
    if (from_m > piece.length_m) return [];
    const first = rimAt(piece, Math.max(0, from_m));
    return hole.exit === undefined ? [first, rimAt(piece, piece.length_m)] : [first];
  });
}

function sideOf(out: Vec3): Face {
  const sides: readonly Face[] = ["injectors", "opposite", "front", "back"];
  return sides.reduce((best, face) =>
    dot(OUTWARD[face], out) > dot(OUTWARD[best], out) ? face : best
  );
}

/**
 * Finds how much lower than its middle the mouth of a hole lies on a round bar [m]; nought on
 * a flat face. What seals, or a thread, begins below that.
 *
 * @param hole The hole.
 * @param bar The bar.
 * @returns The dip [m]; undefined when the mouth is wider than the bar.
 *
 * @example A mouth of 15 mm on a bar of 30 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const dip_m = mouthDip({
 *   id: "pocket-1",
 *   title: "Pocket 1",
 *   feature: "pocket",
 *   face: "injectors",
 *   entry: [0.05, 0, 0],
 *   into: [0, 0, 1],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.01, fromDiameter_m: 0.015, toDiameter_m: 0.015 },
 *   ],
 *   opensInto: [],
 * }, { shape: "round", length_m: 0.1, height_m: 0.03, width_m: 0.03 });
 *
 * assertAlmostEquals(dip_m ?? 0, 0.015 - Math.sqrt(0.015 ** 2 - 0.0075 ** 2), 1e-9);
 * ```
 */
export function mouthDip(hole: Hole, bar: Bar): number | undefined {
  if (bar.shape === "rectangular" || isEnd(hole.face)) return 0;
  const [, y, z] = hole.entry;
  const aside_m = Math.abs(OUTWARD[hole.face][1] === 0 ? y : z - bar.height_m / 2);
  const edge_m = aside_m + (hole.profile[0]?.fromDiameter_m ?? 0) / 2;
  return edge_m > bar.height_m / 2 ? undefined : chord(bar, aside_m) - chord(bar, edge_m);
}
