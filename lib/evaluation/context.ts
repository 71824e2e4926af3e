/** What the subjects of an evaluation share. */
import { InputError } from "@/lib/basics/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { formatQuantity, type Kind, type System } from "@/lib/units/mod.ts";
import { type Check, type Criterion, judge, type Judged } from "./check.ts";

/**
 * Insists on an answer that is given or assumed in every plan that was read. A number
 * is never made up in its place: the subject's checks stand open instead.
 *
 * @throws {InputError} When there is none.
 */
export function known(value: number | undefined, field: string): number {
  if (value === undefined) throw new InputError("fuel need", field, "must be known", "not given");
  return value;
}

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
