/** Vapour pressure above 60 °C, where the fits end: the straight line of Clausius and Clapeyron. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { VAPOUR_PRESSURE } from "./limits.ts";

/** How fast a fuel's vapour pressure climbs: 3000 K for petrol, 4900 K for ethanol. */
const STEEPNESS: MethodInput = {
  unit: "K",
  min: 2000,
  max: 7000,
  says: "Steepness of the logarithm of vapour pressure against the inverse of temperature",
  symbol: "B",
};

const KNOWN: MethodInput = { ...VAPOUR_PRESSURE, min: 1e3 };

/**
 * Steepness [K] of vapour pressure: how much its logarithm falls with the inverse of the
 * temperature, between two temperatures at which it is known. Of a pure liquid it is the heat of
 * evaporation of a mole over the gas constant.
 *
 * Source: Clausius and Clapeyron, the vapour taken as an ideal gas.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Ethanol between 50 and 60 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const steepness_K = vapourSteepness({
 *   lowerTemperature: 323.15,
 *   lowerPressure: 29_407,
 *   upperTemperature: 333.15,
 *   upperPressure: 46_734,
 * });
 *
 * assertAlmostEquals(steepness_K, 4987, 1);
 * ```
 */
export const vapourSteepness: Method<
  Record<
    "lowerTemperature" | "lowerPressure" | "upperTemperature" | "upperPressure",
    MethodInput
  >
> = method({
  id: "vapour-steepness",
  title: "Steepness of vapour pressure",
  inputs: {
    lowerTemperature: {
      unit: "K",
      min: 313.15,
      max: 323.15,
      says: "Lower temperature",
      symbol: "T_1",
    },
    lowerPressure: {
      ...KNOWN,
      says: "Vapour pressure at the lower temperature, absolute",
      symbol: "p_1",
    },
    upperTemperature: {
      unit: "K",
      min: 333.15,
      max: 343.15,
      says: "Upper temperature",
      symbol: "T_2",
    },
    upperPressure: {
      ...KNOWN,
      says: "Vapour pressure at the upper temperature, absolute",
      symbol: "p_2",
    },
  },
  output: { ...STEEPNESS, name: "steepness", min: -7e4, max: 7e4 },
  formula: "log(upperPressure / lowerPressure) / (1 / lowerTemperature - 1 / upperTemperature)",
  source: "Clausius and Clapeyron, the vapour taken as an ideal gas",
  compute: ({ lowerTemperature, lowerPressure, upperTemperature, upperPressure }) =>
    Math.log(upperPressure / lowerPressure) / (1 / lowerTemperature - 1 / upperTemperature),
});

/**
 * Vapour pressure [Pa, absolute] above the temperature where the fits end, up to 120 °C, on the
 * straight line of its logarithm against the inverse of the temperature.
 *
 * Of a pure liquid the line errs on the high, cautious side, as the heat of evaporation falls
 * with temperature: by up to 4 % at 100 °C and 8 % at 120 °C. Of petrol it lies low instead, by up
 * to 7 %, and of blends within 10 % either way: mixtures are no single liquid. Both are within the
 * scatter of their vapour pressure, which a margin has to cover.
 *
 * Source: Clausius and Clapeyron; held against CoolProp 8.0.0, Peng and Robinson, and UNIFAC.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Ethanol at 100 °C: CoolProp has 224.2 kPa
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pressure_Pa = vapourPressureBeyond({
 *   temperature: 373.15,
 *   steepness: 4987,
 *   upperTemperature: 333.15,
 *   upperPressure: 46_734,
 * });
 *
 * assertAlmostEquals(pressure_Pa, 232_540, 100);
 * ```
 */
export const vapourPressureBeyond: Method<
  Record<"temperature" | "steepness" | "upperTemperature" | "upperPressure", MethodInput>
> = method({
  id: "vapour-pressure-beyond",
  title: "Vapour pressure above 60 °C",
  inputs: {
    temperature: {
      unit: "K",
      min: 333.15,
      max: 393.15,
      says: "Temperature of the liquid",
      symbol: "T",
    },
    steepness: STEEPNESS,
    upperTemperature: {
      unit: "K",
      min: 323.15,
      max: 343.15,
      says: "Temperature up to which vapour pressure is known otherwise",
      symbol: "T_2",
    },
    upperPressure: {
      ...KNOWN,
      says: "Vapour pressure at that temperature, absolute",
      symbol: "p_2",
    },
  },
  output: { ...VAPOUR_PRESSURE, name: "vapourPressure", max: 2e7 },
  formula: "upperPressure * exp(steepness * (1 / upperTemperature - 1 / temperature))",
  source:
    "Clausius and Clapeyron; 0 to 8 % above CoolProp 8.0.0 for pure liquids, 0 to 7 % below " +
    "Peng and Robinson for petrol, within 10 % of UNIFAC for blends",
  compute: ({ temperature, steepness, upperTemperature, upperPressure }) =>
    upperPressure * Math.exp(steepness * (1 / upperTemperature - 1 / temperature)),
});
