/** Where a pump's curve meets what the system asks for. */
import { findRoot, linearCurve, monotoneCurve } from "@/lib/basics/mod.ts";
import type { PumpPoint } from "./pump_at.ts";

/** What a system asks for: pressure = static + coefficient * flow ^ exponent. */
export interface SystemCurve {
  /** Pressure at no flow, as a regulator's set pressure [Pa]. */
  readonly static_Pa: number;
  /** Pressure per flow to the exponent [Pa per (m^3/s)^exponent]. */
  readonly coefficient: number;
  /** 1 laminar, 1.75 smooth and turbulent, 2 fittings [-]. */
  readonly exponent: number;
}

/** How a curve runs between its points. */
export type Interpolation = "linear" | "monotone-cubic";

/**
 * Finds where pump and system meet, by Brent's method on the flow.
 *
 * @param points Figures of the pump or pumps, flows differing, in any order; at least two.
 * @param system What the system asks for.
 * @param interpolation How the pump's curve runs between its points.
 * @returns Flow and pressure, or `undefined` when they don't meet within the table: nothing
 * is extrapolated.
 * @throws {InputError} When there are fewer than two points or two have the same flow.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * const points = [
 *   { flow_m3_s: 0, pressure_Pa: 8e5 },
 *   { flow_m3_s: 8e-5, pressure_Pa: 0 },
 * ];
 * const met = operatingPoint(points, { static_Pa: 3e5, coefficient: 0, exponent: 2 }, "linear");
 *
 * assertAlmostEquals(met?.flow_m3_s ?? 0, 5e-5, 1e-12);
 * assertEquals(
 *   operatingPoint(points, { static_Pa: 9e5, coefficient: 0, exponent: 2 }, "linear"),
 *   undefined,
 * );
 * ```
 */
export function operatingPoint(
  points: readonly PumpPoint[],
  system: SystemCurve,
  interpolation: Interpolation,
): PumpPoint | undefined {
  const byFlow = points.toSorted((a, b) => a.flow_m3_s - b.flow_m3_s);
  const table = byFlow.map((point) => [point.flow_m3_s, point.pressure_Pa] as const);
  const curve = interpolation === "linear" ? linearCurve(table) : monotoneCurve(table);
  const asked = (flow: number): number =>
    system.static_Pa + system.coefficient * flow ** system.exponent;
  const surplus = (flow: number): number => curve(flow) - asked(flow);
  const from = byFlow[0]?.flow_m3_s ?? 0;
  const to = byFlow.at(-1)?.flow_m3_s ?? 0;
  if (surplus(from) < 0 || surplus(to) > 0) return undefined;
  const flow_m3_s = findRoot(surplus, { from, to, tolerance: 1e-10 * to });
  return { flow_m3_s, pressure_Pa: asked(flow_m3_s) };
}
