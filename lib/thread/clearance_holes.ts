/** Holes that let a screw pass. */

/** Diameters of the clearance hole of a screw [m]. */
export interface ClearanceHole {
  /** Close fit. */
  readonly close_m: number;
  /** Medium fit. */
  readonly medium_m: number;
  /** Coarse fit. */
  readonly coarse_m: number;
}

const hole = (close: number, medium: number, coarse: number): ClearanceHole => ({
  close_m: close / 1000,
  medium_m: medium / 1000,
  coarse_m: coarse / 1000,
});

/** Screws that {@linkcode CLEARANCE_HOLES} knows. */
export type ClearanceScrew = "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12";

/**
 * Clearance holes by screw. Source: ISO 273, from memory.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(CLEARANCE_HOLES.M6.medium_m, 0.0066);
 * ```
 */
export const CLEARANCE_HOLES: Readonly<Record<ClearanceScrew, ClearanceHole>> = {
  M3: hole(3.2, 3.4, 3.6),
  M4: hole(4.3, 4.5, 4.8),
  M5: hole(5.3, 5.5, 5.8),
  M6: hole(6.4, 6.6, 7),
  M8: hole(8.4, 9, 10),
  M10: hole(10.5, 11, 12),
  M12: hole(13, 13.5, 14.5),
};
