/** The rail cut by a plane: edges of the cut, what is seen behind it, and the metal to hatch. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import { type Body, type Bored, isWall, radiusAt } from "./body.ts";
import { stepCircle, stepLine, stepsOf, wallLines } from "./edges.ts";
import { project, projected, type Projection } from "./projection.ts";
import type { Area, Layer, LineType, Mark, Point } from "./shapes.ts";
import { partsWhere, round, through, type Trace } from "./trace.ts";
import { acrossOf, alignment, along, cross, dot, unit } from "./vector.ts";
import { meetings, threadLines, threeQuarters } from "./view_marks.ts";

/** A plane, and how it lies on paper. */
export interface Plane extends Projection {
  /** Any place in it [mm]. */
  readonly through: Vec3;
}

/** Between hatching lines on paper [mm]. */
const HATCHING_mm = 2.2;

/** Draws the cut: the area to hatch first, edges over it. */
export function sectionMarks(body: Body, plane: Plane): Mark[] {
  const outline = barCut(body, plane);
  const area: Area = {
    kind: "area",
    layer: "hatching",
    outline,
    holes: body.holes.map((hole) => cutOf(hole, plane)).filter((each) => each.length > 2),
    pitch: HATCHING_mm,
  };
  return [area, barEdge(body, plane, outline), ...body.holes.flatMap((h) => edges(body, plane, h))];
}

function barEdge(body: Body, plane: Plane, points: readonly Point[]): Mark {
  const base = { layer: "outline", type: "01.2" } as const;
  if (!body.round || Math.abs(plane.toward[0]) < 0.99999) {
    return { kind: "polyline", ...base, points, closed: true };
  }
  const centre = project(plane, [plane.through[0], 0, body.height / 2]);
  return { kind: "circle", ...base, centre, radius: body.height / 2 * plane.scale };
}

/** A round bar is cut out by so many flats; of a 40 mm bar they stray by 3 µm. */
const FLATS = 180;

/** The bar's cut, by taking away from a large square what lies beyond each face. */
function barCut(body: Body, plane: Plane): Point[] {
  const { length, height, width } = body;
  const sides: [normal: Vec3, at: Vec3][] = [[[-1, 0, 0], [0, 0, 0]], [[1, 0, 0], [length, 0, 0]]];
  if (body.round) {
    for (let i = 0; i < FLATS; i++) {
      const angle = 2 * Math.PI * i / FLATS;
      const normal: Vec3 = [0, Math.cos(angle), Math.sin(angle)];
      sides.push([normal, along([0, 0, height / 2], normal, height / 2)]);
    }
  } else {
    sides.push([[0, 0, -1], [0, 0, 0]], [[0, 0, 1], [0, 0, height]]);
    sides.push([[0, -1, 0], [0, -width / 2, 0]], [[0, 1, 0], [0, width / 2, 0]]);
  }
  const far = 2 * (length + height + width);
  let corners = [[-far, -far], [far, -far], [far, far], [-far, far]].map(([u = 0, v = 0]) =>
    along(along(plane.through, plane.right, u), plane.up, v)
  );
  for (const [normal, at] of sides) corners = cutOff(corners, normal, dot(normal, at));
  return corners.map((each) => project(plane, each));
}

/** What of a convex polygon lies below a plane. */
function cutOff(corners: readonly Vec3[], normal: Vec3, most: number): Vec3[] {
  return corners.flatMap((here, i) => {
    const next = corners[(i + 1) % corners.length] ?? here;
    const [a, b] = [dot(normal, here) - most, dot(normal, next) - most];
    const kept = a <= 0 ? [here] : [];
    if (a < 0 !== b < 0 && a !== b) kept.push(along(here, along(next, here, -1), a / (a - b)));
    return kept;
  });
}

/** Whether a plane cuts a hole more across than along, so that the cut is a ring. */
function isAcross({ into }: Bored, { toward }: Plane): boolean {
  return Math.abs(dot(into, toward)) > 0.5;
}

/** How far a hole's axis lies behind the plane at a depth, and so whether it lies in it. */
function isInPlane({ entry, into }: Bored, { toward, through }: Plane): boolean {
  return Math.abs(dot(into, toward)) < 1e-6 &&
    Math.abs(dot(along(entry, through, -1), toward)) < 1e-6;
}

/** What a plane takes out of the metal for a hole, on paper; empty if it misses it. */
function cutOf(hole: Bored, plane: Plane): Point[] {
  if (isAcross(hole, plane)) {
    const trace = ringCut(hole, plane);
    if (trace === undefined) return [];
    return Array.from({ length: RING }, (_, i) => project(plane, trace.at(i / RING)));
  }
  const [left, right] = chords(hole, plane);
  return [...left, ...right.toReversed()].map((each) => project(plane, each));
}

/** Points on a ring. */
const RING = 96;

/** The ring where a plane cuts across a hole: a circle where it is square to its axis. */
function ringCut(hole: Bored, plane: Plane): Trace | undefined {
  const { entry, into } = hole;
  const slope = dot(into, plane.toward);
  const depth = dot(along(plane.through, entry, -1), plane.toward) / slope;
  const radius = depth > hole.depth || depth < 0 ? 0 : radiusAt(hole, depth);
  if (radius <= 0) return undefined;
  if (alignment(into, plane.toward) !== 0) return round(along(entry, into, depth), into, radius);
  const [right, up] = acrossOf(into);
  return through(Array.from({ length: RING + 1 }, (_, i) => {
    const angle = 2 * Math.PI * i / RING;
    const out = along(along([0, 0, 0], right, Math.cos(angle)), up, Math.sin(angle));
    // The wall's depth in the plane; where the bore tapers, each step comes nearer to it.
    let at = depth;
    for (let k = 0; k < 8; k++) at = depth - radiusAt(hole, at) * dot(out, plane.toward) / slope;
    return along(along(entry, into, at), out, radiusAt(hole, at));
  }));
}

/** Of one stretch; enough for the bend of a cone that is cut beside its axis. */
const SLICES = 24;

/** Both sides of the cut of a hole that isn't square to the plane, from far outside down to its end. */
function chords(hole: Bored, { toward, through }: Plane): readonly [Vec3[], Vec3[]] {
  const { entry, into, steps, widest } = hole;
  const side = unit(cross(into, toward));
  // Square to the axis and to the line in which a slice meets the plane.
  const off = cross(side, into);
  const lean = dot(off, toward);
  const both: readonly [Vec3[], Vec3[]] = [[], []];
  const slice = (depth: number, radius: number) => {
    const centre = along(entry, into, depth);
    const away = dot(along(through, centre, -1), toward) / lean;
    if (Math.abs(away) >= radius) return;
    const half = Math.sqrt(radius * radius - away * away);
    const middle = along(centre, off, away);
    both[0].push(along(middle, side, -half));
    both[1].push(along(middle, side, half));
  };
  const [first] = steps;
  if (first) {
    for (let i = 0; i < SLICES; i++) {
      slice(-4 * widest * (1 - i / SLICES), first.fromRadius);
    }
  }
  for (const { from, to, fromRadius, toRadius } of steps) {
    for (let i = 0; i <= SLICES; i++) {
      const share = i / SLICES;
      slice(from + share * (to - from), fromRadius + share * (toRadius - fromRadius));
    }
  }
  return both;
}

/** The drawn edges of a hole in a section. */
function edges(body: Body, plane: Plane, hole: Bored): Mark[] {
  const marks: Mark[] = [];
  const add = (trace: Trace, layer: Layer, type: LineType, also = (_: Vec3) => true) => {
    for (const part of partsWhere(trace, (at) => isWall(body, hole, at) && also(at))) {
      marks.push(projected(plane, trace, part, layer, type));
    }
  };
  if (isAcross(hole, plane)) {
    const trace = ringCut(hole, plane);
    if (trace === undefined) return [];
    add(trace, hole.layer, "01.2");
    const depth = dot(along(plane.through, hole.entry, -1), hole.into);
    const { thread } = hole;
    if (trace.circle && thread && depth >= thread.from && depth <= thread.to) {
      const circle = stepCircle(hole, depth, thread.radius);
      marks.push(projected(plane, circle, threeQuarters(plane, circle), "threads", "01.1"));
    }
    return marks;
  }
  if (!isInPlane(hole, plane)) {
    for (const side of chords(hole, plane)) {
      if (side.length > 2) add(through(side), hole.layer, "01.2");
    }
    return marks;
  }
  for (const trace of wallLines(hole, plane.toward)) add(trace, hole.layer, "01.2");
  for (const [depth, radius] of stepsOf(hole)) {
    if (depth > 0) add(stepLine(hole, plane.toward, depth, radius), hole.layer, "01.2");
  }
  const [left, right, end] = threadLines(hole, plane.toward);
  if (left && right && end) {
    add(left, "threads", "01.1");
    add(right, "threads", "01.1");
    add(end, "threads", "01.2");
  }
  const behind = (at: Vec3) => dot(along(at, plane.through, -1), plane.toward) < 1e-6;
  for (const trace of meetings(body, hole)) {
    for (const part of partsWhere(trace, behind)) {
      marks.push(projected(plane, trace, part, hole.layer, "01.2"));
    }
  }
  return marks;
}
