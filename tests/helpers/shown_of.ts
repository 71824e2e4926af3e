/** What a page of a plan is made from, for tests. */
import type { PlanShown } from "@/components/plan_shown.ts";
import { evaluate } from "@/lib/evaluation/mod.ts";
import { boxesOf, type Plan, resolvePlan } from "@/lib/plan/mod.ts";

/** A plan evaluated, as its pages take it. `planReady()` must have been awaited. */
export function shownOf(plan: Plan): PlanShown {
  const { values } = resolvePlan(plan);
  return {
    evaluation: evaluate(plan),
    values,
    boxes: boxesOf(plan),
    planPath: "/p/1.abc",
    system: values.sheet.units,
  };
}
