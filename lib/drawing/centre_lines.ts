/** Centre lines: long-dashed dotted narrow, a little beyond what they belong to. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import type { Body, Bored } from "./body.ts";
import { line } from "./ink.ts";
import { project, type Projection } from "./projection.ts";
import type { Mark, Point } from "./shapes.ts";
import { alignment, along } from "./vector.ts";

/** How far a centre line reaches beyond an edge on paper [mm]. */
export const BEYOND_mm = 2;

/** The centre line of a hole: a cross where it is seen end-on, else its axis. */
export function centreLines(body: Body, view: Projection, hole: Bored): Mark[] {
  const { entry, into, depth } = hole;
  if (alignment(into, view.toward) !== 0) return cross(project(view, entry), reach(view, hole));
  const beyond = BEYOND_mm / view.scale;
  const lean = Math.abs(into[0]);
  // Along the bar an axis is drawn right through: the gallery's and those of its plugs are one.
  const ends: [Vec3, Vec3] = lean > 0.999
    ? [[-beyond, entry[1], entry[2]], [body.length + beyond, entry[1], entry[2]]]
    : [along(entry, into, -beyond), along(entry, into, depth + beyond)];
  return [line(project(view, ends[0]), project(view, ends[1]), "centre", "04.1")];
}

/** From a centre to the end of its cross on paper. */
export function reach({ scale }: Projection, { widest }: Bored): number {
  return widest * scale + BEYOND_mm;
}

function cross([x, y]: Point, half: number): Mark[] {
  return [
    line([x - half, y], [x + half, y], "centre", "04.1"),
    line([x, y - half], [x, y + half], "centre", "04.1"),
  ];
}

/** Two centre lines that fall on each other would fill each other's gaps. */
export function withoutTwins(marks: readonly Mark[]): Mark[] {
  const seen = new Set<string>();
  return marks.filter((mark) => {
    if (mark.kind !== "line" || mark.type !== "04.1") return true;
    const key = [...mark.from, ...mark.to].map((each) => each.toFixed(2)).join();
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
