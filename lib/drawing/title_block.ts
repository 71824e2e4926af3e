/** The title block, ISO 7200: at the foot of the frame, 180 mm wide. */
import { fitted, line, rectangle, text } from "./ink.ts";
import { type DrawingOptions, projectionOf, type TitleData } from "./options.ts";
import { projectionSymbol } from "./projection_symbol.ts";
import type { Point, Shape } from "./shapes.ts";

/** Its size [mm]. */
export const TITLE_BLOCK_mm: readonly [width: number, height: number] = [180, 28];

/** What differs from sheet to sheet. */
export interface SheetData {
  readonly name: string;
  readonly scale: string;
  readonly number: number;
  readonly count: number;
}

interface Cell {
  readonly width: number;
  readonly caption: string;
  readonly value?: string | undefined;
  readonly heights?: readonly number[];
}

const ROWS_mm = [8.5, 11, 8.5] as const;
const CAPTION_mm = 1.8;
const VALUE_HEIGHTS = [2.5, 1.8];

/** The cells, from the upper row down. */
function cells(title: TitleData, sheet: SheetData, system: DrawingOptions["system"]): Cell[][] {
  const { assumedCount } = title;
  return [
    [
      { width: 54, caption: "Material", value: title.material },
      { width: 34, caption: "General tolerances", value: title.tolerance },
      { width: 24, caption: "Scale", value: sheet.scale },
      { width: 18, caption: "Figures in", value: system === "metric" ? "mm" : "in" },
      {
        width: 20,
        caption: "Assumed",
        value: assumedCount === undefined ? undefined : String(assumedCount),
      },
      { width: 30, caption: "Projection" },
    ],
    [
      { width: 86, caption: "Title", value: title.title, heights: [5, 3.5, 2.5, 1.8] },
      { width: 54, caption: "This sheet", value: sheet.name },
      { width: 40, caption: "Drawing number", value: title.number },
    ],
    [
      { width: 46, caption: "Owner", value: title.owner },
      { width: 32, caption: "Drawn by", value: title.creator },
      { width: 32, caption: "Approved by", value: title.approver },
      { width: 24, caption: "Date of issue", value: title.date },
      { width: 12, caption: "Rev.", value: title.revision },
      { width: 18, caption: "Type", value: title.documentType },
      { width: 16, caption: "Sheet", value: `${sheet.number}/${sheet.count}` },
    ],
  ];
}

/** Draws it with its lower right corner at a place. */
export function titleBlock(
  options: DrawingOptions,
  sheet: SheetData,
  [right, bottom]: Point,
): Shape[] {
  const [width, height] = TITLE_BLOCK_mm;
  const left = right - width;
  const shapes: Shape[] = [
    rectangle([left, bottom], [right, bottom + height], "frame", "frame"),
  ];
  let top = bottom + height;
  cells(options.title, sheet, options.system).forEach((row, i) => {
    const tall = ROWS_mm[i] ?? 0;
    if (i > 0) shapes.push(line([left, top], [right, top], "frame", "01.1"));
    let x = left;
    row.forEach((cell, k) => {
      if (k > 0) shapes.push(line([x, top - tall], [x, top], "frame", "01.1"));
      shapes.push(...cellText(cell, [x, top], tall));
      x += cell.width;
    });
    top -= tall;
  });
  const middle: Point = [right - 10, bottom + height - ROWS_mm[0] / 2 - 0.9];
  return [...shapes, ...projectionSymbol(projectionOf(options), middle)];
}

function cellText(cell: Cell, [x, top]: Point, tall: number): Shape[] {
  const { caption, value, width, heights = VALUE_HEIGHTS } = cell;
  const shapes: Shape[] = [
    text(caption, [x + 1, top - CAPTION_mm - 0.7], { height: CAPTION_mm }),
  ];
  if (value === undefined || value === "") return shapes;
  // Two tall lines don't fit into a low cell.
  const fit = heights.filter((each) => each <= tall - CAPTION_mm - 2.6);
  const [says, height] = fitted(value, width - 2, fit);
  return [...shapes, text(says, [x + 1, top - tall + 1.3], { height })];
}
