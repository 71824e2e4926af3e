/** A list of a plan's form: rows of boxes, with one row more than is filled. */
import type { VNode } from "preact";
import { type ListField, unusedNote } from "@/lib/plan/mod.ts";
import { Assumed } from "./assumed.ts";
import { rowOfBoxes } from "./earlier.ts";
import { formField } from "./form_field.ts";
import { filledRows, isAsked, isListShown, type Lookup, PLAN_FORM } from "./form_lookup.ts";
import { html } from "./html.ts";
import { withoutLabel } from "./label_of.ts";
import { sentence } from "./show.ts";

/** As many rows as are filled and one more, at least those that the list asks for. */
export function formRows(path: string, list: ListField, lookup: Lookup): VNode | undefined {
  if (!isListShown(path, list, lookup)) return undefined;
  const count = Math.min(list.max, Math.max(list.rows, filledRows(path, list, lookup.boxes) + 1));
  const fault = lookup.faultAt.get(path);
  const assumed = lookup.assumedAt.get(path);
  const hintsAt = lookup.hintsAt.get(list.fields);
  return html`
    <div class="rows" id=${path} tabindex="-1">
      ${list.title && html`<h3>${list.title}</h3>`}
      <p class="hint">${sentence(list.hint)}</p>
      ${fault && html`<p class="fault"><b>Not taken:</b> ${withoutLabel(fault, list.label)}</p>`}
      ${!isAsked(list, lookup) && html`<p class="echo">${sentence(unusedNote(list))}</p>`}
      ${assumed && Assumed({ assumed, form: PLAN_FORM, system: lookup.system })}
      ${hintsAt === path && hints(path, list)}
      ${Array.from({ length: count }, (_, i) => row(`${path}.${i}`, list, lookup))}
    </div>
  `;
}

function row(path: string, list: ListField, lookup: Lookup): VNode {
  const hintsAt = lookup.hintsAt.get(list.fields);
  const seen = rowOfBoxes(path, list, lookup.boxes);
  const number = Number(path.slice(path.lastIndexOf(".") + 1)) + 1;
  return html`
    <fieldset class=${hintsAt === undefined ? "row" : "row small-boxes"}>
      <legend>${list.label} ${number}</legend>
      ${Object.entries(list.fields).map(([key, field]) =>
        formField(`${path}.${key}`, field, lookup, {
          row: seen,
          ...(hintsAt !== undefined && { hintAt: `${hintsAt}-${key}-hint` }),
        })
      )}
    </fieldset>
  `;
}

/** What goes into the boxes of a row, once for all rows and for all lists of the same rows. */
function hints(path: string, list: ListField): VNode {
  return html`
    <ul class="row-hints hint">
      ${Object.entries(list.fields).map(([key, { label, hint, why }]) =>
        html`
          <li><b>${label}:</b> <span id=${`${path}-${key}-hint`}>${sentence(hint)}${why &&
            ` ${sentence(why)}`}</span></li>
        `
      )}
    </ul>
  `;
}
