/** Stress where two holes meet the gallery face to face. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * How much higher stress runs where holes of one size meet the gallery from both sides [-],
 * over the hoop stress at the bore. Thin walls suffer much more than from one hole, which
 * {@linkcode crossHoleFactor} is for.
 *
 * Known from outside over bore 1.5 (holes up to half the bore) to 2 (up to 0.8), which it
 * covers by up to 6 %; beyond that it is carried on.
 *
 * Source: ours, a curve above finite elements of round bars.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half the bore, outside twice the bore
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(facingHolesFactor({ outsideOverBore: 2, holeOverBore: 0.5 }), 3.76, 0.01);
 * ```
 */
export const facingHolesFactor: Method<Record<"outsideOverBore" | "holeOverBore", MethodInput>> =
  method({
    id: "facing-holes-factor",
    title: "Rise of stress where holes face each other across the gallery",
    inputs: {
      outsideOverBore: {
        unit: "-",
        min: 1.4,
        max: 4,
        says: "Outside over bore, by the least wall",
        symbol: "K",
      },
      holeOverBore: {
        unit: "-",
        min: 0.05,
        max: 0.85,
        says: "Larger of the two holes over the bore",
        symbol: "\\rho",
      },
    },
    output: {
      name: "factor",
      unit: "-",
      min: 2.5,
      max: 15,
      says: "Stress at the edge over hoop stress at the bore",
      symbol: "K_t",
    },
    formula:
      "0.9 * (4 * outsideOverBore^2 + 1) / (outsideOverBore^2 + 1) + 2.8 * holeOverBore^2 / (outsideOverBore - 1)^1.55",
    source: "Ours, a curve above finite elements of round bars with a through hole",
    compute: ({ outsideOverBore: k, holeOverBore }) =>
      0.9 * (4 * k ** 2 + 1) / (k ** 2 + 1) + 2.8 * holeOverBore ** 2 / (k - 1) ** 1.55,
  });
