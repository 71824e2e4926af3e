/** How warm a wire makes itself. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import {
  CURRENT,
  FILM,
  HEAT_PER_LENGTH,
  LOOP,
  OUTSIDE,
  RATIO,
  RESISTANCE_PER_LENGTH,
} from "./limits.ts";

/**
 * Heat [W/(m^2 K)] that still air takes off a wire. Assumed, to be cautious: free convection
 * and radiation together take off about 15 to 30 from a single wire, less in a bundle.
 */
export const ASSUMED_FILM_W_m2_K = 10;

const WARMING: MethodInput = {
  unit: "K",
  min: 0,
  max: 200,
  says: "Warming of the wire above the air around it",
  symbol: "\\Delta T",
};

/**
 * Heat [W] that the wires make, out and back. Source: Joule's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(wireHeat({ current: 15, loopResistance: 0.03 }), 6.75, 1e-12);
 * ```
 */
export const wireHeat: Method<Record<"current" | "loopResistance", MethodInput>> = method({
  id: "wire-heat",
  title: "Heat in the wires",
  inputs: { current: CURRENT, loopResistance: LOOP },
  output: { name: "heat", unit: "W", min: 0, max: 8e7, says: "Heat in the wires", symbol: "P" },
  formula: "current^2 * loopResistance",
  source: "Joule's law",
  compute: ({ current, loopResistance }) => current * current * loopResistance,
});

/**
 * Heat [W/m] that a metre of wire makes. Source: Joule's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 15 A in 2.5 mm2 at 60 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const heat_W_m = wireHeatPerLength({
 *   current: 15,
 *   resistancePerLength: 7.98e-3,
 *   ratio: 1.1572,
 * });
 *
 * assertAlmostEquals(heat_W_m, 2.078, 1e-3);
 * ```
 */
export const wireHeatPerLength: Method<
  Record<"current" | "resistancePerLength" | "ratio", MethodInput>
> = method({
  id: "wire-heat-per-length",
  title: "Heat in a metre of wire",
  inputs: { current: CURRENT, resistancePerLength: RESISTANCE_PER_LENGTH, ratio: RATIO },
  output: { ...HEAT_PER_LENGTH, name: "heatPerLength" },
  formula: "current^2 * resistancePerLength * ratio",
  source: "Joule's law",
  compute: ({ current, resistancePerLength, ratio }) =>
    current * current * resistancePerLength * ratio,
});

/**
 * Warming [K] of a single wire above still air, once it has settled.
 *
 * Source: Newton's law of cooling over the outside of the insulation. The insulation itself
 * is thin and adds a few kelvins at most. In a bundle or a sleeve the wire gets warmer.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 2.1 W off each metre of a wire 3 mm thick
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const warming_K = wireWarming({
 *   heatPerLength: 2.1,
 *   outside: 3e-3,
 *   filmCoefficient: ASSUMED_FILM_W_m2_K,
 * });
 *
 * assertAlmostEquals(warming_K, 22.3, 0.1);
 * ```
 */
export const wireWarming: Method<
  Record<"heatPerLength" | "outside" | "filmCoefficient", MethodInput>
> = method({
  id: "wire-warming",
  title: "Warming of a wire in still air",
  inputs: { heatPerLength: HEAT_PER_LENGTH, outside: OUTSIDE, filmCoefficient: FILM },
  output: { ...WARMING, name: "warming", max: 1e9 },
  formula: "heatPerLength / (pi * outside * filmCoefficient)",
  source: "Newton's law of cooling; coefficient 10 W/(m^2 K) assumed, common practice, no source",
  compute: ({ heatPerLength, outside, filmCoefficient }) =>
    heatPerLength / (Math.PI * outside * filmCoefficient),
});

/**
 * Current [A] that warms a single wire in still air by so much: what it bears at the most.
 *
 * Source: Joule's law and Newton's law of cooling, solved for the current.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 2.5 mm2, from air of 55 °C to the 100 °C that its insulation bears
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const current_A = currentForWarming({
 *   warming: 45,
 *   outside: 3e-3,
 *   filmCoefficient: ASSUMED_FILM_W_m2_K,
 *   resistancePerLength: 7.98e-3,
 *   ratio: 1.3144,
 * });
 *
 * assertAlmostEquals(current_A, 20.1, 0.1);
 * ```
 */
export const currentForWarming: Method<
  Record<
    "warming" | "outside" | "filmCoefficient" | "resistancePerLength" | "ratio",
    MethodInput
  >
> = method({
  id: "current-for-warming",
  title: "Current that warms a wire by so much",
  inputs: {
    warming: WARMING,
    outside: OUTSIDE,
    filmCoefficient: FILM,
    resistancePerLength: RESISTANCE_PER_LENGTH,
    ratio: RATIO,
  },
  output: { ...CURRENT, name: "current", max: 1e4 },
  formula: "sqrt(pi * outside * filmCoefficient * warming / (resistancePerLength * ratio))",
  source: "Joule's law and Newton's law of cooling",
  compute: ({ warming, outside, filmCoefficient, resistancePerLength, ratio }) =>
    Math.sqrt(Math.PI * outside * filmCoefficient * warming / (resistancePerLength * ratio)),
});
