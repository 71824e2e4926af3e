/** Density of a pure liquid and how it grows with warmth. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, TEMPERATURE } from "./limits.ts";

const A1: MethodInput = {
  unit: "kg/(m^3 K)",
  min: -1,
  max: 0.1,
  says: "Change with each degree",
  symbol: "a_1",
};
const A2: MethodInput = {
  unit: "kg/(m^3 K^2)",
  min: -8e-3,
  max: 0,
  says: "Coefficient of the square",
  symbol: "a_2",
};
const A3: MethodInput = {
  unit: "kg/(m^3 K^3)",
  min: 0,
  max: 3e-5,
  says: "Coefficient of the cube; only water needs it",
  symbol: "a_3",
};

/**
 * Density [kg/m^3] of a pure liquid at 1 atm, with the coefficients of {@linkcode PURE_FLUIDS}.
 *
 * Source: least squares on CoolProp 8.0.0, 0 to 60 °C, within 0.01 %; down to -10 °C within 0.05 %.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Ethanol at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { PURE_FLUIDS } from "./fluids.ts";
 *
 * const density_kg_m3 = liquidDensity({ temperature: 293.15, ...PURE_FLUIDS.ethanol.density });
 *
 * assertAlmostEquals(density_kg_m3, 789.4, 0.1);
 * ```
 */
export const liquidDensity: Method<Record<"temperature" | "a0" | "a1" | "a2" | "a3", MethodInput>> =
  method({
    id: "liquid-density",
    title: "Density of a pure liquid",
    inputs: {
      temperature: TEMPERATURE,
      a0: { unit: "kg/m^3", min: 650, max: 1050, says: "Density at 0 °C", symbol: "a_0" },
      a1: A1,
      a2: A2,
      a3: A3,
    },
    output: { ...DENSITY, name: "density" },
    formula: "a0 + a1 * (temperature - 273.15) + a2 * (temperature - 273.15)^2" +
      " + a3 * (temperature - 273.15)^3",
    fit: true,
    source: "Least squares on CoolProp 8.0.0 (Span and Wagner 2003, Lemmon and Span 2006, " +
      "Schroeder 2014, de Reuck and Craven 1993, IAPWS-95); isooctane Blackham and Lemmon 2011",
    compute: ({ temperature, a0, a1, a2, a3 }) => {
      const t = temperature - 273.15;
      return a0 + t * (a1 + t * (a2 + t * a3));
    },
  });

/**
 * Expansion [1/K] of a pure liquid: its growth in volume with each degree.
 *
 * Source: definition, on the fit of {@linkcode liquidDensity}.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Ethanol at 15 °C grows by 1.08 parts in a thousand with each degree
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { PURE_FLUIDS } from "./fluids.ts";
 *
 * const { a1, a2, a3 } = PURE_FLUIDS.ethanol.density;
 *
 * assertAlmostEquals(
 *   liquidExpansion({ temperature: 288.15, density: 793.7, a1, a2, a3 }),
 *   0.00108,
 *   1e-5,
 * );
 * ```
 */
export const liquidExpansion: Method<
  Record<"temperature" | "density" | "a1" | "a2" | "a3", MethodInput>
> = method({
  id: "liquid-expansion",
  title: "Expansion of a pure liquid with temperature",
  inputs: { temperature: TEMPERATURE, density: DENSITY, a1: A1, a2: A2, a3: A3 },
  output: {
    name: "expansion",
    unit: "1/K",
    min: -2e-4,
    max: 3e-3,
    says: "Growth in volume per kelvin",
    symbol: "\\alpha",
  },
  formula: "-(a1 + 2 * a2 * (temperature - 273.15) + 3 * a3 * (temperature - 273.15)^2) / density",
  fit: true,
  source: "Definition of the coefficient of expansion, on the fit of the density",
  compute: ({ temperature, density, a1, a2, a3 }) => {
    const t = temperature - 273.15;
    return -(a1 + t * (2 * a2 + t * 3 * a3)) / density;
  },
});

/**
 * Density [kg/m^3] of n-heptane, the liquid that injectors are rated with.
 *
 * Source: as {@linkcode liquidDensity}.
 *
 * @throws {InputError} When the temperature lies outside its range.
 *
 * @example On a flow bench at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(ratingFluidDensity({ temperature: 293.15 }), 683.8, 0.1);
 * ```
 */
export const ratingFluidDensity: Method<Record<"temperature", MethodInput>> = method({
  id: "rating-fluid-density",
  title: "Density of n-heptane, the rating liquid",
  inputs: { temperature: TEMPERATURE },
  output: { ...DENSITY, name: "density" },
  formula: "700.5072 - 0.8251898 * (temperature - 273.15) - 4.326846e-4 * (temperature - 273.15)^2",
  fit: true,
  source: "Least squares on CoolProp 8.0.0 (Span and Wagner 2003), 0 to 60 °C",
  compute: ({ temperature }) => {
    const t = temperature - 273.15;
    return 700.5072 - t * (0.8251898 + t * 4.326846e-4);
  },
});
