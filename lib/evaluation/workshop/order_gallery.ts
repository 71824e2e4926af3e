/** The order of work on the gallery and its ends. */
import type { Hole } from "@/lib/layout/mod.ts";
import { DEEP_FROM_DIAMETERS, PECK_FROM_DIAMETERS } from "@/lib/thread/mod.ts";
import { CRITERIA } from "../criteria.ts";
import { type Bench, idsOf } from "./bench.ts";
import { COMMON_PRACTICE, type TypedOperation } from "./operation.ts";
import type { WorkshopTool } from "./tool.ts";

/** Drilling the gallery, and measuring where it came out. */
export function galleryOrder(
  bench: Bench,
  tools: readonly WorkshopTool[],
): readonly TypedOperation[] {
  const { gallery } = bench;
  if (gallery === undefined) return [];
  return [drilling(bench, gallery, tools), measuring(bench, gallery)];
}

function drilling(
  bench: Bench,
  gallery: Hole,
  tools: readonly WorkshopTool[],
): TypedOperation {
  const [, across_m, up_m] = gallery.entry;
  const depth = bench.say(bench.galleryDepth_m);
  const way = bench.isFromBoth
    ? `half from each end, ${depth} and a little more, so that they meet`
    : gallery.exit === undefined
    ? `from the datum end, ${depth} deep to its full diameter; the drill's point goes beyond`
    : `from one end, ${depth}`;
  const sizes = tools.map((tool) => sizeIn(bench, tool)).join(", then ");
  const deepest = Math.max(0, ...tools.map(({ depthRatio }) => depthRatio));
  return {
    id: "gallery",
    title: "Drill the gallery",
    does: [
      `Spot the end ${bench.say(up_m)} from the injector face, ${
        acrossFrom(bench, across_m)
      }. Set the bar along the spindle's axis with a square, both ways.`,
      `Drill ${way}: ${sizes}.`,
      ...deepHole(bench, deepest),
      ...(bench.values.rail.finish === "reamed"
        ? ["Ream it with plenty of fluid, and never turn the reamer backwards."]
        : []),
    ],
    why:
      "Before the pockets: as long as there are none, you can measure where it came out and turn or shift the bar, so that the thick side goes to the threads. A long drill also jumps at every hole that crosses it.",
    cautions: ["drill-press", "long-drill"],
    holes: [gallery.id],
    source: COMMON_PRACTICE,
  };
}

function sizeIn(bench: Bench, { kind, diameter_m, leave }: WorkshopTool): string {
  const size = bench.size(diameter_m);
  if (kind !== "reamer") return `Ø ${size}`;
  return leave === undefined
    ? `a reamer of ${size}`
    : `${bench.say(leave.from)} to ${bench.say(leave.to)} under size, then a reamer of ${size}`;
}

function acrossFrom(bench: Bench, across_m: number): string {
  const { bar } = bench.layout;
  if (Math.abs(across_m) < 1e-6) {
    return bar.shape === "round" ? "on the middle" : "in the middle of the width";
  }
  return bar.shape === "round"
    ? `${bench.say(Math.abs(across_m))} off the middle towards the ${
      across_m < 0 ? "front" : "back"
    }`
    : `${bench.say(bar.width_m / 2 + across_m)} from the front`;
}

function deepHole(bench: Bench, ratio: number): readonly string[] {
  if (ratio <= PECK_FROM_DIAMETERS) return [];
  const peck =
    `Beyond ${PECK_FROM_DIAMETERS} diameters peck: clear the chips every diameter of depth, with the drill right out, and keep it wet.`;
  if (ratio <= DEEP_FROM_DIAMETERS) return [peck];
  const ends = bench.isFromBoth || bench.gallery?.exit === undefined
    ? ""
    : " From both ends each drill goes half as deep, and wanders half as far.";
  return [
    peck,
    `The leading drill goes ${
      Math.round(ratio)
    } of its diameters deep. Beyond ${DEEP_FROM_DIAMETERS} take a long drill with wide flutes, begun in the hole of a short one of its size.${ends} Where press or drill is too short, a lathe does it, or a shop that drills barrels.`,
  ];
}

function measuring(bench: Bench, gallery: Hole): TypedOperation {
  const { bar, drill } = bench.evaluation.results;
  const least_m = Math.max(CRITERIA.wall.limit, bar?.strengthWall_m ?? 0);
  const aim_m = Math.max(CRITERIA.wall.aim, least_m);
  const isBlind = gallery.exit === undefined;
  return {
    id: "measure-gallery",
    title: "Measure where the gallery came out",
    does: [
      isBlind
        ? "It does not come out: stand a straight rod in it that fits, and measure from the rod to the faces at both ends of the bar."
        : "At both ends, measure the wall on all four sides.",
      `The plan allows ${bench.say(drill.drift_m ?? bar?.drift_m ?? 0)} of wander. At least ${
        bench.say(least_m)
      } of wall must be left on every side, better ${
        bench.say(aim_m)
      }; with less, stop: the bar is an offcut now.`,
      "Turn the bar, or shift the row of pockets and ports across, so that the thick side goes to the threads. Enter where the gallery really lies, and print this sheet again.",
    ],
    why: "Now it can still be put right; after the first pocket it can't.",
    holes: [gallery.id],
    source: COMMON_PRACTICE,
  };
}

/** Threads for the plugs in the ends; none where caps are welded on. */
export function plugOrder(bench: Bench): readonly TypedOperation[] {
  const { plugs } = bench;
  if (plugs.length === 0) return [];
  const like = plugs.filter((hole, i) =>
    plugs.findIndex((other) => describe(bench, other) === describe(bench, hole)) === i
  );
  return [{
    id: "plug-threads",
    title: "Cut the threads in the ends",
    does: [
      ...like.map((hole) =>
        `${like.length < plugs.length ? "Both ends" : hole.title}: ${describe(bench, hole)}.`
      ),
      "Start the tap by the press's spindle, switched off; it must stand square, or the plug's ring is squeezed on one side only.",
    ],
    why:
      "While the end is square under the spindle, and before chips of it can fall into finished pockets.",
    cautions: ["taps"],
    holes: idsOf(plugs),
    source: COMMON_PRACTICE,
  }];
}

/** A tapped hole in words: drill, flat, cone, thread. */
export function describe(bench: Bench, { profile, thread, ...hole }: Hole): string {
  const shape = bench.shapeOf({ ...hole, profile, ...(thread && { thread }) });
  const drilled = profile.findLast(({ cut }) => cut === "thread" || cut === "bore");
  const mouth = profile.find(({ cut, from_m }) => cut === "seat" && from_m === 0);
  const taper = profile.find(({ cut, fromDiameter_m, toDiameter_m }) =>
    cut === "thread" && fromDiameter_m !== toDiameter_m
  );
  const isInto = hole.feature === "port";
  return [
    ...(shape?.flat_m === undefined
      ? []
      : [`spot the face flat to Ø ${bench.say(shape.flat_m)}, no deeper than clean`]),
    ...(drilled === undefined ? [] : [
      `drill Ø ${bench.size(drilled.toDiameter_m)} ${
        isInto ? "into the gallery" : `to ${bench.say(drilled.to_m)}`
      }`,
    ]),
    ...(taper === undefined ? [] : [
      `ream it 1 in 16 to Ø ${
        bench.size(taper.fromDiameter_m)
      } at the face, or let the tap cut the taper`,
    ]),
    ...(mouth === undefined ? [] : [
      `cut the cone for the O-ring, Ø ${bench.say(mouth.fromDiameter_m)} at the face, ${
        bench.say(mouth.to_m)
      } deep`,
    ]),
    ...(thread === undefined
      ? []
      : [`tap ${thread.name}, full thread to ${bench.say(thread.to_m)}`]),
  ].join("; ");
}
