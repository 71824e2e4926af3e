/** Which drills of a shop serve a thread, and what each leaves. */
import { type DrillSet, type NearDrill, nearestDrills } from "./drills.ts";
import { heightShareIso, heightShareUs, sharpHeight } from "./profile.ts";
import { threadOf } from "./thread_of.ts";

/** A drill for a thread. */
export interface DrillChoice extends NearDrill {
  /** Where it comes from: the standard's list, or a set of drills. */
  readonly set: "listed" | DrillSet;
  /** Thread height on the ISO base [-]. */
  readonly heightIso: number;
  /** Thread height on the US base [-]. */
  readonly heightUs: number;
  /** Whether it keeps to the limits of the hole's minor diameter. */
  readonly inside: boolean;
}

/**
 * What the two shares of thread height are shares of. Never print the one without its name: the
 * same drill has 92 % on the one and 77 % on the other.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(HEIGHT_BASES.iso !== HEIGHT_BASES.us);
 * ```
 */
export const HEIGHT_BASES: Readonly<Record<"iso" | "us", string>> = {
  iso: "of the ISO height, five eighths of the sharp triangle",
  us: "of the US full thread, three quarters of the sharp triangle",
};

const SETS = ["metric", "fractional", "number", "letter"] as const;

/**
 * The drills for a parallel thread: the standard's own first, then the nearest of each set, each
 * with its signed error, thread height on both bases, and whether the hole's limits allow it.
 *
 * A set may have none near: number drills end at 5.8 mm, letters at 10.5 mm.
 *
 * @param designation The thread, as the tables spell it: `M10x1`, `7/16-20`, `G 1/8`.
 * @returns Five choices: listed, metric, fractional, number, letter.
 * @throws {RangeError} When no table has the thread.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const choices = drillChoices("M10x1").map(({ name, inside }) => [name, inside]);
 *
 * assertEquals(choices, [
 *   ["9.0 mm", true],
 *   ["9.0 mm", true],
 *   ["23/64 in", true],
 *   ["#1", false],
 *   ["T", true],
 * ]);
 * ```
 */
export function drillChoices(designation: string): readonly DrillChoice[] {
  const thread = threadOf(designation);
  const { nominal_m: nominal, pitch_m: pitch, flank_rad: flank, hole } = thread;
  const { tappingDrill_m: diameter_m, tappingDrillName: name } = thread;
  const height = sharpHeight({ pitch, flank });
  const near = nearestDrills(diameter_m);
  const all: readonly (NearDrill & Pick<DrillChoice, "set">)[] = [
    { set: "listed", name, diameter_m, error_m: 0 },
    ...SETS.map((set) => ({ set, ...near[set] })),
  ];
  return all.map((drill) => {
    const of = { nominal, drill: drill.diameter_m, sharpHeight: height };
    return {
      ...drill,
      heightIso: heightShareIso(of),
      heightUs: heightShareUs(of),
      inside: drill.diameter_m >= hole.minorMin_m && drill.diameter_m <= hole.minorMax_m,
    };
  });
}
