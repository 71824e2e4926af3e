/** Arithmetic of places and directions in space. */
import type { Vec3 } from "@/lib/layout/mod.ts";

/** `a + k b`. */
export function along(a: Vec3, b: Vec3, k: number): Vec3 {
  return [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
}

export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function unit(a: Vec3): Vec3 {
  const long = Math.hypot(...a);
  return [a[0] / long, a[1] / long, a[2] / long];
}

/** Two directions square to an axis and to each other. */
export function acrossOf(axis: Vec3): readonly [Vec3, Vec3] {
  const aside: Vec3 = Math.abs(axis[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const first = unit(cross(axis, aside));
  return [first, cross(axis, first)];
}

/** Whether two directions are the same or opposite: 1, -1, or 0 where they are neither. */
export function alignment(a: Vec3, b: Vec3): -1 | 0 | 1 {
  const cosine = dot(a, b);
  return cosine > 0.99999 ? 1 : cosine < -0.99999 ? -1 : 0;
}
