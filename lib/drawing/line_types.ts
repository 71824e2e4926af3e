/** Widths and dashes of the line types. */
import type { LineType } from "./shapes.ts";

/** How a line type is drawn. */
export interface Stroke {
  /** Width [mm]. */
  readonly width: number;
  /** Lengths of dashes and gaps by turns [mm]; none if the line is continuous. */
  readonly dashes: readonly number[];
}

const NARROW = 0.25;
const WIDE = 0.5;

/** Dashes are 12, long dashes 24, gaps 3 and dots half a line width long: ISO 128-2 (from memory). */
function dashed(width: number, ...widths: number[]): Stroke {
  return { width, dashes: widths.map((each) => each * width) };
}

/**
 * Line group 0.5 of ISO 128-2 for sheets up to A2, and the frame of ISO 5457.
 * Dot gaps on a chain line carry the half width that a dot is long.
 */
export const STROKES: Readonly<Record<LineType, Stroke>> = {
  "01.1": { width: NARROW, dashes: [] },
  "01.2": { width: WIDE, dashes: [] },
  "02.1": dashed(NARROW, 12, 3),
  "04.1": dashed(NARROW, 24, 3, 0.5, 3),
  frame: { width: 0.7, dashes: [] },
};

/** Heights of lettering, ISO 3098-1 [mm]. */
export const LETTERING: readonly number[] = [1.8, 2.5, 3.5, 5, 7, 10, 14, 20];

/** Of figures and notes on sheets up to A2 [mm]. */
export const TEXT_mm = 2.5;

/** Of the titles of views [mm]. */
export const TITLE_mm = 3.5;
