/** Vapour pressure of a fuel from -10 to 120 °C, and the temperature at which it boils. */
import { findRoot, InputError, isWithin, type Limit } from "@/lib/basics/mod.ts";
import type { Working } from "@/lib/method/mod.ts";
import {
  blendVapourPressure,
  ethanolActivity,
  findEthanolVapourFactor,
} from "./blend_vapour_pressure.ts";
import { PURE_FLUIDS } from "./fluids.ts";
import { type FuelSpec, requireSpec } from "./fuel_state.ts";
import { TEMPERATURE } from "./limits.ts";
import { liquidVapourPressure } from "./liquid_vapour_pressure.ts";
import { petrolVapourPressure } from "./petrol_vapour_pressure.ts";
import { vapourPressureBeyond, vapourSteepness } from "./vapour_pressure_beyond.ts";

/** Temperatures at which vapour pressure can be told: winter to hot soak. */
export const VAPOUR_TEMPERATURE: Limit = { unit: "K", min: TEMPERATURE.min, max: 393.15 };

/** Where the line into the heat is drawn through: here, and where the fits end. */
const COOLER_K = 323.15;

/** A boiling point is placed this closely; the vapour pressure itself scatters by kelvins. */
const CLOSE_ENOUGH_K = 1e-6;

/** Runs methods and keeps nothing, for inner loops. */
const UNRECORDED: Working = { uses: [], run: (_result, method, inputs) => method(inputs) };

/**
 * Finds the vapour pressure of a fuel at a temperature up to that of a hot soak, and records how.
 *
 * Up to 60 °C it is that of `fuelState`; from there to 120 °C it runs on the line through the
 * fuel's own values at 50 and 60 °C, see {@linkcode vapourPressureBeyond}.
 *
 * @param working Records what ran.
 * @param at Path of the results in the evaluation: `soak`.
 * @param spec The fuel.
 * @param temperature_K Its temperature, 263.15 to 393.15 K.
 * @returns Its vapour pressure [Pa, absolute].
 * @throws {InputError} When the temperature or a number of the fuel lies outside its range.
 *
 * @example Summer petrol in a rail at 90 °C
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const working = new Working();
 * const pressure_Pa = findVapourPressure(working, "soak", {
 *   base: "petrol",
 *   ethanolShare: 0,
 *   petrolDensity15_kg_m3: 745,
 *   reidPressure_Pa: 60_000,
 * }, 363.15);
 *
 * assertAlmostEquals(pressure_Pa, 251_740, 10);
 * assertEquals(working.uses.at(-1)?.result, "soak.vapourPressure_Pa");
 * ```
 */
export function findVapourPressure(
  working: Working,
  at: string,
  spec: FuelSpec,
  temperature_K: number,
): number {
  requireSpec(spec);
  if (temperature_K <= TEMPERATURE.max) return fitted(working, at, spec, temperature_K);
  const [lowerTemperature, upperTemperature] = [COOLER_K, TEMPERATURE.max];
  const lowerPressure = fitted(working, `${at}.cooler`, spec, lowerTemperature);
  const upperPressure = fitted(working, `${at}.warmer`, spec, upperTemperature);
  const steepness = working.run(`${at}.vapourSteepness_K`, vapourSteepness, {
    lowerTemperature,
    lowerPressure,
    upperTemperature,
    upperPressure,
  });
  return working.run(`${at}.vapourPressure_Pa`, vapourPressureBeyond, {
    temperature: temperature_K,
    steepness,
    upperTemperature,
    upperPressure,
  });
}

/**
 * Vapour pressure [Pa, absolute] of a fuel, the same as {@linkcode findVapourPressure} finds, but
 * unrecorded: for inner loops and root finding.
 *
 * @param spec The fuel.
 * @param temperature_K Its temperature, 263.15 to 393.15 K.
 * @returns Its vapour pressure [Pa, absolute].
 * @throws {InputError} When the temperature or a number of the fuel lies outside its range.
 *
 * @example Methanol at its boiling point, 64.7 °C: an atmosphere
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const methanol = {
 *   base: "methanol",
 *   ethanolShare: 0,
 *   petrolDensity15_kg_m3: 745,
 *   reidPressure_Pa: 60_000,
 * } as const;
 *
 * assertAlmostEquals(vapourPressureAt(methanol, 337.85) / 101_325, 1.01, 0.01);
 * ```
 */
export function vapourPressureAt(spec: FuelSpec, temperature_K: number): number {
  return findVapourPressure(UNRECORDED, "fuel", spec, temperature_K);
}

/**
 * Finds the temperature [K] at which a fuel would boil under a pressure.
 *
 * @param spec The fuel.
 * @param pressure_Pa The pressure on it [Pa, absolute].
 * @returns The temperature, or undefined when it lies outside 263.15 to 393.15 K.
 * @throws {InputError} When the pressure is no number, or one of the fuel lies outside its range.
 *
 * @example Summer petrol under an atmosphere, and nothing under eight
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * const petrol = {
 *   base: "petrol",
 *   ethanolShare: 0,
 *   petrolDensity15_kg_m3: 745,
 *   reidPressure_Pa: 60_000,
 * } as const;
 *
 * assertAlmostEquals(temperatureAtVapourPressure(petrol, 101_325) ?? 0, 326.75, 0.01);
 * assertEquals(temperatureAtVapourPressure(petrol, 800_000), undefined);
 * ```
 */
export function temperatureAtVapourPressure(
  spec: FuelSpec,
  pressure_Pa: number,
): number | undefined {
  const what = "boiling temperature";
  if (Number.isNaN(pressure_Pa)) {
    throw new InputError(what, "pressure_Pa", "must be a number", pressure_Pa);
  }
  const { min, max } = VAPOUR_TEMPERATURE;
  const reach: Limit = {
    unit: "Pa",
    min: vapourPressureAt(spec, min),
    max: vapourPressureAt(spec, max),
  };
  if (!isWithin(pressure_Pa, reach)) return undefined;
  // The logarithm is all but straight against temperature, which makes for few steps.
  return findRoot(
    (temperature_K) => Math.log(vapourPressureAt(spec, temperature_K) / pressure_Pa),
    { from: min, to: max, tolerance: CLOSE_ENOUGH_K },
  );
}

/** Vapour pressure by the methods that hold up to 60 °C, step for step as `fuelState` takes them. */
function fitted(working: Working, at: string, spec: FuelSpec, temperature: number): number {
  const { base, ethanolShare } = spec;
  const result = `${at}.vapourPressure_Pa`;
  const alcohol = (path: string, fluid: "ethanol" | "methanol"): number =>
    working.run(path, liquidVapourPressure, {
      temperature,
      ...PURE_FLUIDS[fluid].vapourPressure,
    });
  const petrol = (path: string): number =>
    working.run(path, petrolVapourPressure, { reidPressure: spec.reidPressure_Pa, temperature });
  if (base === "methanol") return alcohol(result, "methanol");
  if (ethanolShare === 1) return alcohol(result, "ethanol");
  if (ethanolShare === 0) return petrol(result);
  return working.run(result, blendVapourPressure, {
    petrolPressure: petrol(`${at}.petrol.vapourPressure_Pa`),
    ethanolPressure: alcohol(`${at}.ethanol.vapourPressure_Pa`, "ethanol"),
    factor: findEthanolVapourFactor(working, `${at}.ethanolVapourFactor`, ethanolShare),
    activity: working.run(`${at}.ethanolActivity`, ethanolActivity, { ethanolShare }),
  });
}
