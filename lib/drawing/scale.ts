/** Scales of ISO 5455. */

/** Standard scales, from the largest to the smallest. */
export const SCALES: readonly number[] = [10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50];

/**
 * The largest standard scale at which something fits, no larger than a wish.
 *
 * @param fits Whether it fits at a scale.
 * @param most The largest scale wanted.
 * @returns The scale; the smallest there is when it fits at none.
 *
 * @example 380 mm in a space of 360 mm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(largestScale((scale) => 380 * scale <= 360, 1), 1 / 2);
 * ```
 */
export function largestScale(fits: (scale: number) => boolean, most: number): number {
  return SCALES.find((scale) => scale <= most && fits(scale)) ?? SCALES.at(-1) ?? 1;
}

/** A scale as it is written: `1:2`. */
export function scaleWords(scale: number): string {
  return scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
}
