/** Where one bore follows another. */
import { suddenContraction, suddenExpansion } from "@/lib/flow/mod.ts";

/** Bores nearer than this count as one [-]: within what hose and fittings of a size differ by. */
const SAME = 0.02;

/**
 * Loss coefficient of a sudden step of bore, on the dynamic pressure in the smaller one.
 *
 * @param before_m Bore before the step [m].
 * @param after_m Bore after it [m].
 * @returns The coefficient; nought where the bores are as good as the same [-].
 * @throws {InputError} When a bore is out of range.
 *
 * @example Out of 8 mm into 16 mm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(stepLoss(8e-3, 16e-3), 0.5625);
 * assertEquals(stepLoss(8e-3, 8e-3), 0);
 * ```
 */
export function stepLoss(before_m: number, after_m: number): number {
  const ratio = Math.min(before_m, after_m) / Math.max(before_m, after_m);
  if (ratio > 1 - SAME) return 0;
  return before_m < after_m
    ? suddenExpansion.compute({ boreRatio: ratio })
    : suddenContraction.compute({ boreRatio: ratio });
}
