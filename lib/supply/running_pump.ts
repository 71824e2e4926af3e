/** From a pump's figures to its curve as it runs: voltage lost on the way, several pumps, reliefs. */
import { InputError } from "@/lib/basics/mod.ts";
import { affinityFlow } from "./pump_curve.ts";
import type { PumpFigure, PumpFigures, RunningPoint, RunningPump } from "./pump_law.ts";

/** Where an electric pump gets its current from. */
export interface PumpFeed {
  /** Voltage at the battery, or what a speed control makes of it [V]. */
  readonly battery_V: number;
  /** Resistance of the wires there and back, warm [ohm]. */
  readonly wires_ohm: number;
  /** Voltage lost in relay, fuse and connectors, or in all of the wiring where it was measured [V]. */
  readonly contacts_V: number;
  /** Hydraulic over electric power, where a figure has no current [-]. */
  readonly efficiency: number;
}

/** Lowest voltage at which a pump is reckoned with [V]. */
const LEAST_V = 4;

/** Points put into each stretch of a table: current bends what is straight in it, by less than 0.1 %. */
const WITHIN_STRETCH = 3;

/**
 * Finds the curve of one electric pump at its terminals: at each figure voltage and current
 * are brought into agreement, as more current loses more voltage on the way.
 *
 * Figures at several voltages are carried on straight lines in voltage at equal pressure; one
 * voltage alone, or one beyond all tables, by the affinity law (flow with voltage, pressure
 * with its square), an estimate. Current goes with pressure, as the motor's torque does.
 *
 * @param figures Figures at one or more voltages, each with at least two points.
 * @param feed Where its current comes from.
 * @returns The curve.
 * @throws {InputError} When there is no curve, or so much is lost that no voltage is left.
 *
 * @example Half a volt lost lowers flow and pressure
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { readPump } from "./pump_law.ts";
 *
 * const points = [
 *   { pressure_Pa: 3e5, flow_m3_s: 9e-5, current_A: 10 },
 *   { pressure_Pa: 6e5, flow_m3_s: 5e-5, current_A: 15 },
 * ];
 * const feed = { battery_V: 13.5, wires_ohm: 0.05, contacts_V: 0, efficiency: 0.3 };
 * const { points: run } = electricPump([{ at: 13.5, points }], feed);
 *
 * assertAlmostEquals(run.at(-1)?.at ?? 0, 13.5 - 0.05 * (run.at(-1)?.current_A ?? 0), 1e-9);
 * assert(readPump({ points: run, isScaled: true }, 7e-5).pressure_Pa < 4.5e5);
 * ```
 */
export function electricPump(figures: readonly PumpFigures[], feed: PumpFeed): RunningPump {
  const tables = figures.filter(({ points }) => points.length >= 2)
    .map(({ at, points }) => ({ at, points: dense(points) }))
    .sort((a, b) => a.at - b.at);
  const supplied = feed.battery_V - feed.contacts_V;
  if (tables.length === 0) {
    throw new InputError("pump's curve", "figures", "must hold at least two points", "fewer");
  }
  if (!(supplied >= LEAST_V)) {
    throw new InputError("pump's curve", "voltage", `must be >= ${LEAST_V} V`, supplied);
  }
  const nearest = tables.reduce((a, b) =>
    Math.abs(a.at - supplied) <= Math.abs(b.at - supplied) ? a : b
  );
  const upper = tables.findIndex(({ at }) => at >= supplied);
  const lower = tables[upper - 1];
  const above = tables[upper];
  if (lower !== undefined && above !== undefined) {
    const points = betweenTables(lower, above, feed, supplied);
    if (points.length >= 2) return { points, isScaled: false };
  }
  const points = nearest.points.map((figure) => carried(figure, nearest.at, feed, supplied));
  return { points: falling(points), isScaled: points.some(({ at }) => differs(at, nearest.at)) };
}

/** Share by which a voltage may differ from the table's and still be its own [-]. */
const SAME_VOLTAGE = 0.002;

function differs(a: number, b: number): boolean {
  return Math.abs(a - b) > SAME_VOLTAGE * b;
}

/**
 * One figure carried by the affinity law to the voltage that its own current leaves. Torque
 * goes with pressure and so with the square of voltage, and the current with it: what is
 * lost in the wires is a square of the voltage too, which makes one quadratic equation.
 */
function carried(
  figure: PumpFigure,
  stated_V: number,
  feed: PumpFeed,
  supplied_V: number,
): RunningPoint {
  const { pressure_Pa, flow_m3_s } = figure;
  const stated_A = figure.current_A ?? pressure_Pa * flow_m3_s / (feed.efficiency * stated_V);
  const square = feed.wires_ohm * stated_A / stated_V ** 2;
  const root = (Math.sqrt(1 + 4 * square * supplied_V) - 1) / (2 * square);
  const at = square === 0 ? supplied_V : Math.max(LEAST_V, root);
  const share = at / stated_V;
  return {
    pressure_Pa: pressure_Pa * share ** 2,
    flow_m3_s: affinityFlow.compute({ flow: flow_m3_s, voltage: at, statedVoltage: stated_V }),
    current_A: stated_A * share ** 2,
    at,
  };
}

/** The figures at each pressure of two tables, at the voltage that the current there leaves. */
function betweenTables(
  lower: PumpFigures,
  upper: PumpFigures,
  feed: PumpFeed,
  supplied_V: number,
): RunningPoint[] {
  const pressures = [...new Set([...lower.points, ...upper.points].map((p) => p.pressure_Pa))]
    .sort((a, b) => b - a);
  return falling(pressures.flatMap((pressure_Pa): RunningPoint[] => {
    const low = atPressure(lower.points, pressure_Pa);
    const high = atPressure(upper.points, pressure_Pa);
    if (low === undefined || high === undefined) return [];
    const flow = straight([lower.at, low.flow_m3_s], [upper.at, high.flow_m3_s]);
    const current = low.current_A === undefined || high.current_A === undefined
      ? undefined
      : straight([lower.at, low.current_A], [upper.at, high.current_A]);
    const at = Math.max(LEAST_V, voltageLeft(feed, supplied_V, { pressure_Pa, flow, current }));
    const flow_m3_s = Math.max(0, flow.start + flow.slope * at);
    const current_A = current === undefined
      ? pressure_Pa * flow_m3_s / (feed.efficiency * at)
      : current.start + current.slope * at;
    return [{ pressure_Pa, flow_m3_s, current_A, at }];
  }));
}

/** A straight line in voltage. */
interface Straight {
  readonly start: number;
  readonly slope: number;
}

function straight(
  [x0, y0]: readonly [number, number],
  [x1, y1]: readonly [number, number],
): Straight {
  const slope = (y1 - y0) / (x1 - x0);
  return { start: y0 - slope * x0, slope };
}

/** Solves U = supplied - wires * I(U), with I straight in U, or of a power whose flow is. */
function voltageLeft(
  { wires_ohm, efficiency }: PumpFeed,
  supplied_V: number,
  figure: {
    readonly pressure_Pa: number;
    readonly flow: Straight;
    readonly current: Straight | undefined;
  },
): number {
  const { pressure_Pa, flow, current } = figure;
  if (current !== undefined) {
    return (supplied_V - wires_ohm * current.start) / (1 + wires_ohm * current.slope);
  }
  const lost = wires_ohm * pressure_Pa / efficiency;
  const half = (supplied_V - lost * flow.slope) / 2;
  return half + Math.sqrt(Math.max(0, half * half - lost * flow.start));
}

/** A table with points between its own. */
function dense(points: readonly PumpFigure[]): PumpFigure[] {
  const sorted = points.toSorted((a, b) => b.pressure_Pa - a.pressure_Pa);
  return sorted.flatMap((a, i) => {
    const b = sorted[i + 1];
    if (b === undefined) return [a];
    return Array.from({ length: WITHIN_STRETCH }, (_, k) => between(a, b, k / WITHIN_STRETCH));
  });
}

function between(a: PumpFigure, b: PumpFigure, share: number): PumpFigure {
  const along = (from: number, to: number): number => from + (to - from) * share;
  return {
    pressure_Pa: along(a.pressure_Pa, b.pressure_Pa),
    flow_m3_s: along(a.flow_m3_s, b.flow_m3_s),
    current_A: a.current_A === undefined || b.current_A === undefined
      ? undefined
      : along(a.current_A, b.current_A),
  };
}

/** What a table by falling pressure says at a pressure; nothing beyond its ends. */
function atPressure(points: readonly PumpFigure[], pressure_Pa: number): PumpFigure | undefined {
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1] as PumpFigure;
    const b = points[i] as PumpFigure;
    if (pressure_Pa > a.pressure_Pa || pressure_Pa < b.pressure_Pa) continue;
    return between(a, b, (a.pressure_Pa - pressure_Pa) / (a.pressure_Pa - b.pressure_Pa));
  }
  return undefined;
}

/** Flow that counts as none [m^3/s]: 4 mL an hour. */
const NOTHING_m3_s = 1e-9;

/** Sees to it that flow rises strictly as pressure falls: a pump may give all but the same at any pressure. */
function falling(points: readonly RunningPoint[]): RunningPoint[] {
  const kept: RunningPoint[] = [];
  for (const point of points) {
    const least_m3_s = (kept.at(-1)?.flow_m3_s ?? -Infinity) + LEAST_STEP_m3_s;
    kept.push(point.flow_m3_s >= least_m3_s ? point : { ...point, flow_m3_s: least_m3_s });
  }
  return kept;
}

/** Flows nearer than this can't be told apart [m^3/s]. */
const LEAST_STEP_m3_s = 1e-10;

/** How several like pumps work together. */
export interface Together {
  /** How many. */
  readonly count: number;
  /** Side by side, or each feeding the next. */
  readonly arrangement: "parallel" | "series";
}

/**
 * Puts like pumps together: flows add side by side, pressures add in a row. Current is that
 * of each pump, as each has its own wires.
 *
 * @param pump One pump.
 * @param together How many and how.
 * @returns All of them as one.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const pump = {
 *   isScaled: false,
 *   points: [
 *     { flow_m3_s: 4e-5, pressure_Pa: 6e5, current_A: 12, at: 12.6 },
 *     { flow_m3_s: 8e-5, pressure_Pa: 3e5, current_A: 8, at: 12.8 },
 *   ],
 * };
 *
 * assertEquals(pumpsTogether(pump, { count: 2, arrangement: "parallel" }).points[1]?.flow_m3_s, 1.6e-4);
 * ```
 */
export function pumpsTogether(pump: RunningPump, together: Together): RunningPump {
  const { count, arrangement } = together;
  if (count === 1) return pump;
  const points = pump.points.map((point) =>
    arrangement === "parallel"
      ? { ...point, flow_m3_s: point.flow_m3_s * count }
      : { ...point, pressure_Pa: point.pressure_Pa * count }
  );
  return { ...pump, points };
}

/** An engine-driven pump. */
export interface DrivenPump {
  /** Its figures at one speed of its own shaft. */
  readonly figures: PumpFigures;
  /** Speed of its shaft [rev/s]. */
  readonly speed_rev_s: number;
}

/**
 * Finds the curve of an engine-driven pump: each turn displaces the same, and what slips back
 * depends on pressure alone.
 *
 * @param driven The pump.
 * @returns The curve, or undefined where slip takes all that its turns displace.
 * @throws {InputError} When it has fewer than two figures.
 *
 * @example Half the speed displaces half, and slips as much as before
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const points = [
 *   { pressure_Pa: 0, flow_m3_s: 10e-5 },
 *   { pressure_Pa: 5e5, flow_m3_s: 9e-5 },
 * ];
 * const pump = drivenPump({ figures: { at: 50, points }, speed_rev_s: 25 });
 *
 * assertAlmostEquals(pump?.points[0]?.flow_m3_s ?? 0, 4e-5, 1e-12);
 * assertAlmostEquals(pump?.points.at(-1)?.flow_m3_s ?? 0, 5e-5, 1e-12);
 * ```
 */
export function drivenPump({ figures, speed_rev_s }: DrivenPump): RunningPump | undefined {
  const sorted = figures.points.toSorted((a, b) => b.pressure_Pa - a.pressure_Pa);
  const lowest = sorted.at(-1);
  const next = sorted.at(-2);
  if (lowest === undefined || next === undefined) {
    throw new InputError("pump's curve", "figures", "must hold at least two points", sorted.length);
  }
  const slope = (next.flow_m3_s - lowest.flow_m3_s) / (next.pressure_Pa - lowest.pressure_Pa);
  const displaced_m3 = (lowest.flow_m3_s - slope * lowest.pressure_Pa) / figures.at;
  const fewer_m3_s = displaced_m3 * (figures.at - speed_rev_s);
  const points = falling(sorted.map(({ pressure_Pa, flow_m3_s }) => ({
    pressure_Pa,
    flow_m3_s: flow_m3_s - fewer_m3_s,
    current_A: 0,
    at: speed_rev_s,
  })));
  return (points.at(-1)?.flow_m3_s ?? 0) <= NOTHING_m3_s ? undefined : { points, isScaled: false };
}

/**
 * Fits a relief valve to a pump: it never makes more than that, and gives any flow up to what
 * it displaces there.
 *
 * @param pump The pump.
 * @param relief_Pa Pressure at which the valve opens [Pa].
 * @returns The pump with its valve.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const pump = {
 *   isScaled: false,
 *   points: [
 *     { flow_m3_s: 4e-5, pressure_Pa: 8e5, current_A: 0, at: 25 },
 *     { flow_m3_s: 6e-5, pressure_Pa: 4e5, current_A: 0, at: 25 },
 *   ],
 * };
 *
 * assertEquals(withRelief(pump, 6e5).points[0]?.pressure_Pa, 6e5);
 * ```
 */
export function withRelief(pump: RunningPump, relief_Pa: number): RunningPump {
  const first = pump.points[0];
  if (first === undefined) return pump;
  const opens_m3_s = flowAt(pump.points, relief_Pa);
  // The pump never makes so much: the valve stays shut.
  if (first.pressure_Pa <= relief_Pa && opens_m3_s <= LEAST_STEP_m3_s) return pump;
  const open = (flow_m3_s: number): RunningPoint => ({
    ...first,
    flow_m3_s,
    pressure_Pa: relief_Pa,
  });
  const ends = opens_m3_s > LEAST_STEP_m3_s ? [open(0), open(opens_m3_s)] : [open(0)];
  const below = pump.points.filter(({ pressure_Pa, flow_m3_s }) =>
    pressure_Pa < relief_Pa && flow_m3_s > Math.max(0, opens_m3_s) + LEAST_STEP_m3_s
  );
  if (below.length > 0) return { ...pump, points: [...ends, ...below] };
  // With every figure above the valve, the last stretch tells how much it displaces unhindered.
  const most = { ...first, flow_m3_s: flowAt(pump.points, 0), pressure_Pa: 0 };
  return { ...pump, points: [...ends, most] };
}

/** Flow of a curve at a pressure; beyond its ends the last stretch runs on. */
function flowAt(points: readonly RunningPoint[], pressure_Pa: number): number {
  let i = 1;
  while (i < points.length - 1 && pressure_Pa < (points[i] as RunningPoint).pressure_Pa) i++;
  const [a, b] = [points[i - 1], points[i]];
  if (a === undefined || b === undefined || a.pressure_Pa === b.pressure_Pa) {
    return b?.flow_m3_s ?? a?.flow_m3_s ?? 0;
  }
  const share = (pressure_Pa - a.pressure_Pa) / (b.pressure_Pa - a.pressure_Pa);
  return a.flow_m3_s + share * (b.flow_m3_s - a.flow_m3_s);
}
