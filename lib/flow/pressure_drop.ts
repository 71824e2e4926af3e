/** What flow costs in pressure. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, DENSITY, FRICTION_FACTOR, VELOCITY } from "./limits.ts";

/**
 * Dynamic pressure [Pa] of a stream: what stopping it without loss would give back, and
 * so the most that pressure can rise from a rail's inlet to its dead end.
 *
 * Source: D. Bernoulli, Hydrodynamica (1738).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Petrol at 2 m/s
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(dynamicPressure({ density: 745, velocity: 2 }), 1490);
 * ```
 */
export const dynamicPressure: Method<Record<"density" | "velocity", MethodInput>> = method({
  id: "dynamic-pressure",
  title: "Dynamic pressure of a stream",
  inputs: { density: DENSITY, velocity: VELOCITY },
  output: {
    name: "dynamicPressure",
    unit: "Pa",
    min: 0,
    max: 1e9,
    says: "Dynamic pressure",
    symbol: "p_d",
  },
  formula: "density * velocity^2 / 2",
  source: "D. Bernoulli, Hydrodynamica (1738)",
  compute: ({ density, velocity }) => density * velocity * velocity / 2,
});

/**
 * Pressure lost to friction [Pa] along a straight round pipe.
 *
 * Source: Darcy-Weisbach equation; F. M. White, Fluid Mechanics, 7th ed. (2011), eq. 6.10.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3 m of 8 mm tube with petrol at 1.33 m/s
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const drop_Pa = pipePressureDrop({
 *   frictionFactor: 0.02651687505,
 *   length: 3,
 *   bore: 8e-3,
 *   density: 745,
 *   velocity: 1.326291192,
 * });
 *
 * assertAlmostEquals(drop_Pa, 6516, 1);
 * ```
 */
export const pipePressureDrop: Method<
  Record<"frictionFactor" | "length" | "bore" | "density" | "velocity", MethodInput>
> = method({
  id: "pipe-pressure-drop",
  title: "Pressure lost to friction in a straight pipe",
  inputs: {
    frictionFactor: FRICTION_FACTOR,
    length: { unit: "m", min: 0, max: 1000, says: "Length of the pipe", symbol: "L" },
    bore: BORE,
    density: DENSITY,
    velocity: VELOCITY,
  },
  output: {
    name: "pressureDrop",
    unit: "Pa",
    min: 0,
    max: 1e11,
    says: "Pressure lost to friction",
    symbol: "\\Delta p_f",
  },
  formula: "frictionFactor * length / bore * density * velocity^2 / 2",
  source: "Darcy-Weisbach equation; F. M. White, Fluid Mechanics, 7th ed. (2011), eq. 6.10",
  compute: ({ frictionFactor, length, bore, density, velocity }) =>
    frictionFactor * length / bore * density * velocity * velocity / 2,
});
