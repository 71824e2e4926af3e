/** Tables that the tuner is handed, worked out on demand. */
import { scaledFlow } from "@/lib/flow/mod.ts";
import { injectorPressures, LEAST_DIFFERENTIAL_Pa } from "@/lib/injector/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { type PlanValues, RATING_DENSITY_KG_M3 } from "@/lib/plan/mod.ts";
import { sensorVoltage } from "@/lib/sensor/mod.ts";
import type { Evaluation } from "./evaluation.ts";

/** Rail pressure and injector flow at one manifold pressure. */
export interface RailPressureRow {
  /** In the manifold [Pa, absolute]. */
  readonly manifold_Pa: number;
  /** In the rail [Pa, gauge]. */
  readonly rail_Pa: number;
  /** Across the injectors [Pa]. */
  readonly differential_Pa: number;
  /** Flow of a primary injector over its flow at rating; undefined without an injector. */
  readonly flowShare: number | undefined;
}

/** Steps of manifold pressure from idle to the highest boost. */
const STEPS = 5;

/**
 * Finds rail pressure against manifold pressure, from idle to full power.
 *
 * @param evaluation The evaluated plan.
 * @param values The same plan in numbers.
 * @returns One row for each manifold pressure, rising; none while pressures are not known.
 *
 * @example With a hose to the manifold the pressure across the injectors stays
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 * import { evaluate } from "./evaluate.ts";
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
 * const table = railPressureTable(evaluate(reading.plan), resolvePlan(reading.plan).values);
 *
 * for (const row of table) assertAlmostEquals(row.differential_Pa, 3e5, 1);
 * ```
 */
export function railPressureTable(evaluation: Evaluation, values: PlanValues): RailPressureRow[] {
  const { pressures } = evaluation.results;
  if (!pressures) return [];
  const { manifoldIdle_Pa: from, manifoldPeak_Pa: to, ambient_Pa } = pressures;
  const working = new Working();
  return Array.from({ length: STEPS + 1 }, (_, i) => {
    const manifold_Pa = from + (to - from) * i / STEPS;
    const found = injectorPressures(working, "tuner", {
      setPressure_Pa: values.regulator.setPressure,
      reference: values.regulator.reference,
      manifold_Pa,
      ambient_Pa,
    });
    return {
      manifold_Pa,
      rail_Pa: found.railPressure_Pa,
      differential_Pa: found.differential_Pa,
      flowShare: flowShare(working, evaluation, values, found.differential_Pa),
    };
  });
}

function flowShare(
  working: Working,
  { results }: Evaluation,
  values: PlanValues,
  differential_Pa: number,
): number | undefined {
  const [stage] = values.injectors.stages;
  if (stage?.flow === undefined || !results.demand || differential_Pa < LEAST_DIFFERENTIAL_Pa) {
    return undefined;
  }
  const flow = working.run("tuner.flow_m3_s", scaledFlow, {
    flow: stage.flow,
    differential: stage.pressure,
    newDifferential: differential_Pa,
    density: RATING_DENSITY_KG_M3,
    newDensity: results.demand.fuel.density_kg_m3,
  });
  return flow / stage.flow;
}

/** The transfer of the pressure sensor. */
export interface SensorTransfer {
  /** Output at zero gauge pressure [V]. */
  readonly zero_V: number;
  /** Output at full scale [V]. */
  readonly full_V: number;
  /** Pressure per volt of output [Pa/V]. */
  readonly slope_Pa_V: number;
}

/**
 * Finds the sensor's transfer from its supply, shares and range.
 *
 * @param values The plan in numbers.
 * @returns Outputs at the ends of the range, and the slope between.
 *
 * @example 0.5 to 4.5 V over 10 bar
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const sensor = { supply: 5, lowShare: 0.1, highShare: 0.9, range: 1e6 };
 *
 * assertEquals(tunerSensor({ sensor }), { zero_V: 0.5, full_V: 4.5, slope_Pa_V: 2.5e5 });
 * ```
 */
export function tunerSensor(
  { sensor }: {
    readonly sensor: Pick<PlanValues["sensor"], "supply" | "lowShare" | "highShare" | "range">;
  },
): SensorTransfer {
  const { supply, lowShare, highShare, range } = sensor;
  const at = (pressure: number): number =>
    sensorVoltage({ pressure, supply, lowShare, highShare, range });
  const zero_V = at(0);
  const full_V = at(range);
  return { zero_V, full_V, slope_Pa_V: range / (full_V - zero_V) };
}
