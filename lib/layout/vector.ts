/** Sums and products of vectors. */
import type { Vec3 } from "./model.ts";

/** a + b. */
export function plus(a: Vec3, b: Vec3): Vec3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** a - b. */
export function minus(a: Vec3, b: Vec3): Vec3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** a + t d: how far along a line. */
export function along(a: Vec3, d: Vec3, t: number): Vec3 {
  return [a[0] + t * d[0], a[1] + t * d[1], a[2] + t * d[2]];
}

/** a times a number. */
export function scaled(a: Vec3, by: number): Vec3 {
  return [a[0] * by, a[1] * by, a[2] * by];
}

/** Scalar product. */
export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Vector product. */
export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Length. */
export function norm(a: Vec3): number {
  return Math.sqrt(dot(a, a));
}

/** The same direction with length one; what has no direction gives that along x. */
export function unit(a: Vec3): Vec3 {
  const length = norm(a);
  return length > 0 ? scaled(a, 1 / length) : [1, 0, 0];
}

/** Two directions square to one and to each other, all of length one. */
export function squareTo(axis: Vec3): readonly [Vec3, Vec3] {
  const least: Vec3 = Math.abs(axis[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0];
  const first = unit(cross(axis, least));
  return [first, cross(axis, first)];
}
