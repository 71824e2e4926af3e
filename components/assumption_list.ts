/** Everything that stands in for an answer not given. */
import type { VNode } from "preact";
import { type Assumption, type Section, SECTIONS } from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { Assumed } from "./assumed.ts";
import { html } from "./html.ts";
import { labelOf } from "./label_of.ts";

/** What {@linkcode AssumptionList} shows. */
export interface AssumptionListProps {
  readonly assumed: readonly Assumption[];
  /** The id of the plan's form on the same page; without it there are no buttons. */
  readonly form?: string | undefined;
  /** Where a field is answered: `(path) => "#" + path`. */
  readonly fieldHref: (path: string) => string;
  /** The units of the plan. */
  readonly system?: System | undefined;
}

/** The assumptions by section, each with its reason and source, a link to its box, and a button that confirms it. */
export function AssumptionList(props: AssumptionListProps): VNode {
  const { assumed, form, fieldHref, system } = props;
  if (assumed.length === 0) {
    return html`<p>Nothing is assumed: every value here was given or confirmed.</p>`;
  }
  return html`
    <div class="assumptions">
      ${Object.entries<Section>(SECTIONS).map(([name, { title }]) => {
        const within = assumed.filter(({ path }) => path.startsWith(`${name}.`));
        return within.length > 0 && html`
          <h3>${title}</h3>
          <ul>
            ${within.map((assumption) =>
              html`
                <li>
                  <a href=${fieldHref(assumption.path)}>${labelOf(assumption.path)}</a>
                  ${Assumed({ assumed: assumption, form, system })}
                </li>
              `
            )}
          </ul>
        `;
      })}
    </div>
  `;
}
