/** The four steps of the work, as every page names them. */
import type { Step } from "@/lib/evaluation/mod.ts";

/** How a step is shown. */
export interface StepShown {
  /** Its last part in an address. */
  readonly id: Step;
  /** Its name. */
  readonly name: string;
  /** The question it answers. */
  readonly question: string;
}

/** The steps in the order of the work. */
export const STEPS: readonly StepShown[] = [
  { id: "size", name: "Size", question: "will it feed the engine?" },
  { id: "drill", name: "Drill", question: "where does each hole go?" },
  { id: "prove", name: "Prove", question: "is it dry?" },
  { id: "hand-over", name: "Hand over", question: "what does the tuner need?" },
];

/**
 * Names the sheet of a step for the title block.
 *
 * @param step The step.
 * @returns Like "Size, sheet 1 of 4".
 */
export function sheetName(step: Step): string {
  const at = STEPS.findIndex(({ id }) => id === step);
  return `${STEPS[at]?.name}, sheet ${at + 1} of ${STEPS.length}`;
}
