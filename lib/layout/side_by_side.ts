/** The distance of two pieces whose axes are parallel, in closed form. */
import type { Frustum } from "./frustum.ts";
import { along, dot, minus, norm } from "./vector.ts";

/** A corner or a direction in the plane of both axes: along them, across them. */
type Flat = readonly [number, number];

/**
 * Finds the distance [m] of two pieces whose axes are parallel; below nought, how deep they
 * stand in each other. By symmetry the nearest points lie in the plane of both axes, where the
 * pieces are four-cornered, so this is the distance of two polygons.
 *
 * @param a One piece.
 * @param b The other, its axis parallel to the first one's, either way round.
 * @returns The distance [m].
 */
export function sideBySide(a: Frustum, b: Frustum): number {
  const start = minus(b.from, a.from);
  const ahead = dot(start, a.axis);
  const aside = norm(along(start, a.axis, -ahead));
  const way = Math.sign(dot(a.axis, b.axis));
  const one = corners(a, 0, 0, 1);
  const other = corners(b, ahead, aside, way);
  const apart_m = Math.max(
    ...[...normalsOf(one), ...normalsOf(other)].map((n) => gapAlong(n, one, other)),
  );
  // Seen along a side they overlap or not; apart, two corners may be nearer than any side tells.
  return apart_m <= 0 ? apart_m : Math.min(...cornerGaps(one, other), ...cornerGaps(other, one));
}

function corners(piece: Frustum, ahead: number, aside: number, way: number): readonly Flat[] {
  const end = ahead + way * piece.length_m;
  return [
    [ahead, aside - piece.fromRadius_m],
    [ahead, aside + piece.fromRadius_m],
    [end, aside + piece.toRadius_m],
    [end, aside - piece.toRadius_m],
  ];
}

type Side = readonly [from: Flat, to: Flat];

function sidesOf(polygon: readonly Flat[]): readonly Side[] {
  return polygon.map((corner, i) => [corner, polygon[(i + 1) % polygon.length] as Flat]);
}

/** Directions square to the sides, both ways; a side without length has none. */
function normalsOf(polygon: readonly Flat[]): readonly Flat[] {
  return sidesOf(polygon).flatMap(([from, to]): Flat[] => {
    const [u, v] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(u, v);
    return length > 0 ? [[v / length, -u / length], [-v / length, u / length]] : [];
  });
}

function gapAlong(n: Flat, one: readonly Flat[], other: readonly Flat[]): number {
  const place = (p: Flat) => n[0] * p[0] + n[1] * p[1];
  return Math.min(...other.map(place)) - Math.max(...one.map(place));
}

/** Distances of one polygon's corners from the other's sides. */
function cornerGaps(polygon: readonly Flat[], other: readonly Flat[]): readonly number[] {
  return polygon.flatMap((p) => sidesOf(other).map(([from, to]) => fromSide(p, from, to)));
}

function fromSide(p: Flat, from: Flat, to: Flat): number {
  const [u, v] = [to[0] - from[0], to[1] - from[1]];
  const square = u * u + v * v;
  const share = square > 0 ? ((p[0] - from[0]) * u + (p[1] - from[1]) * v) / square : 0;
  const held = Math.min(1, Math.max(0, share));
  return Math.hypot(p[0] - from[0] - held * u, p[1] - from[1] - held * v);
}
