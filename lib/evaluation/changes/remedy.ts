/** What would do: for one check, the changes that mend it. */
import type { Plan } from "@/lib/plan/mod.ts";
import type { Shown, Verdict } from "../check.ts";
import type { Edit } from "./lever.ts";

/** One change, found by evaluating the changed plan. */
export interface Change {
  /** What it brings: "a larger feed hose". */
  readonly name: string;
  /** Each answer that changes, the one to shop for first. */
  readonly edits: readonly Edit[];
  /** The changed plan. */
  readonly plan: Plan;
  /** The check's verdict then; `not-asked` where the changed plan no longer owes it. */
  readonly makes: Verdict | "not-asked";
  /** The number judged then, in the SI unit of the check's kind. */
  readonly value: number | undefined;
  /** True where that number meets limit and aim, whatever holds the verdict back. */
  readonly numberMeets: boolean;
  /** Titles of the checks that get a worse verdict by it. */
  readonly worsens: readonly string[];
}

/** What would do for one check. */
export interface Remedy {
  /** The check's id. */
  readonly id: string;
  /** What is judged. */
  readonly title: string;
  /** The kind of its number. */
  readonly kind: Shown;
  /** How it comes out now. */
  readonly verdict: Verdict;
  /** Changes that mend it, each by itself; those that worsen nothing first. */
  readonly changes: readonly Change[];
  /** Why there is none. */
  readonly none: string | undefined;
}
