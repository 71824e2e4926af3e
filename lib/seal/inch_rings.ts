/** Rings in inch sizes, of the three sections that injectors and plugs use. */
import type { Ring } from "./rings.ts";
import { sizeOf } from "./size.ts";

const INCH_m = 0.0254;

/** One ring: dash number, inside diameter [in], its tolerance either way [in], whether read. */
type Row = readonly [dash: number, inside_in: number, tolerance_in: number, read: boolean];

/** Rings of one section. */
interface Series {
  readonly section_in: number;
  readonly tolerance_in: number;
  readonly rows: readonly Row[];
}

/**
 * Exact in inches. Within a series the inside steps by 1/16 in from each ring to the next,
 * rounded to a thousandth; -008 to -010 by half of that.
 *
 * A trap: public lists made by machine step evenly from a wrong beginning, so no row
 * counts as read that was seen in one such list only.
 */
const SERIES: readonly Series[] = [
  {
    section_in: 0.07,
    tolerance_in: 0.003,
    rows: [
      [8, 0.176, 0.005, true],
      [9, 0.208, 0.005, false],
      [10, 0.239, 0.005, true],
      [11, 0.301, 0.005, true],
      [12, 0.364, 0.005, true],
      [13, 0.426, 0.005, true],
      [14, 0.489, 0.005, true],
      [15, 0.551, 0.007, true],
      [16, 0.614, 0.009, true],
    ],
  },
  {
    section_in: 0.103,
    tolerance_in: 0.003,
    rows: [
      [108, 0.237, 0.005, false],
      [109, 0.299, 0.005, false],
      [110, 0.362, 0.005, true],
      [111, 0.424, 0.005, true],
      [112, 0.487, 0.005, true],
      [113, 0.549, 0.007, true],
      [114, 0.612, 0.009, true],
      [115, 0.674, 0.009, true],
      [116, 0.737, 0.009, true],
    ],
  },
  {
    section_in: 0.139,
    tolerance_in: 0.004,
    rows: [
      [201, 0.171, 0.005, true],
      [202, 0.234, 0.005, false],
      [203, 0.296, 0.005, false],
      [204, 0.359, 0.005, false],
      [205, 0.421, 0.005, false],
      [206, 0.484, 0.005, false],
      [207, 0.546, 0.007, false],
      [208, 0.609, 0.009, false],
      [209, 0.671, 0.009, false],
      [210, 0.734, 0.01, true],
    ],
  },
];

/**
 * Rings of SAE AS568, which ISO 3601-1 takes over as class A. Tolerances of the inside
 * from memory; of the sections read.
 */
export const INCH_RINGS: readonly Ring[] = SERIES.flatMap(({ section_in, tolerance_in, rows }) =>
  rows.map(([dash, inside_in, inside_tolerance_in, read]): Ring => ({
    name: `-${`${dash}`.padStart(3, "0")}`,
    insideDiameter: inInches(inside_in, inside_tolerance_in),
    section: inInches(section_in, tolerance_in),
    source: read
      ? "SAE AS568, as public size charts print it; tolerance of the inside from memory"
      : "SAE AS568, from memory, between rows that were read",
    provenance: read ? "read-from-source" : "from-memory",
  }))
);

function inInches(inches: number, tolerance: number) {
  return sizeOf(inches * INCH_m, -tolerance * INCH_m, tolerance * INCH_m);
}

/**
 * Finds an inch ring by its dash number.
 *
 * @param name As `-203`.
 * @returns The ring, or undefined when the table has none of that name.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(inchRing("-203")?.insideDiameter.nominal_m ?? 0, 7.518e-3, 1e-6);
 * ```
 */
export function inchRing(name: string): Ring | undefined {
  return INCH_RINGS.find((ring) => ring.name === name);
}
