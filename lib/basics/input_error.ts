/** What a calculation says when a number it was given can't be used. */

/**
 * A number that a calculation can't take, with the name of the field it came in by.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const error = new InputError("pressure drop", "length_m", "must be > 0 m", -1);
 *
 * assertEquals(error.field, "length_m");
 * assertEquals(
 *   error.message,
 *   "Cannot compute the pressure drop, as length_m must be > 0 m: current value is -1",
 * );
 * ```
 */
export class InputError extends RangeError {
  /** The input that is wrong, by the name the calculation gives it. */
  readonly field: string;

  /**
   * Makes the error and its message.
   *
   * @param what What was to be computed, as a noun.
   * @param field The input that is wrong.
   * @param rule What it must be, beginning with "must".
   * @param value What it is.
   */
  constructor(what: string, field: string, rule: string, value: unknown) {
    super(`Cannot compute the ${what}, as ${field} ${rule}: current value is ${value}`);
    this.name = "InputError";
    this.field = field;
  }
}
