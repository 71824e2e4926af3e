/** Loss where the bore changes at once. All coefficients are on the smaller bore. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE_RATIO, CRANE, LOSS, RENNELS } from "./loss_limits.ts";

const JET = "(1 + 0.622 * (1 - 0.215 * boreRatio^2 - 0.785 * boreRatio^5))";

/**
 * Loss coefficient [-] of a sudden contraction, on the smaller bore.
 *
 * Up to 40 % above {@linkcode suddenContractionCrane} for steps of a quarter of the bore.
 * Source: Rennels and Hudson (2012), chapter 10.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example 16 to 12 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(suddenContraction({ boreRatio: 0.75 }), 0.2944, 1e-4);
 * ```
 */
export const suddenContraction: Method<Record<"boreRatio", MethodInput>> = method({
  id: "sudden-contraction",
  title: "Loss coefficient of a sudden contraction",
  inputs: { boreRatio: BORE_RATIO },
  output: LOSS,
  formula: `0.0696 * (1 - boreRatio^5) * ${JET}^2 + (${JET} - 1)^2`,
  source: RENNELS,
  compute: ({ boreRatio }) => {
    const jet = 1 + 0.622 * (1 - 0.215 * boreRatio ** 2 - 0.785 * boreRatio ** 5);
    return 0.0696 * (1 - boreRatio ** 5) * jet ** 2 + (jet - 1) ** 2;
  },
});

/**
 * Loss coefficient [-] of a sudden contraction by Crane, on the smaller bore.
 *
 * Source: Crane TP-410 (2009) A-27.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example 16 to 12 mm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(suddenContractionCrane({ boreRatio: 0.75 }), 0.21875);
 * ```
 */
export const suddenContractionCrane: Method<Record<"boreRatio", MethodInput>> = method({
  id: "sudden-contraction-crane",
  title: "Loss coefficient of a sudden contraction, Crane",
  inputs: { boreRatio: BORE_RATIO },
  output: LOSS,
  formula: "0.5 * (1 - boreRatio^2)",
  source: CRANE,
  compute: ({ boreRatio }) => 0.5 * (1 - boreRatio ** 2),
});

/**
 * Loss coefficient [-] of a sudden expansion, on the smaller bore. Turbulent flow.
 *
 * Source: Borda-Carnot, from the balance of momentum.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example 8 to 16 mm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(suddenExpansion({ boreRatio: 0.5 }), 0.5625);
 * ```
 */
export const suddenExpansion: Method<Record<"boreRatio", MethodInput>> = method({
  id: "sudden-expansion",
  title: "Loss coefficient of a sudden expansion",
  inputs: { boreRatio: BORE_RATIO },
  output: LOSS,
  formula: "(1 - boreRatio^2)^2",
  source: "J. C. Borda (1766), L. Carnot (1803): balance of momentum",
  compute: ({ boreRatio }) => (1 - boreRatio ** 2) ** 2,
});
