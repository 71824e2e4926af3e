/** What each stretch of a section's holes is, with a leader to its wall. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import { type Bored, isWall } from "./body.ts";
import type { Box } from "./boxes.ts";
import { callsOf, DIAMETER } from "./callout.ts";
import { arrow, line, text } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import { project } from "./projection.ts";
import type { Scene } from "./scene.ts";
import type { Plane } from "./section_marks.ts";
import type { Section } from "./sections.ts";
import type { Dimension, Point } from "./shapes.ts";
import { spread } from "./spread.ts";
import { alignment, along, cross, dot, unit } from "./vector.ts";

/** How a section lies on paper, for its figures. */
export interface Cut {
  readonly box: Box;
  /** Whether the holes shown stand upright. */
  readonly isUpright: boolean;
  /** Whether calls stand on the right (1) or the left; and depths on the right or top, or not. */
  readonly callSide: 1 | -1;
  readonly depthSide: 1 | -1;
}

/** From the cut to the column of calls [mm]. */
const COLUMN_mm = 7;
/** Between lines of calls [mm]. */
const PITCH_mm = 2 * TEXT_mm;

/** What is to be called out, and where. */
interface Wanted {
  readonly says: string;
  readonly point: Point;
  readonly holes: readonly string[];
}

/** Calls beside or above a section: each stretch of its holes, and in the first the gallery's bore. */
export function sectionCalls(scene: Scene, section: Section, cut: Cut): Dimension[] {
  const { box, isUpright, callSide } = cut;
  const wanted = wantedCalls(scene, section, callSide);
  return isUpright ? columnOfCalls(wanted, box, callSide) : callsAbove(wanted, box, callSide);
}

function wantedCalls(scene: Scene, section: Section, side: 1 | -1): Wanted[] {
  const { plane, shows, alike, piece } = section;
  const found = shows.flatMap((hole) => {
    const holes = piece ? [hole.hole.id] : alike.map((each) => each.hole.id);
    return callsFor(scene, section, hole, side).map((each) => ({ ...each, holes }));
  });
  return section.letter === "A" ? [...found, ...galleryCalls(scene, plane, side)] : found;
}

/** Calls in a column beside the cut, each with a level leader to its wall. */
function columnOfCalls(
  wanted: readonly Wanted[],
  box: Box,
  side: 1 | -1,
): Dimension[] {
  const sorted = [...wanted].sort((a, b) => a.point[1] - b.point[1]);
  const levels = spread(
    sorted.map(({ point }) => point[1]),
    sorted.map(() => PITCH_mm),
    [-1e6, 1e6],
  );
  const x = (side < 0 ? box.left : box.right) + side * COLUMN_mm;
  return sorted.map((each, i): Dimension => {
    const level = levels[i] ?? each.point[1];
    const knee: Point = [x - side * 2, level];
    return calledOut(each, [knee, [x, level]], side);
  });
}

/** Calls above the cut of a level hole, the one nearest to its mouth uppermost, so that no leaders cross. */
function callsAbove(
  wanted: readonly Wanted[],
  box: Box,
  side: 1 | -1,
): Dimension[] {
  // Words run inwards from their leaders, away from the mouth.
  const inwards = side < 0 ? 1 : -1;
  const sorted = [...wanted].sort((a, b) => (b.point[0] - a.point[0]) * inwards);
  return sorted.map((each, i): Dimension => {
    const level = box.top + 5 + i * PITCH_mm;
    const knee: Point = [each.point[0] + inwards * 2, level];
    return calledOut(each, [knee, [knee[0] + inwards * 2, level]], inwards);
  });
}

function calledOut(
  { says, point, holes }: Wanted,
  [knee, end]: readonly [Point, Point],
  side: 1 | -1,
): Dimension {
  return {
    kind: "dimension",
    layer: "dimensions",
    measure: "call-out",
    of: "bore",
    says,
    holes,
    marks: [
      arrow(point, knee),
      line(point, knee),
      line(knee, end),
      text(says, [end[0] + side * 0.7, end[1] - TEXT_mm / 2], {
        anchor: side < 0 ? "end" : "start",
        layer: "dimensions",
      }),
    ],
  };
}

function callsFor(
  { body, say }: Scene,
  { plane, piece }: Section,
  hole: Bored,
  side: 1 | -1,
): Omit<Wanted, "holes">[] {
  const across = unit(cross(hole.into, plane.toward));
  // Of an upright hole the wall on the column's side, of a level one the upper.
  const isUpright = Math.abs(dot(hole.into, plane.up)) > 0.9;
  const hand = isUpright
    ? Math.sign(dot(across, plane.right)) * side
    : Math.sign(dot(across, plane.up));
  return callsOf(hole, say).map(({ says, from, to, radius }) => {
    const wall = (depth: number) =>
      along(along(hole.entry, hole.into, depth), across, hand * radius(depth));
    const isShown = (at: Vec3) =>
      isWall(body, hole, at) && (!piece || (at[0] > piece[0] && at[0] < piece[1]));
    return {
      says,
      point: project(plane, wall(bestDepth(from, to, (depth) => isShown(wall(depth))))),
    };
  });
}

/** The middle of the longest part of a stretch where its wall is there, or of all of it. */
function bestDepth(from: number, to: number, isThere: (depth: number) => boolean): number {
  const COUNT = 200;
  let best: readonly [number, number] = [0, 0];
  let since: number | undefined;
  for (let i = 0; i <= COUNT; i++) {
    if (i < COUNT && isThere(from + (i + 0.5) / COUNT * (to - from))) {
      since ??= i;
    } else if (since !== undefined) {
      if (i - since > best[1] - best[0]) best = [since, i];
      since = undefined;
    }
  }
  const middle = best[1] > best[0] ? (best[0] + best[1]) / 2 / COUNT : 0.5;
  return from + middle * (to - from);
}

/** The gallery's bore where a section cuts it square. */
function galleryCalls({ body, say }: Scene, plane: Plane, side: 1 | -1): Wanted[] {
  const x = plane.through[0];
  return body.holes
    .filter(({ hole, into, entry, depth }) =>
      hole.feature === "gallery" && alignment(into, plane.toward) !== 0 &&
      Math.abs(x - entry[0]) < depth
    )
    .map((gallery) => {
      const [gx, gy] = project(plane, [x, gallery.entry[1], gallery.entry[2]]);
      const bore = gallery.steps[0]?.fromRadius ?? 0;
      const radius = bore * plane.scale;
      const angle = side < 0 ? Math.PI * 0.8 : Math.PI * 0.2;
      return {
        says: `${DIAMETER}${say(2 * bore)} gallery`,
        point: [gx + radius * Math.cos(angle), gy + radius * Math.sin(angle)],
        holes: [gallery.hole.id],
      };
    });
}
