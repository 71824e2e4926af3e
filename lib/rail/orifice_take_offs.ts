/** A gallery whose take-offs give more where the pressure is higher. */
import { findRoot } from "@/lib/basics/mod.ts";
import { frictionLoss } from "@/lib/flow/mod.ts";
import { type RailSpec, requireOrder, sectionOf } from "./march.ts";

/** A gallery fed at one end with take-offs like open orifices. */
export interface OrificeRailSpec extends Omit<RailSpec, "flow_m3_s" | "throughFlow_m3_s"> {
  /** Pressure at the feed end over that behind the orifices [Pa]. */
  readonly supply_Pa: number;
  /** Flow of one orifice over the root of its pressure [m^3/s per Pa^0.5]. */
  readonly coefficient: number;
}

/** What {@linkcode orificeTakeOffs} finds; lists in the order of the take-offs. */
export interface OrificeRailFlow {
  /** Pressure at each take-off over that behind the orifices [Pa]. */
  readonly pressures_Pa: readonly number[];
  /** Flow of each [m^3/s]. */
  readonly flows_m3_s: readonly number[];
}

/**
 * Finds pressure and flow of each orifice: marches from the dead end with a guessed last
 * pressure until the feed end meets the supply, by Brent's method. Friction alone.
 *
 * @param spec The gallery.
 * @returns Pressures and flows.
 * @throws {InputError} When there is no take-off, or they are not in order.
 *
 * @example The last of four gives least
 * ```ts
 * import { assert } from "@std/assert";
 *
 * const { flows_m3_s: [first = 0, , , last = 0] } = orificeTakeOffs({
 *   bore_m: 6e-3,
 *   roughness_m: 1.5e-6,
 *   takeOffs_m: [0.1, 0.2, 0.3, 0.4],
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 *   supply_Pa: 3e5,
 *   coefficient: 5.26e-8,
 * });
 *
 * assert(last < first && last > 0.99 * first);
 * ```
 */
export function orificeTakeOffs(spec: OrificeRailSpec): OrificeRailFlow {
  const { takeOffs_m, coefficient, supply_Pa } = spec;
  requireOrder(takeOffs_m);
  const pressures_Pa = new Array<number>(takeOffs_m.length).fill(0);
  const missing = (last_Pa: number): number => {
    let pressure = last_Pa;
    let flow = 0;
    for (let i = takeOffs_m.length - 1; i >= 0; i--) {
      pressures_Pa[i] = pressure;
      flow += coefficient * Math.sqrt(pressure);
      const length_m = (takeOffs_m[i] as number) - (i > 0 ? takeOffs_m[i - 1] as number : 0);
      pressure += frictionLoss(sectionOf(spec, flow, length_m));
    }
    return pressure - supply_Pa;
  };
  missing(findRoot(missing, { from: 0, to: supply_Pa, tolerance: 1e-9 * supply_Pa }));
  return {
    pressures_Pa,
    flows_m3_s: pressures_Pa.map((pressure) => coefficient * Math.sqrt(pressure)),
  };
}
