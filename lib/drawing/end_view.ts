/** An end of the bar on paper: its size, and places on it from the injectors' face and the front. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import { ballooned, balloons } from "./balloons.ts";
import { centreLines, reach, withoutTwins } from "./centre_lines.ts";
import { titled } from "./titled.ts";
import { DIAMETER } from "./callout.ts";
import { linear } from "./linear.ts";
import { project, viewOf } from "./projection.ts";
import { running, type Stop } from "./running.ts";
import { scaleWords } from "./scale.ts";
import { type Block, FACE_TITLES, type Scene } from "./scene.ts";
import type { Dimension, Shape } from "./shapes.ts";
import { viewMarks } from "./view_marks.ts";

/** Draws an end. */
export function endView(scene: Scene, face: "datum-end" | "far-end", scale: number): Block {
  const { body, say } = scene;
  const view = viewOf(face, scale);
  const own = body.holes.filter(({ hole }) => hole.face === face);
  const [x1] = project(view, [0, -body.width / 2, 0]);
  const [x2] = project(view, [0, body.width / 2, 0]);
  const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)];
  const top = body.height * scale;
  const stop = (axis: "x" | "y", hole: typeof own[number]): Stop => {
    const [x, y] = project(view, hole.entry);
    const far = reach(view, hole) + 0.6;
    return axis === "x"
      ? {
        at: x,
        value: hole.entry[1] + (body.round ? 0 : body.width / 2),
        from: y - far,
        holes: [hole.hole.id],
        of: "across",
      }
      : { at: y, value: hole.entry[2], from: x + far, holes: [hole.hole.id], of: "up" };
  };
  const isDatum = face === "datum-end";
  const isOff = ([, y, z]: Vec3) => Math.hypot(y, z - body.height / 2) > 1e-3;
  // What is on a round bar's axis is centred, not measured.
  const measured = own.filter(({ entry }) => !body.round || isOff(entry));
  const ups: Stop[] = measured.map((hole) => stop("y", hole));
  const acrosses: Stop[] = measured.map((hole) => stop("x", hole));
  if (isDatum && !body.round) {
    ups.push({
      at: top,
      value: body.height,
      from: right + 1,
      holes: [],
      of: "height",
      measure: "length",
    });
    acrosses.push({
      at: x2,
      value: body.width,
      from: -1,
      holes: [],
      of: "width",
      measure: "length",
    });
  }
  const dims: Dimension[] = [
    ...(ups.length === 0 ? [] : running({
      datum: { at: 0, from: right + 1 },
      stops: ups,
      line: right + 7,
      away: 1,
      axis: "y",
      room: [-1e6, 1e6],
      say,
    })),
    ...(acrosses.length === 0 ? [] : running({
      datum: { at: body.round ? 0 : x1, from: -1 },
      stops: acrosses,
      line: -7,
      away: -1,
      axis: "x",
      room: [-1e6, 1e6],
      say,
    })),
  ];
  if (isDatum && body.round) {
    dims.push(linear({
      axis: "x",
      ends: [left, right],
      from: body.height * scale / 2,
      line: acrosses.length > 0 ? -24 : -8,
      value: body.height,
      of: "diameter",
      sign: DIAMETER,
      say,
    }));
  }
  const shapes: Shape[] = [
    ...viewMarks(body, view, () => false),
    ...withoutTwins(
      body.holes.filter(({ into }) => Math.abs(into[0]) > 0.9)
        .flatMap((hole) => centreLines(body, view, hole)),
    ),
    ...dims,
    ...balloons(own.map((hole) => ballooned(scene, view, hole)), top + 2, [left - 30, right + 30]),
  ];
  const words = scale === 1 ? "" : ` (${scaleWords(scale)})`;
  return titled(FACE_TITLES[face] + words, shapes, [left, right]);
}
