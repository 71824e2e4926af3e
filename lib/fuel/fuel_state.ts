/** All that the rest of the service asks of a fuel at one temperature. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Working } from "@/lib/method/mod.ts";
import { blendBulkModulus, blendDensity, blendViscosity, ethanolMassShare } from "./blend.ts";
import {
  blendAirFuelRatio,
  blendHeatingValue,
  blendMolarMass,
  blendSpecificHeat,
  type MixedByMass,
} from "./blend_by_mass.ts";
import {
  blendVapourPressure,
  ethanolActivity,
  findEthanolVapourFactor,
} from "./blend_vapour_pressure.ts";
import { soundSpeedFromModulus, waveBulkModulus } from "./compressibility.ts";
import { PURE_FLUIDS } from "./fluids.ts";
import { type BaseFuel, COMBUSTION, FLAMMABILITY, FUEL_BULK } from "./fuel_data.ts";
import { liquidDensity } from "./liquid_density.ts";
import { liquidSoundSpeed } from "./liquid_sound.ts";
import { liquidVapourPressure } from "./liquid_vapour_pressure.ts";
import { dynamicViscosity, kinematicViscosity, liquidViscosity } from "./liquid_viscosity.ts";
import { petrolDensity, petrolExpansion, petrolSoundSpeed, petrolViscosity } from "./petrol.ts";
import { petrolVapourPressure } from "./petrol_vapour_pressure.ts";

/** A fuel as bought or mixed. */
export interface FuelSpec {
  /** What it mostly is; ethanol is petrol with an ethanol share of one. */
  readonly base: "petrol" | "methanol";
  /** Ethanol by volume at 15 °C [-], 0 to 1; nought for methanol. */
  readonly ethanolShare: number;
  /** Density of the petrol alone at 15 °C [kg/m^3]. */
  readonly petrolDensity15_kg_m3: number;
  /** Reid vapour pressure (37.8 °C) of the petrol alone [Pa, absolute]. */
  readonly reidPressure_Pa: number;
}

/** A fuel at one temperature. */
export interface FuelState {
  /** Density. */
  readonly density_kg_m3: number;
  /** Dynamic viscosity. */
  readonly dynamicViscosity_Pa_s: number;
  /** Kinematic viscosity. */
  readonly kinematicViscosity_m2_s: number;
  /** Vapour pressure, absolute. */
  readonly vapourPressure_Pa: number;
  /** Speed of sound in the liquid itself; a hose slows the wave. */
  readonly speedOfSound_m_s: number;
  /** Bulk modulus as pressure waves meet it. */
  readonly bulkModulus_Pa: number;
  /** Heat of burning a kilogram, the water leaving as vapour. */
  readonly lowerHeatingValue_J_kg: number;
  /** Mass of air to burn a mass of fuel completely. */
  readonly stoichiometricRatio: number;
  /** Heat to warm a kilogram by a kelvin. */
  readonly specificHeat_J_kgK: number;
  /** Mean molar mass of all of the fuel as vapour. */
  readonly molarMass_kg_mol: number;
  /** Lower flammable limit by volume; of a blend the lower of the two, the cautious choice. */
  readonly lowerFlammableLimit: number;
}

/** What depends on the temperature. */
type Flowing = Pick<
  FuelState,
  | "density_kg_m3"
  | "dynamicViscosity_Pa_s"
  | "kinematicViscosity_m2_s"
  | "vapourPressure_Pa"
  | "speedOfSound_m_s"
  | "bulkModulus_Pa"
>;

/** What does not. */
type Burning = Omit<FuelState, keyof Flowing>;

/** Density of ethanol at the temperature at which volume shares count [kg/m^3]. */
const ETHANOL_DENSITY_15_kg_m3: number = liquidDensity({
  temperature: 288.15,
  ...PURE_FLUIDS.ethanol.density,
});

/**
 * Finds the properties of a fuel at a temperature, at pressures near the atmosphere's; pressure in
 * a port-injection rail moves them by less than their scatter.
 *
 * Valid from -10 to 60 °C. The share of ethanol is taken by volume at 15 °C and used as such at
 * every temperature, which moves the density by less than 0.1 %.
 *
 * @param working Records what ran.
 * @param prefix Path of the results in the evaluation: `fuel`.
 * @param spec The fuel.
 * @param temperature_K Its temperature.
 * @returns Its properties, in SI.
 * @throws {InputError} When the temperature or a number of the fuel lies outside its range.
 *
 * @example E10 at 40 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const state = fuelState(new Working(), "fuel", {
 *   base: "petrol",
 *   ethanolShare: 0.1,
 *   petrolDensity15_kg_m3: 745,
 *   reidPressure_Pa: 60_000,
 * }, 313.15);
 *
 * assertAlmostEquals(state.density_kg_m3, 727.2, 0.1);
 * assertAlmostEquals(state.lowerHeatingValue_J_kg, 41.3e6, 1e5);
 * ```
 */
export function fuelState(
  working: Working,
  prefix: string,
  spec: FuelSpec,
  temperature_K: number,
): FuelState {
  const { base, ethanolShare } = spec;
  requireSpec(spec);
  if (base === "methanol" || ethanolShare === 1) {
    const fuel = base === "methanol" ? "methanol" : "ethanol";
    return { ...alcohol(working, prefix, fuel, temperature_K), ...burningOf(fuel) };
  }
  if (ethanolShare === 0) {
    return { ...petrol(working, prefix, spec, temperature_K), ...burningOf("petrol") };
  }
  return {
    ...blendFlowing(working, prefix, spec, temperature_K),
    ...blendBurning(working, prefix, spec),
  };
}

/**
 * Lower heating value [J/kg] of a fuel, the same as in its {@linkcode FuelState}.
 *
 * @param spec The fuel.
 * @returns The heat of burning a kilogram of it, the water leaving as vapour [J/kg].
 * @throws {InputError} When a number of the fuel lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const petrol = {
 *   base: "petrol",
 *   ethanolShare: 0,
 *   petrolDensity15_kg_m3: 745,
 *   reidPressure_Pa: 60_000,
 * } as const;
 *
 * assertEquals(fuelEnergy(petrol), 43e6);
 * ```
 */
export function fuelEnergy(spec: FuelSpec): number {
  requireSpec(spec);
  if (spec.base === "methanol") return COMBUSTION.methanol.lowerHeatingValue_J_kg;
  return blendHeatingValue({
    massShare: ethanolMassShare(sharesAt15(spec)),
    petrol: COMBUSTION.petrol.lowerHeatingValue_J_kg,
    ethanol: COMBUSTION.ethanol.lowerHeatingValue_J_kg,
  });
}

/** Ethanol in methanol is a mixture that none of these methods covers. */
export function requireSpec({ base, ethanolShare }: FuelSpec): void {
  const most = base === "methanol" ? 0 : 1;
  if (ethanolShare >= 0 && ethanolShare <= most) return;
  const rule = most === 0 ? "must be 0 with methanol" : "must be >= 0 and <= 1";
  throw new InputError("fuel", "ethanolShare", rule, ethanolShare);
}

function sharesAt15(
  { ethanolShare, petrolDensity15_kg_m3 }: FuelSpec,
): Record<"ethanolShare" | "petrolDensity" | "ethanolDensity", number> {
  return {
    ethanolShare,
    petrolDensity: petrolDensity15_kg_m3,
    ethanolDensity: ETHANOL_DENSITY_15_kg_m3,
  };
}

function alcohol(
  working: Working,
  at: string,
  fluid: "ethanol" | "methanol",
  temperature: number,
): Flowing {
  const data = PURE_FLUIDS[fluid];
  const density = working.run(`${at}.density_kg_m3`, liquidDensity, {
    temperature,
    ...data.density,
  });
  const viscosity = working.run(`${at}.dynamicViscosity_Pa_s`, liquidViscosity, {
    temperature,
    ...data.viscosity,
  });
  const soundSpeed = working.run(`${at}.speedOfSound_m_s`, liquidSoundSpeed, {
    temperature,
    ...data.soundSpeed,
  });
  return {
    density_kg_m3: density,
    dynamicViscosity_Pa_s: viscosity,
    kinematicViscosity_m2_s: working.run(`${at}.kinematicViscosity_m2_s`, kinematicViscosity, {
      viscosity,
      density,
    }),
    vapourPressure_Pa: working.run(`${at}.vapourPressure_Pa`, liquidVapourPressure, {
      temperature,
      ...data.vapourPressure,
    }),
    speedOfSound_m_s: soundSpeed,
    bulkModulus_Pa: working.run(`${at}.bulkModulus_Pa`, waveBulkModulus, { density, soundSpeed }),
  };
}

function petrol(working: Working, at: string, spec: FuelSpec, temperature: number): Flowing {
  const density15 = spec.petrolDensity15_kg_m3;
  const expansion = working.run(`${at}.expansion15_K`, petrolExpansion, { density15 });
  const density = working.run(`${at}.density_kg_m3`, petrolDensity, {
    density15,
    expansion,
    temperature,
  });
  const kinematic = working.run(`${at}.kinematicViscosity_m2_s`, petrolViscosity, { temperature });
  const soundSpeed = working.run(`${at}.speedOfSound_m_s`, petrolSoundSpeed, { temperature });
  return {
    density_kg_m3: density,
    dynamicViscosity_Pa_s: working.run(`${at}.dynamicViscosity_Pa_s`, dynamicViscosity, {
      kinematic,
      density,
    }),
    kinematicViscosity_m2_s: kinematic,
    vapourPressure_Pa: working.run(`${at}.vapourPressure_Pa`, petrolVapourPressure, {
      reidPressure: spec.reidPressure_Pa,
      temperature,
    }),
    speedOfSound_m_s: soundSpeed,
    bulkModulus_Pa: working.run(`${at}.bulkModulus_Pa`, waveBulkModulus, { density, soundSpeed }),
  };
}

function blendFlowing(working: Working, at: string, spec: FuelSpec, temperature: number): Flowing {
  const { ethanolShare } = spec;
  const pure = petrol(working, `${at}.petrol`, spec, temperature);
  const ethanol = alcohol(working, `${at}.ethanol`, "ethanol", temperature);
  const density = working.run(`${at}.density_kg_m3`, blendDensity, {
    ethanolShare,
    petrolDensity: pure.density_kg_m3,
    ethanolDensity: ethanol.density_kg_m3,
  });
  const viscosity = working.run(`${at}.dynamicViscosity_Pa_s`, blendViscosity, {
    ethanolShare,
    petrolViscosity: pure.dynamicViscosity_Pa_s,
    ethanolViscosity: ethanol.dynamicViscosity_Pa_s,
  });
  const bulkModulus = working.run(`${at}.bulkModulus_Pa`, blendBulkModulus, {
    ethanolShare,
    petrolModulus: pure.bulkModulus_Pa,
    ethanolModulus: ethanol.bulkModulus_Pa,
  });
  return {
    density_kg_m3: density,
    dynamicViscosity_Pa_s: viscosity,
    kinematicViscosity_m2_s: working.run(`${at}.kinematicViscosity_m2_s`, kinematicViscosity, {
      viscosity,
      density,
    }),
    vapourPressure_Pa: working.run(`${at}.vapourPressure_Pa`, blendVapourPressure, {
      factor: findEthanolVapourFactor(working, `${at}.ethanolVapourFactor`, ethanolShare),
      activity: working.run(`${at}.ethanolActivity`, ethanolActivity, { ethanolShare }),
      petrolPressure: pure.vapourPressure_Pa,
      ethanolPressure: ethanol.vapourPressure_Pa,
    }),
    speedOfSound_m_s: working.run(`${at}.speedOfSound_m_s`, soundSpeedFromModulus, {
      bulkModulus,
      density,
    }),
    bulkModulus_Pa: bulkModulus,
  };
}

function burningOf(fuel: BaseFuel): Burning {
  const { lowerHeatingValue_J_kg, stoichiometricRatio } = COMBUSTION[fuel];
  const { specificHeat_J_kgK, molarMass_kg_mol } = FUEL_BULK[fuel];
  return {
    lowerHeatingValue_J_kg,
    stoichiometricRatio,
    specificHeat_J_kgK,
    molarMass_kg_mol,
    lowerFlammableLimit: FLAMMABILITY[fuel].lowerLimit,
  };
}

function blendBurning(working: Working, at: string, spec: FuelSpec): Burning {
  const massShare = working.run(`${at}.ethanolMassShare`, ethanolMassShare, sharesAt15(spec));
  const [p, e] = [burningOf("petrol"), burningOf("ethanol")];
  const mixed = (key: keyof Burning, mixing: MixedByMass): number =>
    working.run(`${at}.${key}`, mixing, { massShare, petrol: p[key], ethanol: e[key] });
  return {
    lowerHeatingValue_J_kg: mixed("lowerHeatingValue_J_kg", blendHeatingValue),
    stoichiometricRatio: mixed("stoichiometricRatio", blendAirFuelRatio),
    specificHeat_J_kgK: mixed("specificHeat_J_kgK", blendSpecificHeat),
    molarMass_kg_mol: mixed("molarMass_kg_mol", blendMolarMass),
    lowerFlammableLimit: Math.min(p.lowerFlammableLimit, e.lowerFlammableLimit),
  };
}
