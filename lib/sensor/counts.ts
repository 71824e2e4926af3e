/** A signal as the numbers of a converter that is referenced to the sensor's supply. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BITS, HIGH_SHARE, LOW_SHARE, RANGE } from "./limits.ts";

const CONVERTER = "One count is the supply over two to the power of the bits; straight line";

/**
 * Pressure of one count [Pa]: the finest step that the converter tells.
 *
 * Source: definition of a converter's step.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 10 bar on 12 bits
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const step_Pa = pressurePerCount({ range: 1e6, bits: 12, lowShare: 0.1, highShare: 0.9 });
 *
 * assertAlmostEquals(step_Pa, 305, 0.2);
 * ```
 */
export const pressurePerCount: Method<
  Record<"range" | "bits" | "lowShare" | "highShare", MethodInput>
> = method({
  id: "pressure-per-count",
  title: "Pressure of one count of the converter",
  inputs: { range: RANGE, bits: BITS, lowShare: LOW_SHARE, highShare: HIGH_SHARE },
  output: {
    name: "step",
    unit: "Pa",
    min: 0,
    max: 2e6,
    says: "Pressure of one count",
    symbol: "\\Delta p",
  },
  formula: "range / ((highShare - lowShare) * 2^bits)",
  source: CONVERTER,
  compute: ({ range, bits, lowShare, highShare }) => range / ((highShare - lowShare) * 2 ** bits),
});

/**
 * Counts from no pressure to full scale [-].
 *
 * Source: definition of a converter's step.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(countsUsed({ bits: 10, lowShare: 0.1, highShare: 0.9 }), 819.2, 1e-9);
 * ```
 */
export const countsUsed: Method<Record<"bits" | "lowShare" | "highShare", MethodInput>> = method({
  id: "counts-used",
  title: "Counts that the sensor's range takes",
  inputs: { bits: BITS, lowShare: LOW_SHARE, highShare: HIGH_SHARE },
  output: {
    name: "counts",
    unit: "-",
    min: 0,
    max: 2e7,
    says: "Counts from no pressure to full scale",
    symbol: "N",
  },
  formula: "(highShare - lowShare) * 2^bits",
  source: CONVERTER,
  compute: ({ bits, lowShare, highShare }) => (highShare - lowShare) * 2 ** bits,
});

/**
 * Pressure that a count tells [Pa, gauge].
 *
 * Source: definition of a converter's step, straight line.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const sensor = { bits: 10, lowShare: 0.1, highShare: 0.9, range: 1e6 };
 *
 * assertAlmostEquals(pressureFromCount({ count: 512, ...sensor }), 5e5, 1e-6);
 * ```
 */
export const pressureFromCount: Method<
  Record<"count" | "bits" | "lowShare" | "highShare" | "range", MethodInput>
> = method({
  id: "pressure-from-count",
  title: "Pressure that a count tells",
  inputs: {
    count: { unit: "-", min: 0, max: 2 ** 24, says: "Number of the converter", symbol: "N" },
    bits: BITS,
    lowShare: LOW_SHARE,
    highShare: HIGH_SHARE,
    range: RANGE,
  },
  output: {
    name: "pressure",
    unit: "Pa",
    min: -2e8,
    max: 1e14,
    says: "Pressure, gauge",
    symbol: "p",
  },
  formula: "(count / 2^bits - lowShare) / (highShare - lowShare) * range",
  source: CONVERTER,
  compute: ({ count, bits, lowShare, highShare, range }) =>
    (count / 2 ** bits - lowShare) / (highShare - lowShare) * range,
});

/**
 * Number [-], before it is cut to a whole one, that a converter gives for a signal.
 *
 * Source: definition of a converter's step.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(countAtShare({ share: 0.5, bits: 10 }), 512);
 * ```
 */
export const countAtShare: Method<Record<"share" | "bits", MethodInput>> = method({
  id: "count-at-share",
  title: "Count of a signal",
  inputs: {
    share: { unit: "-", min: 0, max: 1, says: "Signal over supply", symbol: "s" },
    bits: BITS,
  },
  output: {
    name: "count",
    unit: "-",
    min: 0,
    max: 2 ** 24,
    says: "Number of the converter, before it is cut to a whole one",
    symbol: "N",
  },
  formula: "share * 2^bits",
  source: CONVERTER,
  compute: ({ share, bits }) => share * 2 ** bits,
});
