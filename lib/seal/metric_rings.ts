/** Rings in metric sizes, as far as rails use them. */
import { type Ring, ringOfSize } from "./rings.ts";

/**
 * Inside diameters [mm] by section [mm]. Source: ISO 3601-1, as GB/T 3452.1 takes it over
 * and a public list prints it. The thicker sections begin where the standard lets them:
 * 3.55 mm at 18 mm and 5.3 mm at 31.5 mm. What injectors carry in 3.5 mm is an inch size
 * or a size of its own, for which there is {@linkcode ringOfSize}.
 */
const SIZES: readonly (readonly [section_mm: number, insides_mm: readonly number[]])[] = [
  // deno-fmt-ignore
  [1.8, [4, 4.5, 4.87, 5, 5.15, 5.3, 5.6, 6, 6.3, 6.7, 6.9, 7.1, 7.5, 8, 8.5, 8.75, 9, 9.5, 10,
    10.6, 11.2, 11.8, 12.5, 13.2, 14, 15, 16, 17, 18, 19, 20, 22.4, 23.6, 25]],
  // deno-fmt-ignore
  [2.65, [7.1, 7.5, 8, 8.5, 8.75, 9, 9.5, 10, 10.6, 11.2, 11.8, 12.5, 13.2, 14, 15, 16, 17, 18,
    19, 20, 22.4, 23.6, 25]],
  [3.55, [18, 19, 20, 22.4, 23.6, 25, 25.8, 26.5, 28, 30]],
  [5.3, [31.5, 32.5, 33.5, 34.5, 35.5, 36.5, 37.5, 38.7, 40]],
];

/** Metric rings, with the tolerances of class B. */
export const METRIC_RINGS: readonly Ring[] = SIZES.flatMap(([section_mm, insides_mm]) =>
  insides_mm.map((inside_mm): Ring => ({
    ...ringOfSize(inside_mm / 1e3, section_mm / 1e3),
    source: "ISO 3601-1, sizes as a public list of GB/T 3452.1 has them; tolerances of class B",
    provenance: "read-from-source",
  }))
);

/**
 * Finds a metric ring by its size.
 *
 * @param name As `8 x 2.65`.
 * @returns The ring, or undefined when the table has none of that size.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(metricRing("8 x 2.65")?.section.nominal_m, 2.65e-3);
 * assertEquals(metricRing("8 x 3.55"), undefined);
 * ```
 */
export function metricRing(name: string): Ring | undefined {
  return METRIC_RINGS.find((ring) => ring.name === name);
}
