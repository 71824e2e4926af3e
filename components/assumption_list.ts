/** Everything that stands in for an answer not given. */
import type { VNode } from "preact";
import type { Assumption } from "@/lib/plan/mod.ts";
import { Assumed } from "./assumed.ts";
import { html } from "./html.ts";

/** What {@linkcode AssumptionList} shows. */
export interface AssumptionListProps {
  readonly assumed: readonly Assumption[];
  /** The id of the plan's form on the same page; without it there are no buttons. */
  readonly form?: string | undefined;
  /** Where a field is answered: `(path) => "#" + path`. */
  readonly fieldHref: (path: string) => string;
}

/** The assumptions, each with its reason and source, a link to its box, and a button that confirms it. */
export function AssumptionList({ assumed, form, fieldHref }: AssumptionListProps): VNode {
  if (assumed.length === 0) {
    return html`<p>Nothing is assumed: every value here was given or confirmed.</p>`;
  }
  return html`
    <ul class="assumptions">
      ${assumed.map((assumption) =>
        html`
          <li>
            <a href=${fieldHref(assumption.path)}>${assumption.label}${partOf(assumption.path)}</a>
            ${Assumed({ assumed: assumption, form })}
          </li>
        `
      )}
    </ul>
  `;
}

/** Which row of a list a path leads to: ", 2" for the second. */
function partOf(path: string): string {
  const row = path.split(".")[2];
  return row === undefined ? "" : `, ${Number(row) + 1}`;
}
