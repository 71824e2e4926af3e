/** The order of work on the pockets, and on caps that are welded on between. */
import type { Hole } from "@/lib/layout/mod.ts";
import { flexibleHone, SHOP_PRACTICE } from "@/lib/thread/mod.ts";
import { type Bench, idsOf, titlesOf } from "./bench.ts";
import { COMMON_PRACTICE, type TypedOperation } from "./operation.ts";
import type { WorkshopTool } from "./tool.ts";

/** Spotting all places, pilots, caps, bores and hones. */
export function pocketOrder(
  bench: Bench,
  tools: readonly WorkshopTool[],
): readonly TypedOperation[] {
  return [
    spot(bench),
    ...pilots(bench),
    ...(bench.isWelded ? welding(bench) : []),
    ...bores(bench, tools),
    ...hones(bench),
  ];
}

function spot(bench: Bench): TypedOperation {
  const { layout } = bench;
  const holes = layout.holes.filter(({ feature }) => feature !== "gallery" && feature !== "plug");
  return {
    id: "spot",
    title: "Spot every place",
    does: [
      `${
        titlesOf(holes)
      }: spot each with a short, stiff drill, all in one clamping for each face, moving along a fence.`,
      ...(layout.bar.shape === "round"
        ? ["On the round side mill or spot a flat first, or the drill runs off it."]
        : []),
      "Measure from the datum to each spot before going on: a spot can still be moved, a hole can't.",
    ],
    why: "A drill follows a spot; it walks off a punch mark.",
    cautions: ["drill-press"],
    holes: idsOf(holes),
    source: COMMON_PRACTICE,
  };
}

const TILTED = 1e-6;

function tilt(bench: Bench): readonly string[] {
  const tilts = bench.pockets.flatMap(({ title, into }) => {
    const lean = Math.asin(into[0]);
    return Math.abs(lean) < TILTED ? [] : [
      `${title} ${bench.say(Math.abs(lean), "angle")} ${
        lean > 0 ? "towards the far end" : "towards the datum end"
      }`,
    ];
  });
  return tilts.length === 0
    ? []
    : [`Set the bar over, its holes leaning as they go in: ${tilts.join("; ")}.`];
}

function pilots(bench: Bench): readonly TypedOperation[] {
  const holes = bench.pockets.filter(({ profile }) => profile.some(({ cut }) => cut === "pilot"));
  const pilot = holes[0]?.profile.find(({ cut }) => cut === "pilot");
  if (pilot === undefined) return [];
  return [{
    id: "pocket-pilots",
    title: "Drill the pilots of the pockets",
    does: [
      `${titlesOf(holes)}: Ø ${bench.size(pilot.fromDiameter_m)} into the gallery, to ${
        bench.say(pilot.to_m)
      } from the face at full diameter; not into the wall behind.`,
      ...tilt(bench),
      `${
        SHOP_PRACTICE["form-drill"].says((length_m) => bench.size(length_m))
      } With one, leave this and go on.`,
    ],
    why: "The pilot first: what cuts the bore follows it, and has less to cut.",
    cautions: ["drill-press"],
    holes: idsOf(holes),
    source: COMMON_PRACTICE,
  }];
}

function welding(bench: Bench): readonly TypedOperation[] {
  return [
    {
      id: "brush-gallery",
      title: "Deburr and wash the gallery while its ends are open",
      does: [
        "Take the burrs off every pilot from inside the gallery, with a brush or a flexible hone drawn right through, and look through it with a light.",
        "Wash oil and chips out, rinse, and dry it: nothing that burns or boils may be left.",
      ],
      why:
        "Once the caps are on, no brush goes through; and oil in the joint makes the weld porous.",
      cautions: ["solvents"],
      holes: idsOf(bench.gallery === undefined ? [] : [bench.gallery]),
      source: COMMON_PRACTICE,
    },
    {
      id: "weld-caps",
      title: "Weld the caps on",
      does: [
        "Tack, then weld round in short lengths, side by side; let it cool in still air. Keep a pilot open.",
      ],
      why:
        "Before any sealing bore and seat: heat moves the bar, and what was round and straight no longer is.",
      cautions: ["welding"],
      source: COMMON_PRACTICE,
    },
    {
      id: "measure-welded",
      title: "Measure the bar again, cold",
      does: [
        "Straight edge along the injector face, and the place of each pilot from the datum. Dress the face if it rocks; go on by what you measure.",
      ],
      why: "What the heat moved shows now, and the sealing bores are still to be cut.",
      source: COMMON_PRACTICE,
    },
  ];
}

function stretchOf(hole: Hole | undefined, wanted: "bore" | "lead-in") {
  return hole?.profile.find(({ cut }) => cut === wanted);
}

function bores(bench: Bench, tools: readonly WorkshopTool[]): readonly TypedOperation[] {
  const { pockets, values } = bench;
  const bore = stretchOf(pockets[0], "bore");
  if (bore === undefined) return [];
  const lead = stretchOf(pockets[0], "lead-in");
  const tool = tools.find(({ kind }) => kind === "bore");
  const { limits, leave } = tool ?? {};
  const size = bench.size(values.rail.pocketBore);
  return [{
    id: "pocket-bores",
    title: "Cut the O-ring bores",
    does: [
      `${titlesOf(pockets)}: Ø ${size} ${values.pockets.tolerance}${
        limits === undefined
          ? ""
          : `, from ${bench.limit(limits.least_m)} to ${bench.limit(limits.most_m)}`
      }, ${bench.say(bore.to_m)} deep from the face, flat at the bottom.`,
      ...(leave === undefined ? [] : [
        `Drill first, ${bench.say(leave.from)} to ${
          bench.say(leave.to)
        } smaller and short of the depth; then reamer, boring head or form drill.`,
      ]),
      ...(lead === undefined ? [] : [
        `Lead-in to Ø ${bench.say(lead.fromDiameter_m)} at the face, ${
          bench.say(lead.to_m)
        } deep, ${bench.say(values.pockets.leadAngle, "angle")} from the axis.`,
      ]),
      "Pilot and bore in one clamping, each pocket finished before the bar is moved; or bring the spindle back into the pilot with a pin.",
    ],
    why:
      "A drill leaves a bore that is wide, rough and three-cornered, and by its size the O-ring is squeezed. In line with its pilot, the bore lets the injector stand straight.",
    cautions: ["drill-press"],
    holes: idsOf(pockets),
    source: COMMON_PRACTICE,
  }];
}

function hones(bench: Bench): readonly TypedOperation[] {
  const { pockets, values, isPrinted } = bench;
  if (pockets.length === 0) return [];
  const { seal } = bench.evaluation.results.drill;
  const hone = bench.size(flexibleHone(values.rail.pocketBore));
  return [{
    id: "pocket-hones",
    title: "Finish the O-ring bores with a hone",
    does: [
      `Finish each pocket with a flexible hone of ${hone}, the bore's own size: a raw printed or drilled surface does not seal reliably.`,
      "Oil it; in and out while it turns, some ten strokes, until the wall is grey all round and no line runs along it.",
      ...(seal === undefined ? [] : [
        `Measure as you go: past ${bench.limit(seal.bore.most_m)} the ring is squeezed too little.`,
      ]),
      ...(isPrinted
        ? [
          "Printed bar: hone until no printed skin is left anywhere in the ring's way; a pit that stays is a leak. Whatever the numbers say, the leak test decides.",
        ]
        : []),
    ],
    why: bench.isWelded
      ? "After welding, as heat moves the bar; last of the pocket, so that nothing scratches it again."
      : "Last of the pocket, so that nothing scratches it again.",
    cautions: ["hones"],
    holes: idsOf(pockets),
    source: COMMON_PRACTICE,
  }];
}
