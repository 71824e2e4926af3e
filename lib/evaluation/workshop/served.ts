/** What a tool's holes ask of it: limits, what the shop has instead, what to know. */
import type { Hole } from "@/lib/layout/mod.ts";
import { CLEARANCE_HOLES, SHOP_PRACTICE } from "@/lib/thread/mod.ts";
import type { Bench } from "./bench.ts";
import {
  between,
  forThread,
  holeLimits,
  isWithin,
  type Limits,
  NEAR_m,
  nearest,
} from "./equivalents.ts";
import { sealingBore } from "./pocket_tools.ts";
import { NOT_DRILLED, type Served, type ToolEquivalent, type WorkshopToolKind } from "./tool.ts";

/** A tool as far as its holes are asked. */
export interface Serving {
  /** What kind. */
  readonly kind: WorkshopToolKind;
  /** Its diameter [m]. */
  readonly diameter_m: number;
  /** The whole angle of its cone [rad]. */
  readonly included_rad?: number;
  /** The thread that it cuts. */
  readonly thread?: string;
  /** Ids of its holes. */
  readonly holes: readonly string[];
}

/** Asks the holes of a tool. */
export function servedBy(bench: Bench, tool: Serving): Served {
  const holes = bench.layout.holes.filter(({ id }) => tool.holes.includes(id));
  switch (tool.kind) {
    case "drill":
      return drill(bench, tool, holes);
    case "tap":
      return { ...NOT_DRILLED, thread: tool.thread, notes: tapNotes(bench, holes) };
    case "spotting drill":
      return spotting(bench, tool, holes);
    case "port form tool":
      return { ...NOT_DRILLED, notes: formNotes(bench, holes) };
    case "taper reamer":
      return {
        ...NOT_DRILLED,
        thread: tool.thread,
        notes: ["1 in 16 on diameter. Without it the tap cuts the taper: slower, and rougher."],
      };
    case "countersink":
      return { ...NOT_DRILLED, notes: countersinkNotes(bench, tool) };
    case "bore":
      return sealingBore(bench, tool.diameter_m);
    default:
      return NOT_DRILLED;
  }
}

/** The thread that a hole's stretch of this width is drilled for. */
function threadAt({ profile, thread }: Hole, diameter_m: number): string | undefined {
  const isTapped = profile.some(({ cut, toDiameter_m }) =>
    cut === "thread" && Math.abs(toDiameter_m - diameter_m) < 1e-6
  );
  return isTapped ? thread?.name : undefined;
}

function drill(bench: Bench, { diameter_m }: Serving, holes: readonly Hole[]): Served {
  const { drills } = bench.values.shop;
  const thread = holes.map((hole) => threadAt(hole, diameter_m)).find((name) => name !== undefined);
  const limits = limitsOf(bench, holes, thread);
  const equivalents = thread === undefined
    ? nearest(drills, diameter_m, limits)
    : forThread(drills, thread, diameter_m);
  return {
    ...NOT_DRILLED,
    thread,
    limits,
    equivalents,
    noEquivalent: whyNone(bench, equivalents),
    ...(limits !== undefined && !isWithin(diameter_m, limits) && {
      noEquivalent: listedIsOutside(bench, diameter_m, limits),
    }),
  };
}

/** Some threads are usually drilled with a size that their own limits do not allow. */
function listedIsOutside(bench: Bench, diameter_m: number, limits: Limits): string {
  const off_m = Math.max(limits.least_m - diameter_m, diameter_m - limits.most_m);
  const [better] = between("metric", limits).concat(between("inch", limits));
  return `The drill asked for is itself ${bench.limit(off_m)} outside the limits${
    better === undefined ? "" : `; ${better.name} keeps to them`
  }.`;
}

function limitsOf(
  { values }: Bench,
  holes: readonly Hole[],
  thread: string | undefined,
): Limits | undefined {
  if (thread !== undefined) return holeLimits(thread);
  if (!holes.every(({ feature }) => feature === "screw")) return undefined;
  const { close_m, coarse_m } = CLEARANCE_HOLES[values.holdDown.thread];
  return { least_m: close_m, most_m: coarse_m };
}

/** Says where the shop has no drill, or none inside the limits. */
export function whyNone(
  bench: Bench,
  found: readonly ToolEquivalent[],
): string | undefined {
  if (found.length === 0) {
    return `None of your drills is within ${bench.say(NEAR_m)} of it: buy this one.`;
  }
  return found.every(({ inside }) => inside === false)
    ? "None of your drills keeps to the limits: buy this one."
    : undefined;
}

function tapNotes(bench: Bench, holes: readonly Hole[]): readonly string[] {
  const onSeat = holes.some((hole) => bench.shapeOf(hole)?.seal === "cone");
  return onSeat
    ? ["A bottoming tap, with one or two threads of lead: below the thread is the seat."]
    : [];
}

/** Its diameter is the tapping size, so any of another diameter has to keep to the thread's limits. */
function spotting(bench: Bench, { diameter_m }: Serving, holes: readonly Hole[]): Served {
  const thread = holes.map(({ thread }) => thread?.name).find((name) => name !== undefined);
  const limits = thread === undefined ? undefined : holeLimits(thread);
  return {
    ...NOT_DRILLED,
    thread,
    limits,
    notes: [
      Math.abs(diameter_m - 0.009) < 1e-6
        ? SHOP_PRACTICE["one-drill-two-jobs"].says((length_m) => bench.size(length_m))
        : "Its diameter is the tapping size, its point cuts the 45 degree seat.",
      ...(limits === undefined ? [] : [
        `One from ${bench.limit(limits.least_m)} to ${
          bench.limit(limits.most_m)
        } serves; the seat then has its width.`,
      ]),
    ],
  };
}

function formNotes(bench: Bench, holes: readonly Hole[]): readonly string[] {
  const degrees = new Set(
    holes.flatMap((hole) => {
      const mouth = bench.shapeOf(hole)?.mouth;
      return mouth === undefined ? [] : [Math.round(mouth.fromAxis_rad / Math.PI * 180)];
    }),
  );
  return [
    `Cuts the cone that the O-ring seals on, ${
      [...degrees].join(" or ")
    } degrees from the axis; most such tools spot the face in the same stroke.`,
  ];
}

function countersinkNotes(bench: Bench, { included_rad = 0 }: Serving): readonly string[] {
  return [
    `${bench.say(included_rad, "angle")} is the whole cone, ${
      bench.say(included_rad / 2, "angle")
    } from the axis. Leave no edge where it meets the bore.`,
  ];
}
