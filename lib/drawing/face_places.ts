/** Places of a face's holes: along the bar from its datum end, and across it. */
import type { Body, Bored } from "./body.ts";
import { BEYOND_mm, reach } from "./centre_lines.ts";
import type { Frame } from "./face_frame.ts";
import { line } from "./ink.ts";
import { project, type Projection } from "./projection.ts";
import { chainReach, running, type Stop } from "./running.ts";
import type { Scene } from "./scene.ts";
import type { Mark, Point, Shape } from "./shapes.ts";

/** From an edge of the view to its dimensions [mm]. */
const CLEAR_mm = 7;

/** Places along the bar, from its datum end; on the front view the length as well. */
export function placesAlong(
  scene: Scene,
  view: Projection,
  own: readonly Bored[],
  frame: Frame,
  lane: number,
): Shape[] {
  const { body, say } = scene;
  const stops = own.map((hole): Stop => {
    const [at, level] = project(view, hole.entry);
    return {
      at,
      value: hole.entry[0],
      from: level - reach(view, hole) - 0.6,
      holes: [hole.hole.id],
      of: "along",
    };
  });
  const isFront = view.toward[1] < -0.5;
  if (isFront) {
    stops.push({
      at: project(view, [body.length, 0, 0])[0],
      value: body.length,
      from: frame.low - 1,
      holes: [],
      of: "length",
      measure: "length",
    });
  }
  if (stops.length === 0) return [];
  return running({
    datum: { at: project(view, [0, 0, 0])[0], from: frame.low - 1 },
    stops,
    line: frame.low - lane - CLEAR_mm,
    away: -1,
    axis: "x",
    room: frame.room,
    say,
  });
}

/** Places across the face: from the bar's edge, or of a round bar from its axis. */
export function placesAcross(
  scene: Scene,
  view: Projection,
  own: readonly Bored[],
  frame: Frame,
): Shape[] {
  const { body, say } = scene;
  const hasDatum = view.right[0] > 0 ? frame.hasLeft : frame.hasRight;
  if (!hasDatum) return [];
  const side = view.right[0] > 0 ? -1 : 1;
  const edge = side < 0 ? frame.room[0] : frame.room[1];
  const isLevel = Math.abs(view.toward[2]) > 0.5;
  const middle = isLevel ? 0 : body.height / 2;
  const datum = body.round ? middle : isLevel ? -body.width / 2 : 0;
  const levelOf = (value: number) => project(view, isLevel ? [0, value, 0] : [0, 0, value])[1];
  const across = ({ entry }: Bored) => isLevel ? entry[1] : entry[2];
  const off = own.filter((hole) => !body.round || Math.abs(across(hole) - middle) > 1e-3);
  const stops = off.map((hole): Stop => ({
    at: levelOf(across(hole)),
    value: across(hole) - datum,
    from: edge + side * (BEYOND_mm + 0.8),
    holes: [hole.hole.id],
    of: "across",
  }));
  if (stops.length === 0) return [];
  return [
    ...rowLines(body, view, own, frame),
    ...running({
      datum: { at: levelOf(datum), from: edge + side },
      stops,
      line: edge + side * CLEAR_mm,
      away: side,
      axis: "y",
      room: [-Infinity, Infinity],
      say,
    }),
  ];
}

/** From the bar's end to where a row's first hole would be, if none of it is in this piece [mm]. */
const STUB_mm = 8;

/** The axes of rows of holes, from the end that they are dimensioned at to the nearest hole. */
function rowLines(body: Body, view: Projection, own: readonly Bored[], frame: Frame): Mark[] {
  const side = view.right[0] > 0 ? -1 : 1;
  const edge = side < 0 ? frame.room[0] : frame.room[1];
  const axes = body.holes.filter(({ into }) => Math.abs(into[0]) > 0.9)
    .map(({ entry }) => project(view, entry)[1]);
  const rows = new Map<string, Point[]>();
  for (const hole of own) {
    const at = project(view, hole.entry);
    const key = at[1].toFixed(2);
    // Along the gallery there is a line already.
    if (axes.every((axis) => Math.abs(at[1] - axis) > 0.02)) {
      rows.set(key, [...rows.get(key) ?? [], at]);
    }
  }
  return [...rows.values()].map((places) => {
    const [, level] = places[0] ?? [0, 0];
    const near = Math.min(...places.map(([x]) => (edge - x) * side));
    const isHere = near <= frame.room[1] - frame.room[0];
    const end = edge - side * (isHere ? near : STUB_mm);
    return line([edge + side * BEYOND_mm, level], [end, level], "centre", "04.1");
  });
}

/** How far the figures of a face's places across reach beyond the bar's end. */
export function acrossReach(scene: Scene): number {
  const values = [scene.body.width, scene.body.height, -scene.body.height];
  const stops = values.map((value): Stop => ({
    at: 0,
    value: value + 0.11,
    from: 0,
    holes: [],
    of: "",
  }));
  return CLEAR_mm + chainReach(stops, scene.say);
}
