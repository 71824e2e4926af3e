/**
 * Least distances by sampling surfaces in space, knowing nothing of how the layout room finds
 * them: points on the surface of one solid, their distance from the other, finer and finer
 * around the nearest.
 *
 * @module
 */
import type { Bar, Face, Hole, Vec3 } from "@/lib/layout/mod.ts";

/** A stretch of a hole as a solid of revolution, sized from its own profile. */
export interface Solid {
  readonly from: Vec3;
  readonly axis: Vec3;
  readonly length: number;
  readonly r0: number;
  readonly r1: number;
}

const add = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + t * b[0],
  a[1] + t * b[1],
  a[2] + t * b[2],
];
const inner = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The solids of a hole: its stretches and its thread's major diameter. */
export function solidsOf({ entry, into, profile, thread }: Hole): Solid[] {
  const spans = profile.map((s) => [s.from_m, s.to_m, s.fromDiameter_m, s.toDiameter_m] as const);
  const cut = thread === undefined
    ? spans
    : [...spans, [thread.from_m, thread.to_m, thread.major_m, thread.major_m] as const];
  return cut.map(([from, to, d0, d1]) => ({
    from: add(entry, into, from),
    axis: into,
    length: to - from,
    r0: d0 / 2,
    r1: d1 / 2,
  }));
}

/** Distance of a point from a solid; nought inside. */
export function fromSolid(point: Vec3, { from, axis, length, r0, r1 }: Solid): number {
  const start = add(point, from, -1);
  const t = inner(start, axis);
  const rho = Math.sqrt(Math.max(0, inner(start, start) - t * t));
  const radius = r0 + (r1 - r0) * t / length;
  if (t >= 0 && t <= length && rho <= radius) return 0;
  const edge = (t0: number, p0: number, t1: number, p1: number) => {
    const [dt, dp] = [t1 - t0, p1 - p0];
    const share = ((t - t0) * dt + (rho - p0) * dp) / (dt * dt + dp * dp || 1);
    const held = Math.min(1, Math.max(0, share));
    return Math.hypot(t - t0 - held * dt, rho - p0 - held * dp);
  };
  return Math.min(edge(0, 0, 0, r0), edge(0, r0, length, r1), edge(length, 0, length, r1));
}

/** A point of a solid's surface: around its outline by thirds, and around its axis. */
function onSurface({ from, axis, length, r0, r1 }: Solid, outline: number, turn: number): Vec3 {
  const u = Math.min(3, Math.max(0, outline));
  const [t, rho] = u < 1
    ? [0, r0 * u]
    : u < 2
    ? [length * (u - 1), r0 + (r1 - r0) * (u - 1)]
    : [length, r1 * (3 - u)];
  // Any two directions square to the axis will do.
  const [x, y, z] = axis;
  const flat = Math.hypot(x, z);
  const e1: Vec3 = flat > 0.1 ? [z / flat, 0, -x / flat] : [1, 0, 0];
  const e2: Vec3 = [
    y * e1[2] - z * e1[1],
    z * e1[0] - x * e1[2],
    x * e1[1] - y * e1[0],
  ];
  return add(add(add(from, axis, t), e1, rho * Math.cos(turn)), e2, rho * Math.sin(turn));
}

const AROUND = 24;
const ALONG = 30;

interface Sample {
  readonly solid: Solid;
  readonly outline: number;
  readonly turn: number;
  readonly value: number;
}

/** Points spread over the surface of solids. */
export function cloud(solids: readonly Solid[]): { solid: Solid; outline: number; turn: number }[] {
  return solids.flatMap((solid) =>
    Array.from({ length: (ALONG + 1) * AROUND }, (_, i) => ({
      solid,
      outline: 3 * Math.floor(i / AROUND) / ALONG,
      turn: 2 * Math.PI * (i % AROUND) / AROUND,
    }))
  );
}

/** The point of a sample. */
export function pointOf(sample: { solid: Solid; outline: number; turn: number }): Vec3 {
  return onSurface(sample.solid, sample.outline, sample.turn);
}

/** The least value of a function over the surface of solids. */
export function leastOver(solids: readonly Solid[], f: (point: Vec3) => number): number {
  const rough = cloud(solids).map((sample): Sample => ({ ...sample, value: f(pointOf(sample)) }))
    .sort((a, b) => a.value - b.value);
  const starts = rough.filter((_, i) => i < 12 && i % 2 === 0);
  return Math.min(...starts.map((start) => refined(start, f)));
}

function refined(start: Sample, f: (point: Vec3) => number): number {
  let best = start;
  for (let span = 1; span > 1e-7; span *= 0.6) {
    const near: Sample = best;
    for (let i = -3; i <= 3; i++) {
      for (let k = -3; k <= 3; k++) {
        const outline = near.outline + i * span * 0.05;
        const turn = near.turn + k * span * 0.12;
        const value = f(onSurface(near.solid, outline, turn));
        if (value < best.value) best = { solid: near.solid, outline, turn, value };
      }
    }
  }
  return best.value;
}

/** The least distance between two holes; nought when they meet. */
export function sampledDistance(a: Hole, b: Hole): number {
  const other = solidsOf(b);
  return leastOver(
    solidsOf(a),
    (point) => Math.min(...other.map((solid) => fromSolid(point, solid))),
  );
}

/** The least way out of the bar from any point of a hole, other than by its entry and exit. */
export function sampledWall(hole: Hole, bar: Bar): number {
  const open = new Set<Face>([hole.face, ...(hole.exit === undefined ? [] : [hole.exit])]);
  const radius = bar.height_m / 2;
  const fromEnd = hole.face === "datum-end" || hole.face === "far-end";
  const depthOfMiddle = nearestToAxis(hole, radius);
  const out = (point: Vec3): number => {
    const [x, y, z] = point;
    const ends = [
      open.has("datum-end") ? Infinity : x,
      open.has("far-end") ? Infinity : bar.length_m - x,
    ];
    if (bar.shape === "round") {
      const depth = inner(add(point, hole.entry, -1), hole.into);
      // What comes out again on the other side opens there as it does at its entry.
      const beyond = hole.exit === undefined ? Infinity : 1e-9;
      const counts = fromEnd ||
        (depth > depthOfMiddle - 1e-9 && depth < depthOfMiddle + beyond);
      const side = counts ? radius - Math.hypot(y, z - radius) : Infinity;
      return Math.min(...ends, side);
    }
    return Math.min(
      ...ends,
      open.has("injectors") ? Infinity : z,
      open.has("opposite") ? Infinity : bar.height_m - z,
      open.has("front") ? Infinity : y + bar.width_m / 2,
      open.has("back") ? Infinity : bar.width_m / 2 - y,
    );
  };
  return leastOver(sidedSolids(hole, bar, depthOfMiddle), out);
}

/** Where a hole's axis is nearest to that of a round bar. */
function nearestToAxis({ entry, into }: Hole, radius: number): number {
  const [, y, z] = into;
  const square = y * y + z * z;
  return square < 1e-9 ? 0 : -(entry[1] * y + (entry[2] - radius) * z) / square;
}

/** In a round bar, only what lies at or beyond the middle counts for a hole from the side. */
function sidedSolids(hole: Hole, bar: Bar, from: number): Solid[] {
  const solids = solidsOf(hole);
  if (bar.shape === "rectangular" || hole.face === "datum-end" || hole.face === "far-end") {
    return solids;
  }
  return solids.flatMap((solid): Solid[] => {
    const begins = inner(add(solid.from, hole.entry, -1), hole.into);
    const cut = from - begins;
    if (cut <= 0 || cut >= solid.length) return [solid];
    const middle = solid.r0 + (solid.r1 - solid.r0) * cut / solid.length;
    const rest = {
      ...solid,
      from: add(solid.from, solid.axis, cut),
      length: solid.length - cut,
      r0: middle,
    };
    return [{ ...solid, length: cut, r1: middle }, rest];
  });
}
