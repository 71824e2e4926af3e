/** What every sheet of a plan is made from. */
import type { Evaluation } from "@/lib/evaluation/mod.ts";
import type { Boxes, Fault, PlanValues, SectionName } from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";

/** An evaluated plan with what its pages need beside it. */
export interface PlanShown {
  readonly evaluation: Evaluation;
  /** The plan in numbers. */
  readonly values: PlanValues;
  /** The text of each box, by path. */
  readonly boxes: Boxes;
  /** Where its pages are: `/p/1.abc`. */
  readonly planPath: string;
  /** The units its sheets are written in. */
  readonly system: System;
  /** The section of the form to show opened; the first where none is said. */
  readonly open?: SectionName | undefined;
  /** The list of the form to show with more blank rows. */
  readonly more?: string | undefined;
}

/** A form whose answers could not all be taken. */
export interface FormShown {
  readonly boxes: Boxes;
  readonly faults: readonly Fault[];
  /** The list to show with more blank rows. */
  readonly more?: string | undefined;
}
