/** Steady flow in a rail fed at one end: what each injector sees. */
import { pipeFlow, type Regime } from "@/lib/flow/mod.ts";
import type { Working } from "@/lib/method/mod.ts";
import { flowSpread, spreadOf } from "./flow_spread.ts";
import { march, type RailSpec } from "./march.ts";
import { takeOffLoss, takeOffRecovery } from "./take_off.ts";

/** What {@linkcode railSteady} finds. Pressures are over that at the feed end. */
export interface RailSteady {
  /** Velocity at the feed end, the highest in the gallery [m/s]. */
  readonly inletVelocity_m_s: number;
  /** Reynolds number at the feed end [-]. */
  readonly inletReynolds: number;
  /** How the fuel moves at the feed end. */
  readonly inletRegime: Regime;
  /** Lowest pressures that can be, at each injector: friction, nothing recovered [Pa]. */
  readonly noRecovery_Pa: readonly number[];
  /** Highest that can be: all dynamic pressure recovered, past each take-off [Pa]. */
  readonly fullRecovery_Pa: readonly number[];
  /** Estimate between: recovery less the loss past each take-off, mean of both its sides [Pa]. */
  readonly estimate_Pa: readonly number[];
  /** Spread of flow between injectors by the estimate [-]. */
  readonly flowSpread: number;
  /** The same by the lower bound of pressures [-]. */
  readonly flowSpreadNoRecovery: number;
  /** The same with all recovered, on the side of the take-offs where it is wider [-]. */
  readonly flowSpreadFullRecovery: number;
  /** The larger of both: the estimate never exceeds it, and a cautious verdict takes it [-]. */
  readonly flowSpreadWorst: number;
}

/**
 * Finds velocity, pressures at the injectors and spread of flow in a rail fed at one end,
 * and records how, section by section.
 *
 * @param working The record.
 * @param section Where the results belong, like `rail`.
 * @param spec The gallery and the differential pressure across its injectors.
 * @returns The results.
 * @throws {InputError} When a number lies outside the range of the method it goes into.
 *
 * @example Four injectors on a 10 mm gallery
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const rail = railSteady(new Working(), "rail", {
 *   bore_m: 10e-3,
 *   roughness_m: 1.5e-6,
 *   takeOffs_m: [0.05, 0.15, 0.25, 0.35],
 *   flow_m3_s: 8e-5,
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 *   injectorDifferential_Pa: 3e5,
 * });
 *
 * assertAlmostEquals(rail.inletVelocity_m_s, 1.019, 1e-3);
 * assertAlmostEquals(rail.flowSpreadNoRecovery, 102.2 / 6e5, 1e-6);
 * ```
 */
export function railSteady(
  working: Working,
  section: string,
  spec: RailSpec & { readonly injectorDifferential_Pa: number },
): RailSteady {
  const pipes: ReturnType<typeof pipeFlow>[] = [];
  const pressures = march(spec, {
    friction: (i, pipe) => {
      const found = pipeFlow(working, `${section}.sections.${i}`, pipe);
      pipes.push(found);
      return found.pressureDrop_Pa;
    },
    recovery: (i, stream) =>
      working.run(`${section}.takeOffs.${i}.recovery_Pa`, takeOffRecovery, stream),
    loss: (i, stream) => working.run(`${section}.takeOffs.${i}.loss_Pa`, takeOffLoss, stream),
  });
  const [inlet] = pipes as [ReturnType<typeof pipeFlow>];
  const estimate_Pa = pressures.partBefore_Pa.map((before, i) =>
    (before + (pressures.partAfter_Pa[i] as number)) / 2
  );
  const spreadBy = (result: string, pressures_Pa: readonly number[]): number =>
    working.run(`${section}.${result}`, flowSpread, {
      pressureSpread: spreadOf(pressures_Pa),
      differential: spec.injectorDifferential_Pa,
    });
  const flowSpreadNoRecovery = spreadBy("flowSpreadNoRecovery", pressures.noRecovery_Pa);
  const flowSpreadFullRecovery = spreadBy("flowSpreadFullRecovery", pressures.fullBefore_Pa);
  return {
    inletVelocity_m_s: inlet.velocity_m_s,
    inletReynolds: inlet.reynolds,
    inletRegime: inlet.regime,
    noRecovery_Pa: pressures.noRecovery_Pa,
    fullRecovery_Pa: pressures.fullAfter_Pa,
    estimate_Pa,
    flowSpread: spreadBy("flowSpread", estimate_Pa),
    flowSpreadNoRecovery,
    flowSpreadFullRecovery,
    flowSpreadWorst: Math.max(flowSpreadNoRecovery, flowSpreadFullRecovery),
  };
}
