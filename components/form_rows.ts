/** A list of a plan's form: rows of boxes, with one row more than is filled. */
import type { VNode } from "preact";
import { type ListField, unusedNote } from "@/lib/plan/mod.ts";
import { Assumed } from "./assumed.ts";
import { isFilled, rowOfBoxes } from "./earlier.ts";
import { formField } from "./form_field.ts";
import { filledRows, isAsked, isListShown, type Lookup, PLAN_FORM } from "./form_lookup.ts";
import { html } from "./html.ts";
import { withoutLabel } from "./label_of.ts";
import { sentence } from "./show.ts";

/** Blank rows more for who lists much at once. */
const MORE = 5;

/**
 * As many rows as are filled and one more, at least those that the list asks for; some more
 * where they were asked for by the button below.
 */
export function formRows(path: string, list: ListField, lookup: Lookup): VNode | undefined {
  if (!isListShown(path, list, lookup)) return undefined;
  const wanted = filledRows(path, list, lookup.boxes) + 1 + (lookup.more === path ? MORE : 0);
  const count = Math.min(list.max, Math.max(list.rows, wanted));
  const fault = lookup.faultAt.get(path);
  const assumed = lookup.assumedAt.get(path);
  const hintsAt = lookup.hintsAt.get(list.fields);
  return html`
    <div class="rows" id=${path} tabindex="-1">
      ${list.title && html`<h3>${list.title}</h3>`}
      <p class="hint">${sentence(list.hint)}</p>
      ${fault && html`<p class="fault"><b>Not taken:</b> ${withoutLabel(fault, list.label)}</p>`}
      ${!isAsked(list, lookup) && html`<p class="echo">${sentence(unusedNote(list))}</p>`}
      ${assumed && Assumed({ assumed, form: PLAN_FORM, button: "settle", system: lookup.system })}
      ${hintsAt === path && hints(path, list)}
      ${Array.from({ length: count }, (_, i) => row(path, i, list, lookup))}
      ${count < list.max && lookup.more !== path && moreRows(path, list)}
    </div>
  `;
}

function moreRows(path: string, { title, label }: ListField): VNode {
  const name = `More rows for ${title ?? label}`;
  return html`<p><button name="more" value=${path} aria-label=${name}>More rows</button></p>`;
}

function row(listPath: string, index: number, list: ListField, lookup: Lookup): VNode {
  const path = `${listPath}.${index}`;
  const hintsAt = lookup.hintsAt.get(list.fields);
  const seen = rowOfBoxes(path, list, lookup.boxes);
  const name = `${list.label} ${index + 1}`;
  return html`
    <fieldset
      class=${hintsAt === undefined ? "row" : "row small-boxes"}
      id=${path}
    >
      <legend>${name}</legend>
      ${isFilled(path, list, lookup.boxes) && rowTools(path, name, list, lookup)}
      ${Object.entries(list.fields).map(([key, field]) =>
        formField(`${path}.${key}`, field, lookup, {
          row: seen,
          ...(hintsAt !== undefined && { hintAt: `${hintsAt}-${key}-hint` }),
        })
      )}
    </fieldset>
  `;
}

/** Buttons that send the form with one row less, or with a blank one before this. */
function rowTools(path: string, name: string, list: ListField, { boxes }: Lookup): VNode {
  const isFull = filledRows(path.slice(0, path.lastIndexOf(".")), list, boxes) === list.max;
  return html`
    <p class="row-tools">
      ${list.ordered && !isFull && html`
        <button name="insert" value=${path} aria-label=${`Insert above ${name}`}>Insert above</button>
      `}
      <button name="remove" value=${path} aria-label=${`Remove ${name}`}>Remove</button>
    </p>
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
