/** How many checks came out how, in one line. */
import type { VNode } from "preact";
import type { Verdict as Outcome } from "@/lib/evaluation/mod.ts";
import { html } from "./html.ts";
import { Verdict } from "./verdict.ts";

/** From what to look at first to what is in order. */
export const WORST_FIRST: readonly Outcome[] = ["fails", "open", "marginal", "meets"];

/** What {@linkcode VerdictSummary} shows. */
export interface VerdictSummaryProps {
  /** The verdict of each check, in any order. */
  readonly verdicts: readonly Outcome[];
}

/** The counts, worst first; verdicts that no check has are left out. */
export function VerdictSummary({ verdicts }: VerdictSummaryProps): VNode {
  return html`
    <ul class="verdict-summary">
      ${WORST_FIRST.map((verdict) => {
        const count = verdicts.filter((each) => each === verdict).length;
        return count > 0 && html`<li><b>${count}</b> ${Verdict({ verdict })}</li>`;
      })}
    </ul>
  `;
}
