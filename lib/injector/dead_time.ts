/** Dead time against voltage and pressure, from a table. */
import type { Point } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";
import { DEAD_TIME } from "./limits.ts";

/** Dead times at one differential pressure. */
export interface DeadTimeRow {
  /** Differential pressure at which they were measured [Pa]. */
  readonly differential_Pa: number;
  /** Voltage [V], then dead time [s]; voltages rising. */
  readonly points: readonly Point[];
}

/** Dead times: one row for each differential pressure, pressures rising. */
export type DeadTimeTable = readonly DeadTimeRow[];

/**
 * Dead times to begin with where an injector's own are not known: a high-impedance port
 * injector at 3 bar. An assumption; real injectors differ by half a millisecond.
 *
 * Source: common practice, no source.
 */
export const ASSUMED_DEAD_TIMES: DeadTimeTable = [{
  differential_Pa: 3e5,
  points: [
    [8, 2.9e-3],
    [9, 2.3e-3],
    [10, 1.9e-3],
    [11, 1.57e-3],
    [12, 1.3e-3],
    [13, 1.11e-3],
    [14, 0.96e-3],
    [15, 0.84e-3],
    [16, 0.75e-3],
  ],
}];

const KNOWN: MethodInput = { ...DEAD_TIME, says: "Dead time at the lower entry", symbol: "t_1" };

/**
 * Dead time [s] between two entries of a table, on the straight line between them.
 *
 * Source: linear interpolation.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half way between 12 and 13 V
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(deadTimeBetween({ lower: 1.3e-3, upper: 1.1e-3, share: 0.5 }), 1.2e-3, 1e-12);
 * ```
 */
export const deadTimeBetween: Method<Record<"lower" | "upper" | "share", MethodInput>> = method({
  id: "dead-time-between",
  title: "Dead time between two entries of its table",
  inputs: {
    lower: KNOWN,
    upper: { ...KNOWN, says: "Dead time at the upper entry", symbol: "t_2" },
    share: {
      unit: "-",
      min: 0,
      max: 1,
      says: "How far from the lower entry to the upper: 0 at the lower, 1 at the upper",
      symbol: "s",
    },
  },
  output: { ...DEAD_TIME, name: "deadTime" },
  formula: "lower + (upper - lower) * share",
  source: "Linear interpolation",
  compute: ({ lower, upper, share }) => lower + (upper - lower) * share,
});

/** Where in a table a dead time is wanted. */
export interface DeadTimePoint {
  /** Voltage at the injector [V]. */
  readonly voltage_V: number;
  /** Differential pressure [Pa]. */
  readonly differential_Pa: number;
}

/**
 * Reads a dead time [s] from a table, on straight lines in voltage and then in pressure,
 * and records how. A table with a single row is used at every pressure.
 *
 * @param working The record.
 * @param section Where the result belongs, like `injectors.0`.
 * @param table The table.
 * @param at Voltage and differential pressure.
 * @returns The dead time, or `undefined` when voltage or pressure lies outside the table.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const at = (voltage_V: number) =>
 *   deadTimeAt(new Working(), "injectors.0", ASSUMED_DEAD_TIMES, { voltage_V, differential_Pa: 3e5 });
 *
 * assertAlmostEquals(at(12.5) ?? 0, 1.205e-3, 1e-9);
 * assertEquals(at(7), undefined);
 * ```
 */
export function deadTimeAt(
  working: Working,
  section: string,
  table: DeadTimeTable,
  at: DeadTimePoint,
): number | undefined {
  const [only] = table;
  const [below, above, share] = table.length === 1 && only
    ? [only, only, 0]
    : between(table, (row) => row.differential_Pa, at.differential_Pa);
  if (!below || !above) return undefined;
  const lower = deadTimeInRow(working, `${section}.deadTimeBelow_s`, below, at.voltage_V);
  const upper = share === 0
    ? lower
    : deadTimeInRow(working, `${section}.deadTimeAbove_s`, above, at.voltage_V);
  if (lower === undefined || upper === undefined) return undefined;
  return working.run(`${section}.deadTime_s`, deadTimeBetween, { lower, upper, share });
}

function deadTimeInRow(
  working: Working,
  result: string,
  row: DeadTimeRow,
  voltage: number,
): number | undefined {
  const [below, above, share] = between(row.points, ([v]) => v, voltage);
  if (!below || !above) return undefined;
  return working.run(result, deadTimeBetween, { lower: below[1], upper: above[1], share });
}

/** The neighbours of a value in a rising list and how far it is from the lower to the upper. */
function between<Entry>(
  entries: readonly Entry[],
  keyOf: (entry: Entry) => number,
  value: number,
): [lower: Entry | undefined, upper: Entry | undefined, share: number] {
  for (const [i, upper] of entries.entries()) {
    const to = keyOf(upper);
    if (value > to) continue;
    if (value === to) return [upper, upper, 0];
    const lower = entries[i - 1];
    if (lower === undefined) break;
    const from = keyOf(lower);
    return [lower, upper, (value - from) / (to - from)];
  }
  return [undefined, undefined, 0];
}
