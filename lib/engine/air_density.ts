/** How much air a volume holds. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { AIR_PRESSURE, AIR_TEMPERATURE, GAS_CONSTANT } from "./limits.ts";

/**
 * Density of dry air [kg/m^3].
 *
 * Source: ideal gas; within 0.1 % near the atmosphere.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Sea level
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const density_kg_m3 = airDensity({
 *   pressure: 101_325,
 *   temperature: 288.15,
 *   gasConstant: 287.055,
 * });
 *
 * assertAlmostEquals(density_kg_m3, 1.225, 1e-4);
 * ```
 */
export const airDensity: Method<Record<"pressure" | "temperature" | "gasConstant", MethodInput>> =
  method({
    id: "air-density",
    title: "Density of dry air",
    inputs: {
      pressure: AIR_PRESSURE,
      temperature: AIR_TEMPERATURE,
      gasConstant: GAS_CONSTANT,
    },
    output: {
      name: "density",
      unit: "kg/m^3",
      min: 0,
      max: 20,
      says: "Density of the air",
      symbol: "\\rho",
    },
    formula: "pressure / (gasConstant * temperature)",
    source: "Ideal gas",
    compute: ({ pressure, temperature, gasConstant }) => pressure / (gasConstant * temperature),
  });

/**
 * Pressure of saturated water vapour over water [Pa].
 *
 * Source: Magnus formula with the constants of the WMO guide (No. 8), -45 to 60 °C.
 *
 * @throws {InputError} When the temperature lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(waterVapourPressure({ temperature: 293.15 }), 2333, 1);
 * ```
 */
export const waterVapourPressure: Method<Record<"temperature", MethodInput>> = method({
  id: "water-vapour-pressure",
  title: "Pressure of saturated water vapour",
  inputs: {
    temperature: {
      unit: "K",
      min: 228.15,
      max: 333.15,
      says: "Temperature of the air",
      symbol: "T",
    },
  },
  output: {
    name: "vapourPressure",
    unit: "Pa",
    min: 0,
    max: 3e4,
    says: "Pressure of the vapour when saturated",
    symbol: "p_s",
  },
  formula: "611.2 * exp(17.62 * (temperature - 273.15) / (temperature - 30.03))",
  fit: true,
  source: "Magnus formula, WMO Guide to Instruments and Methods of Observation (No. 8)",
  compute: ({ temperature }) =>
    611.2 * Math.exp(17.62 * (temperature - 273.15) / (temperature - 30.03)),
});

/**
 * Density of moist air [kg/m^3]. Of it the vapour burns nothing: {@linkcode airDensity} at
 * the pressure less the vapour's tells what can burn.
 *
 * Source: mixture of ideal gases; molar mass of water over that of dry air 0.62198.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 35 °C, 60 % humidity
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const density_kg_m3 = moistAirDensity({
 *   pressure: 101_325,
 *   vapourPressure: 0.6 * waterVapourPressure({ temperature: 308.15 }),
 *   temperature: 308.15,
 *   gasConstant: 287.055,
 * });
 *
 * assertAlmostEquals(density_kg_m3, 1.131, 1e-3);
 * ```
 */
export const moistAirDensity: Method<
  Record<"pressure" | "vapourPressure" | "temperature" | "gasConstant", MethodInput>
> = method({
  id: "moist-air-density",
  title: "Density of moist air",
  inputs: {
    pressure: { ...AIR_PRESSURE, min: 4e4 },
    vapourPressure: {
      unit: "Pa",
      min: 0,
      max: 2e4,
      says: "Pressure of the water vapour in it: humidity times that of saturation",
      symbol: "p_v",
    },
    temperature: AIR_TEMPERATURE,
    gasConstant: GAS_CONSTANT,
  },
  output: {
    name: "density",
    unit: "kg/m^3",
    min: 0,
    max: 20,
    says: "Density of the moist air",
    symbol: "\\rho",
  },
  formula: "(pressure - (1 - 0.62198) * vapourPressure) / (gasConstant * temperature)",
  source: "Mixture of ideal gases",
  compute: ({ pressure, vapourPressure, temperature, gasConstant }) =>
    (pressure - (1 - 0.62198) * vapourPressure) / (gasConstant * temperature),
});
