/** The most that pumps deliver while the set pressure is held. */
import { findRoot } from "@/lib/basics/mod.ts";
import { readPump, type RunningPoint, type RunningPump } from "./pump_law.ts";
import type { Supply, SupplyState } from "./supply_network.ts";

/** What {@linkcode heldFlow} finds: a flow, or a bound where the figures end before it. */
export interface HeldFlow {
  /** The flow; undefined where the figures don't reach so far [m^3/s]. */
  readonly flow_m3_s: number | undefined;
  /** It is at least so much: at the table's lowest pressure the pump still has some over [m^3/s]. */
  readonly atLeast_m3_s: number | undefined;
  /** It is at most so much: at the table's highest pressure the pump already lacks some [m^3/s]. */
  readonly atMost_m3_s: number | undefined;
}

/**
 * Finds the flow at which the pumps make just what the system asks for when all of it is
 * burnt: with less, the regulator lets some back; with more, the pressure falls.
 *
 * @param supply The system.
 * @param pump The pumps as they run.
 * @param reference_Pa What the regulator's spring side sees, gauge [Pa].
 * @param near A solved state of the system, for what the rails lose.
 * @returns The flow, within the pump's figures, or the bound that they give.
 * @throws {InputError} When the pump's curve has fewer than two points.
 *
 * @example Without any loss on the way the curve alone decides
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { Run } from "@/lib/line/mod.ts";
 * import { Supply } from "./supply_network.ts";
 *
 * const liquid = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
 * const supply = new Supply({
 *   liquid, tank_Pa: 0, head_Pa: 0, suction: undefined, feed: new Run([], liquid),
 *   branch: undefined, crossover: undefined, back: undefined,
 *   regulator: { place: "rail", opens_Pa: 4e5, droop_Pa_s_m3: 0, wideOpen: undefined },
 *   rails: {
 *     count: 1, length_m: 0.2, bore_m: 0.012, roughness_m: 2e-5,
 *     stations_m: [0.1], feed: "one-end", connection: "parallel",
 *   },
 * });
 * const pump = {
 *   isScaled: false,
 *   points: [
 *     { flow_m3_s: 5e-5, pressure_Pa: 6e5, current_A: 12, at: 13 },
 *     { flow_m3_s: 9e-5, pressure_Pa: 2e5, current_A: 8, at: 13 },
 *   ],
 * };
 *
 * const near = supply.solve({
 *   pump, demand_m3_s: 3e-5, injectors: 1e-7, manifold_Pa: 0, reference_Pa: 0,
 * });
 *
 * assert(near.ok);
 * assertAlmostEquals(heldFlow(supply, pump, 0, near.state).flow_m3_s ?? 0, 7e-5, 1e-8);
 * ```
 */
export function heldFlow(
  supply: Supply,
  pump: RunningPump,
  reference_Pa: number,
  near: SupplyState,
): HeldFlow {
  const first = pump.points[0] as RunningPoint;
  const last = pump.points.at(-1) as RunningPoint;
  const spare = (flow_m3_s: number): number =>
    readPump(pump, flow_m3_s).pressure_Pa -
    supply.asked_Pa(flow_m3_s, flow_m3_s, reference_Pa, near);
  const none = { flow_m3_s: undefined, atLeast_m3_s: undefined, atMost_m3_s: undefined };
  const from = Math.max(0, first.flow_m3_s);
  if (spare(last.flow_m3_s) >= 0) return { ...none, atLeast_m3_s: last.flow_m3_s };
  if (spare(from) < 0) {
    return first.flow_m3_s > 0
      ? { ...none, atMost_m3_s: first.flow_m3_s }
      : { ...none, flow_m3_s: 0 };
  }
  const tolerance = CLOSENESS * last.flow_m3_s;
  return { ...none, flow_m3_s: findRoot(spare, { from, to: last.flow_m3_s, tolerance }) };
}

/** How closely the flow is placed, as a share of the pump's most [-]. */
const CLOSENESS = 1e-9;
