/** Sheets with the faces at true scale, in pieces where the bar is longer than the paper. */
import type { Box } from "./boxes.ts";
import { acrossReach } from "./face_places.ts";
import { faceView } from "./face_view.ts";
import type { Orientation } from "./options.ts";
import { piecesOf, withHoles } from "./pieces.ts";
import { SCALES, scaleWords } from "./scale.ts";
import type { Block, Scene } from "./scene.ts";
import { type Section, sectionsOf } from "./sections.ts";
import type { Shape } from "./shapes.ts";
import { type Draft, fits, roomOn, setAt } from "./sheet.ts";
import { LONG_FACES } from "./strip.ts";

type LongFace = typeof LONG_FACES[number];

/** For the words at match lines and what reaches beyond the bar's ends [mm]. */
const ENDS_mm = 9;
const GAP_mm = 7;

/** The faces that have something to show, in the order in which one turns the bar. */
export function facesShown(scene: Scene): LongFace[] {
  return LONG_FACES.filter((face) =>
    face === "front" || scene.body.holes.some(({ hole }) => hole.face === face)
  );
}

/** The sheets. */
export function viewSheets(scene: Scene): Draft[] {
  const { body, options } = scene;
  const sides = acrossReach(scene) + ENDS_mm;
  const upright = roomOn(options.paper, "portrait");
  // An upright sheet holds more views of a short bar.
  const isShort = body.length + sides <= upright.right - upright.left;
  const orientation: Orientation = isShort ? "portrait" : "landscape";
  const room = roomOn(options.paper, orientation);
  const [scale, faces] = largestViews(scene, room, sides);
  const pages = paged(grouped(faces, room), room);
  return pages.map((blocks, i): Draft => ({
    kind: "views",
    name: pages.length === 1 ? "Views" : `Views, ${i + 1} of ${pages.length}`,
    scale: scaleWords(scale),
    orientation,
    shapes: stackedShapes(blocks, room),
  }));
}

/** For each face its pieces, at the largest scale up to 1:1 at which each fits a sheet by itself. */
function largestViews(scene: Scene, room: Box, sides: number): readonly [number, Block[][]] {
  const sections = sectionsOf(scene.body, 1);
  let views: readonly [number, Block[][]] = [1, []];
  for (const scale of SCALES.filter((each) => each <= 1)) {
    const longest = (room.right - room.left - sides) / scale;
    views = [
      scale,
      facesShown(scene).map((face) => piecesOfFace(scene, face, scale, longest, sections)),
    ];
    if (views[1].flat().every((each) => fits(each, room))) break;
  }
  return views;
}

function piecesOfFace(
  scene: Scene,
  face: LongFace,
  scale: number,
  longest: number,
  sections: readonly Section[],
): Block[] {
  const pieces = piecesOf(scene.body, longest);
  const own = scene.body.holes.filter(({ hole }) => hole.face === face);
  // The front is drawn to its end, as it has the bar's length.
  const drawn = face === "front" ? pieces : withHoles(pieces, own);
  return drawn.map((piece, i) => {
    const before = i > 0 ? `joins piece ${i}` : undefined;
    const isLast = i + 1 === drawn.length && drawn.length < pieces.length;
    const next = i + 1 < pieces.length ? `joins piece ${i + 2}` : undefined;
    const after = isLast ? "no holes beyond" : next;
    return faceView(scene, {
      face,
      piece,
      scale,
      sections,
      more: pieces.length > 1 ? `, piece ${i + 1} of ${pieces.length}` : "",
      // Seen from behind, the bar runs the other way.
      matches: face === "back" ? [after, before] : [before, after],
    });
  });
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { box }) => sum + box.top - box.bottom, GAP_mm * (blocks.length - 1));
}

/** Pieces of faces that stand below each other: as many faces as fit a sheet, piece by piece. */
function grouped(faces: readonly Block[][], room: Box): Block[][] {
  const stacks: Block[][][] = [];
  for (const face of faces) {
    const last = stacks.at(-1);
    const together = sideBySide([...last ?? [], face]);
    if (last && together.every((each) => heightOf(each) <= room.top - room.bottom)) last.push(face);
    else stacks.push([face]);
  }
  return stacks.flatMap(sideBySide);
}

/** The first pieces of all faces, then the second ones, and so on; some faces have fewer. */
function sideBySide(faces: readonly (readonly Block[])[]): Block[][] {
  const count = Math.max(...faces.map((face) => face.length));
  return Array.from({ length: count }, (_, i) => faces.flatMap((face) => face[i] ?? []));
}

/** Groups on sheets, in order, as many as fit on each. */
function paged(groups: readonly Block[][], room: Box): Block[][] {
  const pages: Block[][] = [];
  for (const group of groups) {
    const last = pages.at(-1);
    if (last && heightOf([...last, ...group]) <= room.top - room.bottom) last.push(...group);
    else pages.push([...group]);
  }
  return pages;
}

/** Blocks below each other, their bars in line where they fit so. */
function stackedShapes(blocks: readonly Block[], room: Box): Shape[] {
  const width = room.right - room.left;
  const left = Math.min(...blocks.map(({ box }) => box.left));
  const right = Math.max(...blocks.map(({ box }) => box.right));
  const inLine = right - left <= width;
  const free = (room.top - room.bottom - heightOf(blocks)) / (blocks.length + 1);
  let top = room.top - Math.min(free, 2 * GAP_mm);
  return blocks.flatMap((each) => {
    const { box } = each;
    const start = inLine
      ? room.left + (width - right + left) / 2 - left + box.left
      : room.left + (width - box.right + box.left) / 2;
    const shapes = setAt(each, start, top);
    top -= box.top - box.bottom + GAP_mm + Math.min(free, 2 * GAP_mm);
    return shapes;
  });
}
