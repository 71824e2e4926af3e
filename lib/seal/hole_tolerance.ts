/** Limits of a hole by its fit. */
import { requireWithin } from "@/lib/basics/mod.ts";
import { type Size, sizeOf } from "./size.ts";

/** Fits of a hole that begins at its nominal size. */
export type HoleGrade = "H7" | "H8" | "H9" | "H11";

/** Upper deviations [um] of holes up to a nominal size [mm]; the lower ones are nought. */
type Row = readonly [upTo_mm: number, H7: number, H8: number, H9: number, H11: number];

/** Source: ISO 286-2 (H) and ISO 286-1, table 1, as public copies print them alike. */
const ROWS: readonly Row[] = [
  [3, 10, 14, 25, 60],
  [6, 12, 18, 30, 75],
  [10, 15, 22, 36, 90],
  [18, 18, 27, 43, 110],
  [30, 21, 33, 52, 130],
  [50, 25, 39, 62, 160],
];

const COLUMN: Readonly<Record<HoleGrade, 1 | 2 | 3 | 4>> = { H7: 1, H8: 2, H9: 3, H11: 4 };

/** The step that ends at 3 mm begins above 1 mm; the last one ends at 50 mm. */
const NOMINAL = { nominal_m: { unit: "m", min: 0.001, open: true, max: 0.05 } } as const;

/**
 * Limits of size of a hole.
 *
 * @param grade The fit, as H9.
 * @param nominal_m Nominal diameter [m], above 1 mm and up to 50 mm.
 * @returns Its limits.
 * @throws {InputError} When the diameter is outside the table.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(holeTolerance("H9", 14e-3).most_m, 14.043e-3, 1e-12);
 * ```
 */
export function holeTolerance(grade: HoleGrade, nominal_m: number): Size {
  requireWithin("hole's tolerance", { nominal_m }, NOMINAL);
  // A size typed in millimetres or inches may come out a hair above its step.
  const nominal_mm = nominal_m * 1e3 - 1e-9;
  const row = ROWS.find(([upTo_mm]) => nominal_mm <= upTo_mm) as Row;
  return sizeOf(nominal_m, 0, row[COLUMN[grade]] * 1e-6);
}
