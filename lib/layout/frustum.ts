/** The convex pieces that a hole is made of. */
import type { Hole, Vec3 } from "./model.ts";
import { along, dot } from "./vector.ts";

/** A cylinder or a cone cut square at both ends, in space. */
export interface Frustum {
  /** Middle of its first end. */
  readonly from: Vec3;
  /** Direction of its axis, of length one. */
  readonly axis: Vec3;
  /** Length [m]. */
  readonly length_m: number;
  /** Radius at the first end [m]. */
  readonly fromRadius_m: number;
  /** Radius at the other end [m]. */
  readonly toRadius_m: number;
}

/**
 * Makes a hole's pieces: its stretches, and what its thread takes out beyond them. Where a tap
 * runs out it cuts less than full thread, which is left out.
 *
 * @param hole The hole.
 * @returns Its pieces; stretches without length are left out.
 */
export function frustaOf(hole: Hole): readonly Frustum[] {
  const { entry, into: axis, profile, thread } = hole;
  const piece = (from_m: number, to_m: number, first_m: number, last_m: number): Frustum => ({
    from: along(entry, axis, from_m),
    axis,
    length_m: to_m - from_m,
    fromRadius_m: first_m / 2,
    toRadius_m: last_m / 2,
  });
  const pieces = profile.map((s) => piece(s.from_m, s.to_m, s.fromDiameter_m, s.toDiameter_m));
  if (thread !== undefined) {
    pieces.push(piece(thread.from_m, thread.to_m, thread.major_m, thread.major_m));
  }
  return pieces.filter(({ length_m }) => length_m > 0);
}

/** The larger of a piece's radii [m]. */
export function widest(piece: Frustum): number {
  return Math.max(piece.fromRadius_m, piece.toRadius_m);
}

/** The middle of a piece's other end. */
export function endOf(piece: Frustum): Vec3 {
  return along(piece.from, piece.axis, piece.length_m);
}

/**
 * Finds how far a piece reaches in a direction.
 *
 * @param piece The piece.
 * @param direction The direction, of any length.
 * @returns The farthest point's scalar product with the direction.
 */
export function reach(piece: Frustum, direction: Vec3): number {
  const lengthwise = dot(direction, piece.axis);
  const sideways = Math.sqrt(Math.max(0, dot(direction, direction) - lengthwise * lengthwise));
  return dot(piece.from, direction) + Math.max(
    piece.fromRadius_m * sideways,
    piece.length_m * lengthwise + piece.toRadius_m * sideways,
  );
}

/**
 * Finds a piece's farthest point in a direction.
 *
 * @param piece The piece.
 * @param direction The direction, of any length.
 * @returns The point.
 */
export function farthest(piece: Frustum, direction: Vec3): Vec3 {
  const { axis, length_m, fromRadius_m, toRadius_m } = piece;
  const lengthwise = dot(direction, axis);
  const side = along(direction, axis, -lengthwise);
  const sideways = Math.sqrt(dot(side, side));
  const atEnd = length_m * lengthwise + toRadius_m * sideways > fromRadius_m * sideways;
  const middle = atEnd ? endOf(piece) : piece.from;
  const radius_m = atEnd ? toRadius_m : fromRadius_m;
  return sideways > 0 ? along(middle, side, radius_m / sideways) : middle;
}
