/** The parts of a gland with their limits, and all corners of those limits. */
import { InputError, type Limit, requireWithin } from "@/lib/basics/mod.ts";
import { BORE, GROOVE, INSIDE, LAND, SECTION, STRETCH, WIDTH } from "./limits.ts";
import type { Size } from "./size.ts";

/** Bore, part and ring of a gland. */
export interface OringGlandSpec {
  /** Bore that the ring seals in. */
  readonly bore: Size;
  /** Diameter of the groove's bottom. */
  readonly groove: Size;
  /** Width of the groove. */
  readonly grooveWidth: Size;
  /** Diameter of the part beside the groove, where it may touch the bore. */
  readonly land: Size;
  /** Inside diameter of the free ring. */
  readonly insideDiameter: Size;
  /** Section of the free ring. */
  readonly section: Size;
}

/** One set of dimensions within the limits [m]. */
export interface Corner {
  /** Bore. */
  readonly bore: number;
  /** Groove's bottom. */
  readonly groove: number;
  /** Part beside the groove. */
  readonly land: number;
  /** Inside of the free ring. */
  readonly insideDiameter: number;
  /** Section of the free ring. */
  readonly section: number;
}

const LIMITS: Readonly<Record<keyof OringGlandSpec, Limit>> = {
  bore: BORE,
  groove: GROOVE,
  grooveWidth: WIDTH,
  land: LAND,
  insideDiameter: INSIDE,
  section: SECTION,
};

/** Least depth that still is a gland [m]. */
const LEAST_DEPTH_m = 1e-4;

/**
 * Gives the gland as drawn, as one corner.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { sizeOf } from "./size.ts";
 *
 * const any = sizeOf(8e-3, 0, 1e-5);
 * const spec = { bore: any, groove: any, grooveWidth: any, land: any, insideDiameter: any, section: any };
 *
 * assertEquals(drawnOf(spec).groove, 8e-3);
 * ```
 */
export function drawnOf(spec: OringGlandSpec): Corner {
  return {
    bore: spec.bore.nominal_m,
    groove: spec.groove.nominal_m,
    land: spec.land.nominal_m,
    insideDiameter: spec.insideDiameter.nominal_m,
    section: spec.section.nominal_m,
  };
}

/**
 * Gives the sixteen corners of bore, groove, inside and section. The part's largest
 * diameter is at its least in all: then the clearance is widest and nothing gets better.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { sizeOf } from "./size.ts";
 *
 * const any = sizeOf(8e-3, 0, 1e-5);
 * const spec = { bore: any, groove: any, grooveWidth: any, land: any, insideDiameter: any, section: any };
 *
 * assertEquals(cornersOf(spec).length, 16);
 * ```
 */
export function cornersOf(spec: OringGlandSpec): Corner[] {
  const land = spec.land.least_m;
  return ends(spec.bore).flatMap((bore) =>
    ends(spec.groove).flatMap((groove) =>
      ends(spec.insideDiameter).flatMap((insideDiameter) =>
        ends(spec.section).map((section) => ({ bore, groove, land, insideDiameter, section }))
      )
    )
  );
}

const ends = ({ least_m, most_m }: Size): number[] => [least_m, most_m];

/**
 * Throws unless a gland can be computed: limits in order and within the methods' ranges,
 * groove in part, part in bore, and a ring that goes on.
 *
 * @throws {InputError} When it can't.
 *
 * @example
 * ```ts
 * import { assertThrows } from "@std/assert";
 * import { sizeOf } from "./size.ts";
 *
 * const any = sizeOf(8e-3, 0, 1e-5);
 * const spec = { bore: any, groove: any, grooveWidth: any, land: any, insideDiameter: any, section: any };
 *
 * assertThrows(() => requireGland(spec), RangeError, "land must be");
 * ```
 */
export function requireGland(spec: OringGlandSpec): void {
  const what = "gland";
  for (const field of Object.keys(LIMITS) as (keyof OringGlandSpec)[]) {
    const { least_m, nominal_m, most_m } = spec[field];
    if (!(least_m <= nominal_m && nominal_m <= most_m)) {
      const rule = "must have its nominal size between its limits";
      throw new InputError(what, field, rule, [least_m, nominal_m, most_m].join(", "));
    }
    requireWithin(what, { [field]: least_m }, { [field]: LIMITS[field] });
    requireWithin(what, { [field]: most_m }, { [field]: LIMITS[field] });
  }
  const { bore, groove, land, insideDiameter } = spec;
  const room: Limit = {
    unit: "m",
    min: groove.most_m + 2 * LEAST_DEPTH_m,
    max: bore.least_m,
  };
  requireWithin(what, { land: land.most_m }, { land: room });
  requireWithin(what, { land: land.least_m }, { land: room });
  const most = groove.most_m / insideDiameter.least_m - 1;
  const least = groove.least_m / insideDiameter.most_m - 1;
  requireWithin(what, { stretch: most }, { stretch: STRETCH });
  requireWithin(what, { stretch: least }, { stretch: STRETCH });
}
