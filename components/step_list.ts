/** What to do, in order, each caution beside the step that it belongs to. */
import type { VNode } from "preact";
import { CautionBox, type CautionShown } from "./caution_box.ts";
import { html } from "./html.ts";

/** One thing to do. */
export interface StepItem {
  readonly text: string;
  /** How, with which tool, or what to look for. */
  readonly detail?: string | undefined;
  readonly cautions?: readonly CautionShown[] | undefined;
}

/** What {@linkcode StepList} shows. */
export interface StepListProps {
  readonly steps: readonly StepItem[];
  /** Who comes before what the cautions say. */
  readonly defers?: string | undefined;
}

/** The steps, numbered. */
export function StepList({ steps, defers }: StepListProps): VNode {
  return html`
    <ol class="step-list">
      ${steps.map(({ text, detail, cautions = [] }) =>
        html`
          <li>
            <p>${text}</p>
            ${detail && html`<p class="note">${detail}</p>`} ${cautions.length > 0 &&
              CautionBox({ cautions, defers })}
          </li>
        `
      )}
    </ol>
  `;
}
