/** Hatching: lines at 45 degrees over what is cut. */
import type { Area, Line, Point } from "./shapes.ts";

/**
 * The hatching lines of an area. A line's parts in the outline are found by counting crossings,
 * those in each hole likewise; what is in a hole is left out.
 *
 * @param area What is to be hatched.
 * @returns Narrow lines rising to the right.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * const outline = [[0, 0], [10, 0], [10, 10], [0, 10]] as const;
 * const lines = hatchLines({ kind: "area", layer: "hatching", outline, holes: [], pitch: 2 });
 *
 * assert(lines.length > 5);
 * assert(lines.every(({ from, to }) => Math.abs((to[1] - from[1]) - (to[0] - from[0])) < 1e-9));
 * ```
 */
export function hatchLines({ outline, holes, pitch }: Area): Line[] {
  const across = outline.map(([x, y]) => (y - x) / Math.SQRT2);
  const [least, most] = [Math.min(...across), Math.max(...across)];
  const lines: Line[] = [];
  // Counted from nought, so that two parts of one section are hatched alike.
  for (let i = Math.ceil(least / pitch); i * pitch < most; i++) {
    const level = i * pitch;
    const gaps = holes.flatMap((hole) => spans(hole, level)).sort((a, b) => a[0] - b[0]);
    for (const span of spans(outline, level)) {
      for (const [from, to] of without(span, gaps)) {
        if (to - from < 0.05) continue;
        lines.push({
          kind: "line",
          layer: "hatching",
          type: "01.1",
          from: place(from, level),
          to: place(to, level),
        });
      }
    }
  }
  return lines;
}

type Span = readonly [from: number, to: number];

/** A place by its distances along and across the hatching. */
function place(along: number, across: number): Point {
  return [(along - across) / Math.SQRT2, (along + across) / Math.SQRT2];
}

/** The parts of a hatching line in a polygon. */
function spans(polygon: readonly Point[], level: number): Span[] {
  const crossings: number[] = [];
  let [px, py] = polygon.at(-1) ?? [0, 0];
  for (const [x, y] of polygon) {
    const [before, here] = [(py - px) / Math.SQRT2 - level, (y - x) / Math.SQRT2 - level];
    if (before < 0 !== here < 0) {
      const share = before / (before - here);
      crossings.push((px + share * (x - px) + py + share * (y - py)) / Math.SQRT2);
    }
    [px, py] = [x, y];
  }
  crossings.sort((a, b) => a - b);
  const found: Span[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    found.push([crossings[i] as number, crossings[i + 1] as number]);
  }
  return found;
}

/** What is left of a span without gaps, which are sorted by their begin. */
function without([from, to]: Span, gaps: readonly Span[]): Span[] {
  const left: Span[] = [];
  let at = from;
  for (const [begin, end] of gaps) {
    if (begin > at) left.push([at, Math.min(begin, to)]);
    at = Math.max(at, end);
    if (at >= to) return left;
  }
  left.push([at, to]);
  return left;
}
