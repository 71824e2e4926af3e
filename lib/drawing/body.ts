/** The rail in millimetres, and what is metal in it. */
import type { Bar, Feature, Hole, HoleThread, Layout, Vec3 } from "@/lib/layout/mod.ts";
import type { Layer } from "./shapes.ts";
import { along, dot } from "./vector.ts";

/** A stretch of a bored hole [mm]. */
export interface Step {
  readonly cut: Hole["profile"][number]["cut"];
  readonly from: number;
  readonly to: number;
  readonly fromRadius: number;
  readonly toRadius: number;
}

/** A hole in millimetres. */
export interface Bored {
  readonly hole: Hole;
  readonly entry: Vec3;
  readonly into: Vec3;
  readonly steps: readonly Step[];
  readonly depth: number;
  /** The widest it gets, threads included. */
  readonly widest: number;
  readonly thread?: {
    readonly name: string;
    readonly radius: number;
    readonly from: number;
    readonly to: number;
  };
  readonly layer: Layer;
}

/** The bar and its holes in millimetres. */
export interface Body {
  readonly round: boolean;
  readonly length: number;
  readonly height: number;
  readonly width: number;
  readonly holes: readonly Bored[];
}

const LAYERS: Readonly<Record<Feature, Layer>> = {
  gallery: "gallery",
  plug: "gallery",
  pocket: "pockets",
  port: "ports",
  screw: "screws",
};

/** Turns a layout's metres into the millimetres of drawings. */
export function bodyOf({ bar, holes }: Layout): Body {
  return { ...sizesOf(bar), holes: holes.map(bored) };
}

function sizesOf(bar: Bar): Omit<Body, "holes"> {
  return {
    round: bar.shape === "round",
    length: bar.length_m * 1e3,
    height: bar.height_m * 1e3,
    width: bar.width_m * 1e3,
  };
}

function bored(hole: Hole): Bored {
  const steps = hole.profile.map((each): Step => ({
    cut: each.cut,
    from: each.from_m * 1e3,
    to: each.to_m * 1e3,
    fromRadius: each.fromDiameter_m * 500,
    toRadius: each.toDiameter_m * 500,
  }));
  const { thread } = hole;
  return {
    hole,
    entry: [hole.entry[0] * 1e3, hole.entry[1] * 1e3, hole.entry[2] * 1e3],
    into: hole.into,
    steps,
    depth: steps.at(-1)?.to ?? 0,
    widest: Math.max(
      ...steps.map((each) => Math.max(each.fromRadius, each.toRadius)),
      (thread?.major_m ?? 0) * 500,
    ),
    layer: LAYERS[hole.feature],
    ...(thread && { thread: threadOf(thread) }),
  };
}

function threadOf({ name, major_m, from_m, to_m }: HoleThread): NonNullable<Bored["thread"]> {
  return { name, radius: major_m * 500, from: from_m * 1e3, to: to_m * 1e3 };
}

/** A hole's radius at a depth; the tool came from above, so its first radius goes on outwards. */
export function radiusAt({ steps }: Bored, depth: number): number {
  const [first] = steps;
  if (first === undefined) return 0;
  if (depth < first.from) return first.fromRadius;
  for (const each of steps) {
    if (depth > each.to) continue;
    const share = each.to > each.from ? (depth - each.from) / (each.to - each.from) : 1;
    return each.fromRadius + share * (each.toRadius - each.fromRadius);
  }
  return 0;
}

/** Whether a place is in a hole, its wall left out by a hair. */
export function isBored(bored: Bored, place: Vec3): boolean {
  const from = along(place, bored.entry, -1);
  const depth = dot(from, bored.into);
  if (depth > bored.depth - HAIR) return false;
  const aside = Math.hypot(...along(from, bored.into, -depth));
  return aside < radiusAt(bored, depth) - HAIR;
}

/** Lines on a wall belong to it, however they were computed [mm]. */
const HAIR = 1e-6;

/** Whether a place is in the bar before it was drilled: its skin included, or below it by so much. */
export function isInBar(body: Body, [x, y, z]: Vec3, below = -HAIR): boolean {
  if (x < below || x > body.length - below) return false;
  if (body.round) return Math.hypot(y, z - body.height / 2) < body.height / 2 - below;
  return Math.abs(y) < body.width / 2 - below && z > below && z < body.height - below;
}

/** Whether a place on a hole's wall is an edge of metal: in the bar and in no other hole. */
export function isWall(body: Body, own: Bored, place: Vec3): boolean {
  return isInBar(body, place) && !isInOther(body, own, place);
}

/** Whether a place is in a hole other than one. */
export function isInOther(body: Body, own: Bored, place: Vec3): boolean {
  return body.holes.some((each) => each !== own && isBored(each, place));
}
