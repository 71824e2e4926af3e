/** Inspection of pockets, seats, threads and burrs. */
import type { Hole } from "@/lib/layout/mod.ts";
import type { Bench } from "./bench.ts";
import { pointOf } from "./inspect_bar.ts";
import { atLeast, type Inspection, type InspectionFigure, within } from "./inspection.ts";

/** Bores, lead-ins, seats, threads; then burrs and dirt. */
export function holePoints(bench: Bench): readonly Inspection[] {
  return [
    ...pockets(bench),
    ...seats(bench),
    ...threads(bench),
    pointOf("deburr"),
    pointOf("flush"),
    pointOf("look-through"),
  ];
}

function pockets(bench: Bench): readonly Inspection[] {
  const { seal } = bench.evaluation.results.drill;
  if (seal === undefined || bench.pockets.length === 0) return [];
  const { least_m, most_m } = seal.bore;
  const { pockets: plan } = bench.values;
  const needed_m = seal.gland?.fittedOutsideMost_m;
  return [
    pointOf("pocket-bore", {
      figures: bench.pockets.map(({ title }) => within(title, "length", [least_m, most_m], true)),
      notes: [
        `${plan.tolerance} on ${bench.say(bench.values.rail.pocketBore)}; ${
          bench.limit(most_m - least_m)
        } from one limit to the other.`,
      ],
    }),
    pointOf("pocket-finish"),
    pointOf("lead-in", {
      figures: [
        needed_m === undefined
          ? atLeast("its mouth", seal.leadMouth_m, seal.leadMouth_m)
          : atLeast("its mouth", needed_m, seal.leadMouth_m),
      ],
      notes: needed_m === undefined
        ? []
        : [`The O-ring on its groove measures up to ${bench.say(needed_m)}; the mouth is wider.`],
    }),
  ];
}

/** Ports and plugs that seal on a cone or on a flat. */
function seats(bench: Bench): readonly Inspection[] {
  const sealed = [...bench.plugs, ...portsOf(bench)].filter((hole) => {
    const seal = bench.shapeOf(hole)?.seal;
    return seal !== undefined && seal !== "taper";
  });
  if (sealed.length === 0) return [];
  return [pointOf("seat", {
    figures: sealed.flatMap((hole): readonly InspectionFigure[] => {
      const flat_m = bench.shapeOf(hole)?.flat_m;
      return flat_m === undefined ? [] : [atLeast(`${hole.title}, flat spotted to`, flat_m)];
    }),
    notes: sealed.map((hole) => `${hole.title}: ${WHERE[bench.shapeOf(hole)?.seal ?? "face"]}.`),
  })];
}

const WHERE = {
  cone: "on the 45 degree cone at its bottom",
  face: "on the flat around its mouth",
  "o-ring": "on the cone in its mouth",
  taper: "in its thread",
} as const;

function portsOf(bench: Bench): readonly Hole[] {
  return [...(bench.sensor === undefined ? [] : [bench.sensor]), ...bench.ports];
}

function threads(bench: Bench): readonly Inspection[] {
  const tapped = [...bench.plugs, ...portsOf(bench)].flatMap(({ title, thread }) =>
    thread === undefined ? [] : [{ title, thread }]
  );
  if (tapped.length === 0) return [];
  return [pointOf("thread", {
    figures: tapped.map(({ title, thread }) =>
      atLeast(`${title}, ${thread.name}, full thread to`, thread.to_m)
    ),
  })];
}
