/** What spilt fuel makes of the air. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const GAS_CONSTANT: MethodInput = {
  unit: "J/(mol K)",
  min: 8.31,
  max: 8.32,
  says: "Molar gas constant",
  symbol: "R",
};
const MOLAR_MASS: MethodInput = {
  unit: "kg/mol",
  min: 0.02,
  max: 0.2,
  says: "Molar mass of the fuel; petrol 0.095 to 0.105, its first vapour 0.065 to 0.070",
  symbol: "M",
};
const TEMPERATURE: MethodInput = {
  unit: "K",
  min: 230,
  max: 400,
  says: "Temperature of the air",
  symbol: "T",
};
const PRESSURE: MethodInput = {
  unit: "Pa",
  min: 5e4,
  max: 1.1e5,
  says: "Pressure of the outside air, absolute",
  symbol: "p_a",
};
const LOWER_LIMIT: MethodInput = {
  unit: "-",
  min: 0.005,
  max: 0.2,
  says: "Lower flammable limit, by volume",
  symbol: "\\text{LFL}",
};

/**
 * Volume of vapour [m^3] that spilt fuel makes when all of it evaporates.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A tenth of a litre of petrol makes 18 litres of vapour
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const vapour_m3 = vapourVolume({
 *   liquid: 1e-4,
 *   density: 745,
 *   molarMass: 0.1,
 *   gasConstant: 8.314462618,
 *   temperature: 293.15,
 *   pressure: 101325,
 * });
 *
 * assertAlmostEquals(vapour_m3, 0.0179, 1e-4);
 * ```
 */
export const vapourVolume: Method<
  Record<
    "liquid" | "density" | "molarMass" | "gasConstant" | "temperature" | "pressure",
    MethodInput
  >
> = method({
  id: "vapour-volume",
  title: "Vapour of a spill",
  inputs: {
    liquid: { unit: "m^3", min: 0, max: 0.1, says: "Volume spilt", symbol: "V_l" },
    density: {
      unit: "kg/m^3",
      min: 600,
      max: 1100,
      says: "Density of the fuel",
      symbol: "\\rho",
    },
    molarMass: MOLAR_MASS,
    gasConstant: GAS_CONSTANT,
    temperature: TEMPERATURE,
    pressure: PRESSURE,
  },
  output: {
    name: "vapour",
    unit: "m^3",
    min: 0,
    max: 500,
    says: "Volume of vapour",
    symbol: "V_v",
  },
  formula: "liquid * density / molarMass * gasConstant * temperature / pressure",
  source: "Ideal gas law",
  compute: ({ liquid, density, molarMass, gasConstant, temperature, pressure }) =>
    liquid * density / molarMass * gasConstant * temperature / pressure,
});

/**
 * Volume of air and vapour [m^3] that a volume of vapour brings to the lower flammable limit.
 *
 * Source: definition of the limit by volume.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(flammableVolume({ vapour: 0.0179, lowerLimit: 0.014 }), 1.28, 0.01);
 * ```
 */
export const flammableVolume: Method<Record<"vapour" | "lowerLimit", MethodInput>> = method({
  id: "flammable-volume",
  title: "Air that a spill makes flammable",
  inputs: {
    vapour: { unit: "m^3", min: 0, max: 500, says: "Volume of vapour", symbol: "V_v" },
    lowerLimit: LOWER_LIMIT,
  },
  output: {
    name: "mixture",
    unit: "m^3",
    min: 0,
    max: 1e5,
    says: "Volume at the lower flammable limit",
    symbol: "V_\\text{mix}",
  },
  formula: "vapour / lowerLimit",
  source: "Definition of the lower flammable limit by volume",
  compute: ({ vapour, lowerLimit }) => vapour / lowerLimit,
});

/**
 * Lower flammable limit as mass of vapour in a volume of air [kg/m^3].
 *
 * Source: ideal gas law; IEC 60079-10-1 annex B has it at 20 °C as 0.416e-3 M LFL
 * with M in kg/kmol and LFL in percent.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const limit_kg_m3 = lowerLimitMass({
 *   lowerLimit: 0.014,
 *   molarMass: 0.1,
 *   pressure: 101325,
 *   gasConstant: 8.314462618,
 *   temperature: 293.15,
 * });
 *
 * assertAlmostEquals(limit_kg_m3, 0.416e-3 * 100 * 1.4, 1e-4);
 * ```
 */
export const lowerLimitMass: Method<
  Record<"lowerLimit" | "molarMass" | "pressure" | "gasConstant" | "temperature", MethodInput>
> = method({
  id: "lower-limit-mass",
  title: "Lower flammable limit as mass in air",
  inputs: {
    lowerLimit: LOWER_LIMIT,
    molarMass: MOLAR_MASS,
    pressure: PRESSURE,
    gasConstant: GAS_CONSTANT,
    temperature: TEMPERATURE,
  },
  output: {
    name: "limit",
    unit: "kg/m^3",
    min: 0,
    max: 3,
    says: "Mass of vapour in a volume at the limit",
    symbol: "\\text{LFL}_m",
  },
  formula: "lowerLimit * molarMass * pressure / (gasConstant * temperature)",
  source: "Ideal gas law; IEC 60079-10-1 annex B",
  compute: ({ lowerLimit, molarMass, pressure, gasConstant, temperature }) =>
    lowerLimit * molarMass * pressure / (gasConstant * temperature),
});

/**
 * Density of a vapour against that of air [-]. Above one it runs along the floor.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(vapourDensityRatio({ molarMass: 0.1, airMolarMass: 0.0289647 }), 3.45, 0.01);
 * ```
 */
export const vapourDensityRatio: Method<
  Record<"molarMass" | "airMolarMass", MethodInput>
> = method({
  id: "vapour-density-ratio",
  title: "Density of a vapour against air",
  inputs: {
    molarMass: MOLAR_MASS,
    airMolarMass: {
      unit: "kg/mol",
      min: 0.028,
      max: 0.03,
      says: "Molar mass of air; dry 0.0289647",
      symbol: "M_\\text{air}",
    },
  },
  output: { name: "ratio", unit: "-", min: 0.6, max: 8, says: "Density against air", symbol: "d" },
  formula: "molarMass / airMolarMass",
  source: "Ideal gas law",
  compute: ({ molarMass, airMolarMass }) => molarMass / airMolarMass,
});

/**
 * Share of vapour [-, by volume] in the closed space above fuel.
 *
 * Source: Dalton's law, the air saturated.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Above methanol at room temperature: between the limits of 6 and 36 %
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(headspaceShare({ vapourPressure: 12_900, pressure: 101_325 }), 0.127, 0.001);
 * ```
 */
export const headspaceShare: Method<Record<"vapourPressure" | "pressure", MethodInput>> = method({
  id: "headspace-share",
  title: "Vapour in the closed space above fuel",
  inputs: {
    vapourPressure: {
      unit: "Pa",
      min: 0,
      max: 1.1e5,
      says: "Vapour pressure of the fuel, absolute",
      symbol: "p_v",
    },
    pressure: PRESSURE,
  },
  output: { name: "share", unit: "-", min: 0, max: 1, says: "Share by volume", symbol: "x" },
  formula: "vapourPressure / pressure",
  source: "Dalton's law",
  compute: ({ vapourPressure, pressure }) => vapourPressure / pressure,
});
