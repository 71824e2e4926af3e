/** Edges of a hole: its walls as lines, its steps as circles, where it leaves the bar and meets others. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import { type Body, type Bored, isBored, isInBar, radiusAt } from "./body.ts";
import { round, straight, through, type Trace } from "./trace.ts";
import { acrossOf, alignment, along, cross, unit } from "./vector.ts";

/** Where two stretches of a hole meet at an edge, or where it ends flat: depth and radius. */
export function stepsOf({ steps }: Bored): [depth: number, radius: number][] {
  const found: [number, number][] = [];
  steps.forEach((step, i) => {
    const before = steps[i - 1];
    const radii = new Set([step.fromRadius, ...(before ? [before.toRadius] : [])]);
    const bends = before === undefined || radii.size > 1 || slope(before) !== slope(step);
    if (bends) { for (const radius of radii) if (radius > 0) found.push([step.from, radius]); }
  });
  const last = steps.at(-1);
  if (last && last.toRadius > 0) found.push([last.to, last.toRadius]);
  return found;
}

function slope({ from, to, fromRadius, toRadius }: Bored["steps"][number]): number {
  return Math.round(1e6 * (toRadius - fromRadius) / (to - from));
}

/** The edge at a depth, as a circle. */
export function stepCircle({ entry, into }: Bored, depth: number, radius: number): Trace {
  return round(along(entry, into, depth), into, radius);
}

/** The wall on both sides of the axis, seen along `toward`; the first stretch goes on out of the bar. */
export function wallLines(bored: Bored, toward: Vec3): Trace[] {
  const { entry, into, steps } = bored;
  const side = unit(cross(into, toward));
  const place = (depth: number, radius: number) => along(along(entry, into, depth), side, radius);
  return steps.flatMap((step, i) =>
    [1, -1].map((hand) => {
      const begin = i === 0 ? step.from - outwards(bored) : step.from;
      const radius = i === 0 ? radiusAt(bored, begin) : step.fromRadius;
      // A cone at the mouth has a bend there, so its part outside is left out.
      const from = step.fromRadius === step.toRadius
        ? place(begin, hand * radius)
        : place(step.from, hand * step.fromRadius);
      return straight(from, place(step.to, hand * step.toRadius));
    })
  );
}

/** How far out the mouth of a tilted hole or one in a round bar can reach. */
function outwards({ widest }: Bored): number {
  return 2 * widest;
}

/** An edge as seen square to the axis: its farther half, which is the line across the hole on paper. */
export function stepLine(
  { entry, into }: Bored,
  toward: Vec3,
  depth: number,
  radius: number,
): Trace {
  const side = unit(cross(into, toward));
  const middle = along(entry, into, depth);
  return {
    length: Math.PI * radius,
    at: (share) => {
      const angle = Math.PI * share;
      const aside = along(middle, side, -radius * Math.cos(angle));
      return along(aside, toward, -radius * Math.sin(angle));
    },
  };
}

/** Round a hole, so that the points on a rim lie close enough to be joined by lines. */
const AROUND = 96;

/** A curve on the hole's wall: for each direction from the axis the depth at which it runs. */
function onWall(
  bored: Bored,
  depthAt: (wall: (depth: number) => Vec3) => number | undefined,
): Trace[] {
  const [right, up] = acrossOf(bored.into);
  const curves: Vec3[][] = [[]];
  for (let i = 0; i <= AROUND; i++) {
    const angle = 2 * Math.PI * i / AROUND;
    const out = along(along([0, 0, 0], right, Math.cos(angle)), up, Math.sin(angle));
    const wall = (depth: number): Vec3 =>
      along(along(bored.entry, bored.into, depth), out, radiusAt(bored, depth));
    const depth = depthAt(wall);
    if (depth === undefined) curves.push([]);
    else curves.at(-1)?.push(wall(depth));
  }
  return curves.filter((points) => points.length > 2).map(through);
}

/** Where a wall passes into or out of something, between a depth where it is and one where it isn't. */
function crossing(is: (depth: number) => boolean, yes: number, no: number): number {
  for (let i = 0; i < 30; i++) {
    const middle = (yes + no) / 2;
    if (is(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

/** The edge of a hole's mouth where it is no plain circle: tilted, or in a round bar. */
export function mouthRim(body: Body, bored: Bored): Trace[] {
  const { widest } = bored;
  return onWall(bored, (wall) => {
    const inside = (depth: number) => isInBar(body, wall(depth));
    const [out, deep] = [-2 * widest, 2 * widest];
    return !inside(out) && inside(deep) ? crossing(inside, deep, out) : undefined;
  });
}

/** The edge where a hole comes out of the far side of the bar. */
export function exitRim(body: Body, bored: Bored): Trace[] {
  const { depth, widest } = bored;
  if (isInBar(body, along(bored.entry, bored.into, depth + 1e-3))) return [];
  return onWall(bored, (wall) => {
    const inside = (at: number) => isInBar(body, wall(at));
    // A hole that ends at the far face exactly has its edge there.
    const end = depth + 2 * widest;
    const within = Math.max(0, depth - 2 * widest);
    return inside(within) && !inside(end) ? crossing(inside, within, end) : undefined;
  });
}

/** Where a hole's wall enters another that it opens into. */
export function meeting(body: Body, bored: Bored, into: Bored): Trace[] {
  const STEPS = 48;
  return onWall(bored, (wall) => {
    const inside = (depth: number) => isBored(into, wall(depth));
    let before = 0;
    for (let i = 1; i <= STEPS; i++) {
      const depth = bored.depth * i / STEPS - 1e-3;
      if (inside(depth)) {
        return inside(before) ? undefined : crossing((at) => !inside(at), before, depth);
      }
      before = depth;
    }
    return undefined;
  }).filter((trace) => isInBar(body, trace.at(0.5)));
}

/** Whether a mouth is a circle on a flat face. */
export function isSquareMouth(body: Body, { entry, into }: Bored): boolean {
  return (!body.round || into[1] === 0 && into[2] === 0) &&
    alignment(into, skinNormal(body, entry)) === -1;
}

/** The bar's outward normal at a place on its skin. */
export function skinNormal(body: Body, [x, y, z]: Vec3): Vec3 {
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-4;
  if (near(x, 0)) return [-1, 0, 0];
  if (near(x, body.length)) return [1, 0, 0];
  if (body.round) return unit([0, y, z - body.height / 2]);
  if (near(z, 0)) return [0, 0, -1];
  if (near(z, body.height)) return [0, 0, 1];
  return [0, Math.sign(y), 0];
}
