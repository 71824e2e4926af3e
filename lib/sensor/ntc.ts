/** Temperature from a resistor that falls when it warms (NTC). */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BETA, RESISTANCE } from "./limits.ts";

const BETA_LAW = "Beta law of thermistors, IEC 60539";

const REFERENCE: MethodInput = {
  ...RESISTANCE,
  says: "Resistance at the reference temperature",
  symbol: "R_0",
};
const REFERENCE_TEMPERATURE: MethodInput = {
  unit: "K",
  min: 250,
  max: 320,
  says: "Reference temperature, mostly 298.15",
  symbol: "T_0",
};
const TEMPERATURE: MethodInput = {
  unit: "K",
  min: 223.15,
  max: 453.15,
  says: "Temperature of the sensor",
  symbol: "T",
};

/**
 * A sensor as many cars carry it. An example only: makers differ by 12 % and more, the data
 * sheet rules. Common practice, from memory.
 */
export const EXAMPLE_NTC = {
  reference: 2500,
  referenceTemperature: 293.15,
  beta: 3500,
} as const;

/**
 * Beta of a sensor [K] from two points of its data sheet.
 *
 * Source: beta law of thermistors, IEC 60539.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const beta_K = betaFromPoints({
 *   coldResistance: 2500,
 *   coldTemperature: 293.15,
 *   hotResistance: 323,
 *   hotTemperature: 353.15,
 * });
 *
 * assertAlmostEquals(beta_K, 3531, 1);
 * ```
 */
export const betaFromPoints: Method<
  Record<"coldResistance" | "coldTemperature" | "hotResistance" | "hotTemperature", MethodInput>
> = method({
  id: "beta-from-points",
  title: "Beta of a temperature sensor from two points",
  inputs: {
    coldResistance: { ...RESISTANCE, says: "Resistance when cold", symbol: "R_1" },
    coldTemperature: { ...TEMPERATURE, max: 323.15, says: "Cold temperature", symbol: "T_1" },
    hotResistance: { ...RESISTANCE, says: "Resistance when hot", symbol: "R_2" },
    hotTemperature: { ...TEMPERATURE, min: 273.15, says: "Hot temperature", symbol: "T_2" },
  },
  output: { name: "beta", unit: "K", min: 100, max: 20_000, says: "Beta", symbol: "\\beta" },
  formula: "log(coldResistance / hotResistance) / (1 / coldTemperature - 1 / hotTemperature)",
  source: BETA_LAW,
  compute: ({ coldResistance, coldTemperature, hotResistance, hotTemperature }) =>
    Math.log(coldResistance / hotResistance) / (1 / coldTemperature - 1 / hotTemperature),
});

/**
 * Temperature [K] of a sensor by the beta law; a few kelvin off far from the points that
 * beta was taken from.
 *
 * Source: beta law of thermistors, IEC 60539.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const temperature_K = temperatureByBeta({
 *   resistance: 1000,
 *   reference: 2200,
 *   referenceTemperature: 298.15,
 *   beta: 3500,
 * });
 *
 * assertAlmostEquals(temperature_K, 319.6, 0.1);
 * ```
 */
export const temperatureByBeta: Method<
  Record<"resistance" | "reference" | "referenceTemperature" | "beta", MethodInput>
> = method({
  id: "temperature-by-beta",
  title: "Temperature of a sensor by the beta law",
  inputs: {
    resistance: RESISTANCE,
    reference: REFERENCE,
    referenceTemperature: REFERENCE_TEMPERATURE,
    beta: BETA,
  },
  output: {
    name: "temperature",
    unit: "K",
    min: 200,
    max: 600,
    says: "Temperature of the sensor",
    symbol: "T",
  },
  formula: "1 / (1 / referenceTemperature + log(resistance / reference) / beta)",
  source: BETA_LAW,
  compute: ({ resistance, reference, referenceTemperature, beta }) =>
    1 / (1 / referenceTemperature + Math.log(resistance / reference) / beta),
});

/**
 * Resistance [ohm] of a sensor by the beta law.
 *
 * Source: beta law of thermistors, IEC 60539.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(resistanceByBeta({ temperature: 293.15, ...EXAMPLE_NTC }), 2500, 1e-9);
 * ```
 */
export const resistanceByBeta: Method<
  Record<"temperature" | "reference" | "referenceTemperature" | "beta", MethodInput>
> = method({
  id: "resistance-by-beta",
  title: "Resistance of a temperature sensor by the beta law",
  inputs: {
    temperature: TEMPERATURE,
    reference: REFERENCE,
    referenceTemperature: REFERENCE_TEMPERATURE,
    beta: BETA,
  },
  output: {
    name: "resistance",
    unit: "ohm",
    min: 0,
    max: 1e13,
    says: "Resistance of the sensor",
    symbol: "R",
  },
  formula: "reference * exp(beta * (1 / temperature - 1 / referenceTemperature))",
  source: BETA_LAW,
  compute: ({ temperature, reference, referenceTemperature, beta }) =>
    reference * Math.exp(beta * (1 / temperature - 1 / referenceTemperature)),
});
