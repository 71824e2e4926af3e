/** Validity ranges, written once and used by checks, forms and pages. */
import { InputError } from "./input_error.ts";

/** What one number may be. */
export interface Limit {
  /** Smallest value [in `unit`]. */
  readonly min: number;
  /** Largest value, itself allowed [in `unit`]. */
  readonly max: number;
  /** True when `min` itself is not allowed, as for a diameter. */
  readonly open?: boolean;
  /** SI unit of `min` and `max`; `-` when there is none. */
  readonly unit: string;
}

/** One {@linkcode Limit} for each number of an input. */
export type Limits<Input> = { readonly [Field in keyof Input]: Limit };

/**
 * Tells whether a value keeps to its limit. `NaN` never does.
 *
 * @param value The value, in the limit's unit.
 * @param limit The limit.
 * @returns True when the value is allowed.
 *
 * @example An open limit leaves its smallest value out
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const limit = { min: 0, open: true, max: 1, unit: "m" };
 *
 * assertEquals(isWithin(1, limit), true);
 * assertEquals(isWithin(0, limit), false);
 * assertEquals(isWithin(NaN, limit), false);
 * ```
 */
export function isWithin(value: number, limit: Limit): boolean {
  const aboveMin = limit.open ? value > limit.min : value >= limit.min;
  return aboveMin && value <= limit.max;
}

/**
 * Throws unless every number of an input keeps to its limit.
 *
 * @param what What is being computed, as a noun, for the message.
 * @param input The numbers to check.
 * @param limits What each may be.
 * @throws {InputError} At the first number that does not.
 *
 * @example
 * ```ts
 * import { assertThrows } from "@std/assert";
 *
 * const limits = { length_m: { min: 0, open: true, max: 50, unit: "m" } };
 *
 * requireWithin("pressure drop", { length_m: 3 }, limits);
 * assertThrows(
 *   () => requireWithin("pressure drop", { length_m: 0 }, limits),
 *   RangeError,
 *   "length_m must be > 0 and <= 50 m",
 * );
 * ```
 */
export function requireWithin<Input extends object>(
  what: string,
  input: Input,
  limits: Limits<Input>,
): void {
  for (const field in limits) {
    const value = input[field] as number;
    const limit = limits[field];
    if (!isWithin(value, limit)) throw new InputError(what, field, ruleOf(limit), value);
  }
}

/** A limit in words, as an error message needs it. */
function ruleOf(limit: Limit): string {
  const unit = limit.unit === "-" ? "" : ` ${limit.unit}`;
  return `must be ${limit.open ? ">" : ">="} ${limit.min} and <= ${limit.max}${unit}`;
}
