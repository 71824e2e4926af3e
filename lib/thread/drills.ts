/** The drills a workshop has: metric by 0.1 mm, fractions, numbers and letters. */

/** The four sets of drills. */
export type DrillSet = "metric" | "fractional" | "number" | "letter";

/** One drill. */
export interface Drill {
  /** As stamped on it: `9.0 mm`, `23/64 in`, `#7`, `T`. */
  readonly name: string;
  /** Diameter [m]. */
  readonly diameter_m: number;
}

/** Diameters of the number drills [in], no. 1 first. */
const NUMBERS = [
  [0.2280, 0.2210, 0.2130, 0.2090, 0.2055, 0.2040, 0.2010, 0.1990, 0.1960, 0.1935],
  [0.1910, 0.1890, 0.1850, 0.1820, 0.1800, 0.1770, 0.1730, 0.1695, 0.1660, 0.1610],
  [0.1590, 0.1570, 0.1540, 0.1520, 0.1495, 0.1470, 0.1440, 0.1405, 0.1360, 0.1285],
  [0.1200, 0.1160, 0.1130, 0.1110, 0.1100, 0.1065, 0.1040, 0.1015, 0.0995, 0.0980],
  [0.0960, 0.0935, 0.0890, 0.0860, 0.0820, 0.0810, 0.0785, 0.0760, 0.0730, 0.0700],
  [0.0670, 0.0635, 0.0595, 0.0550, 0.0520, 0.0465, 0.0430, 0.0420, 0.0410, 0.0400],
  [0.0390, 0.0380, 0.0370, 0.0360, 0.0350, 0.0330, 0.0320, 0.0310, 0.0292, 0.0280],
  [0.0260, 0.0250, 0.0240, 0.0225, 0.0210, 0.0200, 0.0180, 0.0160, 0.0145, 0.0135],
].flat();

/** Diameters of the letter drills [in], A first. */
const LETTERS = [
  [0.234, 0.238, 0.242, 0.246, 0.250, 0.257, 0.261, 0.266, 0.272, 0.277, 0.281, 0.290, 0.295],
  [0.302, 0.316, 0.323, 0.332, 0.339, 0.348, 0.358, 0.368, 0.377, 0.386, 0.397, 0.404, 0.413],
].flat();

function fraction(sixtyFourths: number): string {
  let over = sixtyFourths;
  let under = 64;
  while (over % 2 === 0 && under > 1) {
    over /= 2;
    under /= 2;
  }
  return under === 1 ? `${over} in` : `${over}/${under} in`;
}

/**
 * The drills of each set, smallest first: metric 0.5 to 25 mm by 0.1 mm, fractions 1/64 to
 * 1 inch, numbers 80 to 1, letters A to Z.
 *
 * Source: ASME B94.11M for numbers and letters, typed from memory and held against a
 * published list.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(DRILLS.letter.at(-1)?.name, "Z");
 * ```
 */
export const DRILLS: Readonly<Record<DrillSet, readonly Drill[]>> = {
  metric: Array.from({ length: 246 }, (_, i) => {
    const tenths = i + 5;
    return { name: `${(tenths / 10).toFixed(1)} mm`, diameter_m: tenths / 10_000 };
  }),
  fractional: Array.from({ length: 64 }, (_, i) => ({
    name: fraction(i + 1),
    diameter_m: (i + 1) / 64 * 0.0254,
  })),
  number: NUMBERS.map((inches, i) => ({ name: `#${i + 1}`, diameter_m: inches * 0.0254 }))
    .reverse(),
  letter: LETTERS.map((inches, i) => ({
    name: String.fromCharCode(65 + i),
    diameter_m: inches * 0.0254,
  })),
};

const INCH_DRILLS: readonly Drill[] = [...DRILLS.fractional, ...DRILLS.number, ...DRILLS.letter]
  .toSorted((a, b) => a.diameter_m - b.diameter_m);

/** A drill and how far it is from the size wanted. */
export interface NearDrill extends Drill {
  /** Its diameter less the one wanted [m]. */
  readonly error_m: number;
}

/**
 * The drill of a list that is nearest to a diameter.
 *
 * @param drills The list, of at least one drill.
 * @param wanted_m The diameter [m].
 * @returns The drill with its signed error.
 * @throws {RangeError} When the list is empty.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(nearestDrill(DRILLS.letter, 0.009).name, "T");
 * ```
 */
export function nearestDrill(drills: readonly Drill[], wanted_m: number): NearDrill {
  let best: Drill | undefined;
  for (const drill of drills) {
    if (
      best === undefined ||
      Math.abs(drill.diameter_m - wanted_m) < Math.abs(best.diameter_m - wanted_m)
    ) best = drill;
  }
  if (best === undefined) throw new RangeError("nearest drill: there are no drills to choose from");
  return { ...best, error_m: best.diameter_m - wanted_m };
}

/**
 * The nearest drill of each set.
 *
 * @param wanted_m The diameter [m].
 * @returns A drill of each set, with its signed error.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(nearestDrills(0.009).fractional.name, "23/64 in");
 * ```
 */
export function nearestDrills(wanted_m: number): Readonly<Record<DrillSet, NearDrill>> {
  return {
    metric: nearestDrill(DRILLS.metric, wanted_m),
    fractional: nearestDrill(DRILLS.fractional, wanted_m),
    number: nearestDrill(DRILLS.number, wanted_m),
    letter: nearestDrill(DRILLS.letter, wanted_m),
  };
}

/**
 * The nearest inch drill of any set: fraction, number or letter.
 *
 * @param wanted_m The diameter [m].
 * @returns The drill with its signed error.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(nearestInchDrill(0.005).name, "#9");
 * ```
 */
export function nearestInchDrill(wanted_m: number): NearDrill {
  return nearestDrill(INCH_DRILLS, wanted_m);
}

/**
 * The inch drills that stay inside the limits of a hole, smallest first. There may be none.
 *
 * @param min_m Smallest diameter allowed [m].
 * @param max_m Largest diameter allowed [m].
 * @returns The drills.
 *
 * @example In place of 9 mm for M10x1
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const names = inchDrillsWithin(8.917e-3, 9.153e-3).map(({ name }) => name);
 *
 * assertEquals(names, ["T", "23/64 in"]);
 * ```
 */
export function inchDrillsWithin(min_m: number, max_m: number): Drill[] {
  return INCH_DRILLS.filter(({ diameter_m }) => diameter_m >= min_m && diameter_m <= max_m);
}
