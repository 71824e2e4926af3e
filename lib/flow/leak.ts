/** Slow leaks: what a scratch or a pore passes. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, DIFFERENTIAL, FLOW, VISCOSITY } from "./limits.ts";

const PASSAGE: MethodInput = {
  unit: "m",
  min: 1e-7,
  max: 1e-3,
  says: "Diameter of the passage",
  symbol: "d",
};
const LENGTH: MethodInput = {
  unit: "m",
  min: 1e-4,
  max: 0.1,
  says: "Length of the passage",
  symbol: "L",
};

/**
 * Leak of liquid [m^3/s] through a fine round passage, flow laminar from its start.
 *
 * Holds while Re is below 2000 and the passage longer than 0.06 Re d; for a shorter one
 * use {@linkcode capillaryLeakWithEntry}. Source: Poiseuille's law, exact.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A 20 um pore through 5 mm, petrol at 3 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = capillaryLeak({
 *   diameter: 20e-6,
 *   length: 5e-3,
 *   differential: 3e5,
 *   viscosity: 4.1e-4,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 60e6, 0.03448, 1e-5); // mL/min
 * ```
 */
export const capillaryLeak: Method<
  Record<"diameter" | "length" | "differential" | "viscosity", MethodInput>
> = method({
  id: "capillary-leak",
  title: "Leak of liquid through a fine passage",
  inputs: { diameter: PASSAGE, length: LENGTH, differential: DIFFERENTIAL, viscosity: VISCOSITY },
  output: { ...FLOW, name: "leak", says: "Leak", max: 100 },
  formula: "pi * diameter^4 * differential / (128 * viscosity * length)",
  words: "Holds while Re is below 2000 and the passage longer than 0.06 Re d.",
  source: "J. L. M. Poiseuille (1840); exact solution of laminar flow in a round pipe",
  compute: ({ diameter, length, differential, viscosity }) =>
    Math.PI * diameter ** 4 * differential / (128 * viscosity * length),
});

/**
 * Leak of liquid [m^3/s] through a fine round passage with what it costs to bring the
 * liquid up to speed: 2.24 dynamic pressures (the Hagenbach factor 1.12 of viscometry).
 *
 * Source: Poiseuille's law with the kinetic-energy term of E. Hagenbach, Ann. Phys. 185
 * (1860) 385, solved for the velocity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A 50 um pore through 10 mm passes 8 % less than without it
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = capillaryLeakWithEntry({
 *   diameter: 50e-6,
 *   length: 10e-3,
 *   differential: 3e5,
 *   viscosity: 4.1e-4,
 *   density: 745,
 * });
 *
 * assertAlmostEquals(flow_m3_s, 1.0356e-8, 1e-12);
 * ```
 */
export const capillaryLeakWithEntry: Method<
  Record<"diameter" | "length" | "differential" | "viscosity" | "density", MethodInput>
> = method({
  id: "capillary-leak-with-entry",
  title: "Leak of liquid through a short fine passage",
  inputs: {
    diameter: PASSAGE,
    length: LENGTH,
    differential: DIFFERENTIAL,
    viscosity: VISCOSITY,
    density: DENSITY,
  },
  output: { ...FLOW, name: "leak", says: "Leak", max: 100 },
  formula: "pi / 4 * diameter^2 * 2 * differential / (32 * viscosity * length / diameter^2 + " +
    "sqrt((32 * viscosity * length / diameter^2)^2 + 4.48 * density * differential))",
  words: "Solves differential = 32 viscosity length V / diameter^2 + 2.24 density V^2 / 2 for V.",
  source:
    "Poiseuille's law with the kinetic-energy term of E. Hagenbach, Ann. Phys. 185 (1860) 385",
  compute: ({ diameter, length, differential, viscosity, density }) => {
    const drag = 32 * viscosity * length / (diameter * diameter);
    const root = Math.sqrt(drag * drag + 4.48 * density * differential);
    return Math.PI / 4 * diameter * diameter * 2 * differential / (drag + root);
  },
});

/**
 * Leak of liquid [m^3/s] through a flat gap: a scratch across a sealing face, a loose land.
 *
 * Source: plane Poiseuille flow, exact.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 10 um over 20 mm of width
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = gapLeak({
 *   width: 20e-3,
 *   height: 10e-6,
 *   length: 2e-3,
 *   differential: 3e5,
 *   viscosity: 4.1e-4,
 * });
 *
 * assertAlmostEquals(flow_m3_s, 6.098e-7, 1e-10);
 * ```
 */
export const gapLeak: Method<
  Record<"width" | "height" | "length" | "differential" | "viscosity", MethodInput>
> = method({
  id: "gap-leak",
  title: "Leak of liquid through a flat gap",
  inputs: {
    width: {
      unit: "m",
      min: 1e-5,
      max: 0.5,
      says: "Width of the gap, across the flow",
      symbol: "w",
    },
    height: { unit: "m", min: 1e-7, max: 5e-4, says: "Height of the gap", symbol: "h" },
    length: LENGTH,
    differential: DIFFERENTIAL,
    viscosity: VISCOSITY,
  },
  output: { ...FLOW, name: "leak", says: "Leak", max: 100 },
  formula: "width * height^3 * differential / (12 * viscosity * length)",
  source: "Plane Poiseuille flow, exact solution",
  compute: ({ width, height, length, differential, viscosity }) =>
    width * height ** 3 * differential / (12 * viscosity * length),
});
