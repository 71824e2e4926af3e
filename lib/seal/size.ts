/** A dimension with its limits of size. */

/** A dimension as drawn and as it may come out. */
export interface Size {
  /** Smallest [m]. */
  readonly least_m: number;
  /** As drawn [m]. */
  readonly nominal_m: number;
  /** Largest [m]. */
  readonly most_m: number;
}

/**
 * Makes a size of a nominal dimension and its deviations.
 *
 * @param nominal_m As drawn [m].
 * @param lower_m Lower deviation, with its sign [m].
 * @param upper_m Upper deviation, with its sign [m].
 * @returns The size.
 *
 * @example 14 H9
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(sizeOf(0.014, 0, 43e-6).most_m, 0.014043);
 * ```
 */
export function sizeOf(nominal_m: number, lower_m: number, upper_m: number): Size {
  return { least_m: nominal_m + lower_m, nominal_m, most_m: nominal_m + upper_m };
}
