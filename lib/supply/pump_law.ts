/** A pump as it runs at one operating point: its curve at the voltage that really reaches it. */
import { InputError } from "@/lib/basics/mod.ts";
import type { LawPoint } from "@/lib/network/mod.ts";

/** One figure of a pump, with the current it draws there where that is known. */
export interface PumpFigure {
  /** Pressure that it adds [Pa]. */
  readonly pressure_Pa: number;
  /** Flow [m^3/s]. */
  readonly flow_m3_s: number;
  /** Current [A]. */
  readonly current_A?: number | undefined;
}

/** Figures of one pump at one voltage, or of an engine-driven one at one speed. */
export interface PumpFigures {
  /** Voltage at its terminals [V], or its speed [rev/s]. */
  readonly at: number;
  /** The figures; at least two make a curve. */
  readonly points: readonly PumpFigure[];
}

/** One place on the curve of a running pump. */
export interface RunningPoint extends PumpFigure {
  /** Current [A]; nought when the engine drives it. */
  readonly current_A: number;
  /** Voltage at its terminals [V], or its speed [rev/s]. */
  readonly at: number;
}

/**
 * The curve of a running pump, by rising flow and falling pressure, at least two points.
 * Straight between them. Beyond them the last stretch runs on, so that a solver has a law
 * everywhere, and whoever reads the answer is told.
 */
export interface RunningPump {
  /** The curve. */
  readonly points: readonly RunningPoint[];
  /** True when the figures were carried to another voltage by the affinity law: an estimate. */
  readonly isScaled: boolean;
}

/** Where a flow lies on a curve. */
export interface PumpReading extends RunningPoint {
  /** Whether the flow lies within the figures, or on which side beyond. */
  readonly within: "within" | "below" | "above";
}

/** Share of a curve's range that rounding may put a point beyond its ends [-]. */
const ROUNDING = 1e-9;

/**
 * Reads a running pump's curve at a flow.
 *
 * @param pump The pump.
 * @param flow_m3_s The flow [m^3/s].
 * @returns Pressure, current and voltage there, and whether the figures reach so far.
 * @throws {InputError} When the curve has fewer than two points.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * const pump = {
 *   isScaled: false,
 *   points: [
 *     { flow_m3_s: 4e-5, pressure_Pa: 6e5, current_A: 12, at: 12.6 },
 *     { flow_m3_s: 8e-5, pressure_Pa: 3e5, current_A: 8, at: 12.8 },
 *   ],
 * };
 *
 * assertAlmostEquals(readPump(pump, 6e-5).pressure_Pa, 4.5e5, 1e-3);
 * assertEquals(readPump(pump, 9e-5).within, "above");
 * ```
 */
export function readPump(pump: RunningPump, flow_m3_s: number): PumpReading {
  const { points } = pump;
  const [a, b] = stretchOf(points, flow_m3_s);
  const share = (flow_m3_s - a.flow_m3_s) / (b.flow_m3_s - a.flow_m3_s);
  const between = (from: number, to: number): number => from + (to - from) * share;
  const first = points[0] as RunningPoint;
  const last = points.at(-1) as RunningPoint;
  const slack = ROUNDING * (last.flow_m3_s - first.flow_m3_s);
  return {
    flow_m3_s,
    pressure_Pa: between(a.pressure_Pa, b.pressure_Pa),
    current_A: Math.max(0, between(a.current_A, b.current_A)),
    at: Math.max(0, between(a.at, b.at)),
    within: flow_m3_s < first.flow_m3_s - slack
      ? "below"
      : flow_m3_s > last.flow_m3_s + slack
      ? "above"
      : "within",
  };
}

/**
 * Takes a running pump's pressure off what is written in a point, for the law of a link that
 * holds a pump.
 *
 * @param pump The pump.
 * @param flow_m3_s The flow [m^3/s].
 * @param into Where drop and slope stand.
 * @throws {InputError} When the curve has fewer than two points.
 */
export function subtractPump(pump: RunningPump, flow_m3_s: number, into: LawPoint): void {
  const [a, b] = stretchOf(pump.points, flow_m3_s);
  const slope = (b.pressure_Pa - a.pressure_Pa) / (b.flow_m3_s - a.flow_m3_s);
  into.drop_Pa -= a.pressure_Pa + slope * (flow_m3_s - a.flow_m3_s);
  into.slope_Pa_s_m3 -= slope;
}

/** The two points between which a flow lies, or the two at the end it lies beyond. */
function stretchOf(
  points: readonly RunningPoint[],
  flow_m3_s: number,
): readonly [RunningPoint, RunningPoint] {
  if (points.length < 2) {
    throw new InputError("pump's curve", "points", "must be at least two", points.length);
  }
  let i = 1;
  while (i < points.length - 1 && flow_m3_s > (points[i] as RunningPoint).flow_m3_s) i++;
  return [points[i - 1] as RunningPoint, points[i] as RunningPoint];
}

/** Flows nearer than this can't be told apart [m^3/s]. */
export const LEAST_STEP_m3_s = 1e-10;

/** Sees to it that flow rises strictly as pressure falls: a pump may give all but the same at any pressure. */
export function falling(points: readonly RunningPoint[]): RunningPoint[] {
  const kept: RunningPoint[] = [];
  for (const point of points) {
    const least_m3_s = (kept.at(-1)?.flow_m3_s ?? -Infinity) + LEAST_STEP_m3_s;
    kept.push(point.flow_m3_s >= least_m3_s ? point : { ...point, flow_m3_s: least_m3_s });
  }
  return kept;
}
