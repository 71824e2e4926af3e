/** The flow at which a gallery makes its injectors differ too much. */
import { findRoot } from "@/lib/basics/mod.ts";
import { spreadOf } from "./flow_spread.ts";
import { railPressures, type RailSpec } from "./march.ts";

/** How closely the flow is placed, as a share of it; a ceiling is shown to three digits. */
const PLACED = 1e-4;

/** Velocity beyond which no limit is looked for: no fuel gallery gets near it [m/s]. */
const FASTEST_m_s = 60;

/**
 * Finds the flow [m^3/s] that the injectors of a rail take together when the worse bound
 * of the spread between them reaches a limit. The flow that runs on stays as given.
 *
 * @param spec The gallery, its flow where the search begins, and the differential pressure.
 * @param limit Spread of flow between injectors [-].
 * @returns The flow: 0 when what runs on alone passes the limit, `undefined` when the
 * limit is never reached, as with a single injector.
 * @throws {InputError} When there is no take-off, or they are not in order.
 *
 * @example A 10 mm gallery carries four times its flow before the spread is 1 %
 * ```ts
 * import { assert } from "@std/assert";
 *
 * const flow_m3_s = flowAtSpread({
 *   bore_m: 10e-3,
 *   roughness_m: 1.5e-6,
 *   takeOffs_m: [0.05, 0.15, 0.25, 0.35],
 *   flow_m3_s: 8e-5,
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 *   injectorDifferential_Pa: 3e5,
 * }, 0.01);
 *
 * assert(flow_m3_s !== undefined && flow_m3_s > 32e-5);
 * ```
 */
export function flowAtSpread(
  spec: RailSpec & { readonly injectorDifferential_Pa: number },
  limit: number,
): number | undefined {
  const spreadLimit_Pa = 2 * limit * spec.injectorDifferential_Pa;
  const over = (flow_m3_s: number): number => {
    const pressures = railPressures({ ...spec, flow_m3_s });
    return Math.max(spreadOf(pressures.noRecovery_Pa), spreadOf(pressures.fullBefore_Pa)) -
      spreadLimit_Pa;
  };
  // Without through flow nothing moves at no flow, and nothing spreads.
  if ((spec.throughFlow_m3_s ?? 0) > 0 && over(0) >= 0) return 0;
  const most = FASTEST_m_s * Math.PI / 4 * spec.bore_m * spec.bore_m;
  // Pressure spread goes about with the square of flow: a guess that brackets closely.
  const found = over(spec.flow_m3_s) + spreadLimit_Pa;
  const guess = found > 0 ? spec.flow_m3_s * Math.sqrt(spreadLimit_Pa / found) : most;
  let from = Math.min(0.8 * guess, most);
  if (over(from) >= 0) from = 0;
  let to = Math.min(1.25 * guess, most);
  while (over(to) < 0) {
    if (to >= most) return undefined;
    from = to;
    to = Math.min(2 * to, most);
  }
  return findRoot(over, { from, to, tolerance: PLACED * to });
}
