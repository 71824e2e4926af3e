/** Friction of a gallery that loses its flow evenly along the way. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Friction of a gallery with equal take-offs [-], over what it would be were the whole
 * flow to run to the end; the first take-off one pitch from the feed, friction factor constant.
 *
 * Source: J. E. Christiansen, Irrigation by Sprinkling, Univ. California Bull. 670 (1942),
 * exponent 2.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Four take-offs
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(takeOffFactor({ count: 4 }), 0.46875);
 * ```
 */
export const takeOffFactor: Method<Record<"count", MethodInput>> = method({
  id: "take-off-factor",
  title: "Friction with equal take-offs over that of the whole flow",
  inputs: {
    count: { unit: "-", min: 1, max: 1e9, says: "Number of equal take-offs", symbol: "N" },
  },
  output: {
    name: "factor",
    unit: "-",
    min: 0,
    max: 1,
    says: "Friction over that of the whole flow",
    symbol: "F",
  },
  formula: "1 / 3 + 1 / (2 * count) + 1 / (6 * count^2)",
  source: "J. E. Christiansen, Irrigation by Sprinkling, Univ. California Bull. 670 (1942)",
  compute: ({ count }) => 1 / 3 + 1 / (2 * count) + 1 / (6 * count * count),
});
