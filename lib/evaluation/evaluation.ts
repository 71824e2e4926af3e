/** What an evaluation holds. */
import type { Use } from "@/lib/method/mod.ts";
import type { Assumption } from "@/lib/plan/mod.ts";
import type { Check } from "./check.ts";
import type { Results } from "./results.ts";

/** The power at which one part of the system reaches its limit. */
export interface Ceiling {
  /** Which part: `injectors`, `pump`, `feed`, `rail`. */
  readonly id: string;
  /** What the part is called. */
  readonly title: string;
  /** Crank power at the limit [W]; undefined when it can't be said. */
  readonly power_W: number | undefined;
  /** False for a part whose limit is no matter of power. */
  readonly dependsOnPower: boolean;
  /** What limits there, or why there is no number. */
  readonly because: string;
}

/** All that is found for a plan. */
export interface Evaluation {
  /** Numbers in SI; keys end in their unit. */
  readonly results: Results;
  /** What was judged, subject by subject. */
  readonly checks: readonly Check[];
  /** The power at which each part gives out. */
  readonly ceilings: readonly Ceiling[];
  /** Which methods ran with which numbers. */
  readonly working: readonly Use[];
  /** What stands in for answers not given. */
  readonly assumed: readonly Assumption[];
  /** Paths of fields that are asked, empty and without an honest default. */
  readonly missing: readonly string[];
  /** What was converted on reading, by path. */
  readonly notes: Readonly<Record<string, string>>;
}
