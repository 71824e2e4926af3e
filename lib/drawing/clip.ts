/** What of a drawing lies between two upright lines: the piece of a view that a sheet holds. */
import type { Area, Mark, Point } from "./shapes.ts";

/** The parts of marks between two places across the sheet; texts stay whole, by where they stand. */
export function clipped(marks: readonly Mark[], left: number, right: number): Mark[] {
  return marks.flatMap((mark): Mark[] => {
    switch (mark.kind) {
      case "line":
        return runs([mark.from, mark.to], left, right).map(([from, to]) => ({
          ...mark,
          from: from as Point,
          to: to as Point,
        }));
      case "polyline":
        return clippedPolyline(mark, left, right);
      case "circle": {
        const { centre: [x], radius } = mark;
        if (x - radius >= left && x + radius <= right) return [mark];
        return clippedArc({ ...mark, kind: "arc", from_deg: 0, to_deg: 360 }, left, right);
      }
      case "arc":
        return clippedArc(mark, left, right);
      case "area":
        return clippedArea(mark, left, right);
      case "text":
        return mark.at[0] >= left && mark.at[0] <= right ? [mark] : [];
      case "solid":
        return mark.points.every(([x]) => x >= left && x <= right) ? [mark] : [];
    }
  });
}

function clippedPolyline(
  mark: Extract<Mark, { kind: "polyline" }>,
  left: number,
  right: number,
): Mark[] {
  if (mark.points.every(([x]) => x >= left && x <= right)) return [mark];
  const [first] = mark.points;
  const points = mark.closed && first ? [...mark.points, first] : mark.points;
  return runs(points, left, right).map((each) => ({ ...mark, points: each, closed: false }));
}

/** The pieces of a line through points that lie in the band. */
function runs(points: readonly Point[], left: number, right: number): Point[][] {
  const pieces: Point[][] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const [from, to] = [points[i] as Point, points[i + 1] as Point];
    const part = inBand(from, to, left, right);
    if (part === undefined) continue;
    const last = pieces.at(-1);
    const end = last?.at(-1);
    if (last && end && end[0] === part[0][0] && end[1] === part[0][1]) last.push(part[1]);
    else pieces.push([...part]);
  }
  return pieces;
}

function inBand(
  from: Point,
  to: Point,
  left: number,
  right: number,
): readonly [Point, Point] | undefined {
  const way = to[0] - from[0];
  if (way === 0) return from[0] < left || from[0] > right ? undefined : [from, to];
  const [a, b] = [(left - from[0]) / way, (right - from[0]) / way];
  const [begin, end] = [Math.max(0, Math.min(a, b)), Math.min(1, Math.max(a, b))];
  if (begin >= end) return undefined;
  const at = (share: number): Point =>
    share === 0
      ? from
      : share === 1
      ? to
      : [from[0] + share * way, from[1] + share * (to[1] - from[1])];
  return [at(begin), at(end)];
}

function clippedArc(mark: Extract<Mark, { kind: "arc" }>, left: number, right: number): Mark[] {
  const { centre: [x], radius, from_deg, to_deg } = mark;
  const stops = [from_deg, to_deg];
  for (const edge of [left, right]) {
    const cosine = (edge - x) / radius;
    if (Math.abs(cosine) >= 1) continue;
    const angle = Math.acos(cosine) * 180 / Math.PI;
    for (const each of [angle, -angle, 360 - angle, 360 + angle, -360 + angle]) {
      if (each > from_deg && each < to_deg) stops.push(each);
    }
  }
  stops.sort((a, b) => a - b);
  return stops.slice(1).flatMap((to, i): Mark[] => {
    const from = stops[i] as number;
    const middle = x + radius * Math.cos((from + to) / 2 * Math.PI / 180);
    const kept = to - from > 1e-6 && middle >= left && middle <= right;
    return kept ? [{ ...mark, from_deg: from, to_deg: to }] : [];
  });
}

function clippedArea(mark: Area, left: number, right: number): Mark[] {
  const outline = half(half(mark.outline, left, 1), right, -1);
  return outline.length > 2 ? [{ ...mark, outline }] : [];
}

/** What of a polygon lies to the right (1) or to the left (-1) of a line. */
function half(points: readonly Point[], edge: number, side: 1 | -1): Point[] {
  return points.flatMap((here, i) => {
    const next = points[(i + 1) % points.length] ?? here;
    const [a, b] = [(here[0] - edge) * side, (next[0] - edge) * side];
    const kept: Point[] = a >= 0 ? [here] : [];
    if (a >= 0 !== b >= 0) {
      kept.push([edge, here[1] + (next[1] - here[1]) * a / (a - b)]);
    }
    return kept;
  });
}
