/** Running pumps put together, and a relief valve fitted to one. */
import { LEAST_STEP_m3_s, type RunningPoint, type RunningPump } from "./pump_law.ts";

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
