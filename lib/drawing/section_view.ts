/** A section on paper: what is cut, each stretch of its holes called out, depths from the face. */
import { cloud, CLOUD_mm, troubleWords } from "./balloons.ts";
import type { Bored } from "./body.ts";
import { type Box, boxAround, widthOf } from "./boxes.ts";
import { BEYOND_mm, centreLines, withoutTwins } from "./centre_lines.ts";
import { clipped } from "./clip.ts";
import { path, text } from "./ink.ts";
import { TEXT_mm, TITLE_mm } from "./line_types.ts";
import { project } from "./projection.ts";
import { scaleWords } from "./scale.ts";
import { type Block, block, numberOf, type Scene } from "./scene.ts";
import { type Cut, sectionCalls } from "./section_calls.ts";
import { sectionDepths } from "./section_depths.ts";
import { sectionMarks } from "./section_marks.ts";
import type { Section } from "./sections.ts";
import type { Mark, Point, Shape } from "./shapes.ts";
import { alignment, along, dot } from "./vector.ts";

/** Draws a section with its figures. */
export function sectionView(scene: Scene, section: Section): Block {
  const { body, troubles } = scene;
  const { plane, shows, piece } = section;
  const [left = -Infinity, right = Infinity] = piece?.map((x) => project(plane, [x, 0, 0])[0]) ??
    [];
  const edges = clipped(sectionMarks(body, plane), left, right);
  const centres = inSight(section, body.holes).flatMap((hole) => centreLines(body, plane, hole));
  const cut = cutOf(section, boxAround(edges));
  const inTrouble = shows.filter(({ hole }) => troubles.has(hole.id));
  return headed(scene, section, [
    ...edges,
    ...clipped(withoutTwins(centres), left - BEYOND_mm, right + BEYOND_mm),
    ...breaks(section, cut.box, body.length),
    ...sectionCalls(scene, section, cut),
    ...sectionDepths(scene, section, cut),
    ...inTrouble.flatMap((hole) =>
      cloud(project(plane, hole.entry), hole.widest * plane.scale + CLOUD_mm)
    ),
  ]);
}

/** Whether a hole's axis is in the plane or square to it, so that its centre line shows. */
function inSight({ plane, piece }: Section, holes: readonly Bored[]): Bored[] {
  return holes.filter(({ entry, into, depth }) => {
    if (alignment(into, plane.toward) !== 0) {
      const behind = dot(along(plane.through, entry, -1), into);
      return behind >= 0 && behind <= depth;
    }
    const off = dot(along(entry, plane.through, -1), plane.toward);
    const isIn = Math.abs(off) < 1e-6 && Math.abs(dot(into, plane.toward)) < 1e-6;
    return isIn && (piece === undefined || Math.abs(into[0]) > 0.9);
  });
}

/** Calls stand left of an upright hole, and run inwards from a level one's mouth; depths opposite or below. */
function cutOf({ plane, shows }: Section, box: Box): Cut {
  const into = shows[0]?.into ?? plane.up;
  if (Math.abs(dot(into, plane.up)) > 0.9) {
    return { box, isUpright: true, callSide: -1, depthSide: 1 };
  }
  return { box, isUpright: false, callSide: dot(into, plane.right) > 0 ? -1 : 1, depthSide: -1 };
}

/** A line by free hand where a piece of a long bar ends. */
function breaks({ piece, plane }: Section, { bottom, top }: Box, length: number): Mark[] {
  return (piece ?? []).filter((x) => x > 1e-6 && x < length - 1e-6).map((x) => {
    const [at] = project(plane, [x, 0, 0]);
    const COUNT = 24;
    const points = Array.from({ length: COUNT + 1 }, (_, i): Point => {
      const share = i / COUNT;
      const sway = 0.9 * Math.sin(7 * share) + 0.45 * Math.sin(19 * share + 1);
      return [at + sway, bottom - 1 + share * (top - bottom + 2)];
    });
    return path(points, "outline", "01.1");
  });
}

/** The title above: letters, scale where it isn't the sheet's, and which holes are alike. */
function headed(scene: Scene, section: Section, shapes: readonly Shape[]): Block {
  const { title, plane, alike, piece } = section;
  const box = boxAround(shapes);
  const scale = plane.scale === 1 ? "" : ` (${scaleWords(plane.scale)})`;
  const numbers = alike.map((hole) => numberOf(scene, hole));
  const holes = alike.length > 1 ? "holes" : "hole";
  const names = piece
    ? `${holes} ${numbers.join(", ")}`
    : `${holes} ${numbers.join(", ")}: ${alike[0]?.hole.title ?? ""}${
      alike.length > 1 ? " and alike" : ""
    }`;
  const lines = [
    ...alike.flatMap((hole) => {
      const says = scene.troubles.get(hole.hole.id);
      return says === undefined ? [] : [troubleWords(numberOf(scene, hole), says)];
    }),
    names,
  ];
  const middle = (box.left + box.right) / 2;
  const widest = Math.max(...lines.map((each) => widthOf(each, TEXT_mm)));
  const left = Math.min(box.left, middle - widest / 2);
  const words = lines.map((says, i) =>
    text(says, [left, box.top + 3 + i * 1.7 * TEXT_mm], {
      layer: says.startsWith("TROUBLE") ? "trouble" : "text",
    })
  );
  const head = text(title + scale, [left, box.top + 3.6 + lines.length * 1.7 * TEXT_mm], {
    height: TITLE_mm,
  });
  return block(title, [...shapes, ...words, head]);
}
