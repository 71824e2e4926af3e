/** Rules of thumb for how deep a steel screw goes, and what the trade says of studs. */

/** How deep, in diameters of the screw. */
export interface EngagementRule {
  /** From, in diameters [-]. */
  readonly from: number;
  /** To, in diameters [-]. */
  readonly to: number;
}

/**
 * Engagement of a steel screw by what is tapped. Common practice, no source; the computed
 * engagement counts.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(ENGAGEMENT_RULES.aluminium, { from: 1.5, to: 2 });
 * ```
 */
export const ENGAGEMENT_RULES: Readonly<Record<"aluminium" | "brass" | "steel", EngagementRule>> = {
  aluminium: { from: 1.5, to: 2 },
  brass: { from: 1.5, to: 1.5 },
  steel: { from: 1, to: 1 },
};

/**
 * Thread that carries an M6 stud in aluminium [m]. Common practice, no source; the stripping
 * method comes to the same for a screw of class 8.8 in 6061-T6 at its least strength.
 */
export const M6_STUD_IN_ALUMINIUM_m = 0.010;

/** Something the trade says of fastening. */
export interface FasteningNote {
  /** Unique. */
  readonly id: "studs-outlast-screws" | "retighten";
  /** What it says. */
  readonly text: string;
  /** Where it comes from. */
  readonly source: string;
}

const PRACTICE = "Common practice, no source";

/** What to mind about screws and studs in soft metal. */
export const FASTENING_NOTES: readonly FasteningNote[] = [
  {
    id: "studs-outlast-screws",
    text:
      "A stud set once with threadlocker outlasts a screw that is often undone: the wear goes to the nut, not to the thread in the aluminium.",
    source: PRACTICE,
  },
  {
    id: "retighten",
    text:
      "Check the torque again after the first warm-up: fresh faces bed in and the pull falls off.",
    source: PRACTICE,
  },
];
