/** What one test of the ladder is. */
import type { CautionId } from "./caution.ts";
import type { Line } from "./line.ts";
import type { Place } from "./places.ts";

/** The rungs of the ladder, in order. */
export type RungId =
  | "bench-air"
  | "bench-proof"
  | "drain-dry"
  | "bench-seals"
  | "car-static"
  | "running"
  | "hot-soak"
  | "first-drive"
  | "yearly";

/** One thing to do. */
export interface Step {
  /** Unique within its rung. */
  readonly id: string;
  /** What to do. */
  readonly text: Line;
  /** The cautions to print beside it, those of other fuels already left out. */
  readonly cautions: readonly CautionId[];
}

/** One test of the ladder. Each needs the one before it passed. */
export interface Rung {
  /** Its name. */
  readonly id: RungId;
  /** What the test is, for a heading. */
  readonly title: string;
  /** What it is for, and what it cannot tell. */
  readonly why: Line;
  /** Where it is done. */
  readonly where: "bench" | "car";
  /** What presses. */
  readonly medium: "air" | "water or test liquid" | "fuel" | "nothing";
  /** Test pressure [Pa, gauge]; absent where nothing presses. */
  readonly pressure_Pa?: number;
  /** How long it is held or watched [s]. */
  readonly hold_s?: number;
  /** Volume under test [m^3]. */
  readonly volume_m3?: number;
  /** Energy stored [J]. */
  readonly energy_J?: number;
  /** Why it may not be done yet; absent when nothing stands against it. */
  readonly blocked?: Line;
  /** What is not known or does not fit, to be read first. */
  readonly notes: readonly Line[];
  /** What is fitted, plugged or taken off. */
  readonly fitted: readonly Line[];
  /** What to do, in order. */
  readonly steps: readonly Step[];
  /** Where to look, in the order of a walk round. */
  readonly look: readonly Place[];
  /** It passes when all of these hold. */
  readonly passes: readonly Line[];
  /** What to do when one of them does not. */
  readonly ifNot: readonly Step[];
  /** What the test shows and what it cannot show. */
  readonly sees: readonly Line[];
  /** What it is drawn from. */
  readonly source: string;
}
