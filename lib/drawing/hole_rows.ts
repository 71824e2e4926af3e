/** The table of holes as texts and rules. */
import type { Bored } from "./body.ts";
import { callOfHole } from "./callout.ts";
import { fitted, line, text, wrapped } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import { FACE_TITLES, numberOf, type Scene } from "./scene.ts";
import type { Point, Shape } from "./shapes.ts";

/** A row: texts by column, the last in several lines. */
export interface TableRow {
  readonly hole: string;
  readonly cells: readonly string[];
  readonly size: readonly string[];
  /** Whether something is wrong with the hole; its words are the last line of its size. */
  readonly inTrouble: boolean;
}

const COLUMNS = [
  { title: "No.", width: 10 },
  { title: "Hole", width: 50 },
  { title: "From face", width: 34 },
  { title: "x", width: 17 },
  { title: "y", width: 15 },
  { title: "z", width: 15 },
] as const;

const BEFORE_SIZE = COLUMNS.reduce((sum, { width }) => sum + width, 3);
const LINE_mm = 1.75 * TEXT_mm;
const PAD_mm = 1.6;

/** The rows for a table of a width; a size that another row has already is said by its number. */
export function tableRows(scene: Scene, width: number): TableRow[] {
  const first = new Map<string, string>();
  return scene.body.holes.map((hole) => {
    const number = numberOf(scene, hole);
    const call = sizeOf(scene, hole);
    const same = first.get(call);
    if (same === undefined) first.set(call, number);
    const trouble = scene.troubles.get(hole.hole.id);
    const room = width - BEFORE_SIZE - 2;
    return {
      hole: hole.hole.id,
      cells: [number, hole.hole.title, FACE_TITLES[hole.hole.face], ...coordinates(scene, hole)],
      size: [
        ...wrapped(same === undefined ? call : `as ${same}`, room),
        ...(trouble === undefined ? [] : wrapped(`TROUBLE: ${trouble}`, room)),
      ],
      inTrouble: trouble !== undefined,
    };
  });
}

function sizeOf({ say }: Scene, hole: Bored): string {
  const lean = Math.asin(hole.into[0]) * 180 / Math.PI;
  const square = Math.abs(hole.into[0]) > 0.999 || Math.abs(lean) < 0.01;
  const call = callOfHole(hole, say);
  if (square) return call;
  const end = lean > 0 ? "far" : "datum";
  return `${call}; axis leans ${
    Number(Math.abs(lean).toFixed(2))
  }° to the ${end} end as it goes in`;
}

/** From the datum end, the front and the injectors' face; nothing for the direction of its own face. */
function coordinates({ body, say }: Scene, { entry: [x, y, z], hole }: Bored): string[] {
  const across = y + (body.round ? 0 : body.width / 2);
  const isEnd = hole.face === "datum-end" || hole.face === "far-end";
  const isSide = hole.face === "front" || hole.face === "back";
  return [isEnd ? "" : say(x), isSide ? "" : say(across), isEnd || isSide ? say(z) : ""];
}

/** How tall a row is. */
export function rowHeight({ size }: TableRow): number {
  return Math.max(1, size.length) * LINE_mm + PAD_mm;
}

/** Of the head and of the note below the table [mm]. */
export const TABLE_HEAD_mm = LINE_mm + PAD_mm;

/** Draws rows below each other from a place down. */
export function tableShapes(
  rows: readonly TableRow[],
  { left, top, width }: { readonly left: number; readonly top: number; readonly width: number },
): Shape[] {
  const right = left + width;
  const shapes: Shape[] = [line([left, top], [right, top], "text", "01.2")];
  const base = (y: number) => y - LINE_mm + 0.35 * TEXT_mm - PAD_mm / 2 + 0.35;
  let x = left;
  for (const { title, width: wide } of COLUMNS) {
    shapes.push(inCell(title, title, [x, base(top)], wide));
    x += wide;
  }
  shapes.push(text("Size and depth from its face", [left + BEFORE_SIZE, base(top)]));
  let y = top - TABLE_HEAD_mm;
  shapes.push(line([left, y], [right, y], "text", "01.2"));
  for (const row of rows) {
    shapes.push(...rowShapes(row, left, (lineNumber) => base(y) - lineNumber * LINE_mm));
    y -= rowHeight(row);
    shapes.push(line([left, y], [right, y], "text", "01.1"));
  }
  return shapes;
}

function rowShapes(row: TableRow, left: number, level: (lineNumber: number) => number): Shape[] {
  const shapes: Shape[] = [];
  let x = left;
  row.cells.forEach((says, i) => {
    const { width, title } = COLUMNS[i] ?? { width: 0, title: "" };
    if (says !== "") shapes.push(inCell(title, says, [x, level(0)], width));
    x += width;
  });
  row.size.forEach((says, i) => {
    const isTrouble = row.inTrouble && says.startsWith("TROUBLE");
    const layer = isTrouble ? "trouble" : "text";
    shapes.push(text(says, [left + BEFORE_SIZE, level(i)], { layer }));
  });
  return shapes;
}

/** Figures stand at the right of their column, words at its left. */
function inCell(title: string, says: string, [x, y]: Point, width: number): Shape {
  const [words, height] = fitted(says, width - 3, [TEXT_mm, 1.8]);
  return "xyz".includes(title)
    ? text(words, [x + width - 2, y], { anchor: "end", height })
    : text(words, [x + 1, y], { height });
}

/** What x, y and z are measured from. */
export function tableNote({ body }: Scene): string {
  const across = body.round ? "y from the axis, away from the front" : "y from the front";
  return `x from the datum end, ${across}, z from the injector face. Depths along each hole's axis.`;
}
