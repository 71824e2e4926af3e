/** Views of the rail: where they look from, and how space falls on paper. */
import type { Face, Vec3 } from "@/lib/layout/mod.ts";
import type { Layer, LineType, Mark, Point } from "./shapes.ts";
import type { Part, Trace } from "./trace.ts";
import { cross, dot } from "./vector.ts";

/** How a view lies on paper. */
export interface Projection {
  /** What points to the right on paper. */
  readonly right: Vec3;
  /** What points up on paper. */
  readonly up: Vec3;
  /** What points to the reader: `right` cross `up`. */
  readonly toward: Vec3;
  /** Millimetres on paper for each of the rail. */
  readonly scale: number;
}

function looking(right: Vec3, up: Vec3): Omit<Projection, "scale"> {
  return { right, up, toward: cross(right, up) };
}

/** A view is named by the face it shows; the front view has the datum end on the left. */
const LOOKING: Readonly<Record<Face, Omit<Projection, "scale">>> = {
  front: looking([1, 0, 0], [0, 0, 1]),
  back: looking([-1, 0, 0], [0, 0, 1]),
  opposite: looking([1, 0, 0], [0, 1, 0]),
  injectors: looking([1, 0, 0], [0, -1, 0]),
  "datum-end": looking([0, -1, 0], [0, 0, 1]),
  "far-end": looking([0, 1, 0], [0, 0, 1]),
};

/** The view of a face. */
export function viewOf(face: Face, scale: number): Projection {
  return { ...LOOKING[face], scale };
}

/** Where a place falls on paper. */
export function project({ right, up, scale }: Projection, place: Vec3): Point {
  return [dot(right, place) * scale, dot(up, place) * scale];
}

/** A part of a curve on paper: a line, an arc or circle where it is seen square on, else points. */
export function projected(
  view: Projection,
  trace: Trace,
  [from, to]: Part,
  layer: Layer,
  type: LineType,
): Mark {
  const at = (share: number): Point => project(view, trace.at(share > 1 ? share - 1 : share));
  const { circle } = trace;
  if (circle && isSquareOn(view, trace)) {
    const centre = project(view, circle.centre);
    const radius = circle.radius * view.scale;
    if (to - from > 0.9999) return { kind: "circle", layer, type, centre, radius };
    const angle = ([x, y]: Point) => Math.atan2(y - centre[1], x - centre[0]) * 180 / Math.PI;
    const turnsLeft = isLeftTurn(at(0), at(0.1), centre);
    const begin = angle(at(turnsLeft ? from : to));
    const end = begin + (to - from) * 360;
    return { kind: "arc", layer, type, centre, radius, from_deg: begin, to_deg: end };
  }
  if (!circle && !trace.bent) return { kind: "line", layer, type, from: at(from), to: at(to) };
  const pieces = Math.max(2, Math.ceil((to - from) * POINTS));
  const points = Array.from(
    { length: pieces + 1 },
    (_, i) => at(from + (to - from) * i / pieces),
  );
  return { kind: "polyline", layer, type, points, closed: false };
}

/** On a whole curve; of a 16 mm ellipse each piece then strays by 0.01 mm. */
const POINTS = 72;

function isSquareOn(view: Projection, trace: Trace): boolean {
  const centre = trace.circle?.centre ?? [0, 0, 0];
  const depth = dot(view.toward, centre);
  return [0, 0.25].every((share) => Math.abs(dot(view.toward, trace.at(share)) - depth) < 1e-6);
}

function isLeftTurn(from: Point, to: Point, about: Point): boolean {
  const [x, y] = [from[0] - about[0], from[1] - about[1]];
  return x * (to[1] - about[1]) - y * (to[0] - about[0]) > 0;
}
