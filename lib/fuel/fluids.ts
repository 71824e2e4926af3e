/** The pure liquids: coefficients of the fits, composition, heat. */

/** A pure liquid that this room knows. */
export type PureFluid = "n-heptane" | "isooctane" | "toluene" | "ethanol" | "methanol" | "water";

/** Coefficients of a polynomial in the temperature in °C. */
export interface Polynomial {
  /** Value at 0 °C. */
  readonly a0: number;
  /** Factor of the temperature. */
  readonly a1: number;
  /** Factor of its square. */
  readonly a2: number;
  /** Factor of its cube; nought but for water. */
  readonly a3: number;
}

/** Coefficients of `a + b / (T + c)` (vapour pressure: `a - b / (T + c)`), T in kelvin. */
export interface ThreeTerms {
  /** What stands alone [-]. */
  readonly a: number;
  /** What is divided [K]. */
  readonly b: number;
  /** What is added to the temperature [K]. */
  readonly c: number;
}

/** What is known of one pure liquid. */
export interface FluidData {
  /** Density [kg/m^3] of the liquid at 1 atm. */
  readonly density: Polynomial;
  /** Speed of sound [m/s] in the liquid at 1 atm. */
  readonly soundSpeed: Polynomial;
  /** Natural logarithm of the viscosity [mPa s]. */
  readonly viscosity: ThreeTerms;
  /** Decimal logarithm of the vapour pressure [Pa, absolute]. */
  readonly vapourPressure: ThreeTerms;
  /** Heat to warm it at constant pressure near 25 °C [J/(kg K)]. */
  readonly specificHeat_J_kgK: number;
  /** Molar mass [kg/mol]. */
  readonly molarMass_kg_mol: number;
}

/**
 * Data of the pure liquids by name.
 *
 * Source of the fits: least squares on CoolProp 8.0.0 from 0 to 60 °C (isooctane:
 * equation of state of Blackham and Lemmon (2011), viscosity and vapour pressure of
 * Perry's handbook, 8th edition). Density holds within 0.01 %, sound within 0.05 %,
 * viscosity within 0.07 % (water 0.25 %), vapour pressure within 0.06 % of it. Down to -10 °C
 * density stays within 0.05 %, sound within 0.15 %, viscosity and vapour pressure within 0.4 % of
 * it; water is meant from 0 °C up. Specific heats: CoolProp 8.0.0 at 25 °C; isooctane from memory.
 */
export const PURE_FLUIDS: Readonly<Record<PureFluid, FluidData>> = {
  "n-heptane": {
    density: { a0: 700.5072, a1: -0.8251898, a2: -4.326846e-4, a3: 0 },
    soundSpeed: { a0: 1234.338, a1: -4.296819, a2: 2.638189e-3, a3: 0 },
    viscosity: { a: -4.896704, b: 1437.585, c: 65.29699 },
    vapourPressure: { a: 9.108279, b: 1309.282, c: -52.2098 },
    specificHeat_J_kgK: 2240,
    molarMass_kg_mol: 0.100202,
  },
  isooctane: {
    density: { a0: 708.3029, a1: -0.8045746, a2: -4.538836e-4, a3: 0 },
    soundSpeed: { a0: 1190.807, a1: -4.400585, a2: 3.41023e-3, a3: 0 },
    viscosity: { a: -4.330902, b: 1072.742, c: 0.7014138 },
    vapourPressure: { a: 9.000859, b: 1288.918, c: -49.46145 },
    specificHeat_J_kgK: 2093,
    molarMass_kg_mol: 0.114229,
  },
  toluene: {
    density: { a0: 885.4013, a1: -0.9193792, a2: -2.746945e-4, a3: 0 },
    soundSpeed: { a0: 1412.072, a1: -4.461886, a2: 3.811678e-3, a3: 0 },
    viscosity: { a: -3.864542, b: 886.3692, c: -27.15173 },
    vapourPressure: { a: 9.189059, b: 1403.06, c: -48.02012 },
    specificHeat_J_kgK: 1701,
    molarMass_kg_mol: 0.092139,
  },
  ethanol: {
    density: { a0: 806.3539, a1: -0.8315962, a2: -6.495659e-4, a3: 0 },
    soundSpeed: { a0: 1228.387, a1: -3.548501, a2: 3.369939e-3, a3: 0 },
    viscosity: { a: -6.878316, b: 2505.472, c: 61.96289 },
    vapourPressure: { a: 10.43233, b: 1705.2, c: -37.23361 },
    specificHeat_J_kgK: 2434,
    molarMass_kg_mol: 0.046068,
  },
  methanol: {
    density: { a0: 809.6665, a1: -0.9226741, a2: -3.955211e-4, a3: 0 },
    soundSpeed: { a0: 1183.374, a1: -3.417368, a2: 3.540213e-3, a3: 0 },
    viscosity: { a: -5.289998, b: 1509.139, c: 24.26815 },
    vapourPressure: { a: 10.26325, b: 1613.833, c: -30.66018 },
    specificHeat_J_kgK: 2534,
    molarMass_kg_mol: 0.032042,
  },
  water: {
    density: { a0: 999.8766, a1: 0.04768282, a2: -7.097792e-3, a3: 2.794661e-5 },
    soundSpeed: { a0: 1402.502, a1: 4.975726, a2: -0.05285075, a3: 1.865381e-4 },
    viscosity: { a: -3.372141, b: 461.376, c: -156.4316 },
    vapourPressure: { a: 10.28409, b: 1778.09, c: -36.01095 },
    specificHeat_J_kgK: 4182,
    molarMass_kg_mol: 0.018015,
  },
};
