/** Filters that lose less: rated for more flow at the same loss. */
import type { RunName, Typed } from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { put } from "../answers.ts";
import { type Candidate, candidate, type CheckId, type Edit, type Lever } from "../lever.ts";
import { rowsAt, type Start, systemOf } from "../start.ts";
import { roundedUp, type Step } from "../stepped.ts";

/** Flows that ratings are rounded up to. */
const STEPS: Readonly<Record<System, Step>> = {
  metric: { size: 10, unit: "L/h" },
  inch: { size: 2, unit: "US gal/h" },
};

/** How many times the flow a filter is rated for, the smallest change first. */
const TIMES = [1.1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10];

/** The largest flow that a piece takes [m^3/s]. */
const MOST_m3_s = 2e-3;

/** Each run with a filter, and what its filter bears on. */
const RUNS: readonly (readonly [RunName, string, readonly CheckId[]])[] = [
  ["feed", "Filter in the feed", ["filter-loss", "pump-margin", "pressure-held"]],
  ["suction", "Strainer in the suction", ["inlet-vapour", "pump-margin"]],
  ["lift", "Filter of the lift pump", ["lift-margin"]],
];

/** A lever for each run. */
export const FILTER_LEVERS: readonly Lever[] = RUNS.map(([run, what, mends]) => ({
  id: `filter-${run}`,
  name: `a larger ${what.charAt(0).toLowerCase()}${what.slice(1)}`,
  mends,
  candidates: (start) => TIMES.flatMap((times) => rated(start, run, what, times) ?? []),
}));

/** The run with all its filters rated for more; undefined without one that states a loss. */
function rated(start: Start, run: RunName, what: string, times: number): Candidate | undefined {
  const list = `supply.${run}`;
  const { rows, pathOf } = rowsAt(start, list);
  const edits: Edit[] = [];
  let isTooMuch = false;
  const text = (flow_m3_s: number, typed: Typed[string]): string => {
    const step = STEPS[systemOf(String(typed)) ?? start.system];
    const { text, value } = roundedUp(flow_m3_s * times, "pumpFlow", step);
    isTooMuch ||= value > MOST_m3_s;
    return text;
  };
  const changed = rows.map((row, i): Typed => {
    const { piece, flow, flow2 } = start.values.supply[run][i] ?? {};
    if (piece !== "filter" || flow === undefined) return row;
    const to = text(flow, row.flow);
    const at = `at ${row.loss}`;
    edits.push({ what, from: `${row.flow} ${at}`, to: `${to} ${at}`, path: pathOf(i, "flow") });
    const first = put(row, "flow", to);
    return flow2 === undefined ? first : put(first, "flow2", text(flow2, row.flow2));
  });
  if (edits.length === 0 || isTooMuch) return undefined;
  return candidate(start, { answers: { [list]: changed }, edits });
}
