/** Lengths as figures on a drawing. */

/** Writes a length [mm] as the figure that stands on the drawing. */
export type Say = (length: number) => string;

/**
 * How figures are written: hundredths of a millimetre or thousandths of an inch, as far as they
 * aren't nought. The unit stands in the title block once.
 *
 * @param system Metric or inch.
 * @returns The writer.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(sayIn("metric")(42.5), "42.5");
 * assertEquals(sayIn("metric")(-0.001), "0");
 * assertEquals(sayIn("inch")(12.7), "0.5");
 * ```
 */
export function sayIn(system: "metric" | "inch"): Say {
  const [unit, decimals] = system === "metric" ? [1, 2] : [25.4, 3];
  return (length) => {
    const rounded = Number((length / unit).toFixed(decimals));
    return String(rounded === 0 ? 0 : rounded).replace("-", "−");
  };
}
