/** The small marks that figures and notes are made of. */
import { widthOf } from "./boxes.ts";
import { TEXT_mm } from "./line_types.ts";
import type { Layer, Line, LineType, Mark, Point, Solid, Text } from "./shapes.ts";

/** How a text stands. */
export interface TextStyle {
  readonly height?: number;
  readonly anchor?: Text["anchor"];
  readonly turned?: Text["turned"];
  readonly layer?: Layer;
}

/** A line of text. */
export function text(says: string, at: Point, style: TextStyle = {}): Text {
  const { height = TEXT_mm, anchor = "start", turned = 0, layer = "text" } = style;
  return { kind: "text", layer, at, height, anchor, turned, says };
}

/** A line. */
export function line(
  from: Point,
  to: Point,
  layer: Layer = "dimensions",
  type: LineType = "01.1",
): Line {
  return { kind: "line", layer, type, from, to };
}

/** A line along given points. */
export function path(points: readonly Point[], layer: Layer, type: LineType): Mark {
  return { kind: "polyline", layer, type, points, closed: false };
}

/** A rectangle between two corners. */
export function rectangle([ax, ay]: Point, [bx, by]: Point, layer: Layer, type: LineType): Mark {
  const points: Point[] = [[ax, ay], [bx, ay], [bx, by], [ax, by]];
  return { kind: "polyline", layer, type, points, closed: true };
}

/** Length and half width of arrow heads on sheets up to A2 [mm]. */
export const ARROW_mm = 2.5;
const HALF_ARROW_mm = 0.42;

/** A filled arrow head with its point at a place, coming from a direction. */
export function arrow([x, y]: Point, [fx, fy]: Point, layer: Layer = "dimensions"): Solid {
  const long = Math.hypot(fx - x, fy - y);
  const [dx, dy] = [(fx - x) / long, (fy - y) / long];
  const corner = (hand: number): Point => [
    x + dx * ARROW_mm - hand * dy * HALF_ARROW_mm,
    y + dy * ARROW_mm + hand * dx * HALF_ARROW_mm,
  ];
  return { kind: "solid", layer, points: [[x, y], corner(1), corner(-1)] };
}

/** The largest height of the series up to a wish in which a text fits; cut short if it fits in none. */
export function fitted(says: string, width: number, heights: readonly number[]): [string, number] {
  for (const height of heights) if (widthOf(says, height) <= width) return [says, height];
  const least = heights.at(-1) ?? TEXT_mm;
  let kept = says;
  while (kept.length > 1 && widthOf(`${kept}…`, least) > width) kept = kept.slice(0, -1).trimEnd();
  return [`${kept}…`, least];
}

/** Words in lines no wider than a width. */
export function wrapped(says: string, width: number, height: number = TEXT_mm): string[] {
  const lines: string[] = [];
  for (const word of says.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, height) <= width) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(fitted(word, width, [height])[0]);
  }
  return lines;
}
