/** The bar, its gallery and how it is fed. */
import { MATERIALS } from "@/lib/strength/mod.ts";
import { chosen } from "../chosen.ts";
import { type Candidate, candidate, type CheckId, type Lever } from "../lever.ts";
import { numberAt, type Start, systemAt } from "../start.ts";
import { answer, roundFigures, type Step, stepped } from "../stepped.ts";
import type { System } from "@/lib/units/mod.ts";

/** Drills along a bar. */
const DRILLS: Readonly<Record<System, Step>> = {
  metric: { size: 1, unit: "mm" },
  inch: { size: 1 / 16, unit: "in" },
};

/** Bars as they are sold. */
const BARS: Readonly<Record<System, Step>> = {
  metric: { size: 5, unit: "mm" },
  inch: { size: 1 / 8, unit: "in" },
};

const WALLS: readonly CheckId[] = ["wall", "yield"];
const HOLES: readonly CheckId[] = [
  "hole-gap",
  "hole-wall",
  "ports-thread",
  "ring-entered",
  "ring-below",
];
const PORT: readonly CheckId[] = [
  "port-thread",
  "port-taper",
  "seat-gallery",
  "sensor-reach",
];

const HEIGHT = "rail.height";
const WIDTH = "rail.width";

/** The next bars; of a square bar both sizes grow. */
function higher(start: Start): Candidate[] {
  const { height, width, shape } = start.values.rail;
  if (height === undefined) return [];
  const isSquare = shape !== "round" && width !== undefined && Math.abs(width - height) < 1e-6;
  return larger(start, HEIGHT).map((one) => {
    if (!isSquare || start.plan.rail?.width === undefined) return one;
    const to = one.edits[0]?.to ?? "";
    return candidate(start, {
      answers: { [HEIGHT]: to, [WIDTH]: to },
      edits: one.edits.map((edit) => ({ ...edit, what: "Bar, both ways" })),
    });
  });
}

/** The next sizes of a bar whose other size stays. */
function larger(start: Start, path: string): Candidate[] {
  const now = numberAt(start, path);
  if (now === undefined) return [];
  return roundFigures(now, "length", "up", BARS[systemAt(start, path)], SIZES)
    .filter(({ value }) => value <= MOST_m)
    .map(({ text }) => answer(start, path, text));
}

/** Bars tried, and the largest taken [m]. */
const SIZES = 16;
const MOST_m = 0.1;

/** Everything about the bar. */
export const RAIL_LEVERS: readonly Lever[] = [
  chosen({
    id: "rail-metal",
    name: "a bar of another metal",
    mends: ["fuel-bar"],
    path: "rail.material",
    words: ({ values }) =>
      ["304", "6061-T6", "6082-T6", "brass"].filter((word) => word !== values.rail.material),
  }),
  stepped({
    id: "gallery-wider",
    name: "a wider gallery",
    mends: ["rail-spread", "gallery-opening"],
    path: "rail.bore",
    to: "up",
    steps: DRILLS,
    most: 30,
  }),
  stepped({
    id: "gallery-narrower",
    name: "a narrower gallery",
    mends: [...WALLS, ...PORT, ...HOLES, "plug-thread"],
    path: "rail.bore",
    to: "down",
    steps: DRILLS,
    most: 30,
  }),
  chosen({
    id: "rail-feed",
    name: "a rail fed at the middle or both ends",
    mends: ["rail-spread"],
    path: "rail.feed",
    words: ({ values }) => ["middle", "both-ends"].filter((word) => word !== values.rail.feed),
  }),
  chosen({
    id: "rail-connection",
    name: "each rail on its own branch",
    mends: ["rail-spread", "pressure-held"],
    path: "rail.connection",
    words: ({ values }) => values.rail.connection === "series" ? ["parallel", "loop"] : [],
  }),
  chosen({
    id: "rail-finish",
    name: "a reamed gallery",
    mends: ["rail-spread"],
    path: "rail.finish",
    words: ({ values }) => values.rail.finish === "drilled" ? ["reamed"] : [],
  }),
  chosen({
    id: "rail-drilled",
    name: "a gallery drilled from both ends",
    mends: ["wall", "gallery-opening", "ring-below", "ring-entered"],
    path: "rail.drilledFrom",
    words: ({ values }) => values.rail.drilledFrom === "one" ? ["both"] : [],
  }),
  {
    id: "bar-height",
    name: "a larger bar",
    mends: [...WALLS, ...PORT, ...HOLES, "rail-bends"],
    candidates: higher,
  },
  {
    id: "bar-width",
    name: "a bar larger the other way",
    mends: [...WALLS, ...PORT, ...HOLES],
    candidates: (start) =>
      start.values.rail.shape === "round" || start.plan.rail?.width === undefined
        ? []
        : larger(start, WIDTH),
  },
  chosen({
    id: "rail-material",
    name: "a stronger material",
    mends: ["yield", "port-thread"],
    path: "rail.material",
    words: ({ values }) => {
      const now = MATERIALS[values.rail.material];
      return Object.entries(MATERIALS)
        .filter(([, { yield_Pa, shear_Pa }]) => yield_Pa > now.yield_Pa || shear_Pa > now.shear_Pa)
        .toSorted(([, a], [, b]) => a.yield_Pa - b.yield_Pa)
        .map(([name]) => name);
    },
  }),
];
