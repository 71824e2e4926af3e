/** How far a dimension without a tolerance of its own may be off: ISO 2768-m. */
import { InputError } from "@/lib/basics/mod.ts";

/** Up to and including a length, plus and minus; both mm. */
const LENGTHS: readonly (readonly [upTo: number, plusMinus: number])[] = [
  [6, 0.1],
  [30, 0.2],
  [120, 0.3],
  [400, 0.5],
  [1000, 0.8],
  [2000, 1.2],
  [4000, 2],
];

/** Up to and including a length of the shorter side, plus and minus; mm and minutes of arc. */
const ANGLES: readonly (readonly [upTo: number, minutes: number])[] = [
  [10, 60],
  [50, 30],
  [120, 20],
  [400, 10],
  [4000, 5],
];

/** A length of a whole step of the table counts as the step, whatever its last bit. */
const SAME_mm = 1e-6;

function row<Row extends readonly [number, number]>(
  rows: readonly Row[],
  length_m: number,
): Row | undefined {
  return rows.find(([upTo]) => length_m * 1000 <= upTo + SAME_mm);
}

/**
 * Tolerance of a length that the drawing gives none [m], plus and minus.
 *
 * Source: ISO 2768-1:1989 table 1, class m (medium).
 *
 * @param length_m The length [m], 0.5 mm to 4 m; shorter ones need a tolerance of their own.
 * @returns Plus and minus this [m].
 * @throws {InputError} When the length lies outside the table.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(generalTolerance(0.095), 0.3e-3);
 * assertEquals(generalTolerance(0.285), 0.5e-3);
 * ```
 */
export function generalTolerance(length_m: number): number {
  const found = length_m * 1000 >= 0.5 - SAME_mm ? row(LENGTHS, length_m) : undefined;
  if (found === undefined) {
    const rule = "must be >= 0.0005 and <= 4 m";
    throw new InputError("general tolerance", "length_m", rule, length_m);
  }
  return found[1] / 1000;
}

/**
 * Tolerance of an angle that the drawing gives none [rad], plus and minus.
 *
 * Source: ISO 2768-1:1989 table 3, class m (medium), from memory.
 *
 * @param shortSide_m Length of the shorter side of the angle [m], to 4 m.
 * @returns Plus and minus this [rad].
 * @throws {InputError} When the length is not above nought or lies beyond the table.
 *
 * @example One degree up to 10 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(angleTolerance(0.01) / Math.PI * 180, 1, 1e-12);
 * ```
 */
export function angleTolerance(shortSide_m: number): number {
  const found = shortSide_m > 0 ? row(ANGLES, shortSide_m) : undefined;
  if (found === undefined) {
    const rule = "must be > 0 and <= 4 m";
    throw new InputError("general tolerance of an angle", "shortSide_m", rule, shortSide_m);
  }
  return found[1] / 60 / 180 * Math.PI;
}
