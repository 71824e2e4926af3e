/** The tests that a plan calls for, in the order they are climbed. */
import { benchAir } from "./bench_air.ts";
import { benchSeals, drainDry } from "./bench_after.ts";
import { benchProof } from "./bench_proof.ts";
import { carStatic } from "./car_static.ts";
import { firstDrive, hotSoak, running, yearly } from "./car_running.ts";
import type { ProofContext } from "./context.ts";
import type { Rung } from "./rung.ts";

/**
 * Makes the ladder of leak tests for a plan: nine rungs, each to be passed
 * before the next. Texts are lines with their values apart; see {@linkcode Line}.
 *
 * @param context Facts of the evaluated plan.
 * @returns The rungs in order.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 * import { proofNumbers, proofPressures } from "@/lib/proof/mod.ts";
 *
 * const working = new Working();
 * const pressures = proofPressures(working, {
 *   setPressure_Pa: 3e5,
 *   boost_Pa: 1e5,
 *   reference: "manifold",
 * });
 * const numbers = proofNumbers(working, {
 *   pressures,
 *   bore_m: 0.0127,
 *   length_m: 0.42,
 *   hose_m3: 1e-4,
 *   airPressure_Pa: 5e4,
 *   gaugeResolution_Pa: 2000,
 *   temperature_K: 293.15,
 *   ambient_Pa: 101_325,
 *   fuel: {
 *     density_kg_m3: 745,
 *     viscosity_Pa_s: 4.1e-4,
 *     molarMass_kg_mol: 0.1,
 *     lowerLimit: 0.014,
 *   },
 * });
 * const ladder = testLadder({
 *   fuel: { base: "petrol", ethanolShare: 0.1 },
 *   rails: 1,
 *   injectorsPerRail: 4,
 *   layout: "return",
 *   reference: "manifold",
 *   boosted: true,
 *   setPressure_Pa: 3e5,
 *   railIdle_Pa: 2.4e5,
 *   pressures,
 *   numbers,
 *   gaugeResolution_Pa: 2000,
 *   temperature_K: 293.15,
 * });
 *
 * assertEquals(ladder.map((rung) => rung.id).slice(0, 3), ["bench-air", "bench-proof", "drain-dry"]);
 * ```
 */
export function testLadder(context: ProofContext): Rung[] {
  return RUNGS.map((rung) => rung(context));
}

const RUNGS = [
  benchAir,
  benchProof,
  drainDry,
  benchSeals,
  carStatic,
  running,
  hotSoak,
  firstDrive,
  yearly,
] as const;
