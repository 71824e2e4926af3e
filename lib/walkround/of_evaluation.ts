/** The facts that ladder and lists need, taken from an evaluation. */
import type { Evaluation } from "@/lib/evaluation/mod.ts";
import { fuelSpecOf, type PlanValues } from "@/lib/plan/mod.ts";
import type { ProofContext } from "./context.ts";

/**
 * Gathers what the test ladder and the walk-round lists need to know of a plan.
 *
 * @param evaluation The evaluated plan.
 * @param values The same plan in numbers.
 * @returns The facts, or undefined while the numbers of the proof are not known.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { evaluate } from "@/lib/evaluation/mod.ts";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "440 cc/min" }] },
 *   rail: { bore: "12 mm", height: "25 mm" },
 * });
 * assert(reading.ok);
 * const context = proofContextOf(evaluate(reading.plan), resolvePlan(reading.plan).values);
 *
 * assertEquals(context?.injectorsPerRail, 4);
 * ```
 */
export function proofContextOf(
  evaluation: Evaluation,
  values: PlanValues,
): ProofContext | undefined {
  const { proof, pressures } = evaluation.results;
  if (proof?.numbers === undefined) return undefined;
  const { rail, engine, injectors, regulator, pump, sensor } = values;
  const perCylinder = injectors.stages.reduce((sum, stage) => sum + stage.perCylinder, 0) || 1;
  return {
    fuel: fuelSpecOf(values.fuel),
    rails: rail.count,
    injectorsPerRail: perCylinder * engine.cylinders / rail.count,
    layout: regulator.layout,
    reference: regulator.reference,
    boosted: engine.aspiration === "boosted",
    setPressure_Pa: regulator.setPressure,
    railIdle_Pa: pressures?.railIdle_Pa ?? regulator.setPressure,
    pressures: proof.pressures,
    fault: proof.fault,
    weakest: proof.weakest,
    numbers: proof.numbers,
    gaugeResolution_Pa: values.proof.gaugeResolution,
    temperature_K: values.proof.temperature,
    sensorRange_Pa: sensor.range,
    pumpPlace: pump.place === "tank" ? "tank" : "outside",
  };
}
