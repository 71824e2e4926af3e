/** Depths in a section, from the face that each hole is drilled from. */
import type { Bored } from "./body.ts";
import { project } from "./projection.ts";
import { running, type Stop } from "./running.ts";
import type { Scene } from "./scene.ts";
import type { Cut } from "./section_calls.ts";
import type { Plane } from "./section_marks.ts";
import type { Section } from "./sections.ts";
import type { Dimension } from "./shapes.ts";
import { along } from "./vector.ts";

/** Running dimensions of depth; those of a hole that goes on beyond a broken end are left to its call. */
export function sectionDepths(scene: Scene, { plane, shows }: Section, cut: Cut): Dimension[] {
  const { box, isUpright, depthSide: side } = cut;
  const inner = shows.filter(({ hole }) => hole.exit === undefined);
  const stops = inner.flatMap((hole) => stopsOf(hole, plane, cut))
    .filter(({ at }) => isUpright || (at >= box.left - 1e-6 && at <= box.right + 1e-6));
  const [first] = inner;
  if (first === undefined || stops.length === 0) return [];
  const [ex, ey] = project(plane, first.entry);
  const edge = isUpright ? box.right : box.bottom;
  return running({
    datum: { at: isUpright ? ey : ex, from: edge + side },
    stops,
    line: edge + side * CLEAR_mm,
    away: side,
    axis: isUpright ? "y" : "x",
    room: [-Infinity, Infinity],
    say: scene.say,
  });
}

/** From the cut to the line of dimensions [mm]. */
const CLEAR_mm = 7;

/** Where each stretch of a hole ends, and its full thread; a drill's point is left to the drill. */
function stopsOf({ hole, entry, into, steps, thread }: Bored, plane: Plane, cut: Cut): Stop[] {
  const ends = steps.filter((step) => step.cut !== "tip")
    .map(({ to, fromRadius, toRadius }) => [to, Math.max(fromRadius, toRadius)] as const);
  const all = thread ? [...ends, [thread.to, thread.radius] as const] : ends;
  const different = all.filter(([depth], i) =>
    all.findIndex(([other]) => Math.abs(other - depth) < 1e-3) === i
  );
  return different.map(([depth, radius]): Stop => {
    const [x, y] = project(plane, along(entry, into, depth));
    const aside = cut.depthSide * (radius * plane.scale + 0.6);
    return {
      at: cut.isUpright ? y : x,
      value: depth,
      from: (cut.isUpright ? x : y) + aside,
      holes: [hole.id],
      of: "depth",
      measure: "depth",
    };
  });
}
