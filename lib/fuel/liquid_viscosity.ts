/** Viscosity of a pure liquid, and the two ways of stating viscosity. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, KINEMATIC, TEMPERATURE, VISCOSITY } from "./limits.ts";

/**
 * Dynamic viscosity [Pa s] of a pure liquid at 1 atm by Vogel's equation, with the
 * coefficients of {@linkcode PURE_FLUIDS}, which give the logarithm in mPa s.
 *
 * Source: H. Vogel, Phys. Z. 22 (1921) 645; least squares on CoolProp 8.0.0, 0 to 60 °C.
 * The data behind it are good to 2 to 3 % (isooctane 6 %).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Ethanol at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { PURE_FLUIDS } from "./fluids.ts";
 *
 * const viscosity_Pa_s = liquidViscosity({ temperature: 293.15, ...PURE_FLUIDS.ethanol.viscosity });
 *
 * assertAlmostEquals(viscosity_Pa_s, 1.19e-3, 1e-5);
 * ```
 */
export const liquidViscosity: Method<Record<"temperature" | "a" | "b" | "c", MethodInput>> = method(
  {
    id: "liquid-viscosity",
    title: "Viscosity of a pure liquid",
    inputs: {
      temperature: TEMPERATURE,
      a: { unit: "-", min: -7, max: -3, says: "First coefficient", symbol: "A" },
      b: { unit: "K", min: 400, max: 2600, says: "Second coefficient", symbol: "B" },
      c: { unit: "K", min: -160, max: 70, says: "Third coefficient", symbol: "C" },
    },
    output: { ...VISCOSITY, name: "viscosity" },
    formula: "exp(a + b / (temperature + c)) / 1000",
    fit: true,
    source: "H. Vogel, Phys. Z. 22 (1921) 645; least squares on CoolProp 8.0.0, " +
      "isooctane on Perry's handbook",
    compute: ({ temperature, a, b, c }) => Math.exp(a + b / (temperature + c)) / 1000,
  },
);

/**
 * Dynamic viscosity [Pa s] from kinematic viscosity.
 *
 * Source: definition, ISO 3104.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(dynamicViscosity({ kinematic: 0.55e-6, density: 740 }), 4.07e-4, 1e-6);
 * ```
 */
export const dynamicViscosity: Method<Record<"kinematic" | "density", MethodInput>> = method({
  id: "dynamic-viscosity",
  title: "Dynamic from kinematic viscosity",
  inputs: { kinematic: KINEMATIC, density: DENSITY },
  output: { ...VISCOSITY, name: "viscosity" },
  formula: "kinematic * density",
  source: "Definition, ISO 3104",
  compute: ({ kinematic, density }) => kinematic * density,
});

/**
 * Kinematic viscosity [m^2/s] from dynamic viscosity.
 *
 * Source: definition, ISO 3104.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(kinematicViscosity({ viscosity: 1.19e-3, density: 789 }), 1.51e-6, 1e-8);
 * ```
 */
export const kinematicViscosity: Method<Record<"viscosity" | "density", MethodInput>> = method({
  id: "kinematic-viscosity",
  title: "Kinematic from dynamic viscosity",
  inputs: { viscosity: VISCOSITY, density: DENSITY },
  output: { ...KINEMATIC, name: "kinematic" },
  formula: "viscosity / density",
  source: "Definition, ISO 3104",
  compute: ({ viscosity, density }) => viscosity / density,
});
