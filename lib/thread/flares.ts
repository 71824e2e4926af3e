/** 37 degree flare fittings, and the 45 degree ones that they must not meet. */

/** Sizes of flare fittings, tube in sixteenths of an inch. */
export type FlareDash = "-2" | "-3" | "-4" | "-5" | "-6" | "-8" | "-10" | "-12" | "-16";

/** A size of flare fitting. */
export interface FlareSize {
  /** Outside diameter of the tube [m]. */
  readonly tube_m: number;
  /** Thread of the 37 degree fitting. */
  readonly thread: string;
  /** Thread of the 45 degree fitting for the same tube; undefined where the standard has none. */
  readonly thread45: string | undefined;
  /** Bore through the 37 degree connector [m]; makers differ by some tenths of a millimetre. */
  readonly bore_m: number;
}

const SIXTEENTH_m = 0.0254 / 16;

const size = (
  sixteenths: number,
  thread: string,
  thread45: string | undefined,
  boreInches: number,
): FlareSize => ({
  tube_m: sixteenths * SIXTEENTH_m,
  thread,
  thread45,
  bore_m: boreInches * 0.0254,
});

/**
 * Flare fittings by size. The bore through the fitting is mostly narrower than the tube's, so it
 * sets the flow.
 *
 * Source: threads SAE J514 / ISO 8434-2 (37 degrees) and SAE J512 (45 degrees); bores SAE J514,
 * drill through the connector; all from memory.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * assertEquals(FLARE_SIZES["-6"].thread, "9/16-18");
 * assertAlmostEquals(FLARE_SIZES["-6"].tube_m, 0.009525, 1e-12);
 * ```
 */
export const FLARE_SIZES: Readonly<Record<FlareDash, FlareSize>> = {
  "-2": size(2, "5/16-24", "5/16-24", 0.062),
  "-3": size(3, "3/8-24", "3/8-24", 0.125),
  "-4": size(4, "7/16-20", "7/16-20", 0.172),
  "-5": size(5, "1/2-20", "1/2-20", 0.234),
  "-6": size(6, "9/16-18", "5/8-18", 0.297),
  "-8": size(8, "3/4-16", "3/4-16", 0.391),
  "-10": size(10, "7/8-14", "7/8-14", 0.484),
  "-12": size(12, "1 1/16-12", "1 1/16-14", 0.609),
  "-16": size(16, "1 5/16-12", undefined, 0.844),
};

/** Kinds of flare by the angle of the cone from its axis. */
export type FlareKind = "37 degrees" | "45 degrees";

/** A kind of flare. */
export interface Flare {
  /** The standard. */
  readonly standard: string;
  /** Angle of the whole cone [rad]. */
  readonly included_rad: number;
}

const DEGREE = Math.PI / 180;

/**
 * Kinds of flare. Source: SAE J514, SAE J512; from memory.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(FLARES["37 degrees"].included_rad < FLARES["45 degrees"].included_rad);
 * ```
 */
export const FLARES: Readonly<Record<FlareKind, Flare>> = {
  "37 degrees": { standard: "SAE J514 / ISO 8434-2", included_rad: 74 * DEGREE },
  "45 degrees": { standard: "SAE J512", included_rad: 90 * DEGREE },
};

/**
 * Tells whether two flares seal on each other: only of one angle, as cones of two angles touch
 * in a line at one edge.
 *
 * @param one The one.
 * @param other The other.
 * @returns Whether they do.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(flaresMate("37 degrees", "37 degrees"), true);
 * assertEquals(flaresMate("37 degrees", "45 degrees"), false);
 * ```
 */
export function flaresMate(one: FlareKind, other: FlareKind): boolean {
  return FLARES[one].included_rad === FLARES[other].included_rad;
}

/**
 * Tells whether nuts of both angles screw on in a size, so that only a gauge on the cone tells a
 * wrong part from a right one.
 *
 * @param dash The size.
 * @returns Whether they do.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(wrongFlareScrewsOn("-8"), true);
 * assertEquals(wrongFlareScrewsOn("-6"), false);
 * ```
 */
export function wrongFlareScrewsOn(dash: FlareDash): boolean {
  const { thread, thread45 } = FLARE_SIZES[dash];
  return thread === thread45;
}
