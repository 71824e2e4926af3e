/** A plan's rail laid out again, for what is worked out only where it is shown. */
import { InputError } from "@/lib/basics/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { Evaluation } from "../evaluation.ts";
import { type Laid, layPlan } from "./laid.ts";

/** The layout's own specification is no result, so it is made again as it was. */
export function laidAgain(evaluation: Evaluation, values: PlanValues): Laid | undefined {
  const { port, bar, drill } = evaluation.results;
  if (drill.layout === undefined || drill.seal === undefined || bar === undefined) return undefined;
  try {
    return layPlan(values, { port, leadMouth_m: drill.seal.leadMouth_m }, bar.drift_m);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}
