/** The whole plan as a form, section by section. */
import type { VNode } from "preact";
import { type Section, SECTIONS } from "@/lib/plan/mod.ts";
import { formField } from "./form_field.ts";
import { type Lookup, lookUp, PLAN_FORM, type PlanFormProps } from "./form_lookup.ts";
import { formRows } from "./form_rows.ts";
import { html } from "./html.ts";

export { PLAN_FORM, type PlanFormProps };

/**
 * The form. It is sent to `/plan` by its own button, or by one that does something
 * besides: see `takeBoxes` of the routes. Boxes that are not asked for now are
 * left out while they are blank; what was typed into one is shown as not used.
 */
export function PlanForm(props: PlanFormProps): VNode {
  const lookup = lookUp(props);
  return html`
    <form id=${PLAN_FORM} class="plan-form" method="post" action="/plan" novalidate autocomplete="off"
      spellcheck="false">
      <p class="send"><button class="main">Work it out</button></p>
      ${Object.entries<Section>(SECTIONS).map(([name, section]) =>
        sectionOf(name, section, lookup)
      )}
      <p class="send"><button class="main">Work it out</button></p>
    </form>
  `;
}

/** A button that leads back to the section. */
function stay(name: string, { title }: Section): VNode {
  return html`
    <p
      class="send"><button name="stay" value=${name}>Work it out and stay in “${title}”</button></p>
  `;
}

/** A section, unless the other answers leave no place for anything in it. */
function sectionOf(name: string, section: Section, lookup: Lookup): VNode | undefined {
  const within = `${name}.`;
  const content = Object.entries(section.fields).map(([key, field]) => {
    const path = within + key;
    return field.type === "list" ? formRows(path, field, lookup) : formField(path, field, lookup);
  });
  if (content.every((each) => each === undefined)) return undefined;
  const faults = lookup.faults.filter(({ path }) => path.startsWith(within)).length;
  const assumed = lookup.assumed.filter(({ path }) => path.startsWith(within)).length;
  const missing = lookup.missing.filter((path) => path.startsWith(within)).length;
  const counts = [
    faults > 0 && `${faults} not taken`,
    assumed > 0 && `${assumed} assumed`,
    missing > 0 && `${missing} open`,
  ].filter(Boolean).join(", ");
  return html`
    <details class="section" id=${`section-${name}`} open=${faults > 0 || lookup.open === name}>
      <summary><h2>${section.title}</h2>${counts && [" ", html`<small>${counts}</small>`]}</summary>
      <fieldset>
        <legend>${section.about}</legend>
        ${content} ${stay(name, section)}
      </fieldset>
    </details>
  `;
}
