/** The overview: all views where the projection sets them, small, with sizes in brackets. */
import { type Ballooned, ballooned, balloons } from "./balloons.ts";
import type { Bored } from "./body.ts";
import { type Box, boxAround } from "./boxes.ts";
import { DIAMETER } from "./callout.ts";
import { centreLines, withoutTwins } from "./centre_lines.ts";
import { text } from "./ink.ts";
import { linear } from "./linear.ts";
import { moved } from "./moved.ts";
import { projectionOf } from "./options.ts";
import { viewOf } from "./projection.ts";
import { largestScale, scaleWords } from "./scale.ts";
import { type Block, block, FACE_TITLES, type Scene } from "./scene.ts";
import type { Shape } from "./shapes.ts";
import { type Draft, fits, roomOn } from "./sheet.ts";
import { viewMarks } from "./view_marks.ts";
import { facesShown } from "./view_sheets.ts";

type Face = "front" | "injectors" | "opposite" | "back" | "datum-end" | "far-end";

/** Between views, across and down [mm]. */
const GAP_mm = 7;
const DOWN_mm = 10;

/** The sheet. */
export function overview(scene: Scene): Draft {
  const room = roomOn(scene.options.paper, "landscape");
  const scale = largestScale((wish) => fits(arranged(scene, wish), room), 1);
  const { shapes, box } = arranged(scene, scale);
  return {
    kind: "overview",
    name: "Overview",
    scale: scaleWords(scale),
    orientation: "landscape",
    shapes: moved(
      shapes,
      room.left - box.left + (room.right - room.left - box.right + box.left) / 2,
      room.bottom - box.bottom + (room.top - room.bottom - box.top + box.bottom) / 2,
    ),
  };
}

/** All views about the front view, each with its holes' numbers. */
function arranged(scene: Scene, scale: number): Block {
  const shown = facesShown(scene);
  const isFirst = projectionOf(scene.options) === "first-angle";
  const [above, below]: Face[] = isFirst ? ["injectors", "opposite"] : ["opposite", "injectors"];
  const front = small(scene, "front", scale);
  const upper = shown.some((face) => face === above) ? small(scene, above as Face, scale) : [];
  const lower = shown.some((face) => face === below) ? small(scene, below as Face, scale) : [];
  const behind = shown.includes("back") ? small(scene, "back", scale) : [];
  const hasFar = scene.body.holes.some(({ hole }) => hole.face === "far-end");
  const datum = small(scene, "datum-end", scale);
  const far = hasFar ? small(scene, "far-end", scale) : [];
  // In first angle what is seen from the left stands on the right.
  const [left, right] = isFirst ? [far, datum] : [datum, far];
  const box = boxAround(front);
  const column = [
    ...front,
    ...over(upper, box.top + DOWN_mm),
    ...under(lower, box.bottom - DOWN_mm),
  ];
  const back = under(behind, boxAround(column).bottom - DOWN_mm);
  // Clear of the whole column, as words may reach farther than the front view.
  const middle = [...column, ...back];
  const whole = boxAround(middle);
  return block("Overview", [...middle, ...beside(right, whole, 1), ...beside(left, whole, -1)]);
}

function over(shapes: readonly Shape[], level: number): Shape[] {
  return moved(shapes, 0, level - boxAround(shapes).bottom);
}

function under(shapes: readonly Shape[], level: number): Shape[] {
  return moved(shapes, 0, level - boxAround(shapes).top);
}

function beside(shapes: readonly Shape[], to: Box, side: 1 | -1): Shape[] {
  const box = boxAround(shapes);
  return moved(shapes, side > 0 ? to.right + GAP_mm - box.left : to.left - GAP_mm - box.right, 0);
}

/** A view with numbers, its name and the bar's sizes. */
function small(scene: Scene, face: Face, scale: number): Shape[] {
  const { body } = scene;
  const view = viewOf(face, scale);
  const isEnd = face === "datum-end" || face === "far-end";
  const own = body.holes.filter(({ hole }) => hole.face === face);
  const shows = ({ into }: Bored) => face === "front" || Math.abs(into[0]) > 0.9;
  const drawn = [
    ...viewMarks(body, view, shows),
    ...withoutTwins(
      [...own, ...body.holes.filter((each) => shows(each) || each.hole.exit === face)].flatMap((
        hole,
      ) => centreLines(body, view, hole)),
    ),
  ];
  const box = boxAround(drawn);
  const numbers = balloons(
    own.map((hole) => isEnd ? brief(ballooned(scene, view, hole)) : ballooned(scene, view, hole)),
    box.top + 1,
    [box.left - 3, box.right + 3],
  );
  const shapes: Shape[] = [...drawn, ...numbers, ...sizes(scene, face, scale)];
  const named = [
    ...shapes,
    text(FACE_TITLES[face], [box.left, boxAround(shapes).bottom - 4.6]),
  ];
  // The back view runs from right to left; so it comes to lie below the others.
  return face === "back" ? moved(named, body.length * scale, 0) : named;
}

/** Beside the other views there is no room for reasons: they stand on the other sheets. */
function brief(hole: Ballooned): Ballooned {
  return { ...hole, trouble: hole.trouble === undefined ? undefined : "" };
}

function sizes({ body, say }: Scene, face: Face, scale: number): Shape[] {
  const base = { from: -1, line: -6, brackets: true, say };
  const half = body.width / 2 * scale;
  const { length, width, height } = body;
  if (face === "front") {
    return [linear({ ...base, axis: "x", ends: [0, length * scale], value: length, of: "length" })];
  }
  if (face !== "datum-end") return [];
  const across = { ...base, axis: "x", ends: [-half, half] } as const;
  if (body.round) return [linear({ ...across, value: height, of: "diameter", sign: DIAMETER })];
  const up = { axis: "y", ends: [0, height * scale], from: half + 1, line: half + 7 } as const;
  return [
    linear({ ...across, value: width, of: "width" }),
    linear({ ...base, ...up, value: height, of: "height" }),
  ];
}
