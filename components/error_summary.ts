/** What could not be taken, on top of the page, each with a link to its box. */
import type { VNode } from "preact";
import { type Fault, fieldAt } from "@/lib/plan/mod.ts";
import { html } from "./html.ts";
import { labelOf, withoutLabel } from "./label_of.ts";

/** What {@linkcode ErrorSummary} shows. */
export interface ErrorSummaryProps {
  /** At least one. */
  readonly faults: readonly Fault[];
}

/** The list of faults; the page opens with it in focus. */
export function ErrorSummary({ faults }: ErrorSummaryProps): VNode {
  const count = faults.length;
  const title = count === 1
    ? "One answer could not be taken"
    : `${count} answers could not be taken`;
  return html`
    <section class="faults" role="alert" aria-labelledby="faults-title" tabindex="-1" autofocus>
      <h2 id="faults-title">${title}</h2>
      <p>Nothing is worked out until this is put right. What you typed is kept below.</p>
      <ul>
        ${faults.map(({ path, message }) =>
          html`
            <li>${line(path, message)}</li>
          `
        )}
      </ul>
    </section>
  `;
}

function line(path: string, message: string): VNode | string {
  const field = fieldAt(path);
  if (field === undefined) return message;
  const says = withoutLabel(message, field.label);
  return html`<a href=${`#${path}`}>${labelOf(path)}: ${says}</a>`;
}
