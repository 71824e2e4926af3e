/** Examples of the comparison of blends, worked out from the demos. */
import { BlendsPage } from "@/components/blends_page.ts";
import type { PlanShown } from "@/components/plan_shown.ts";
import { blendsOf, evaluateBlends } from "@/lib/evaluation/blends.ts";
import { evaluate } from "@/lib/evaluation/mod.ts";
import { boxesOf, type Plan, resolvePlan } from "@/lib/plan/mod.ts";
import dragster from "@/seeds/dragster-vee-methanol.json" with { type: "json" };
import rotor from "@/seeds/twin-rotor-staged.json" with { type: "json" };
import tourer from "@/seeds/tourer-six-e10.json" with { type: "json" };
import { planOf } from "../../helpers/plan_of.ts";
import type { Examples } from "./example.ts";

function shownOf(plan: Plan): PlanShown {
  const { values } = resolvePlan(plan);
  return {
    evaluation: evaluate(plan),
    values,
    boxes: boxesOf(plan),
    planPath: "/p/1.abc",
    system: values.sheet.units,
  };
}

function page(document: { readonly fuel: object }, fuel: object = {}) {
  return () => {
    const plan = planOf({ ...document, fuel: { ...document.fuel, ...fuel } });
    const shown = shownOf(plan);
    const { shares } = blendsOf(shown.values);
    return BlendsPage({ shown, comparison: evaluateBlends(plan, shares) });
  };
}

const SIX = ["0 %", "10 %", "20 %", "51 %", "85 %", "100 %"];

/** The examples. */
export const blendExamples: Examples = {
  BlendsPage: {
    "assumed shares, two stages": page(rotor, { blends: [] }),
    "six shares, in inches": page(tourer, {
      blends: SIX.map((ethanolShare) => ({ ethanolShare })),
    }),
    methanol: page(dragster),
  },
};
