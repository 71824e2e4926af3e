/** Examples of what would do. */
import { ChangesPage } from "@/components/changes_page.ts";
import type { PlanShown } from "@/components/plan_shown.ts";
import { evaluate, type Remedy, whatWouldDo } from "@/lib/evaluation/mod.ts";
import { boxesOf, resolvePlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
import { planOf } from "../../helpers/plan_of.ts";
import type { Examples } from "./example.ts";

/** A plan as its pages take it, with what would do. */
function changesOf(document: unknown): { shown: PlanShown; remedies: Remedy[] } {
  const plan = planOf(document);
  const evaluation = evaluate(plan);
  const { values } = resolvePlan(plan);
  const shown = {
    evaluation,
    values,
    boxes: boxesOf(plan),
    planPath: "/p/1.abc",
    system: values.sheet.units,
  };
  return { shown, remedies: whatWouldDo(plan, evaluation) };
}

/** The examples. */
export const changesExamples: Examples = {
  ChangesPage: {
    ...Object.fromEntries(
      demos.map(({ name, plan }) => [name, () => ChangesPage(changesOf(plan))]),
    ),
    "nothing to change": () => ChangesPage({ ...changesOf(demos[0]?.plan), remedies: [] }),
  },
};
