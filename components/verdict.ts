/** A verdict: its mark and its word. No colour carries it. */
import type { VNode } from "preact";
import type { Verdict as Outcome } from "@/lib/evaluation/mod.ts";
import { html } from "./html.ts";

/** What {@linkcode Verdict} shows. */
export interface VerdictProps {
  readonly verdict: Outcome;
}

/** A mark with its word behind it. */
export function Verdict({ verdict }: VerdictProps): VNode {
  return html`
    <span class=${`verdict verdict-${verdict}`}>
      <svg
        viewBox="0 0 16 16"
        width="16"
        height="16"
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linejoin="round"
        stroke-linecap="round"
        aria-hidden="true"
      >
        <path d=${MARKS[verdict]} />
      </svg>${" "}${verdict}
    </span>
  `;
}

/** Tick, triangle, cross and question mark in a square of 16. */
const MARKS: Readonly<Record<Outcome, string>> = {
  meets: "M2 9l4 4 8-10",
  marginal: "M8 2l6.5 12h-13zM8 6.5v3.5M8 12v.1",
  fails: "M3 3l10 10M13 3L3 13",
  open: "M4.5 5.5a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1.1-1.5 2.3M8 14v.1",
};
