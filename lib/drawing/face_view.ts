/** A face of the bar on paper: edges, numbers of its holes, and their places from the datum. */
import type { Face } from "@/lib/layout/mod.ts";
import { ballooned, balloons } from "./balloons.ts";
import type { Bored } from "./body.ts";
import { centreLines, withoutTwins } from "./centre_lines.ts";
import { clipped } from "./clip.ts";
import { type Frame, frameOf } from "./face_frame.ts";
import { placesAcross, placesAlong } from "./face_places.ts";
import { line, text } from "./ink.ts";
import { PLANE_ROW_mm, planeMarks } from "./plane_marks.ts";
import { viewOf } from "./projection.ts";
import { type Block, drawnOnce, FACE_TITLES, type Scene } from "./scene.ts";
import type { Section } from "./sections.ts";
import type { Mark, Shape } from "./shapes.ts";
import { titled } from "./titled.ts";
import { viewMarks } from "./view_marks.ts";

/** What of a face is drawn, and how. */
export interface FacePiece {
  readonly face: Exclude<Face, "datum-end" | "far-end">;
  /** From where to where along the bar, from the datum end [mm]. */
  readonly piece: readonly [from: number, to: number];
  readonly scale: number;
  /** Sections whose planes it marks. */
  readonly sections: readonly Section[];
  /** What the title says after the face's name: like "sheet 2 of 3". */
  readonly more?: string;
  /** Words at the match lines before and after this piece. */
  readonly matches?: readonly [before: string | undefined, after: string | undefined];
}

/** Draws it. */
export function faceView(scene: Scene, given: FacePiece): Block {
  const { body } = scene;
  const { face, scale } = given;
  const view = viewOf(face, scale);
  const frame = frameOf(scene, view, given.piece);
  const isFront = face === "front";
  const own = body.holes.filter(({ hole }) => hole.face === face);
  const drawn = drawnOnce(scene, `${face} ${scale}`, () => [
    ...viewMarks(body, view, (hole) => isFront || Math.abs(hole.into[0]) > 0.9),
    ...body.holes
      .filter((hole) => isFront || own.includes(hole) || isThere(hole, face))
      .flatMap((hole) => centreLines(body, view, hole)),
  ]);
  const planes = isFront
    ? planeMarks(given.sections, view, [frame.low, frame.high], frame.room)
    : { marks: [], rows: 0 };
  const lane = planes.rows * PLANE_ROW_mm;
  const shapes: Shape[] = [
    ...clipped(withoutTwins(drawn), frame.left, frame.right),
    ...planes.marks,
    ...placesAlong(scene, view, own, frame, lane),
    ...placesAcross(scene, view, own, frame),
    ...balloons(
      own.filter(({ entry }) => isHere(entry[0], given.piece)).map((each) =>
        ballooned(scene, view, each)
      ),
      frame.high + lane + 2,
      frame.room,
    ),
    ...matchLines(frame, given.matches ?? [undefined, undefined]),
  ];
  return titled(`${FACE_TITLES[face]}${given.more ?? ""}`, shapes, frame.room);
}

/** Whether a hole's axis matters on a face that it isn't drilled from: along the bar, or coming out. */
function isThere({ hole, into }: Bored, face: Face): boolean {
  return hole.exit === face || Math.abs(into[0]) > 0.9;
}

function isHere(x: number, [from, to]: readonly [number, number]): boolean {
  return x >= from && x <= to;
}

/** Where this piece is joined to its neighbours. */
function matchLines(
  { room, low, high, hasLeft, hasRight }: Frame,
  words: readonly [string | undefined, string | undefined],
): Mark[] {
  return ([0, 1] as const).flatMap((end): Mark[] => {
    if (end === 0 ? hasLeft : hasRight) return [];
    const x = room[end];
    const side = end === 0 ? -1 : 1;
    const middle = (low + high) / 2;
    return [
      line([x, low - 4], [x, high + 4], "frame", "04.1"),
      ...[low, high].map((level) =>
        ({
          kind: "solid",
          layer: "frame",
          points: [[x, level], [x + side * 2.2, level + 1.1], [x + side * 2.2, level - 1.1]],
        }) as const
      ),
      text(words[end] ?? "", [x + (side < 0 ? -1.6 : 4.1), middle], {
        anchor: "middle",
        turned: 90,
      }),
    ];
  });
}
