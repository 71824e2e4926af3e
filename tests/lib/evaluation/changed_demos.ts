/** Demos with answers changed, and what an evaluation says of them. */
import { assert } from "@std/assert";
import { type Check, evaluate, type Evaluation, type SupplyFound } from "@/lib/evaluation/mod.ts";
import { demos } from "@/routes/demos.ts";
import { planOf } from "../../helpers/plan_of.ts";

/** A part of a plan as typed. */
export type Document = Readonly<Record<string, unknown>>;

/** The plan of a demo, as typed. */
export function demo(name: string): Document {
  const found = demos.find((each) => each.name === name)?.plan;
  assert(found, name);
  return found as unknown as Document;
}

/** A demo with some answers of a section put in the place of its own. */
export function changed(
  name: string,
  sections: Readonly<Record<string, Document>> = {},
): Evaluation {
  const plan = demo(name);
  const merged = Object.entries(sections).map(([section, answers]) => [
    section,
    { ...(plan[section] as Document | undefined), ...answers },
  ]);
  return evaluate(planOf({ ...plan, ...Object.fromEntries(merged) }));
}

/** The supply at one operating point. */
export function pointOf({ results }: Evaluation, id: string): SupplyFound {
  const found = results.supply?.points.find((point) => point.id === id)?.found;
  assert(found, id);
  return found;
}

/** One check. */
export function check({ checks }: Evaluation, id: string): Check {
  const found = checks.find((each) => each.id === id);
  assert(found, id);
  return found;
}
