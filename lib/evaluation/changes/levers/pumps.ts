/** Pumps that move more, more of them, and where they sit. */
import type { Typed } from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { put } from "../answers.ts";
import { choose, chosen } from "../chosen.ts";
import { type Candidate, candidate, type Edit, edited, type Lever } from "../lever.ts";
import { rowsAt, type Start, systemOf } from "../start.ts";
import { roundedUp, type Step, stepped } from "../stepped.ts";

/** Flows that a specification is rounded up to. */
const FLOW: Readonly<Record<System, Step>> = {
  metric: { size: 1, unit: "L/h" },
  inch: { size: 0.5, unit: "US gal/h" },
};
const CURRENT: Step = { size: 0.1, unit: "A" };

/** What a plan takes at the most. */
const MOST_m3_s = 1e-3;
const MOST_A = 60;

/** Flow over that of the pump now, the smallest change first: by 5 % to double it, then by 10 %. */
const TIMES = [
  ...Array.from({ length: 20 }, (_, i) => 1.05 + 0.05 * i),
  ...Array.from({ length: 30 }, (_, i) => 2.1 + 0.1 * i),
];

const MORE: Lever = {
  id: "pump-flow",
  name: "a pump that moves more",
  mends: ["pump-margin", "pressure-held", "cranking-held", "duty-peak", "duty-maximum"],
  candidates: (start) =>
    TIMES.flatMap((times) => {
      const { points, count } = start.values.pump;
      const near_Pa = start.evaluation.results.pump?.pressure_Pa ?? 0;
      const what = count > 1 ? `Each of ${count} pumps` : "Pump";
      return moved(start, { list: "pump.points", points, near_Pa, what }, times) ?? [];
    }),
};

const LIFT_MORE: Lever = {
  id: "lift-flow",
  name: "a lift pump that moves more",
  mends: ["lift-margin"],
  candidates: (start) =>
    TIMES.flatMap((times) => {
      const { points } = start.values.lift;
      return moved(start, { list: "lift.points", points, near_Pa: 0, what: "Lift pump" }, times) ??
        [];
    }),
};

/** A curve to be moved up. */
interface Curve {
  readonly list: string;
  readonly points: readonly {
    readonly pressure: number | undefined;
    readonly flow: number | undefined;
    readonly current?: number | undefined;
  }[];
  /** Where the specification is stated: at the point nearest to this pressure. */
  readonly near_Pa: number;
  readonly what: string;
}

/** A pump that moves so many times as much at every point, and draws as many times the current. */
function moved(
  start: Start,
  { list, points, near_Pa, what }: Curve,
  times: number,
): Candidate | undefined {
  const { rows, pathOf } = rowsAt(start, list);
  let isTooMuch = false;
  const texts = points.map(({ flow, current }, i) => {
    const step = FLOW[systemOf(String(rows[i]?.flow)) ?? start.system];
    const more = flow === undefined || flow === 0
      ? undefined
      : roundedUp(flow * times, "pumpFlow", step);
    const drawn = current === undefined
      ? undefined
      : roundedUp(current * times, "current", CURRENT);
    isTooMuch ||= (more?.value ?? 0) > MOST_m3_s || (drawn?.value ?? 0) > MOST_A;
    return { flow: more?.text, current: drawn?.text };
  });
  const at = nearest(points, near_Pa);
  const told = at === undefined ? undefined : rows[at];
  const to = at === undefined ? undefined : texts[at]?.flow;
  if (isTooMuch || at === undefined || told === undefined || to === undefined) return undefined;
  const changed = rows.map((row, i): Typed => {
    const { flow, current } = texts[i] ?? {};
    const first = flow === undefined ? row : put(row, "flow", flow);
    return current === undefined ? first : put(first, "current", current);
  });
  const edit: Edit = {
    what,
    from: `${told.flow} at ${told.pressure}`,
    to: `at least ${to} at ${told.pressure}, ${
      Math.round((times - 1) * 100)
    } % more at every point`,
    path: pathOf(at, "flow"),
  };
  return candidate(start, { answers: { [list]: changed }, edits: [edit] });
}

/** The point that delivers something nearest to a pressure. */
function nearest(points: Curve["points"], near_Pa: number): number | undefined {
  let found: number | undefined;
  let least = Infinity;
  points.forEach(({ pressure, flow }, i) => {
    if (pressure === undefined || !flow) return;
    const apart = Math.abs(pressure - near_Pa);
    if (apart < least) [found, least] = [i, apart];
  });
  return found;
}

/** The most pumps that a plan takes. */
const MOST_PUMPS = 4;

const SECOND: Lever = {
  id: "pump-count",
  name: "one more pump beside it",
  mends: ["pump-margin", "pressure-held", "cranking-held"],
  candidates(start) {
    const { count, arrangement, drive } = start.values.pump;
    if (arrangement === "series" || drive === "engine") return [];
    return Array.from({ length: MOST_PUMPS - count }, (_, i) => {
      const more = count + 1 + i;
      const to = `${more} side by side`;
      return candidate(start, {
        answers: { "pump.count": more },
        edits: [edited(start, "pump.count", to)],
      });
    });
  },
};

/** Everything about pumps. */
export const PUMP_LEVERS: readonly Lever[] = [
  MORE,
  SECOND,
  stepped({
    id: "pump-drive",
    name: "a pump that turns faster",
    mends: ["pump-margin", "pressure-held", "cranking-held"],
    path: "pump.driveRatio",
    to: "up",
    steps: { metric: { size: 5, unit: "%" }, inch: { size: 5, unit: "%" } },
  }),
  chosen({
    id: "pump-slowed",
    name: "a pump slowed at idle",
    mends: ["return-velocity", "return-back-pressure", "pressure-held"],
    path: "pump.control",
    words: ({ values }) => values.pump.control === "full" ? ["reduced"] : [],
  }),
  {
    id: "pump-place",
    name: "the pump in the tank",
    mends: ["inlet-vapour", "suction-velocity"],
    endsCheck: true,
    candidates: (start) => {
      const { place, drive } = start.values.pump;
      return place === "line" && drive !== "engine" ? [choose(start, "pump.place", "tank")] : [];
    },
  },
  LIFT_MORE,
  stepped({
    id: "surge-volume",
    name: "a larger surge tank",
    mends: ["surge-tank"],
    path: "lift.surgeVolume",
    to: "up",
    steps: { metric: { size: 0.1, unit: "L" }, inch: { size: 0.05, unit: "US gal" } },
    most: 100,
  }),
  chosen({
    id: "surge-return",
    name: "the return led into the surge tank",
    mends: ["surge-tank", "lift-margin"],
    path: "lift.returnTo",
    words: ({ values }) => values.lift.returnTo === "tank" ? ["surge"] : [],
  }),
];
