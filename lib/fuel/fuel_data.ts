/** What is known of the fuels besides how they flow: heat, fire, electricity, standards. */

/** A fuel of this service, before blending. */
export type BaseFuel = "petrol" | "ethanol" | "methanol";

/** A liquid that burns: fuels, rating liquids, cleaning liquids. */
export type Burnable = BaseFuel | "n-heptane" | "isooctane" | "toluene";

/** Heat and air of one liquid. */
export interface Combustion {
  /** Lower heating value of the liquid [J/kg]. */
  readonly lowerHeatingValue_J_kg: number;
  /** Mass of dry air to burn a mass of it completely [-]. */
  readonly stoichiometricRatio: number;
  /** Heat to evaporate it at 25 °C [J/kg]. */
  readonly heatOfVaporisation_J_kg: number;
}

/**
 * Heat and air by liquid.
 *
 * Source: formation enthalpies, balance of elements, CoolProp 8.0.0; petrol from handbooks
 * (42.7 to 43.5 MJ/kg, 14.6 to 14.7), its heat of vaporisation and that of isooctane from memory.
 */
export const COMBUSTION: Readonly<Record<Burnable, Combustion>> = {
  petrol: {
    lowerHeatingValue_J_kg: 43e6,
    stoichiometricRatio: 14.6,
    heatOfVaporisation_J_kg: 350e3,
  },
  ethanol: {
    lowerHeatingValue_J_kg: 26.8e6,
    stoichiometricRatio: 9,
    heatOfVaporisation_J_kg: 921e3,
  },
  methanol: {
    lowerHeatingValue_J_kg: 19.9e6,
    stoichiometricRatio: 6.47,
    heatOfVaporisation_J_kg: 1169e3,
  },
  "n-heptane": {
    lowerHeatingValue_J_kg: 44.6e6,
    stoichiometricRatio: 15.18,
    heatOfVaporisation_J_kg: 365e3,
  },
  isooctane: {
    lowerHeatingValue_J_kg: 44.3e6,
    stoichiometricRatio: 15.13,
    heatOfVaporisation_J_kg: 308e3,
  },
  toluene: {
    lowerHeatingValue_J_kg: 40.5e6,
    stoichiometricRatio: 13.5,
    heatOfVaporisation_J_kg: 413e3,
  },
};

/** How one fuel takes warmth, how heavy its vapour is, whether it conducts. */
export interface FuelBulk {
  /** Heat to warm it [J/(kg K)]. */
  readonly specificHeat_J_kgK: number;
  /** Mean molar mass of all of it as vapour [kg/mol]. */
  readonly molarMass_kg_mol: number;
  /** Electrical conductivity, order of magnitude [S/m]; below 5e-11 it gathers static. */
  readonly conductivity_S_m: number;
}

/**
 * Warmth, vapour and electricity by fuel.
 *
 * Source: specific heats and the molar mass of petrol from memory (petrol at 40 °C; the alcohols
 * agree with CoolProp 8.0.0 at 25 °C), conductivity from memory (API Publication 4261).
 */
export const FUEL_BULK: Readonly<Record<BaseFuel, FuelBulk>> = {
  petrol: { specificHeat_J_kgK: 2100, molarMass_kg_mol: 0.1, conductivity_S_m: 1e-12 },
  ethanol: { specificHeat_J_kgK: 2440, molarMass_kg_mol: 0.046068, conductivity_S_m: 1e-7 },
  methanol: { specificHeat_J_kgK: 2530, molarMass_kg_mol: 0.032042, conductivity_S_m: 4e-5 },
};

/** How the vapour of a liquid takes fire. */
export interface Flammability {
  /** Lowest temperature at which its vapour takes fire over the liquid [K]. */
  readonly flashPoint_K: number;
  /** Lower flammable limit [-, by volume]. */
  readonly lowerLimit: number;
  /** Upper flammable limit [-, by volume]. */
  readonly upperLimit: number;
  /** Temperature at which it takes fire without a spark [K]; published values scatter by 50 K. */
  readonly autoignition_K: number;
}

/**
 * Fire data by liquid.
 *
 * Source: IEC 60079-20-1 (2010), petrol NFPA 497 (2008), which has lower ignition temperatures
 * for ethanol (363 °C) and methanol (385 °C): where safety hangs on them, take those.
 */
export const FLAMMABILITY: Readonly<
  Record<Burnable, Flammability>
> = {
  petrol: { flashPoint_K: 227.15, lowerLimit: 0.014, upperLimit: 0.076, autoignition_K: 553.15 },
  ethanol: { flashPoint_K: 285.15, lowerLimit: 0.031, upperLimit: 0.19, autoignition_K: 673.15 },
  methanol: { flashPoint_K: 282.15, lowerLimit: 0.06, upperLimit: 0.36, autoignition_K: 713.15 },
  "n-heptane": {
    flashPoint_K: 266.15,
    lowerLimit: 0.0085,
    upperLimit: 0.067,
    autoignition_K: 477.15,
  },
  isooctane: { flashPoint_K: 261.15, lowerLimit: 0.007, upperLimit: 0.06, autoignition_K: 686.15 },
  toluene: { flashPoint_K: 277.15, lowerLimit: 0.01, upperLimit: 0.078, autoignition_K: 803.15 },
};

/** Density of petrol at 15 °C [kg/m^3], lowest and highest. Source: EN 228. */
export const EN228_DENSITY_kg_m3: readonly [min: number, max: number] = [720, 775];

/** Vapour pressure (DVPE, 37.8 °C) of petrol by class [Pa], lowest and highest. Source: EN 228. */
export const EN228_VAPOUR_PRESSURE_Pa: Readonly<
  Record<"A" | "B" | "C" | "D" | "E" | "F", readonly [min: number, max: number]>
> = {
  A: [45e3, 60e3],
  B: [45e3, 70e3],
  C: [50e3, 80e3],
  D: [60e3, 90e3],
  E: [65e3, 95e3],
  F: [70e3, 100e3],
};

/** What a pump marked E85 may hold. Source: ASTM D5798-15; pressures 5.5 to 15 psi there. */
export const D5798 = {
  /** Ethanol by volume [-], lowest and highest. */
  ethanolShare: [0.51, 0.83],
  /** Vapour pressure (37.8 °C) by class [Pa], lowest and highest. */
  vapourPressure_Pa: {
    1: [37.9e3, 62.05e3],
    2: [48.26e3, 65.5e3],
    3: [58.61e3, 82.74e3],
    4: [65.5e3, 103.4e3],
  },
} as const;
