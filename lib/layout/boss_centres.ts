/** Where a manifold's bosses are, as measured. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Working } from "@/lib/method/mod.ts";
import { boreByEdges, centreByEdges, centreByPin } from "./boss_readings.ts";

/** Readings at one boss, all from one datum. */
export type BossReading =
  | {
    /** Reading to the bore's near edge [m]. */
    readonly near_m: number;
    /** Reading to its far edge [m]. */
    readonly far_m: number;
  }
  | {
    /** Reading to the far side of a pin in the bore [m]. */
    readonly over_m: number;
    /** Diameter of the pin [m]. */
    readonly pin_m: number;
  };

/** A boss as measured. */
export interface BossCentre {
  /** Its centre from the datum [m]. */
  readonly centre_m: number;
  /** Its bore [m]; undefined when measured by a pin. */
  readonly bore_m?: number;
  /** How far it lies beyond its place in an equal pitch [m]. */
  readonly residual_m: number;
}

/** All bosses of a manifold. */
export interface BossCentres {
  /** Each boss, in order. */
  readonly bosses: readonly BossCentre[];
  /** The equal pitch that fits them best, by least squares [m]; undefined for one boss alone. */
  readonly pitch_m?: number;
  /** Where that pitch has the first boss [m]. */
  readonly first_m: number;
}

/**
 * Finds centres and bores of bosses from readings, and how far they are from an equal pitch.
 *
 * @param working Takes the record.
 * @param section What the results stand under in the record.
 * @param readings At each boss, in order along the manifold.
 * @returns Centres, bores, residuals and pitch.
 * @throws {InputError} When there is no reading, an edge isn't beyond the other, a boss isn't
 * beyond the one before, or a number lies outside its range.
 *
 * @example Three bosses, the middle one 0.3 mm off
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const { bosses, pitch_m } = bossCentres(new Working(), "bosses", [
 *   { near_m: 0.0133, far_m: 0.0267 },
 *   { over_m: 0.117, pin_m: 0.0134 },
 *   { near_m: 0.1933, far_m: 0.2067 },
 * ]);
 *
 * assertAlmostEquals(pitch_m ?? 0, 0.09, 1e-12);
 * assertAlmostEquals(bosses[0]?.bore_m ?? 0, 0.0134, 1e-12);
 * assertAlmostEquals(bosses[1]?.residual_m ?? 0, 0.0002, 1e-12);
 * ```
 */
export function bossCentres(
  working: Working,
  section: string,
  readings: readonly BossReading[],
): BossCentres {
  if (readings.length === 0) {
    throw new InputError("boss centres", "readings", "must have one boss at least", "none");
  }
  const read = readings.map((reading, i) => {
    const key = (name: string) => `${section}.bosses.${i}.${name}`;
    if ("pin_m" in reading) {
      const { over_m: over, pin_m: pin } = reading;
      return { centre_m: working.run(key("centre_m"), centreByPin, { over, pin }) };
    }
    const edges = { near: reading.near_m, far: reading.far_m };
    if (!(edges.far > edges.near)) {
      throw new InputError("boss centres", "far_m", "must lie beyond near_m", edges.far);
    }
    return {
      centre_m: working.run(key("centre_m"), centreByEdges, edges),
      bore_m: working.run(key("bore_m"), boreByEdges, edges),
    };
  });
  const centres = read.map(({ centre_m }) => centre_m);
  requireRising(centres);
  const { first_m, pitch_m } = equalPitch(centres);
  return {
    bosses: read.map((boss, i) => ({
      ...boss,
      residual_m: boss.centre_m - first_m - i * (pitch_m ?? 0),
    })),
    first_m,
    ...(pitch_m === undefined ? {} : { pitch_m }),
  };
}

function requireRising(centres: readonly number[]): void {
  centres.slice(1).forEach((centre_m, i) => {
    const before_m = centres[i] as number;
    if (centre_m > before_m) return;
    const rule = `must lie beyond the boss before it, at ${before_m} m`;
    throw new InputError("boss centres", "centre_m", rule, centre_m);
  });
}

/** The straight line through centres by number, by least squares. */
function equalPitch(
  centres: readonly number[],
): { readonly first_m: number; readonly pitch_m?: number } {
  const count = centres.length;
  const mean_m = centres.reduce((sum, c) => sum + c, 0) / count;
  if (count === 1) return { first_m: mean_m };
  const middle = (count - 1) / 2;
  const squares = centres.reduce((sum, _, i) => sum + (i - middle) ** 2, 0);
  const products = centres.reduce((sum, c, i) => sum + (i - middle) * (c - mean_m), 0);
  const pitch_m = products / squares;
  return { first_m: mean_m - middle * pitch_m, pitch_m };
}
