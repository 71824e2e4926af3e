/** Lengths as sentences of this room have them. */

/** Writes a length as the reader wants it. */
export type SayLength = (length_m: number) => string;

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

/**
 * A drill by the size that stands on it: a drill of whole tenths of a millimetre is bought by
 * them, whatever the plan is written in.
 *
 * @param diameter_m The diameter [m].
 * @param say Writes a length as the reader wants it.
 * @returns The text.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const inches = (length_m: number): string => `${(length_m / 0.0254).toFixed(3)} in`;
 *
 * assertEquals(drillSize(0.009, millimetres), "9 mm");
 * assertEquals(drillSize(0.009, inches), "9 mm (0.354 in)");
 * assertEquals(drillSize(0.332 * 0.0254, inches), "0.332 in");
 * ```
 */
export function drillSize(diameter_m: number, say: SayLength): string {
  const said = say(diameter_m);
  const tenths = diameter_m * 10_000;
  const isMetric = Math.abs(tenths - Math.round(tenths)) < 1e-6;
  return isMetric && !said.endsWith(" mm") ? `${millimetres(diameter_m)} (${said})` : said;
}
