/** From an electric pump's figures to its curve as it runs, with the voltage lost on the way to it. */
import { InputError } from "@/lib/basics/mod.ts";
import { affinityFlow } from "./pump_curve.ts";
import {
  falling,
  type PumpFigure,
  type PumpFigures,
  type RunningPoint,
  type RunningPump,
} from "./pump_law.ts";

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
  const alone = tables.map((table): Alone => ({
    table,
    points: table.points.map((figure) => carried(figure, table.at, feed, supplied)),
  }));
  const own = alone.find(({ table, points }) => points.every(({ at }) => isSame(at, table.at)));
  if (own !== undefined) return { points: falling(own.points), isScaled: false };
  for (const [i, upper] of tables.entries()) {
    const lower = tables[i - 1];
    if (lower === undefined) continue;
    const points = betweenTables(lower, upper, feed, supplied);
    if (points.length < 2) continue;
    // What counts is the voltage at the terminals: the battery's may lie above both tables.
    const at = meanVoltage(points);
    const isBetween = (at > lower.at || isSame(at, lower.at)) &&
      (at < upper.at || isSame(at, upper.at));
    if (isBetween) return { points, isScaled: false };
  }
  const nearest = alone.reduce((a, b) => apart(a) <= apart(b) ? a : b);
  return { points: falling(nearest.points), isScaled: true };
}

/** What one table alone says of the pump as it runs. */
interface Alone {
  readonly table: PumpFigures;
  readonly points: readonly RunningPoint[];
}

/** How far the voltage at the terminals lies from that of the table [V]. */
function apart({ points, table }: Alone): number {
  return Math.abs(meanVoltage(points) - table.at);
}

function meanVoltage(points: readonly RunningPoint[]): number {
  return points.reduce((sum, { at }) => sum + at, 0) / points.length;
}

/** Share by which a voltage may differ from the table's and still be its own [-]. */
const SAME_VOLTAGE = 0.002;

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME_VOLTAGE * b;
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
