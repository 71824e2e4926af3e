/** Curves in space, and the parts of them that are worth drawing. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import { acrossOf, along } from "./vector.ts";

/** A curve in space. */
export interface Trace {
  /** About how long it is [mm]. */
  readonly length: number;
  /** The place at a share of its way [0 to 1]. */
  readonly at: (share: number) => Vec3;
  /** If it is a circle: its centre and radius. */
  readonly circle?: { readonly centre: Vec3; readonly radius: number };
  /** If it is no line and no circle. */
  readonly bent?: boolean;
}

/** From a share of a curve's way to another; beyond 1 it goes on at the begin. */
export type Part = readonly [from: number, to: number];

/** The straight way between two places. */
export function straight(from: Vec3, to: Vec3): Trace {
  const way: Vec3 = along(to, from, -1);
  return { length: Math.hypot(...way), at: (share) => along(from, way, share) };
}

/** A circle about an axis. */
export function round(centre: Vec3, axis: Vec3, radius: number): Trace {
  const [right, up] = acrossOf(axis);
  return {
    length: 2 * Math.PI * radius,
    circle: { centre, radius },
    at: (share) => {
      const angle = 2 * Math.PI * share;
      return along(along(centre, right, radius * Math.cos(angle)), up, radius * Math.sin(angle));
    },
  };
}

/** A curve through points that follow each other closely. */
export function through(points: readonly Vec3[]): Trace {
  const last = points.length - 1;
  let length = 0;
  for (let i = 0; i < last; i++) {
    length += Math.hypot(...along(points[i + 1] as Vec3, points[i] as Vec3, -1));
  }
  return {
    length,
    bent: true,
    at: (share) => {
      const i = Math.min(last - 1, Math.max(0, Math.floor(share * last)));
      const [from, to] = [points[i] as Vec3, points[i + 1] as Vec3];
      return along(from, along(to, from, -1), share * last - i);
    },
  };
}

/** No gap in a line longer than this is missed [mm]. */
const SAMPLE = 0.7;

/**
 * The parts of a curve where something holds. Their ends are found by halving, so they lie within
 * a millionth of the curve's length. A circle's part may go on over its begin.
 */
export function partsWhere(trace: Trace, holds: (place: Vec3) => boolean): Part[] {
  const samples = Math.min(2000, Math.max(24, Math.ceil(trace.length / SAMPLE)));
  const parts: Part[] = [];
  let since: number | undefined;
  for (let i = 0; i < samples; i++) {
    // Samples avoid the ends, which often lie exactly on another hole's wall.
    const share = (i + 0.5) / samples;
    const before = i === 0 ? 0 : share - 1 / samples;
    const here = holds(trace.at(share));
    if (here && since === undefined) {
      since = i === 0 ? edge(trace, holds, share, 0) : edge(trace, holds, share, before);
    }
    if (!here && since !== undefined) {
      parts.push([since, edge(trace, holds, before, share)]);
      since = undefined;
    }
  }
  if (since !== undefined) parts.push([since, edge(trace, holds, 1 - 0.5 / samples, 1)]);
  return trace.circle ? joined(parts) : parts;
}

/** The share nearest to `no` to which it holds from `yes` on. */
function edge(
  trace: Trace,
  holds: (place: Vec3) => boolean,
  yes: number,
  no: number,
): number {
  if (holds(trace.at(no))) return no;
  for (let i = 0; i < 24; i++) {
    const middle = (yes + no) / 2;
    if (holds(trace.at(middle))) yes = middle;
    else no = middle;
  }
  // An end that is on a wall by rounding only is that end.
  return Math.abs(yes - Math.round(yes)) < 1e-6 ? Math.round(yes) : yes;
}

/** A circle has no begin: its last part goes on in its first. */
function joined(parts: Part[]): Part[] {
  const [first, last] = [parts[0], parts.at(-1)];
  if (first === undefined || last === undefined || parts.length < 2) return parts;
  if (first[0] > 0 || last[1] < 1) return parts;
  return [...parts.slice(1, -1), [last[0], 1 + first[1]]];
}
