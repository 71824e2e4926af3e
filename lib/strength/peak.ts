/** How much higher stress runs where holes meet. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { STRESS } from "./limits.ts";

/**
 * What the stress at a gallery in a bar is above that of a pipe with the least wall [-].
 * Ours, from finite elements: up to 7 % above in rectangular bars; 1.0 for round ones, in
 * which a gallery off centre stays below.
 */
export const SHAPE_FACTOR = { rectangular: 1.15, round: 1 } as const;

/**
 * The same where an empty hole runs beside the gallery and the wall between is taken [-].
 * Ours, from finite elements: 13 % above at 3 mm, and more when thinner.
 */
export const LIGAMENT_FACTOR = 1.3;

/**
 * How much higher stress runs where one cross hole from a face meets the gallery [-].
 *
 * Holds for one hole while the outside is at least 1.75 times the bore. Two holes that face
 * each other across a thin wall run higher: see `facingHolesFactor`.
 *
 * Source: ours, from finite elements of bars (2.6 to 3.3 at hole over bore 0.3 to 0.7).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(crossHoleFactor({ pilot: 0.004, bore: 0.0127 }), 3);
 * assertEquals(crossHoleFactor({ pilot: 0.008, bore: 0.0127 }), 3.5);
 * ```
 */
export const crossHoleFactor: Method<Record<"pilot" | "bore", MethodInput>> = method({
  id: "cross-hole-factor",
  title: "Rise of stress where a cross hole meets the gallery",
  inputs: {
    pilot: {
      unit: "m",
      min: 3e-4,
      max: 0.2,
      says: "Largest cross hole into the gallery",
      symbol: "d_p",
    },
    bore: { unit: "m", min: 5e-4, max: 0.2, says: "Bore of the gallery", symbol: "d" },
  },
  output: {
    name: "factor",
    unit: "-",
    min: 3,
    max: 3.5,
    says: "Stress at the edge over hoop stress at the bore",
    symbol: "K_t",
  },
  formula: "pilot / bore <= 0.5 ? 3 : 3.5",
  source: "Ours, from finite elements of bars with one cross hole",
  compute: ({ pilot, bore }) => pilot / bore <= 0.5 ? 3 : 3.5,
});

/**
 * The same for a cross hole that is small against the wall [-], an upper bound for small holes.
 *
 * Source: hole in a plate under two stresses (G. Kirsch 1898) with Lamé's, pressure in both.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(smallCrossHoleFactor({ outsideOverBore: 2 }), 3.4, 1e-9);
 * ```
 */
export const smallCrossHoleFactor: Method<Record<"outsideOverBore", MethodInput>> = method({
  id: "small-cross-hole-factor",
  title: "Rise of stress at a small cross hole",
  inputs: {
    outsideOverBore: {
      unit: "-",
      min: 1.001,
      max: 20,
      says: "Outside over bore of the pipe",
      symbol: "K",
    },
  },
  output: {
    name: "factor",
    unit: "-",
    min: 2.5,
    max: 4,
    says: "Stress at the edge over hoop stress at the bore",
    symbol: "K_t",
  },
  formula: "(4 * outsideOverBore^2 + 1) / (outsideOverBore^2 + 1)",
  source: "G. Kirsch (1898) with Lamé's stresses, pressure in both holes",
  compute: ({ outsideOverBore }) => (4 * outsideOverBore ** 2 + 1) / (outsideOverBore ** 2 + 1),
});

/**
 * Highest stress in a bar [Pa].
 *
 * Source: ours: the pipe with the least wall, raised for the bar's shape and for cross holes.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(peakStress({ hoop: 1.7e6, shapeFactor: 1.15, holeFactor: 3 }), 5.865e6, 1);
 * ```
 */
export const peakStress: Method<Record<"hoop" | "shapeFactor" | "holeFactor", MethodInput>> =
  method({
    id: "peak-stress",
    title: "Highest stress in a bar",
    inputs: {
      hoop: {
        ...STRESS,
        min: 0,
        says: "Hoop stress at the bore of a pipe with the least wall",
        symbol: "\\sigma_\\theta",
      },
      shapeFactor: {
        unit: "-",
        min: 1,
        max: 2,
        says: "Rise by shape: rectangular 1.15, round 1, beside an empty hole 1.3",
        symbol: "k_s",
      },
      holeFactor: {
        unit: "-",
        min: 1,
        max: 5,
        says: "Rise where a cross hole meets the gallery; 1 without",
        symbol: "K_t",
      },
    },
    output: {
      name: "peak",
      unit: "Pa",
      min: 0,
      max: 1e14,
      says: "Highest stress",
      symbol: "\\hat\\sigma",
    },
    formula: "hoop * shapeFactor * holeFactor",
    source: "Ours, from finite elements",
    compute: ({ hoop, shapeFactor, holeFactor }) => hoop * shapeFactor * holeFactor,
  });

/**
 * Yield strength over highest stress [-].
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(yieldFactor({ yield: 240e6, peak: 6e6 }), 40, 1e-9);
 * ```
 */
export const yieldFactor: Method<Record<"yield" | "peak", MethodInput>> = method({
  id: "yield-factor",
  title: "Yield strength over highest stress",
  inputs: {
    yield: {
      unit: "Pa",
      min: 1e6,
      max: 3e9,
      says: "Yield strength of the material, least",
      symbol: "R_p",
    },
    peak: { unit: "Pa", min: 1, max: 1e14, says: "Highest stress", symbol: "\\hat\\sigma" },
  },
  output: { name: "factor", unit: "-", min: 0, max: 3e9, says: "Factor on yield", symbol: "S" },
  formula: "yield / peak",
  source: "Definition",
  compute: ({ yield: strength, peak }) => strength / peak,
});
