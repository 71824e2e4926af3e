/** What an evaluation costs, against structuredClone of the plan it is for. */
import { demos } from "@/routes/demos.ts";
import { timed } from "./measure.ts";

/** What is measured for one demo. */
export interface EvaluationCost {
  /** The demo. */
  readonly name: string;
  /** Evaluations a second. */
  readonly perSecond: number;
  /** One evaluation, in structuredClones of its plan. */
  readonly clones: number;
  /** Finding what would do, in evaluations. */
  readonly changes: number;
}

/** The rooms by computed names: the bench must run, and say so, before they are there. */
const room = (name: string) => import(new URL(`../../lib/${name}/mod.ts`, import.meta.url).href);

/** Measures each demo. */
export async function evaluationCosts(): Promise<EvaluationCost[]> {
  const { evaluate, whatWouldDo } = await room("evaluation");
  const { readPlan } = await room("plan");
  const costs: EvaluationCost[] = [];
  for (const demo of demos) {
    const reading = readPlan(demo.plan);
    if (!reading.ok) throw new Error(`${demo.name} is no plan: ${JSON.stringify(reading.faults)}`);
    const { plan } = reading;
    const times = await timed({
      evaluate: () => evaluate(plan),
      clone: () => structuredClone(plan),
      changes: () => whatWouldDo(plan, evaluate(plan)),
    });
    const clones = times.evaluate / times.clone;
    costs.push({
      name: demo.name,
      perSecond: 1000 / times.evaluate,
      clones,
      changes: times.changes / times.evaluate,
    });
  }
  return costs;
}
