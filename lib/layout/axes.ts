/** The distance of two pieces' axes. */
import type { Frustum } from "./frustum.ts";
import { along, dot, minus, norm } from "./vector.ts";

/** How near two axes come. */
export interface AxisGap {
  /** Least distance of the axes, no farther than the pieces reach [m]. */
  readonly gap_m: number;
  /** True when both feet of the common perpendicular lie on the pieces. */
  readonly square: boolean;
}

/** Axes whose directions differ by less than this [rad] are parallel. */
const PARALLEL_rad = 1e-12;

/** Tells whether two pieces' axes are parallel. */
export function areParallel(a: Frustum, b: Frustum): boolean {
  const cosine = dot(a.axis, b.axis);
  return norm(minus(b.axis, along([0, 0, 0], a.axis, cosine))) < PARALLEL_rad;
}

/**
 * Finds the least distance between the axes of two pieces, no farther than the pieces reach.
 *
 * @param a One piece.
 * @param b The other.
 * @returns The distance, and whether it is the common perpendicular's.
 */
export function axisGap(a: Frustum, b: Frustum): AxisGap {
  const start = minus(a.from, b.from);
  const cosine = dot(a.axis, b.axis);
  const alongA = dot(a.axis, start);
  const alongB = dot(b.axis, start);
  const sine2 = 1 - cosine * cosine;
  const free = areParallel(a, b) ? 0 : (cosine * alongB - alongA) / sine2;
  const first = held(free, a.length_m);
  const freeB = cosine * first + alongB;
  const onB = held(freeB, b.length_m);
  // Where B was cut short, the foot on A moves; on a segment that is the whole answer.
  const onA = onB === freeB ? first : held(cosine * onB - alongA, a.length_m);
  const gap_m = norm(minus(along(a.from, a.axis, onA), along(b.from, b.axis, onB)));
  return { gap_m, square: onB === freeB && first === free };
}

function held(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}
