/** Darcy friction factor of a round pipe, in every regime. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { FRICTION_FACTOR, RELATIVE_ROUGHNESS, REYNOLDS } from "./limits.ts";

/** How the liquid moves: in layers, switching between both, or in eddies. */
export type Regime = "laminar" | "transitional" | "turbulent";

/** Up to this Reynolds number flow is taken as laminar. */
export const LAMINAR_TO = 2300;

/** From this Reynolds number flow is taken as turbulent. */
export const TURBULENT_FROM = 4000;

/**
 * Friction factor [-] of laminar flow, f = 64 / Re.
 *
 * Holds to Re 2300; from there to 4000 it is the lower edge of what is possible.
 * Source: the exact Hagen-Poiseuille solution.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(laminarFriction({ reynolds: 1000 }), 0.064);
 * ```
 */
export const laminarFriction: Method<Record<"reynolds", MethodInput>> = method({
  id: "laminar-friction",
  title: "Friction factor of laminar flow",
  inputs: { reynolds: { ...REYNOLDS, min: 1e-3, max: TURBULENT_FROM } },
  output: { ...FRICTION_FACTOR, name: "frictionFactor" },
  formula: "64 / reynolds",
  words: "Holds to Re 2300; from there to 4000 it is the lower edge of what is possible.",
  source: "Hagen-Poiseuille, exact solution of laminar flow in a round pipe",
  compute: ({ reynolds }) => 64 / reynolds,
});

/**
 * Friction factor [-] of turbulent flow by Colebrook's equation,
 * 1/sqrt(f) = -2 log10(r / 3.7 + 2.51 / (Re sqrt(f))), r the relative roughness.
 *
 * Holds from Re 4000, to about 5 % against measured pipes; from 2300 to 4000 it is
 * the upper edge of what is possible.
 *
 * Source: C. F. Colebrook, J. Inst. Civil Engrs 11 (1939) 133-156,
 * doi:10.1680/ijoti.1939.13150.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A slightly rough pipe
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const f = colebrookFriction({ reynolds: 1e5, relativeRoughness: 1e-4 });
 *
 * assertAlmostEquals(f, 0.018514, 1e-6);
 * ```
 */
export const colebrookFriction: Method<
  Record<"reynolds" | "relativeRoughness", MethodInput>
> = method({
  id: "colebrook-friction",
  title: "Friction factor of turbulent flow",
  inputs: {
    reynolds: { ...REYNOLDS, min: LAMINAR_TO },
    relativeRoughness: RELATIVE_ROUGHNESS,
  },
  output: { ...FRICTION_FACTOR, name: "frictionFactor" },
  formula: null,
  words: "The f that satisfies Colebrook's equation, " +
    "1/sqrt(f) = -2 log10(relativeRoughness / 3.7 + 2.51 / (reynolds sqrt(f))), found by Newton's method. " +
    "Holds from Re 4000; from 2300 to 4000 it is the upper edge of what is possible.",
  source: "C. F. Colebrook, J. Inst. Civil Engrs 11 (1939) 133-156, doi:10.1680/ijoti.1939.13150",
  compute: ({ reynolds, relativeRoughness }) => colebrook(reynolds, relativeRoughness),
});

/**
 * Friction factor [-] between Re 2300 and 4000: a straight line in Re from the
 * laminar value at 2300 to the turbulent one at 4000.
 *
 * It is continuous and rising, so that a solver finds one answer; the flow itself may
 * sit anywhere between the laminar and the turbulent law.
 * Source: ours, between the two laws; no published law holds here.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example At Re 3150, half way
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(transitionFriction({ reynolds: 3150, turbulent: 0.04 }), 0.0339, 1e-4);
 * ```
 */
export const transitionFriction: Method<Record<"reynolds" | "turbulent", MethodInput>> = method({
  id: "transition-friction",
  title: "Friction factor between laminar and turbulent flow",
  inputs: {
    reynolds: { ...REYNOLDS, min: LAMINAR_TO, max: TURBULENT_FROM },
    turbulent: {
      ...FRICTION_FACTOR,
      min: 0.03,
      max: 0.1,
      says: "Friction factor of turbulent flow at Re 4000",
      symbol: "f_{4000}",
    },
  },
  output: { ...FRICTION_FACTOR, name: "frictionFactor" },
  formula: "64 / 2300 + (turbulent - 64 / 2300) * (reynolds - 2300) / 1700",
  words: "The flow may sit anywhere between the laminar and the turbulent law; show both edges.",
  source: "Ours: a straight line between the laws of Hagen-Poiseuille and Colebrook",
  compute: ({ reynolds, turbulent }) => bridge(reynolds, turbulent),
});

/**
 * Friction factor [-] in any regime, unchecked, for inner loops: laminar to Re 2300,
 * Colebrook from 4000, a straight line between.
 *
 * @param reynolds Reynolds number, above 0 [-].
 * @param relativeRoughness Roughness over diameter, 0 to 0.05 [-].
 * @returns The Darcy friction factor [-].
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(darcyFriction(640, 0), 0.1);
 * ```
 */
export function darcyFriction(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_TO) return 64 / reynolds;
  if (reynolds >= TURBULENT_FROM) return colebrook(reynolds, relativeRoughness);
  return bridge(reynolds, colebrook(TURBULENT_FROM, relativeRoughness));
}

/**
 * Names the regime of a Reynolds number.
 *
 * @param reynolds Reynolds number [-].
 * @returns The regime.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(regimeOf(3000), "transitional");
 * ```
 */
export function regimeOf(reynolds: number): Regime {
  if (reynolds <= LAMINAR_TO) return "laminar";
  return reynolds < TURBULENT_FROM ? "transitional" : "turbulent";
}

function bridge(reynolds: number, turbulent: number): number {
  const laminar = 64 / LAMINAR_TO;
  return laminar +
    (turbulent - laminar) * (reynolds - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO);
}

/**
 * Solves Colebrook's equation for x = 1/sqrt(f) by Newton's method, from Swamee and
 * Jain's explicit formula; four steps reach the last bits over the whole range.
 */
function colebrook(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = -2 * Math.log10(rough + 5.74 / reynolds ** 0.9);
  for (let step = 0; step < 4; step++) {
    const inside = rough + smooth * x;
    x -= (x + 2 * Math.log10(inside)) / (1 + 2 * smooth / (Math.LN10 * inside));
  }
  return 1 / (x * x);
}
