/** A ring as it is sold, and the tolerances of one that is no listed size. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { requireWithin } from "@/lib/basics/mod.ts";
import { INSIDE, SECTION } from "./limits.ts";
import { type Size, sizeOf } from "./size.ts";

/** A ring as it is sold. */
export interface Ring {
  /** Name of the size: `-203`, or `8 x 2.65`. */
  readonly name: string;
  /** Inside diameter. */
  readonly insideDiameter: Size;
  /** Section. */
  readonly section: Size;
  /** The standard, and where its numbers were found. */
  readonly source: string;
  /** How the inside diameter was come by. */
  readonly provenance: "read-from-source" | "from-memory";
}

/**
 * Tolerance [m] either way of the inside diameter of a ring for general use.
 *
 * Source: ISO 3601-1, class B, annex A; exponent from memory. A public copy prints 0.93
 * beside a table that only 0.95 gives.
 *
 * @throws {InputError} When the diameter is outside the range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(insideTolerance({ insideDiameter: 10e-3 }), 0.19e-3, 1e-5);
 * ```
 */
export const insideTolerance: Method<Record<"insideDiameter", MethodInput>> = method({
  id: "oring-inside-tolerance",
  title: "Tolerance of an O-ring's inside diameter",
  inputs: { insideDiameter: { ...INSIDE, max: 0.67 } },
  output: {
    name: "tolerance",
    unit: "m",
    min: 1e-4,
    max: 5e-3,
    says: "Tolerance either way",
    symbol: "t",
  },
  formula: "(0.11 + 0.009 * (1000 * insideDiameter)^0.95) / 1000",
  fit: true,
  source: "ISO 3601-1, class B, annex A",
  compute: ({ insideDiameter }) => (0.11 + 0.009 * (1000 * insideDiameter) ** 0.95) / 1000,
});

/** Tolerance either way of a section [mm] up to a section [mm]. Source: ISO 3601-1, class B. */
const SECTIONS: readonly (readonly [upTo_mm: number, tolerance_mm: number])[] = [
  [2.25, 0.08],
  [3.15, 0.09],
  [4.5, 0.1],
  [6.3, 0.13],
  [8.4, 0.15],
];

/**
 * Limits of a section for general use.
 *
 * @param section_m Section [m], 0.5 to 8.4 mm.
 * @returns Its limits.
 * @throws {InputError} When the section is outside the table.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sectionLimits(2.65e-3).least_m, 2.56e-3, 1e-12);
 * ```
 */
export function sectionLimits(section_m: number): Size {
  requireWithin("section's limits", { section_m }, { section_m: { ...SECTION, max: 8.4e-3 } });
  const section_mm = section_m * 1e3 - 1e-9;
  const [, tolerance_mm] = SECTIONS.find(([upTo_mm]) => section_mm <= upTo_mm) ?? [0, 0.15];
  return sizeOf(section_m, -tolerance_mm / 1e3, tolerance_mm / 1e3);
}

/**
 * Gives a ring of any size the tolerances of rings for general use: for a ring that was
 * measured, or whose maker states no tolerance.
 *
 * @param insideDiameter_m Inside diameter [m].
 * @param section_m Section [m].
 * @returns The ring.
 * @throws {InputError} When a dimension is outside the standard's tables.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(ringOfSize(7.52e-3, 3.53e-3).name, "7.52 x 3.53");
 * ```
 */
export function ringOfSize(insideDiameter_m: number, section_m: number): Ring {
  const tolerance = insideTolerance({ insideDiameter: insideDiameter_m });
  return {
    name: [insideDiameter_m, section_m].map((d) => `${Number((d * 1e3).toFixed(3))}`).join(" x "),
    insideDiameter: sizeOf(insideDiameter_m, -tolerance, tolerance),
    section: sectionLimits(section_m),
    source: "Size as given; tolerances of ISO 3601-1, class B",
    provenance: "from-memory",
  };
}
