/** Where a hole's axis meets the face that it is drilled from. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Bar, Face, Hole, Vec3 } from "./model.ts";
import type { Place } from "./spec.ts";

/** The face on the other side of each. */
export const BEHIND: Readonly<Record<Face, Face>> = {
  injectors: "opposite",
  opposite: "injectors",
  front: "back",
  back: "front",
  "datum-end": "far-end",
  "far-end": "datum-end",
};

/** The direction out of the bar through each face. */
export const OUTWARD: Readonly<Record<Face, Vec3>> = {
  injectors: [0, 0, -1],
  opposite: [0, 0, 1],
  front: [0, -1, 0],
  back: [0, 1, 0],
  "datum-end": [-1, 0, 0],
  "far-end": [1, 0, 0],
};

/** True for the two ends of the bar. */
export function isEnd(face: Face): boolean {
  return face === "datum-end" || face === "far-end";
}

/** Throws unless a place is on the bar, the edge left out. */
function requireOn(field: string, value: number, from: number, to: number): void {
  if (value > from && value < to) return;
  throw new InputError(
    "place of a hole",
    field,
    `must lie on the bar, > ${from} and < ${to} m`,
    value,
  );
}

/**
 * Finds where a hole begins: the point of its axis on the face, and the direction into the bar
 * square to that face. On a round bar the point lies on the surface.
 *
 * @param bar The bar.
 * @param face The face.
 * @param place Where on it.
 * @returns Entry and direction.
 * @throws {InputError} When the place isn't on the bar.
 */
export function entryOn(bar: Bar, face: Face, place: Place): Pick<Hole, "entry" | "into"> {
  const { at_m, across_m } = place;
  const [ox, oy, oz] = OUTWARD[face];
  const into: Vec3 = [0 - ox, 0 - oy, 0 - oz];
  const middle = bar.height_m / 2;
  if (isEnd(face)) {
    const half = bar.shape === "round" ? chord(bar, across_m - middle) : bar.width_m / 2;
    requireOn("across_m", across_m, 0, bar.height_m);
    requireOn("at_m", at_m, -half, half);
    return { entry: [face === "datum-end" ? 0 : bar.length_m, at_m, across_m], into };
  }
  requireOn("at_m", at_m, 0, bar.length_m);
  if (oy !== 0) {
    requireOn("across_m", across_m, 0, bar.height_m);
    const half = bar.shape === "round" ? chord(bar, across_m - middle) : bar.width_m / 2;
    return { entry: [at_m, oy * half, across_m], into };
  }
  requireOn("across_m", across_m, -bar.width_m / 2, bar.width_m / 2);
  const half = bar.shape === "round" ? chord(bar, across_m) : middle;
  return { entry: [at_m, across_m, middle + oz * half], into };
}

/** Half the chord of a round bar at a distance from its middle [m]. */
export function chord(bar: Bar, from_m: number): number {
  const radius_m = bar.height_m / 2;
  return Math.sqrt(Math.max(0, radius_m * radius_m - from_m * from_m));
}
