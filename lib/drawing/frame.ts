/** The sheet's frame, and the room that it leaves for the drawing. */
import type { Box } from "./boxes.ts";
import { line, rectangle } from "./ink.ts";
import { type Orientation, type Paper, PAPERS } from "./options.ts";
import type { Shape } from "./shapes.ts";

/** ISO 5457: at the filing edge, and at the others [mm]. */
const FILING_mm = 20;
const MARGIN_mm = 10;
/** Outside the frame, at the middle of each side. */
const CENTRING_mm = 5;

/**
 * A sheet's size as it lies.
 *
 * @param paper The paper.
 * @param orientation How it lies.
 * @returns Width and height [mm].
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(sizeOf("A4", "landscape"), [297, 210]);
 * ```
 */
export function sizeOf(paper: Paper, orientation: Orientation): readonly [number, number] {
  const [short, long] = PAPERS[paper];
  return orientation === "portrait" ? [short, long] : [long, short];
}

/** The drawing space inside the frame, ISO 5457. */
export function frameBox(paper: Paper, orientation: Orientation): Box {
  const [width, height] = sizeOf(paper, orientation);
  return {
    left: FILING_mm,
    right: width - MARGIN_mm,
    bottom: MARGIN_mm,
    top: height - MARGIN_mm,
  };
}

/** The frame with its centring marks. */
export function frameShapes(paper: Paper, orientation: Orientation): Shape[] {
  const { left, right, bottom, top } = frameBox(paper, orientation);
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  return [
    rectangle([left, bottom], [right, top], "frame", "frame"),
    line([x, top], [x, top + CENTRING_mm], "frame", "frame"),
    line([x, bottom], [x, bottom - CENTRING_mm], "frame", "frame"),
    line([left, y], [left - CENTRING_mm, y], "frame", "frame"),
    line([right, y], [right + CENTRING_mm, y], "frame", "frame"),
  ];
}
