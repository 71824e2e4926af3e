/** Inner diameters of fuel hose by dash size: three families say it differently. */

/** What a hose's dash size tells. */
export type HoseFamily = "inside" | "tube" | "motorsport";

/** A dash size: sixteenths of an inch, of what depends on the family. */
export type DashSize = "-4" | "-6" | "-8" | "-10" | "-12" | "-16";

/** The hoses of one family. */
export interface HoseSizes {
  /** What the dash size tells. */
  readonly says: string;
  /** Where the diameters come from. */
  readonly source: string;
  /** Inner diameters [m], of the sizes that there are. */
  readonly bores_m: Readonly<Partial<Record<DashSize, number>>>;
}

const SIXTEENTH_m = 0.0254 / 16;

/** The families. A measured bore is better than any of them. */
export const HOSES: Readonly<Record<HoseFamily, HoseSizes>> = {
  inside: {
    says: "Inside diameter in sixteenths of an inch: most SAE J517 hose",
    source: "SAE J517: nominal inside diameter",
    bores_m: {
      "-4": 4 * SIXTEENTH_m,
      "-6": 6 * SIXTEENTH_m,
      "-8": 8 * SIXTEENTH_m,
      "-10": 10 * SIXTEENTH_m,
      "-12": 12 * SIXTEENTH_m,
      "-16": 16 * SIXTEENTH_m,
    },
  },
  tube: {
    says: "Size of the tube it replaces: 100R5, 100R14 and other smooth-bore hose",
    source: "SAE J517, 100R5 and 100R14; -10 from memory",
    bores_m: {
      "-4": 4.8e-3,
      "-6": 7.9e-3,
      "-8": 10.3e-3,
      "-10": 12.7e-3,
      "-12": 15.9e-3,
      "-16": 22.2e-3,
    },
  },
  motorsport: {
    says: "Rubber-lined braided fuel hose of the motorsport trade",
    source: "common practice, no source; from memory",
    bores_m: { "-4": 5.6e-3, "-6": 8.7e-3, "-8": 11.1e-3, "-10": 14.3e-3, "-12": 17.5e-3 },
  },
};

/**
 * Inner diameter of a hose.
 *
 * @param family What its dash size tells.
 * @param dash Its dash size.
 * @returns The inner diameter [m], or undefined when the family has no such size.
 *
 * @example One dash size, three bores
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * assertAlmostEquals(hoseBore("inside", "-6") ?? 0, 9.525e-3, 1e-9);
 * assertEquals(hoseBore("tube", "-6"), 7.9e-3);
 * assertEquals(hoseBore("motorsport", "-6"), 8.7e-3);
 * assertEquals(hoseBore("motorsport", "-16"), undefined);
 * ```
 */
export function hoseBore(family: HoseFamily, dash: DashSize): number | undefined {
  return HOSES[family].bores_m[dash];
}
