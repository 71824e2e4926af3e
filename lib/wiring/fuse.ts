/** The fuse of the pump: above what the pump draws, below what the wire bears. */
import { requireWithin } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { CURRENT } from "./limits.ts";

/**
 * Fuse over lasting current, at least [-]: a fuse loaded higher grows old, and opens on a
 * hot day. Source: NFPA 70 section 210.20(A), from memory; common practice in vehicles.
 */
export const FUSE_FACTOR = 1.25;

/** Ratings of blade fuses [A], lowest first. Source: ISO 8820-3 and common practice, from memory. */
export const BLADE_FUSES_A: readonly number[] = [3, 5, 7.5, 10, 15, 20, 25, 30, 40];

/**
 * Least rating [A] of a fuse for a current that lasts.
 *
 * Source: NFPA 70 section 210.20(A), from memory; common practice in vehicles.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(leastFuse({ current: 14, factor: FUSE_FACTOR }), 17.5, 1e-12);
 * ```
 */
export const leastFuse: Method<Record<"current" | "factor", MethodInput>> = method({
  id: "least-fuse",
  title: "Least rating of a fuse",
  inputs: {
    current: { ...CURRENT, says: "Current that lasts" },
    factor: { unit: "-", min: 1, max: 3, says: "Fuse over current, at least", symbol: "f" },
  },
  output: { name: "fuse", unit: "A", min: 0, max: 600, says: "Least rating", symbol: "I_f" },
  formula: "factor * current",
  source: "NFPA 70 section 210.20(A), from memory; common practice in vehicles",
  compute: ({ current, factor }) => factor * current,
});

/** A fuse that carries the pump's current. */
export interface Fuse {
  /** Its rating [A]. */
  readonly rating_A: number;
  /** Whether it opens before the wire bears too much: its rating is at most the wire's. */
  readonly protectsWire: boolean;
}

const WIRE_RATING = { wireRating_A: { unit: "A", min: 0, open: true, max: 1000 } };

/**
 * The smallest blade fuse that carries a current with {@linkcode FUSE_FACTOR} in hand.
 *
 * @param current_A What the pump draws at the most [A].
 * @param wireRating_A What the wire bears [A].
 * @returns The fuse, and whether the wire bears it; undefined when no blade fuse is that large.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(fuseFor(14, 23), { rating_A: 20, protectsWire: true });
 * assertEquals(fuseFor(14, 17.4), { rating_A: 20, protectsWire: false });
 * assertEquals(fuseFor(35, 40), undefined);
 * ```
 */
export function fuseFor(current_A: number, wireRating_A: number): Fuse | undefined {
  requireWithin("fuse", { wireRating_A }, WIRE_RATING);
  const least_A = leastFuse({ current: current_A, factor: FUSE_FACTOR });
  const rating_A = BLADE_FUSES_A.find((rating_A) => rating_A >= least_A);
  return rating_A === undefined ? undefined : { rating_A, protectsWire: rating_A <= wireRating_A };
}
