/** A view of the rail from outside: what is seen, and what is hidden in dashes. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import { type Body, type Bored, isBored, isInBar, isInOther, isWall } from "./body.ts";
import {
  exitRim,
  isSquareMouth,
  meeting,
  mouthRim,
  skinNormal,
  stepCircle,
  stepLine,
  stepsOf,
  wallLines,
} from "./edges.ts";
import { project, projected, type Projection } from "./projection.ts";
import type { Layer, LineType, Mark, Point } from "./shapes.ts";
import { type Part, partsWhere, straight, type Trace } from "./trace.ts";
import { alignment, along, dot } from "./vector.ts";

type Holds = (place: Vec3) => boolean;

/** What collects the marks of one view. */
interface Sheet {
  readonly body: Body;
  readonly view: Projection;
  readonly marks: Mark[];
}

/**
 * Draws the rail as seen from outside.
 *
 * @param body The rail.
 * @param view Where from.
 * @param shows Whether a hole's hidden edges are drawn too.
 * @returns Outline and edges, without centre lines.
 */
export function viewMarks(body: Body, view: Projection, shows: (hole: Bored) => boolean): Mark[] {
  const sheet: Sheet = { body, view, marks: outline(body, view) };
  for (const hole of body.holes) {
    const facing = alignment(hole.into, view.toward);
    if (facing !== 0) seenEndOn(sheet, hole, facing, shows(hole));
    else if (Math.abs(dot(hole.into, view.toward)) < 1e-6) seenFromAside(sheet, hole, shows(hole));
    else seenAslant(sheet, hole, shows(hole));
  }
  return withoutRepeats(sheet.marks);
}

/** The bar's own edges. */
export function outline(body: Body, view: Projection): Mark[] {
  const { length, height, width } = body;
  const base = { layer: "outline", type: "01.2" } as const;
  if (body.round && Math.abs(view.toward[0]) > 0.5) {
    const centre = project(view, [0, 0, height / 2]);
    return [{ kind: "circle", ...base, centre, radius: height / 2 * view.scale }];
  }
  const [a, b] = [[0, -width / 2, 0], [length, width / 2, height]] as [Vec3, Vec3];
  const [[ax, ay], [bx, by]] = [project(view, a), project(view, b)];
  const points: Point[] = [[ax, ay], [bx, ay], [bx, by], [ax, by]];
  return [{ kind: "polyline", ...base, points, closed: true }];
}

function add(sheet: Sheet, trace: Trace, holds: Holds, layer: Layer, type: LineType): void {
  for (const part of partsWhere(trace, holds)) addPart(sheet, trace, part, layer, type);
}

function addPart(
  { view, marks }: Sheet,
  trace: Trace,
  part: Part,
  layer: Layer,
  type: LineType,
): void {
  marks.push(projected(view, trace, part, layer, type));
}

/** Along its axis: circles, visible as far as each is no wider than those before it. */
function seenEndOn(sheet: Sheet, hole: Bored, facing: 1 | -1, showsHidden: boolean): void {
  const { body } = sheet;
  const free: Holds = (place) => !isInOther(body, hole, place);
  let least = Infinity;
  for (const [depth, radius] of stepsOf(hole)) {
    const seen = facing === -1 && radius <= least;
    if (seen) least = radius;
    const trace = stepCircle(hole, depth, radius);
    // On a round bar the mouth's rim lies below the circle at its crown.
    const holds = depth === 0 ? free : (place: Vec3) => isWall(body, hole, place);
    if (seen) add(sheet, trace, holds, hole.layer, "01.2");
    else if (showsHidden) add(sheet, trace, holds, "hidden", "02.1");
  }
  if (facing === 1 && exitRim(body, hole).length > 0) {
    const radius = hole.steps.at(-1)?.toRadius ?? 0;
    add(sheet, stepCircle(hole, hole.depth, radius), free, hole.layer, "01.2");
  }
  if (facing === -1 && hole.thread) {
    // Three quarters of a narrow circle: ISO 6410-1.
    const circle = stepCircle(hole, hole.thread.from, hole.thread.radius);
    addPart(sheet, circle, threeQuarters(sheet.view, circle), "threads", "01.1");
  }
}

/** The part of a circle that leaves out its upper right quarter. */
export function threeQuarters(view: Projection, trace: Trace): Part {
  const centre = project(view, trace.circle?.centre ?? [0, 0, 0]);
  for (let quarter = 0; quarter < 4; quarter++) {
    const [x, y] = project(view, trace.at(((quarter + 0.5) / 4) % 1));
    if (x > centre[0] && y > centre[1]) return [(quarter + 1) / 4 + 0.01, (quarter + 4) / 4 - 0.01];
  }
  return [0, 0.75];
}

/** Square to its axis: walls, steps and thread, all hidden. */
function seenFromAside(sheet: Sheet, hole: Bored, showsHidden: boolean): void {
  const { body, view } = sheet;
  rims(sheet, hole, showsHidden);
  if (!showsHidden) return;
  const wall: Holds = (place) => isWall(body, hole, place);
  const below: Holds = (place) => isInBar(body, place, 0.01) && !isInOther(body, hole, place);
  for (const trace of wallLines(hole, view.toward)) add(sheet, trace, wall, "hidden", "02.1");
  for (const [depth, radius] of stepsOf(hole)) {
    add(sheet, stepLine(hole, view.toward, depth, radius), below, "hidden", "02.1");
  }
  for (const trace of threadLines(hole, view.toward)) add(sheet, trace, below, "threads", "02.1");
  for (const trace of meetings(body, hole)) add(sheet, trace, () => true, "hidden", "02.1");
}

/** Where a hole enters those that it is meant to open into, unless it only widens one on its own axis. */
export function meetings(body: Body, hole: Bored): Trace[] {
  return body.holes
    .filter((each) => hole.hole.opensInto.includes(each.hole.id))
    .filter((each) => alignment(each.into, hole.into) === 0)
    .flatMap((each) => meeting(body, hole, each));
}

/** The thread's major diameter on both sides, and where full thread ends. */
export function threadLines(hole: Bored, toward: Vec3): Trace[] {
  const { thread } = hole;
  if (!thread) return [];
  const [from, to] = [thread.from, thread.to].map((depth) =>
    stepLine(hole, toward, depth, thread.radius)
  ) as [Trace, Trace];
  return [straight(from.at(0), to.at(0)), straight(from.at(1), to.at(1)), to];
}

/** Mouth and exit where they aren't circles that this view sees edge-on. */
function rims(sheet: Sheet, hole: Bored, showsHidden: boolean): void {
  const { body, view } = sheet;
  if (isSquareMouth(body, hole)) return;
  for (const trace of [...mouthRim(body, hole), ...exitRim(body, hole)]) {
    const faces = (place: Vec3) => dot(skinNormal(body, place), view.toward);
    add(sheet, trace, (place) => faces(place) > 1e-3, hole.layer, "01.2");
    if (showsHidden) add(sheet, trace, (place) => faces(place) < -1e-3, "hidden", "02.1");
  }
}

/** At an angle: ellipses and the walls between them. */
function seenAslant(sheet: Sheet, hole: Bored, showsHidden: boolean): void {
  const { body, view } = sheet;
  rims(sheet, hole, showsHidden);
  const seen: Holds = (place) => isWall(body, hole, place) && isSeen(body, place, view.toward);
  const behind: Holds = (place) => isWall(body, hole, place) && !isSeen(body, place, view.toward);
  for (const [depth, radius] of stepsOf(hole)) {
    if (depth === 0) continue;
    const circle = stepCircle(hole, depth, radius);
    add(sheet, circle, seen, hole.layer, "01.2");
    if (showsHidden) add(sheet, circle, behind, "hidden", "02.1");
  }
  if (!showsHidden) return;
  for (const trace of wallLines(hole, view.toward)) {
    add(sheet, trace, (place) => isWall(body, hole, place), "hidden", "02.1");
  }
}

/** Whether nothing but air lies between a place and the reader. */
function isSeen(body: Body, place: Vec3, toward: Vec3): boolean {
  const far = body.height + body.width;
  for (let way = 0.05; way < far; way += 0.8) {
    const at = along(place, toward, way);
    if (!isInBar(body, at)) return true;
    if (!body.holes.some((each) => isBored(each, at))) return false;
  }
  return true;
}

/** Two edges that fall on each other are drawn once: the seen one. */
function withoutRepeats(marks: readonly Mark[]): Mark[] {
  const drawn = new Set<string>();
  const near = (value: number) => Math.round(value * 100) / 100 + 0;
  const key = (mark: Mark): string => {
    if (mark.kind === "circle") return `c${[...mark.centre, mark.radius].map(near)}`;
    if (mark.kind !== "line") return "";
    const ends = [mark.from, mark.to].map((each) => each.map(near).join());
    return `l${ends.sort()}`;
  };
  const wideFirst = [...marks].sort((a, b) => Number(isHidden(a)) - Number(isHidden(b)));
  return wideFirst.filter((mark) => {
    const name = key(mark);
    if (name === "") return true;
    if (drawn.has(name)) return false;
    drawn.add(name);
    return true;
  });
}

function isHidden(mark: Mark): boolean {
  return "type" in mark && mark.type === "02.1";
}
