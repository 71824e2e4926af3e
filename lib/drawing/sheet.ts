/** Sheets of paper with blocks on them. */
import type { Box } from "./boxes.ts";
import { calibration, CALIBRATION_mm } from "./calibration.ts";
import { frameBox, frameShapes, sizeOf } from "./frame.ts";
import { moved } from "./moved.ts";
import type { DrawingOptions, Orientation, Paper } from "./options.ts";
import type { Block } from "./scene.ts";
import type { Shape } from "./shapes.ts";
import { type SheetData, TITLE_BLOCK_mm, titleBlock } from "./title_block.ts";

/** What a sheet is for. */
export type SheetKind = "overview" | "views" | "sections" | "holes" | "strip";

/** A sheet of paper: its size and what is drawn on it, from its lower left corner. */
export interface DrawingSheet {
  /** What it is for. */
  readonly kind: SheetKind;
  /** What the sheet shows: `Views, 2 of 3`. */
  readonly name: string;
  /** The scale of what isn't marked otherwise: `1:1`. */
  readonly scale: string;
  /** The size of the paper. */
  readonly paper: Paper;
  /** How it lies. */
  readonly orientation: Orientation;
  /** Its width as it lies [mm]. */
  readonly width: number;
  /** Its height as it lies [mm]. */
  readonly height: number;
  /** What is drawn on it. */
  readonly shapes: readonly Shape[];
}

/** A sheet before it has its number and frame. */
export interface Draft {
  readonly kind: SheetKind;
  readonly name: string;
  readonly scale: string;
  readonly orientation: Orientation;
  readonly shapes: readonly Shape[];
}

/** Kept free inside the frame [mm]. */
const PAD_mm = 4;

/** The room for the drawing on a sheet: above the title block and the calibration bars. */
export function roomOn(paper: Paper, orientation: Orientation): Box {
  const frame = frameBox(paper, orientation);
  const beside = frame.right - frame.left - TITLE_BLOCK_mm[0] >= CALIBRATION_mm[0] + 2 * PAD_mm;
  const foot = TITLE_BLOCK_mm[1] + (beside ? 0 : CALIBRATION_mm[1] + PAD_mm);
  return {
    left: frame.left + PAD_mm,
    right: frame.right - PAD_mm,
    bottom: frame.bottom + foot + PAD_mm,
    top: frame.top - PAD_mm,
  };
}

/** Numbers drafts, and gives each its frame, title block and calibration bars. */
export function finished(drafts: readonly Draft[], options: DrawingOptions): DrawingSheet[] {
  const { paper } = options;
  return drafts.map(({ kind, name, scale, orientation, shapes }, i): DrawingSheet => {
    const [width, height] = sizeOf(paper, orientation);
    const data: SheetData = { name, scale, number: i + 1, count: drafts.length };
    return {
      kind,
      name,
      scale,
      paper,
      orientation,
      width,
      height,
      shapes: [...shapes, ...furniture(options, orientation, data)],
    };
  });
}

function furniture(options: DrawingOptions, orientation: Orientation, data: SheetData): Shape[] {
  const { paper } = options;
  const frame = frameBox(paper, orientation);
  const beside = roomOn(paper, orientation).bottom < frame.bottom + TITLE_BLOCK_mm[1] + 2 * PAD_mm;
  return [
    ...frameShapes(paper, orientation),
    ...titleBlock(options, data, [frame.right, frame.bottom]),
    ...calibration([
      frame.left + PAD_mm,
      frame.bottom + (beside ? PAD_mm : TITLE_BLOCK_mm[1] + PAD_mm / 2),
    ]),
  ];
}

/** A block set with its box's upper left corner at a place. */
export function setAt({ shapes, box }: Block, left: number, top: number): Shape[] {
  return moved(shapes, left - box.left, top - box.top);
}

/** Blocks in rows from the upper left, page after page; each page is spread over its room. */
export function flowed(blocks: readonly Block[], room: Box, gap: number): Shape[][] {
  const pages: Block[][][] = [];
  const width = room.right - room.left;
  const tall = (row: readonly Block[]) => Math.max(...row.map(({ box }) => box.top - box.bottom));
  const wide = (row: readonly Block[]) =>
    row.reduce((sum, { box }) => sum + box.right - box.left, gap * (row.length - 1));
  for (const each of blocks) {
    const page = pages.at(-1);
    const row = page?.at(-1);
    if (page && row && wide([...row, each]) <= width && fitsDown(page, [...row, each])) {
      row.push(each);
    } else if (page && fitsDown([...page, []], [each])) page.push([each]);
    else pages.push([[each]]);
  }
  return pages.map((rows) => {
    const free = room.top - room.bottom - rows.reduce((sum, row) => sum + tall(row), 0);
    const between = Math.min(3 * gap, free / (rows.length + 1));
    let top = room.top - Math.min(gap, between);
    return rows.flatMap((row) => {
      // What is left of the row's width is shared out between its blocks, not too widely.
      const spare = Math.max(0, width - wide(row) + gap * (row.length - 1));
      const apart = Math.min(4 * gap, spare / (row.length + 1));
      let left = room.left + (spare - apart * (row.length - 1)) / 2;
      const height = tall(row);
      const set = row.flatMap((each) => {
        const shapes = setAt(each, left, top);
        left += each.box.right - each.box.left + apart;
        return shapes;
      });
      top -= height + between;
      return set;
    });
  });

  function fitsDown(page: readonly Block[][], last: readonly Block[]): boolean {
    const rows = [...page.slice(0, -1), last];
    const sum = rows.reduce((all, row) => all + tall(row), gap * (rows.length - 1));
    return sum <= room.top - room.bottom;
  }
}

/** Whether a block fits in a room. */
export function fits({ box }: Block, room: Box): boolean {
  return box.right - box.left <= room.right - room.left &&
    box.top - box.bottom <= room.top - room.bottom;
}
