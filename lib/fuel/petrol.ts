/** Petrol, which is a mixture and differs from pump to pump. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, DENSITY_15, KINEMATIC, SOUND_SPEED, TEMPERATURE } from "./limits.ts";

/** How far pump petrols lie from the nominal curves, as a share of the value [-]. */
export const PETROL_SCATTER = {
  viscosity: 0.15,
  soundSpeed: 0.08,
  bulkModulus: 0.15,
  vapourPressure: 0.1,
} as const;

/**
 * Expansion [1/K] of petrol at 15 °C.
 *
 * Source: API MPMS chapter 11.1 (ASTM D1250) table 54B, gasolines of 653 to 770.5 kg/m^3;
 * above that the standard changes constants by less than its own scatter, and this runs on.
 *
 * @throws {InputError} When the density lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(petrolExpansion({ density15: 745 }), 1.213e-3, 1e-6);
 * ```
 */
export const petrolExpansion: Method<Record<"density15", MethodInput>> = method({
  id: "petrol-expansion",
  title: "Expansion of petrol with temperature",
  inputs: { density15: DENSITY_15 },
  output: {
    name: "expansion",
    unit: "1/K",
    min: 1e-3,
    max: 1.6e-3,
    says: "Growth in volume per kelvin at 15 °C",
    symbol: "\\alpha_{15}",
  },
  formula: "346.4228 / density15^2 + 0.4388 / density15",
  fit: true,
  source: "API MPMS 11.1 / ASTM D1250 table 54B",
  compute: ({ density15 }) => 346.4228 / density15 ** 2 + 0.4388 / density15,
});

/**
 * Density [kg/m^3] of petrol at a temperature, from its density at 15 °C.
 *
 * Source: API MPMS chapter 11.1 (ASTM D1250) table 54B; about 0.1 % for petrol without oxygenates.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Petrol of 745 kg/m^3 at 60 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const density_kg_m3 = petrolDensity({
 *   density15: 745,
 *   expansion: 1.21315e-3,
 *   temperature: 333.15,
 * });
 *
 * assertAlmostEquals(density_kg_m3, 703.7, 0.1);
 * ```
 */
export const petrolDensity: Method<
  Record<"density15" | "expansion" | "temperature", MethodInput>
> = method({
  id: "petrol-density",
  title: "Density of petrol at a temperature",
  inputs: {
    density15: DENSITY_15,
    expansion: {
      unit: "1/K",
      min: 1e-3,
      max: 1.6e-3,
      says: "Growth in volume per kelvin at 15 °C",
      symbol: "\\alpha_{15}",
    },
    temperature: TEMPERATURE,
  },
  output: { ...DENSITY, name: "density" },
  formula: "density15 * exp(-expansion * (temperature - 288.15)" +
    " * (1 + 0.8 * expansion * (temperature - 288.15)))",
  fit: true,
  source: "API MPMS 11.1 / ASTM D1250 table 54B",
  compute: ({ density15, expansion, temperature }) => {
    const growth = expansion * (temperature - 288.15);
    return density15 * Math.exp(-growth * (1 + 0.8 * growth));
  },
});

/**
 * Kinematic viscosity [m^2/s] of petrol: 0.69, 0.55, 0.45, 0.38 mm^2/s at 0, 20, 40, 60 °C.
 *
 * Source: line of Andrade (1930) through the middle of the ranges published by the U.S. DOE
 * Alternative Fuels Data Center at -20 and 20 °C; petrols lie within 15 % of it.
 *
 * @throws {InputError} When the temperature lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(petrolViscosity({ temperature: 293.15 }), 0.55e-6, 1e-9);
 * ```
 */
export const petrolViscosity: Method<Record<"temperature", MethodInput>> = method({
  id: "petrol-viscosity",
  title: "Viscosity of petrol",
  inputs: { temperature: { ...TEMPERATURE, min: 253.15 } },
  output: { ...KINEMATIC, name: "kinematic" },
  formula: "exp(-3.714671386 + 913.7 / temperature) * 1e-6",
  fit: true,
  source: "Andrade's line through the ranges of the U.S. DOE Alternative Fuels Data Center, " +
    "Properties of Fuels; scatter 15 %",
  compute: ({ temperature }) => Math.exp(-3.714671386 + 913.7 / temperature) * 1e-6,
});

/**
 * Speed of sound [m/s] in petrol: 1160 m/s at 20 °C, 4.2 m/s less with each degree.
 *
 * Source: mixtures of pure liquids that stand for petrol give 1128 to 1160 m/s and the slope;
 * a round 1250 m/s of handbooks is the upper edge (from memory). Scatter 8 %.
 *
 * @throws {InputError} When the temperature lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(petrolSoundSpeed({ temperature: 313.15 }), 1076, 1);
 * ```
 */
export const petrolSoundSpeed: Method<Record<"temperature", MethodInput>> = method({
  id: "petrol-sound-speed",
  title: "Speed of sound in petrol",
  inputs: { temperature: TEMPERATURE },
  output: { ...SOUND_SPEED, name: "soundSpeed" },
  formula: "1160 - 4.2 * (temperature - 293.15)",
  fit: true,
  source:
    "Mixtures of isooctane, n-heptane and toluene by Wood's rule on CoolProp 8.0.0; scatter 8 %",
  compute: ({ temperature }) => 1160 - 4.2 * (temperature - 293.15),
});
