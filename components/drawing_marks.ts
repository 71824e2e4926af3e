/** Marks of a drawing as SVG: one element for each, classes for layers and line types. */
import type { VNode } from "preact";
import { hatchLines, type Line, type Mark, type Point, type Text } from "@/lib/drawing/mod.ts";
import { fast } from "./fast.ts";

/** Height of capitals over the size of the letter, for the usual sans serif letters. */
const CAPITALS = 0.72;

/**
 * Draws marks. Their y runs up, that of SVG down.
 *
 * @param marks Any marks.
 * @param height Of the sheet [mm].
 * @returns An element for each; lines of one class and layer share one.
 */
export function drawingMarks(marks: readonly Mark[], height: number): VNode[] {
  const flip = ([x, y]: Point): string => `${round(x)} ${round(height - y)}`;
  const paths = new Map<string, string[]>();
  const add = (name: string, data: string): void => {
    const known = paths.get(name);
    if (known) known.push(data);
    else paths.set(name, [data]);
  };
  const texts: VNode[] = [];
  for (const mark of marks) {
    if (mark.kind === "text") texts.push(textMark(mark, height));
    else if (mark.kind === "area") {
      for (const line of hatchLines(mark)) add(nameOf(line), lineData(line, flip));
    } else add(nameOf(mark), dataOf(mark, flip));
  }
  const drawn = [...paths].map(([name, data]) =>
    fast`<path class="${name}" d="${data.join("")}"/>`
  );
  return [...drawn, ...texts];
}

function nameOf(mark: Exclude<Mark, Text>): string {
  const { layer } = mark;
  return "type" in mark ? `${layer} line-${mark.type.replace(".", "-")}` : `${layer} ${mark.kind}`;
}

type Flip = (point: Point) => string;

function lineData({ from, to }: Line, flip: Flip): string {
  return `M${flip(from)}L${flip(to)}`;
}

function dataOf(mark: Exclude<Mark, { kind: "text" | "area" }>, flip: Flip): string {
  switch (mark.kind) {
    case "line":
      return lineData(mark, flip);
    case "polyline":
      return `M${mark.points.map(flip).join("L")}${mark.closed ? "Z" : ""}`;
    case "solid":
      return `M${mark.points.map(flip).join("L")}Z`;
    case "circle": {
      const { centre: [x, y], radius } = mark;
      const half = `A${round(radius)} ${round(radius)} 0 0 0 `;
      const [right, left] = [flip([x + radius, y]), flip([x - radius, y])];
      return `M${right}${half}${left}${half}${right}Z`;
    }
    case "arc": {
      const { centre: [x, y], radius, from_deg, to_deg } = mark;
      const at = (deg: number) =>
        flip([
          x + radius * Math.cos(deg * Math.PI / 180),
          y + radius * Math.sin(deg * Math.PI / 180),
        ]);
      const large = to_deg - from_deg > 180 ? 1 : 0;
      return `M${at(from_deg)}A${round(radius)} ${round(radius)} 0 ${large} 0 ${at(to_deg)}`;
    }
  }
}

function textMark({ at: [x, y], height, anchor, turned, layer, says }: Text, sheet: number): VNode {
  const [left, top] = [round(x), round(sheet - y)];
  const turn = turned === 0 ? "" : ` rotate(-90)`;
  return fast`<text class="${layer}" transform="translate(${left} ${top})${turn}" font-size="${
    round(height / CAPITALS)
  }" text-anchor="${anchor}">${says}</text>`;
}

/** To a thousandth of a millimetre, which no printer reaches. */
function round(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
