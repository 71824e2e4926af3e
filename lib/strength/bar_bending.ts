/** How far a bored bar bends, and how hard that is on it. */
import { type Method, method, type MethodInput, type MethodOutput } from "@/lib/method/mod.ts";
import { BORE } from "./limits.ts";

const INERTIA: MethodInput = {
  unit: "m^4",
  min: 1e-14,
  max: 1e-3,
  says: "Second moment of area of the bored section",
  symbol: "I",
};
const INERTIA_FOUND: MethodOutput = { ...INERTIA, name: "inertia", min: 0, open: true };
const SIZE = { unit: "m", min: 0.002, max: 0.3 } as const;

/**
 * Second moment of area of a rectangular bar with a gallery in its middle [m^4].
 *
 * Source: I = b h^3 / 12 less pi d^4 / 64.
 *
 * @throws {InputError} When a number lies outside its range, or no bar is left.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const inertia_m4 = boredRectangleInertia({ width: 0.025, height: 0.025, bore: 0.0127 });
 *
 * assertAlmostEquals(inertia_m4, 31_275e-12, 1e-12);
 * ```
 */
export const boredRectangleInertia: Method<Record<"width" | "height" | "bore", MethodInput>> =
  method({
    id: "bored-rectangle-inertia",
    title: "Second moment of area of a bored rectangular bar",
    inputs: {
      width: { ...SIZE, says: "Width of the bar", symbol: "b" },
      height: { ...SIZE, says: "Height of the bar, along the lift", symbol: "h" },
      bore: BORE,
    },
    output: INERTIA_FOUND,
    formula: "width * height^3 / 12 - pi * bore^4 / 64",
    source: "Second moments of a rectangle and a circle about their common middle",
    compute: ({ width, height, bore }) => width * height ** 3 / 12 - Math.PI * bore ** 4 / 64,
  });

/**
 * Second moment of area of a round bar with a gallery in its middle [m^4].
 *
 * Source: I = pi (D^4 - d^4) / 64.
 *
 * @throws {InputError} When a number lies outside its range, or no bar is left.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(boredRoundInertia({ outside: 0.02, bore: 0.01 }), 7.363e-9, 1e-12);
 * ```
 */
export const boredRoundInertia: Method<Record<"outside" | "bore", MethodInput>> = method({
  id: "bored-round-inertia",
  title: "Second moment of area of a bored round bar",
  inputs: { outside: { ...SIZE, says: "Diameter of the bar", symbol: "D" }, bore: BORE },
  output: INERTIA_FOUND,
  formula: "pi * (outside^4 - bore^4) / 64",
  source: "Second moments of two circles about their common middle",
  compute: ({ outside, bore }) => Math.PI * (outside ** 4 - bore ** 4) / 64,
});

/**
 * Stress that bending makes at the outside of a bar [Pa].
 *
 * Source: Euler and Bernoulli's beam.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3.1 N m on a bored bar of 25 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const stress_Pa = bendingStress({ moment: 3.1, depth: 0.025, inertia: 31_275e-12 });
 *
 * assertAlmostEquals(stress_Pa, 1.239e6, 1e3);
 * ```
 */
export const bendingStress: Method<Record<"moment" | "depth" | "inertia", MethodInput>> = method({
  id: "bending-stress",
  title: "Stress that bending makes in a bar",
  inputs: {
    moment: { unit: "N m", min: 0, max: 1e5, says: "Greatest bending moment", symbol: "M" },
    depth: { ...SIZE, says: "Size of the bar along the lift", symbol: "h" },
    inertia: INERTIA,
  },
  output: {
    name: "stress",
    unit: "Pa",
    min: 0,
    max: 2e18,
    says: "Bending stress at the outside",
    symbol: "\\sigma_b",
  },
  formula: "moment * depth / (2 * inertia)",
  source: "Euler and Bernoulli's beam; S. Timoshenko, Strength of Materials I",
  compute: ({ moment, depth, inertia }) => moment * depth / (2 * inertia),
});

/**
 * Deflection of a bar [m] of what bends it: F L^3 / 48 for one lift midway between two screws.
 *
 * Shear adds less than a tenth while the gap is over five times the bar's height.
 *
 * Source: Euler and Bernoulli's beam.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 62 N in the middle of 200 mm of aluminium bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const deflection_m = barDeflection({
 *   flexure: 62 * 0.2 ** 3 / 48,
 *   elasticModulus: 69e9,
 *   inertia: 31_275e-12,
 * });
 *
 * assertAlmostEquals(deflection_m, 4.79e-6, 1e-8);
 * ```
 */
export const barDeflection: Method<Record<"flexure" | "elasticModulus" | "inertia", MethodInput>> =
  method({
    id: "bar-deflection",
    title: "Deflection of a held bar",
    inputs: {
      flexure: {
        unit: "N m^3",
        min: 0,
        max: 1e5,
        says: "What bends the bar: F L^3 / 48 for one lift midway between two screws",
        symbol: "w",
      },
      elasticModulus: {
        unit: "Pa",
        min: 1e9,
        max: 5e11,
        says: "Modulus of elasticity",
        symbol: "E",
      },
      inertia: INERTIA,
    },
    output: {
      name: "deflection",
      unit: "m",
      min: 0,
      max: 1e10,
      says: "Most deflection, at an injector or midway",
      symbol: "\\delta",
    },
    formula: "flexure / (elasticModulus * inertia)",
    source: "Euler and Bernoulli's beam; S. Timoshenko, Strength of Materials I",
    compute: ({ flexure, elasticModulus, inertia }) => flexure / (elasticModulus * inertia),
  });
