/** From an engine-driven pump's figures to its curve at a speed. */
import { InputError } from "@/lib/basics/mod.ts";
import { falling, type PumpFigures, type RunningPump } from "./pump_law.ts";

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

/** Flow that counts as none [m^3/s]: 4 mL an hour. */
const NOTHING_m3_s = 1e-9;
