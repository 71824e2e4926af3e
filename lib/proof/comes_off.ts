/** Which parts are taken off for the proof. */

/** What a part is called that is bolted to the rail but replaced by a plug for the proof. */
const TAKEN_OFF = /\b(?:regulator|damper|sensor|injector)s?$/i;

/**
 * Tells whether a part comes off for the proof with liquid, its port plugged:
 * regulator, damper, sensors and injectors. Their ratings hold for what runs,
 * not for what is proved.
 *
 * @param part What the part is called; its last word says what it is.
 * @returns True when it comes off.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(comesOff("fuel pressure regulator"), true);
 * assertEquals(comesOff("regulator hose"), false);
 * ```
 */
export function comesOff(part: string): boolean {
  return TAKEN_OFF.test(part.trim());
}
