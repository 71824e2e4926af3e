/** All that the leak tests of one rail are computed to be. */
import type { Working } from "@/lib/method/mod.ts";
import { airViscosity } from "./air_viscosity.ts";
import { leakFromBubbles } from "./bubbles.ts";
import { airTestRelief, firstHalt } from "./code_pressures.ts";
import {
  AIR_ENERGY_LIMIT_J,
  AIR_HEAT_RATIO,
  ALLOWED_LEAK_Pa_m3_s,
  BUBBLE_DIAMETER_m,
  BUBBLE_WATCH_s,
  FIRST_AIR_LIMIT_Pa,
  MOLAR_GAS_CONSTANT_J_mol_K,
  SEEN_STEPS,
  WATER_BULK_MODULUS_Pa,
} from "./constants.ts";
import { fuelThroughCapillary, leakAtPressure } from "./leak_path.ts";
import { expectedFall, smallestLeakSeen, thermalChange, timeToSee } from "./pressure_decay.ts";
import type { ProofPressures } from "./proof_pressures.ts";
import { gasEnergy, liquidEnergy } from "./stored_energy.ts";
import { testVolume } from "./test_volume.ts";
import { flammableVolume, vapourVolume } from "./vapour.ts";

/** The shortest hold of the air test [s], and the longest that is asked of anybody; ours. */
const AIR_HOLD_s = { least: 600, most: 1800 } as const;

/** The spill whose vapour is shown [m^3]: two teaspoons. */
const SPILL_m3 = 1e-5;

/** What {@linkcode proofNumbers} needs. */
export interface ProofNumbersInput {
  /** The pressures of the proof. */
  readonly pressures: ProofPressures;
  /** Bore of the gallery [m]. */
  readonly bore_m: number;
  /** Length of one rail's gallery [m]. */
  readonly length_m: number;
  /** Volume of hose and fittings pressurised with it [m^3]. */
  readonly hose_m3: number;
  /** Pressure asked for in the first air test [Pa, gauge]. */
  readonly airPressure_Pa: number;
  /** Smallest change that the gauge shows [Pa]. */
  readonly gaugeResolution_Pa: number;
  /** Temperature in the shop [K]. */
  readonly temperature_K: number;
  /** Pressure of the outside air [Pa, absolute]. */
  readonly ambient_Pa: number;
  /** Leak of air allowed to a joint at working pressure [Pa m^3/s]; 1e-4 mbar L/s unless given. */
  readonly allowedLeak_Pa_m3_s?: number | undefined;
  /** The fuel at shop temperature. */
  readonly fuel: {
    /** Density [kg/m^3]. */
    readonly density_kg_m3: number;
    /** Dynamic viscosity [Pa s]. */
    readonly viscosity_Pa_s: number;
    /** Molar mass of its vapour [kg/mol]. */
    readonly molarMass_kg_mol: number;
    /** Lower flammable limit [-, by volume]. */
    readonly lowerLimit: number;
  };
}

/** The numbers of the leak tests of one rail. */
export interface ProofNumbers {
  /** Volume under test: one rail and what is pressurised with it [m^3]. */
  readonly volume_m3: number;
  /** Pressure of the first air test: as asked, at most 0.5 bar [Pa, gauge]. */
  readonly airPressure_Pa: number;
  /** Energy stored by it [J]. */
  readonly airEnergy_J: number;
  /** Energy that air at working pressure would store [J]. */
  readonly workingAirEnergy_J: number;
  /** Whether air at working pressure is allowed: its energy is at most 100 J and no part is too weak. */
  readonly workingAirAllowed: boolean;
  /** Highest relief setting for air at working pressure [Pa, gauge]. */
  readonly workingAirRelief_Pa: number;
  /** Energy that water at proof pressure stores [J]. */
  readonly liquidEnergy_J: number;
  /** First halt on the way to proof pressure [Pa, gauge]. */
  readonly firstHalt_Pa: number;
  /** Apparent change of the air test's pressure by one kelvin [Pa]. */
  readonly changePerKelvin_Pa: number;
  /** Leak of air allowed at working pressure [Pa m^3/s]. */
  readonly allowedLeak_Pa_m3_s: number;
  /** The same leak at the pressure of the first air test [Pa m^3/s]. */
  readonly testLeak_Pa_m3_s: number;
  /** Time that the gauge needs to show it [s]. */
  readonly timeToSee_s: number;
  /** How long the air test is held: until it shows, from 10 to 30 minutes [s]. */
  readonly airHold_s: number;
  /** Whether the gauge can show the allowed leak within the hold. */
  readonly gaugeDecides: boolean;
  /** Fall that the allowed leak makes within the hold [Pa]. */
  readonly expectedFall_Pa: number;
  /** Smallest leak that the gauge shows within the hold, at test pressure [Pa m^3/s]. */
  readonly smallestSeen_Pa_m3_s: number;
  /** Leak of one bubble in the time that each joint is watched [Pa m^3/s]. */
  readonly bubbleLeak_Pa_m3_s: number;
  /** The most fuel that a joint without a bubble could pass at working pressure [m^3/s]. */
  readonly fuelUnseen_m3_s: number;
  /** A small spill [m^3]. */
  readonly spill_m3: number;
  /** Vapour that it makes [m^3]. */
  readonly spillVapour_m3: number;
  /** Air that it brings to the lower flammable limit [m^3]. */
  readonly spillMixture_m3: number;
}

/**
 * Computes the leak tests of one rail.
 *
 * A leak allowed at working pressure is far smaller at the pressure of the
 * first air test, so what either shows is scaled through a fine passage
 * before anything is said of fuel.
 *
 * @param working Takes the record, each number under `proof.` and its key.
 * @param input Pressures, volume, gauge, shop and fuel.
 * @returns The numbers.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 * import { proofPressures } from "./proof_pressures.ts";
 *
 * const working = new Working();
 * const numbers = proofNumbers(working, {
 *   pressures: proofPressures(working, {
 *     setPressure_Pa: 3e5,
 *     boost_Pa: 0,
 *     reference: "atmosphere",
 *   }),
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
 *
 * assert(numbers.workingAirAllowed); // 53 J
 * assertEquals(numbers.gaugeDecides, false); // bubbles do
 * ```
 */
export function proofNumbers(working: Working, input: ProofNumbersInput): ProofNumbers {
  const { pressures, ambient_Pa: ambient, temperature_K: temperature, fuel } = input;
  const { workingPressure_Pa: workingPressure, conflict } = pressures;
  const airPressure = Math.min(input.airPressure_Pa, FIRST_AIR_LIMIT_Pa);
  const allowedLeak_Pa_m3_s = input.allowedLeak_Pa_m3_s ?? ALLOWED_LEAK_Pa_m3_s;
  const volume = working.run("proof.volume_m3", testVolume, {
    bore: input.bore_m,
    length: input.length_m,
    hose: input.hose_m3,
  });
  const air = { ambient, volume, heatRatio: AIR_HEAT_RATIO };
  const airEnergy_J = working.run("proof.airEnergy_J", gasEnergy, { gauge: airPressure, ...air });
  const workingAirEnergy_J = working.run("proof.workingAirEnergy_J", gasEnergy, {
    gauge: workingPressure,
    ...air,
  });
  const testLeak_Pa_m3_s = working.run("proof.testLeak_Pa_m3_s", leakAtPressure, {
    leak: allowedLeak_Pa_m3_s,
    at: workingPressure,
    gauge: airPressure,
    ambient,
  });
  const gauge = { steps: SEEN_STEPS, resolution: input.gaugeResolution_Pa, volume };
  const timeToSee_s = working.run("proof.timeToSee_s", timeToSee, {
    ...gauge,
    leak: testLeak_Pa_m3_s,
  });
  const airHold_s = Math.min(Math.max(timeToSee_s, AIR_HOLD_s.least), AIR_HOLD_s.most);
  const bubbleLeak_Pa_m3_s = working.run("proof.bubbleLeak_Pa_m3_s", leakFromBubbles, {
    diameter: BUBBLE_DIAMETER_m,
    frequency: 1 / BUBBLE_WATCH_s,
    ambient,
  });
  const spillVapour_m3 = working.run("proof.spillVapour_m3", vapourVolume, {
    liquid: SPILL_m3,
    density: fuel.density_kg_m3,
    molarMass: fuel.molarMass_kg_mol,
    gasConstant: MOLAR_GAS_CONSTANT_J_mol_K,
    temperature,
    pressure: ambient,
  });
  return {
    volume_m3: volume,
    airPressure_Pa: airPressure,
    airEnergy_J,
    workingAirEnergy_J,
    workingAirAllowed: workingAirEnergy_J <= AIR_ENERGY_LIMIT_J && conflict?.belowWorking !== true,
    workingAirRelief_Pa: working.run("proof.workingAirRelief_Pa", airTestRelief, {
      testPressure: workingPressure,
    }),
    liquidEnergy_J: working.run("proof.liquidEnergy_J", liquidEnergy, {
      gauge: pressures.proofPressure_Pa,
      volume,
      bulkModulus: WATER_BULK_MODULUS_Pa,
    }),
    firstHalt_Pa: working.run("proof.firstHalt_Pa", firstHalt, {
      testPressure: pressures.proofPressure_Pa,
    }),
    changePerKelvin_Pa: working.run("proof.changePerKelvin_Pa", thermalChange, {
      pressure: ambient + airPressure,
      temperature,
      temperatureChange: 1,
    }),
    allowedLeak_Pa_m3_s,
    testLeak_Pa_m3_s,
    timeToSee_s,
    airHold_s,
    gaugeDecides: timeToSee_s <= AIR_HOLD_s.most,
    expectedFall_Pa: working.run("proof.expectedFall_Pa", expectedFall, {
      leak: testLeak_Pa_m3_s,
      duration: airHold_s,
      volume,
    }),
    smallestSeen_Pa_m3_s: working.run("proof.smallestSeen_Pa_m3_s", smallestLeakSeen, {
      ...gauge,
      duration: airHold_s,
    }),
    bubbleLeak_Pa_m3_s,
    fuelUnseen_m3_s: working.run("proof.fuelUnseen_m3_s", fuelThroughCapillary, {
      airLeak: bubbleLeak_Pa_m3_s,
      airGauge: airPressure,
      fuelGauge: workingPressure,
      ambient,
      airViscosity: working.run("proof.airViscosity_Pa_s", airViscosity, { temperature }),
      fuelViscosity: fuel.viscosity_Pa_s,
    }),
    spill_m3: SPILL_m3,
    spillVapour_m3,
    spillMixture_m3: working.run("proof.spillMixture_m3", flammableVolume, {
      vapour: spillVapour_m3,
      lowerLimit: fuel.lowerLimit,
    }),
  };
}
