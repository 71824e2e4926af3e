/** The four steps as a bar with four stations, the one at hand marked. */
import type { VNode } from "preact";
import type { Step } from "@/lib/evaluation/mod.ts";
import { html } from "./html.ts";
import { STEPS } from "./steps.ts";

/** What {@linkcode StepNav} shows. */
export interface StepNavProps {
  /** The step of this page, if it is one of them. */
  readonly step?: Step | undefined;
  /** Where the open plan's pages are; without a plan the steps are words, not links. */
  readonly planPath?: string | undefined;
}

/** The navigation between the steps. */
export function StepNav({ step, planPath }: StepNavProps): VNode {
  return html`
    <nav class="steps" aria-label="Steps of the work">
      <ol>
        ${STEPS.map(({ id, name, question }) => {
          const words = html`
            <span class="station"><b>${name}</b>${id === step && html`<i> (this sheet)</i>`}</span>
          `;
          const asks = html`<small>${question}</small>`;
          return html`
            <li class=${id === step ? "here" : undefined}>
              ${planPath === undefined ? html`<span class="stop">${words}${asks}</span>` : html`
                <a
                  class="stop"
                  href=${`${planPath}/${id}`}
                  aria-current=${id === step ? "page" : undefined}
                >${words}${asks}</a>
              `}
            </li>
          `;
        })}
      </ol>
    </nav>
  `;
}
