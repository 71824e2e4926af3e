/** What the subjects of an evaluation share. */
import { InputError } from "@/lib/basics/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { formatQuantity, type Kind, type System } from "@/lib/units/mod.ts";
import { type Check, type Criterion, judge, type Judged } from "./check.ts";

/** A hundredth of a percent. */
const LEAST_SHARE = 1e-4;

/** One evaluation under way: the plan in numbers, the record, the checks so far. */
export class Context {
  /** The record of methods used. */
  readonly working: Working = new Working();
  /** The checks made so far. */
  readonly checks: Check[] = [];
  /** The units that sentences are written in. */
  readonly system: System;

  /** @param values The plan in numbers. */
  constructor(readonly values: PlanValues) {
    this.system = values.sheet.units;
  }

  /** Writes a quantity in the plan's units. */
  say(value: number, kind: Kind): string {
    return formatQuantity(value, kind, this.system);
  }

  /** Writes a share, one too small to matter as such. */
  share(value: number): string {
    return value < LEAST_SHARE
      ? `under ${this.say(LEAST_SHARE, "ratio")}`
      : this.say(value, "ratio");
  }

  /** Applies a criterion and keeps the check. */
  check(criterion: Criterion, judged: Judged): void {
    this.checks.push(judge(criterion, judged));
  }

  /**
   * Runs a subject. When a number falls outside what a method allows, the
   * subject gives nothing and its checks stand open with the reason.
   *
   * @param criteria The checks that the subject owes.
   * @param work The subject.
   * @returns What it gives, or undefined.
   */
  subject<T>(criteria: readonly Criterion[], work: () => T): T | undefined {
    const before = this.checks.length;
    try {
      return work();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.checks.length = before;
      for (const criterion of criteria) {
        this.check(criterion, { value: undefined, because: `${error.message}.` });
      }
      return undefined;
    }
  }
}
