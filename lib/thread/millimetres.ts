/** Lengths as sentences of this room have them. */

/**
 * A length in millimetres, to a hundredth at most.
 *
 * @param length_m The length [m].
 * @returns The text.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(millimetres(0.009), "9 mm");
 * assertEquals(millimetres(8.917e-3), "8.92 mm");
 * ```
 */
export function millimetres(length_m: number): string {
  return `${Math.round(length_m * 100_000) / 100} mm`;
}
