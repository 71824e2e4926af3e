/** All that an engine asks of its fuel system. */
import type { Working } from "@/lib/method/mod.ts";
import { airDensity } from "./air_density.ts";
import { airFlow, fuelByAir, idealFilling, routeDifference } from "./breathing.ts";
import { bsfcFloor, fuelByPower } from "./bsfc.ts";
import { AIR_GAS_CONSTANT_J_kg_K, type Cycle, TURNS_PER_FILLING } from "./constants.ts";
import { overallEfficiency } from "./efficiency.ts";
import { injectionInterval } from "./injection_interval.ts";
import { bmep } from "./power.ts";

/**
 * The idle taken: exhaust at the standard atmosphere, compression ratio 10, heat ratio of a
 * burnt charge. Ours; filling at idle moves by 0.03 between ratios of 8 and 12.
 */
const IDLE = { exhaust: 101_325, compressionRatio: 10, heatRatio: 1.35 } as const;

/** What {@linkcode engineDemand} needs. */
export interface DemandSpec {
  /** How the engine works. */
  readonly cycle: Cycle;
  /** Cylinders, or rotors. */
  readonly cylinders: number;
  /** Swept volume of all cylinders, of a rotary one chamber times the rotors [m^3]; without it no air route. */
  readonly displacement_m3: number | undefined;
  /** Full power at the crankshaft [W]. */
  readonly power_W: number;
  /** Shaft speed at full power [rev/s]. */
  readonly powerSpeed_rev_s: number;
  /** Highest shaft speed [rev/s]. */
  readonly maximumSpeed_rev_s: number;
  /** Shaft speed at idle [rev/s]. */
  readonly idleSpeed_rev_s: number;
  /** BSFC at full power [kg/J]. */
  readonly bsfc_kg_J: number;
  /** The fuel. */
  readonly fuel: {
    /** Lower heating value [J/kg]. */
    readonly lowerHeatingValue_J_kg: number;
    /** Mass of air that burns one of fuel [-]. */
    readonly stoichiometricRatio: number;
  };
  /** Volumetric efficiency referred to the manifold, of a two-stroke the delivery ratio [-]. */
  readonly fillingRatio: number;
  /** Pressure in the manifold at full power [Pa, absolute]. */
  readonly manifoldPressure_Pa: number;
  /** Temperature of the charge in the manifold [K]. */
  readonly chargeTemperature_K: number;
  /** Lambda at full power [-]. */
  readonly lambda: number;
  /** Pressure in the manifold at idle [Pa, absolute]. */
  readonly idleManifoldPressure_Pa: number;
  /** Lambda at idle [-]. */
  readonly idleLambda: number;
}

/** What an engine asks for. */
export interface Demand {
  /** Fuel flow of the engine at full power, by power and BSFC [kg/s]. */
  readonly fuelByPower_kg_s: number;
  /** The same by air flow [kg/s]; needs the displacement. */
  readonly fuelByAir_kg_s: number | undefined;
  /** How far the air route lies above the power route [-]. */
  readonly routeDifference: number | undefined;
  /** Air flow at full power [kg/s]. */
  readonly air_kg_s: number | undefined;
  /** Share of the fuel's heat that the power and BSFC say reaches the crankshaft [-]. */
  readonly overallEfficiency: number;
  /** BSFC of an engine that wasted nothing [kg/J]. */
  readonly bsfcFloor_kg_J: number;
  /** Brake mean effective pressure at full power [Pa]. */
  readonly bmep_Pa: number | undefined;
  /** Fuel flow of the engine at idle [kg/s]; needs the displacement. */
  readonly fuelIdle_kg_s: number | undefined;
  /** Time between injections of one injector at the speed of full power [s]. */
  readonly intervalPeak_s: number;
  /** The same at maximum speed [s]. */
  readonly intervalMaximum_s: number;
  /** The same at idle [s]. */
  readonly intervalIdle_s: number;
}

/**
 * Computes what an engine asks of its fuel system, by two routes as far as the inputs go.
 *
 * Idle is an estimate: filling as of an ideal throttled four-stroke. A two-stroke that fills
 * through its crankcase, or an engine with much overlap, may lie far from it.
 *
 * @param working Takes the record, each number under `demand.` and its key.
 * @param spec The engine at full power and at idle.
 * @returns Fuel flows, efficiency and the time for one injection.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const demand = engineDemand(new Working(), {
 *   cycle: "four-stroke",
 *   cylinders: 4,
 *   displacement_m3: 0.002,
 *   power_W: 330_000,
 *   powerSpeed_rev_s: 7000 / 60,
 *   maximumSpeed_rev_s: 7500 / 60,
 *   idleSpeed_rev_s: 15,
 *   bsfc_kg_J: 0.31 / 3.6e6,
 *   fuel: { lowerHeatingValue_J_kg: 43e6, stoichiometricRatio: 14.6 },
 *   fillingRatio: 1,
 *   manifoldPressure_Pa: 250_000,
 *   chargeTemperature_K: 320.15,
 *   lambda: 0.8,
 *   idleManifoldPressure_Pa: 35_000,
 *   idleLambda: 1,
 * });
 *
 * assertAlmostEquals(demand.fuelByPower_kg_s, 0.02842, 1e-5);
 * assertAlmostEquals(demand.routeDifference ?? NaN, -0.044, 1e-3);
 * ```
 */
export function engineDemand(working: Working, spec: DemandSpec): Demand {
  const { power_W: power, displacement_m3: displacement, powerSpeed_rev_s: speed } = spec;
  const turns = TURNS_PER_FILLING[spec.cycle];
  const lowerHeatingValue = spec.fuel.lowerHeatingValue_J_kg;
  const fuelByPower_kg_s = working.run("demand.fuelByPower_kg_s", fuelByPower, {
    power,
    bsfc: spec.bsfc_kg_J,
  });
  const interval = (key: string, at: number): number =>
    working.run(`demand.${key}`, injectionInterval, { turns, speed: at });
  return {
    fuelByPower_kg_s,
    ...byAir(working, spec, fuelByPower_kg_s),
    overallEfficiency: working.run("demand.overallEfficiency", overallEfficiency, {
      power,
      fuelFlow: fuelByPower_kg_s,
      lowerHeatingValue,
    }),
    bsfcFloor_kg_J: working.run("demand.bsfcFloor_kg_J", bsfcFloor, { lowerHeatingValue }),
    bmep_Pa: displacement === undefined
      ? undefined
      : working.run("demand.bmep_Pa", bmep, { power, turns, displacement, speed }),
    intervalPeak_s: interval("intervalPeak_s", speed),
    intervalMaximum_s: interval("intervalMaximum_s", spec.maximumSpeed_rev_s),
    intervalIdle_s: interval("intervalIdle_s", spec.idleSpeed_rev_s),
  };
}

type ByAir = Pick<Demand, "fuelByAir_kg_s" | "routeDifference" | "air_kg_s" | "fuelIdle_kg_s">;

const NO_AIR_ROUTE: ByAir = {
  fuelByAir_kg_s: undefined,
  routeDifference: undefined,
  air_kg_s: undefined,
  fuelIdle_kg_s: undefined,
};

/** The numbers that rest on the displacement. */
function byAir(working: Working, spec: DemandSpec, byPower: number): ByAir {
  const { displacement_m3: displacement, cycle } = spec;
  if (displacement === undefined) return NO_AIR_ROUTE;
  const { stoichiometricRatio } = spec.fuel;
  const turns = TURNS_PER_FILLING[cycle];
  const charge = { temperature: spec.chargeTemperature_K, gasConstant: AIR_GAS_CONSTANT_J_kg_K };
  const air_kg_s = working.run("demand.air_kg_s", airFlow, {
    filling: spec.fillingRatio,
    density: working.run("demand.airDensity_kg_m3", airDensity, {
      pressure: spec.manifoldPressure_Pa,
      ...charge,
    }),
    displacement,
    speed: spec.powerSpeed_rev_s,
    turns,
  });
  const fuelByAir_kg_s = working.run("demand.fuelByAir_kg_s", fuelByAir, {
    airFlow: air_kg_s,
    lambda: spec.lambda,
    stoichiometricRatio,
  });
  const airIdle_kg_s = working.run("demand.airIdle_kg_s", airFlow, {
    filling: working.run("demand.fillingIdle", idealFilling, {
      manifold: spec.idleManifoldPressure_Pa,
      ...IDLE,
    }),
    density: working.run("demand.airDensityIdle_kg_m3", airDensity, {
      pressure: spec.idleManifoldPressure_Pa,
      ...charge,
    }),
    displacement,
    speed: spec.idleSpeed_rev_s,
    turns,
  });
  return {
    air_kg_s,
    fuelByAir_kg_s,
    routeDifference: working.run("demand.routeDifference", routeDifference, {
      byAir: fuelByAir_kg_s,
      byPower,
    }),
    fuelIdle_kg_s: working.run("demand.fuelIdle_kg_s", fuelByAir, {
      airFlow: airIdle_kg_s,
      lambda: spec.idleLambda,
      stoichiometricRatio,
    }),
  };
}
