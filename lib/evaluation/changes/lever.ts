/** What can be changed in a plan to mend a check, as data. */
import { fieldAt, type Plan } from "@/lib/plan/mod.ts";
import type { CRITERIA } from "../criteria.ts";
import { type Answer, withAnswers } from "./answers.ts";
import { type Start, textAt } from "./start.ts";

/** The id of a criterion: `pump-margin`. */
export type CheckId = (typeof CRITERIA)[keyof typeof CRITERIA]["id"];

/** One answer that changes, in words. */
export interface Edit {
  /** What it is: "Set pressure". */
  readonly what: string;
  /** What stands there, as typed or assumed: "3 bar". */
  readonly from: string;
  /** What would stand there: "3.5 bar". */
  readonly to: string;
  /** Where it is answered. */
  readonly path: string;
}

/** A changed plan. */
export interface Candidate {
  /** The whole plan, changed. */
  readonly plan: Plan;
  /** What changed, the part first that is shopped for. */
  readonly edits: readonly Edit[];
}

/** Something that can be changed, step by step. */
export interface Lever {
  /** Unique. */
  readonly id: string;
  /** What pulling it brings: "a larger feed hose". */
  readonly name: string;
  /** The checks that it may mend. */
  readonly mends: readonly CheckId[];
  /** True where it may leave a check no longer asked, and that is as good as meeting it. */
  readonly endsCheck?: true;
  /** Where a further change need not do what a nearer one does, each is tried; else few are. */
  readonly tries?: "each";
  /** Changed plans, from the smallest change up; none where the plan has nothing to change. */
  readonly candidates: (start: Start) => readonly Candidate[];
}

/** A change of single answers that the form has boxes for. */
export interface Answered {
  /** Answers by path; undefined makes a box blank. */
  readonly answers: Readonly<Record<string, Answer>>;
  /** What changed, in words. */
  readonly edits: readonly Edit[];
}

/** Makes a candidate of new answers. */
export function candidate({ plan }: Start, { answers, edits }: Answered): Candidate {
  return { plan: withAnswers(plan, answers), edits };
}

/** The change of one box to another text. */
export function edited(start: Start, path: string, to: string, what?: string): Edit {
  return { what: what ?? fieldAt(path)?.label ?? path, from: textAt(start, path), to, path };
}

/** The id of the criterion behind a check's: `duty-peak` behind `duty-peak-2`. */
export function criterionOf(checkId: string): string {
  return checkId.replace(/-\d+$/, "");
}
