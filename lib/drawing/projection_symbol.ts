/** The graphical symbol of the projection, ISO 5456-2: a cut-off cone from aside and from its end. */
import { line } from "./ink.ts";
import type { Point, Shape } from "./shapes.ts";

/** Radii of the cone's ends, its length, and how far apart both views are [mm]. */
const [SMALL, LARGE, LONG, APART] = [1.25, 2.5, 5, 9];

/**
 * Draws the symbol about a place. The cone's small end is on the left, and both circles are seen
 * from there: in first angle that view stands on the right, in third angle on the left.
 */
export function projectionSymbol(which: "first-angle" | "third-angle", [x, y]: Point): Shape[] {
  const side = which === "first-angle" ? -1 : 1;
  const cone = x + side * APART / 2;
  const circles = x - side * APART / 2;
  const [left, right] = [cone - LONG / 2, cone + LONG / 2];
  const base = { layer: "frame", type: "01.1" } as const;
  const centre: Point = [circles, y];
  return [
    {
      kind: "polyline",
      ...base,
      points: [[left, y - SMALL], [right, y - LARGE], [right, y + LARGE], [left, y + SMALL]],
      closed: true,
    },
    { kind: "circle", ...base, centre, radius: SMALL },
    { kind: "circle", ...base, centre, radius: LARGE },
    line([left - 1, y], [right + 1, y], "frame", "04.1"),
    line([circles - LARGE - 1, y], [circles + LARGE + 1, y], "frame", "04.1"),
    line([circles, y - LARGE - 1], [circles, y + LARGE + 1], "frame", "04.1"),
  ];
}
