/** How much room shapes take on paper. */
import { type Mark, marksOf, type Point, type Shape, type Text } from "./shapes.ts";

/** A rectangle on paper [mm]. */
export interface Box {
  /** Its left edge. */
  readonly left: number;
  /** Its right edge. */
  readonly right: number;
  /** Its lower edge. */
  readonly bottom: number;
  /** Its upper edge. */
  readonly top: number;
}

/** Widths of characters over the height of capitals, for the widest of the usual sans serif letters. */
const WIDE = new Set("MWmw@—…%");
const NARROW = new Set(" .,:;|!'ijlI()[]/-·ftr°");
const CAPITAL = /^[A-ZØ]$/;

/**
 * The width that a line of text needs at most, whichever common sans serif letter it is set in.
 *
 * @param says The text.
 * @param height Of its capitals [mm].
 * @returns Its width [mm].
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(widthOf("42.5", 2.5) > 6);
 * ```
 */
export function widthOf(says: string, height: number): number {
  let sum = 0;
  for (const each of says) {
    sum += WIDE.has(each) ? 1.4 : NARROW.has(each) ? 0.6 : CAPITAL.test(each) ? 1.12 : 0.9;
  }
  return sum * height;
}

/** The box of a text. */
export function boxOfText({ at: [x, y], height, anchor, turned, says }: Text): Box {
  const width = widthOf(says, height);
  const start = anchor === "start" ? 0 : anchor === "middle" ? -width / 2 : -width;
  const drop = /[gjpqy,;()Ø]/.test(says) ? 0.25 * height : 0;
  const rise = 1.05 * height;
  return turned === 0
    ? { left: x + start, right: x + start + width, bottom: y - drop, top: y + rise }
    : { left: x - rise, right: x + drop, bottom: y + start, top: y + start + width };
}

/** The box of any mark, line widths left out. */
export function boxOf(mark: Mark): Box {
  switch (mark.kind) {
    case "text":
      return boxOfText(mark);
    case "line":
      return around([mark.from, mark.to]);
    case "circle":
      return disc(mark.centre, mark.radius);
    case "arc":
      return around(arcPoints(mark));
    case "area":
      return around(mark.outline);
    default:
      return around(mark.points);
  }
}

/** Points of an arc, with the outermost of the whole circle among them. */
function arcPoints(
  { centre, radius, from_deg, to_deg }: Extract<Mark, { kind: "arc" }>,
): Point[] {
  const stops = [from_deg, to_deg];
  for (let at = Math.ceil(from_deg / 90) * 90; at < to_deg; at += 90) stops.push(at);
  return stops.map((deg) => {
    const angle = deg * Math.PI / 180;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

function disc([x, y]: Point, radius: number): Box {
  return { left: x - radius, right: x + radius, bottom: y - radius, top: y + radius };
}

function around(points: readonly Point[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    bottom: Math.min(...ys),
    top: Math.max(...ys),
  };
}

/** The box around shapes; an empty one around none. */
export function boxAround(shapes: readonly Shape[]): Box {
  const boxes = marksOf(shapes).map(boxOf);
  if (boxes.length === 0) return { left: 0, right: 0, bottom: 0, top: 0 };
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.min(...boxes.map(({ bottom }) => bottom)),
    top: Math.max(...boxes.map(({ top }) => top)),
  };
}

/** Whether two boxes have more than a touch in common. */
export function overlap(a: Box, b: Box): boolean {
  const TOUCH = 0.01;
  return a.left < b.right - TOUCH && b.left < a.right - TOUCH &&
    a.bottom < b.top - TOUCH && b.bottom < a.top - TOUCH;
}
