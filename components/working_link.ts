/** Links from a result to its working. */
import type { PlanShown } from "./plan_shown.ts";
import { workingId } from "./working.ts";

/**
 * Says where the working of a result stands.
 *
 * @param shown The plan.
 * @returns A function from result to address; undefined for a result that no method gave.
 */
export function workingHref(
  { evaluation, planPath }: PlanShown,
): (result: string) => string | undefined {
  const known = new Set(evaluation.working.map(({ result }) => result));
  return (result) => known.has(result) ? `${planPath}/working#${workingId(result)}` : undefined;
}
