/** Marking-out strips: a face at true scale to glue on the bar, with a cross and place for each hole. */
import type { Face } from "@/lib/layout/mod.ts";
import type { Bored } from "./body.ts";
import { type Box, boxOfText, overlap, widthOf } from "./boxes.ts";
import { line, rectangle, text } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import { project, type Projection, viewOf } from "./projection.ts";
import { type Block, block, FACE_TITLES, numberOf, type Scene } from "./scene.ts";
import type { Mark, Point, Shape } from "./shapes.ts";

/** Faces along the bar, in the order in which one turns it. */
export const LONG_FACES = ["injectors", "front", "opposite", "back"] as const;

/** Which face, and from where to where along the bar [mm]. */
export interface StripPiece {
  readonly face: typeof LONG_FACES[number];
  readonly piece: readonly [from: number, to: number];
  /** Whether the rest of the face is left out, as it has no holes. */
  readonly isLast: boolean;
}

/** Draws a piece of a strip. */
export function strip(scene: Scene, { face, piece, isLast }: StripPiece): Block {
  const { body } = scene;
  const view = viewOf(face, 1);
  const ends = piece.map((x) => project(view, [x, 0, 0])[0]);
  const [left, right] = [Math.min(...ends), Math.max(...ends)];
  const [low, high] = edgesOf(scene, view);
  const holes = body.holes.filter(({ hole, entry }) =>
    hole.face === face && entry[0] >= piece[0] && entry[0] <= piece[1]
  );
  const marks: Mark[] = [
    rectangle([left, low], [right, high], "outline", "01.1"),
    ...holes.flatMap((hole) => crossOf(scene, view, hole, [low, high])),
  ];
  const taken: Box[] = holes.map((hole) =>
    roundBox(placeOf(scene, view, hole), Math.max(4, hole.widest + 1))
  );
  const words = holes.flatMap((hole) => {
    const trouble = scene.troubles.has(hole.hole.id) ? " TROUBLE" : "";
    const says = `${numberOf(scene, hole)}: ${scene.say(hole.entry[0])}${trouble}`;
    return placed(says, placeOf(scene, view, hole), { left, right, bottom: low, top: high }, taken);
  });
  const cuts = cutWords(scene, piece, view, isLast);
  return block(`${FACE_TITLES[face]}`, [
    ...marks,
    ...words,
    ...heading(scene, face, [left, high]),
    ...endWords(cuts, [left, right], (low + high) / 2),
  ]);
}

/** The strip's edges: those of the face, or of a round bar half of its girth. */
function edgesOf({ body }: Scene, view: Projection): readonly [number, number] {
  const isLevel = Math.abs(view.toward[2]) > 0.5;
  if (body.round) {
    const half = Math.PI * body.height / 8;
    return [-half, half];
  }
  if (!isLevel) return [0, body.height];
  return [-body.width / 2, body.width / 2];
}

/** A hole's place on the strip; on a round bar as far as the paper goes round it. */
function placeOf({ body }: Scene, view: Projection, hole: Bored): Point {
  const [x, y] = project(view, hole.entry);
  if (!body.round) return [x, y];
  const radius = body.height / 2;
  const off = Math.abs(view.toward[2]) > 0.5 ? y : y - radius;
  return [x, radius * Math.asin(Math.max(-1, Math.min(1, off / radius)))];
}

function crossOf(
  scene: Scene,
  view: Projection,
  hole: Bored,
  [low, high]: readonly [number, number],
): Mark[] {
  const at = placeOf(scene, view, hole);
  const [x, y] = at;
  const half = Math.max(4, hole.widest + 1);
  const mouth = hole.steps[0]?.fromRadius ?? 0;
  return [
    line([x, Math.max(low, y - half)], [x, Math.min(high, y + half)], "centre", "01.1"),
    line([x - half, y], [x + half, y], "centre", "01.1"),
    { kind: "circle", layer: hole.layer, type: "01.1", centre: at, radius: mouth },
    { kind: "circle", layer: "centre", type: "01.1", centre: at, radius: 0.5 },
  ];
}

function roundBox([x, y]: Point, radius: number): Box {
  return { left: x - radius, right: x + radius, bottom: y - radius, top: y + radius };
}

/** Sets a word near a hole where nothing else stands: on the strip if it can be, else beside it. */
function placed(says: string, [x, y]: Point, room: Box, taken: Box[]): Mark[] {
  const half = widthOf(says, TEXT_mm) / 2;
  const middle = Math.max(room.left + half, Math.min(room.right - half, x));
  const onStrip = [room.bottom + 1, room.top - TEXT_mm - 1].map((level): Point => [middle, level]);
  const beside: Point[] = [];
  for (let row = 0; row < 12; row++) beside.push([middle, room.bottom - 5 - row * 1.8 * TEXT_mm]);
  for (const at of [...onStrip, ...beside]) {
    const word = text(says, at, { anchor: "middle" });
    const box = boxOfText(word);
    if (taken.some((each) => overlap(each, box))) continue;
    taken.push(box);
    const isBeside = at[1] < room.bottom;
    return isBeside
      ? [word, line([x, y], [x, at[1] + TEXT_mm + 0.6], "dimensions", "01.1")]
      : [word];
  }
  return [];
}

function heading({ body, say }: Scene, face: Face, [left, high]: Point): Shape[] {
  const width = body.round ? "a quarter of the girth" : "the face";
  return [
    text(
      `${FACE_TITLES[face]}: as wide as ${width}, places from the datum end (bar ${
        say(body.length)
      } long)`,
      [
        left,
        high + 2.5,
      ],
    ),
  ];
}

/** What to say at both ends of a piece. */
function cutWords(
  { body }: Scene,
  [from, to]: readonly [number, number],
  view: Projection,
  isLast: boolean,
): readonly [string, string] {
  const first = from <= 1e-6 ? "datum end" : "join here";
  const last = to >= body.length - 1e-6 ? "far end" : isLast ? "last piece" : "join here";
  return view.right[0] > 0 ? [first, last] : [last, first];
}

function endWords(
  [first, last]: readonly [string, string],
  [left, right]: readonly [number, number],
  middle: number,
): Shape[] {
  return [
    text(first, [left - 1.5, middle], { anchor: "middle", turned: 90 }),
    text(last, [right + 4, middle], { anchor: "middle", turned: 90 }),
  ];
}
