/** The sensor port as the Drill sheet needs it. */
import { failingPortChecks } from "@/lib/evaluation/mod.ts";
import type { PlanShown } from "./plan_shown.ts";

/** Whether the port can be drilled as planned; what is still open does not speak against it. */
export function portFits(shown: PlanShown): boolean {
  const { port } = shown.evaluation.results;
  return port !== undefined && port.stack.length > 0 &&
    failingPortChecks(shown.evaluation).length === 0;
}
