/** How stiff a liquid is: for waves, and when squeezed slowly. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BULK_MODULUS, DENSITY, SOUND_SPEED, TEMPERATURE } from "./limits.ts";

/**
 * Bulk modulus [Pa] that pressure waves meet: no heat has time to leave.
 *
 * Source: Newton and Laplace, speed of sound `c = sqrt(K / rho)`.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Petrol at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(waveBulkModulus({ density: 741, soundSpeed: 1160 }), 0.997e9, 1e6);
 * ```
 */
export const waveBulkModulus: Method<Record<"density" | "soundSpeed", MethodInput>> = method({
  id: "wave-bulk-modulus",
  title: "Bulk modulus that waves meet",
  inputs: { density: DENSITY, soundSpeed: SOUND_SPEED },
  output: { ...BULK_MODULUS, name: "bulkModulus" },
  formula: "density * soundSpeed^2",
  source: "Newton and Laplace: speed of sound in a fluid",
  compute: ({ density, soundSpeed }) => density * soundSpeed ** 2,
});

/**
 * Speed of sound [m/s] from bulk modulus and density.
 *
 * Source: Newton and Laplace, `c = sqrt(K / rho)`.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(soundSpeedFromModulus({ bulkModulus: 0.997e9, density: 741 }), 1160, 0.1);
 * ```
 */
export const soundSpeedFromModulus: Method<Record<"bulkModulus" | "density", MethodInput>> = method(
  {
    id: "sound-speed-from-modulus",
    title: "Speed of sound from bulk modulus",
    inputs: { bulkModulus: BULK_MODULUS, density: DENSITY },
    output: { ...SOUND_SPEED, name: "soundSpeed" },
    formula: "sqrt(bulkModulus / density)",
    source: "Newton and Laplace: speed of sound in a fluid",
    compute: ({ bulkModulus, density }) => Math.sqrt(bulkModulus / density),
  },
);

/**
 * Bulk modulus [Pa] when a liquid is squeezed slowly, its heat leaving as it comes.
 *
 * Source: exact relation of thermodynamics, `1/K_T = 1/K_s + alpha^2 T / (rho c_p)`.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example n-heptane at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const slow_Pa = slowBulkModulus({
 *   bulkModulus: 0.9034e9,
 *   expansion: 1.232e-3,
 *   temperature: 293.15,
 *   density: 683.8,
 *   specificHeat: 2232,
 * });
 *
 * assertAlmostEquals(slow_Pa, 0.715e9, 5e6);
 * ```
 */
export const slowBulkModulus: Method<
  Record<"bulkModulus" | "expansion" | "temperature" | "density" | "specificHeat", MethodInput>
> = method({
  id: "slow-bulk-modulus",
  title: "Bulk modulus in slow compression",
  inputs: {
    bulkModulus: { ...BULK_MODULUS, says: "Bulk modulus that waves meet", symbol: "K_s" },
    expansion: {
      unit: "1/K",
      min: -2e-4,
      max: 3e-3,
      says: "Growth in volume per kelvin",
      symbol: "\\alpha",
    },
    temperature: TEMPERATURE,
    density: DENSITY,
    specificHeat: {
      unit: "J/(kg K)",
      min: 1500,
      max: 4300,
      says: "Specific heat at constant pressure",
      symbol: "c_p",
    },
  },
  output: { ...BULK_MODULUS, name: "slowBulkModulus", symbol: "K_T" },
  formula: "1 / (1 / bulkModulus + expansion^2 * temperature / (density * specificHeat))",
  source: "H. B. Callen, Thermodynamics (1985), relation of the two compressibilities",
  compute: ({ bulkModulus, expansion, temperature, density, specificHeat }) =>
    1 / (1 / bulkModulus + expansion ** 2 * temperature / (density * specificHeat)),
});
