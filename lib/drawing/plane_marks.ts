/** Where sections are taken: strokes at both sides of a view, arrows the way one looks, letters. */
import { arrow, line, text } from "./ink.ts";
import { project, type Projection } from "./projection.ts";
import type { Section } from "./sections.ts";
import type { Mark, Point } from "./shapes.ts";
import { rowsFor } from "./spread.ts";
import { along, dot } from "./vector.ts";

/** Height of one row of marks [mm]. */
export const PLANE_ROW_mm = 7;
const LETTER_mm = 3.5;
const SHAFT_mm = 6;

/** The marks, and how many rows they take on each side. */
export interface PlaneMarks {
  readonly marks: readonly Mark[];
  readonly rows: number;
}

/**
 * Marks the planes of sections in the front view.
 *
 * @param sections Those with letters.
 * @param view The view.
 * @param edges The view's lower and upper edge on paper.
 * @param room From where to where along the bar this piece of the view goes, on paper.
 */
export function planeMarks(
  sections: readonly Section[],
  view: Projection,
  [low, high]: readonly [number, number],
  room: readonly [number, number],
): PlaneMarks {
  const cuts = sections.flatMap(({ letter, plane }) => {
    if (letter === undefined) return [];
    // The plane's line in the view: square to where the section looks.
    const looks = along([0, 0, 0], plane.toward, -1);
    const [dx, dy] = [dot(view.right, looks), dot(view.up, looks)];
    const [x, y] = project(view, plane.through);
    const at = (level: number) => x - (level - y) * dy / dx;
    const middle = at((low + high) / 2);
    return middle < room[0] || middle > room[1] ? [] : [{ letter, at, way: [dx, dy] as Point }];
  });
  const rows = rowsFor(cuts.map(({ at }) => {
    const ends = [at(low), at(high)];
    return [Math.min(...ends) - SHAFT_mm - 2, Math.max(...ends) + 2] as const;
  }));
  const marks = cuts.flatMap(({ letter, at, way }, i) => {
    const out = 1 + (rows[i] ?? 0) * PLANE_ROW_mm;
    return [
      ...endMarks(letter, at, way, high, 1, out),
      ...endMarks(letter, at, way, low, -1, out),
    ];
  });
  return { marks, rows: Math.max(0, ...rows.map((row) => row + 1)) };
}

function endMarks(
  letter: string,
  at: (level: number) => number,
  [dx, dy]: Point,
  edge: number,
  side: 1 | -1,
  out: number,
): Mark[] {
  const place = (away: number): Point => [at(edge + side * away), edge + side * away];
  const tip = place(out + 3.5);
  const tail: Point = [tip[0] - dx * SHAFT_mm, tip[1] - dy * SHAFT_mm];
  return [
    ...(out > 1 ? [line(place(1), place(out), "dimensions", "01.1")] : []),
    line(place(out), place(out + 5), "dimensions", "01.2"),
    line(tail, tip, "dimensions", "01.1"),
    arrow(tip, tail),
    text(
      letter,
      [tail[0] - 0.6, tail[1] - LETTER_mm / 2],
      { height: LETTER_mm, anchor: "end" },
    ),
  ];
}
