/** Things to buy, shelf by shelf, each with a box to tick. */
import type { VNode } from "preact";
import {
  SHOPPING_PARTS,
  type ShoppingItem,
  type ShoppingPart,
  shownQuantity,
} from "@/lib/evaluation/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import { labelOf } from "./label_of.ts";
import { figureLine, figureWords, placesLine } from "./shopping_words.ts";
import { unbroken } from "./unbroken.ts";

/** What {@linkcode ShoppingTable} shows. */
export interface ShoppingTableProps {
  readonly items: readonly ShoppingItem[];
  readonly system: System;
  /** Where an assumed answer is given: `(path) => "/p/1.abc/size#" + path`. */
  readonly fieldHref: (path: string) => string;
}

/** The table. What is to be made for the fuel is said once above it, not at each part. */
export function ShoppingTable(props: ShoppingTableProps): VNode {
  const shelves = Map.groupBy(props.items, ({ part }) => part);
  return html`
    <table class="shopping">
      <caption>Tick what is bought; lengths and counts as the plan lists them</caption>
      <thead>
        <tr>
          <th scope="col"><span class="spoken">Bought</span></th>
          <th scope="col">What</th>
          <th scope="col" class="number">How much</th>
          <th scope="col">What it has to meet</th>
        </tr>
      </thead>
      ${[...shelves].map(([part, items]) => shelf(part, items, props))}
    </table>
  `;
}

function shelf(
  part: ShoppingPart,
  items: readonly ShoppingItem[],
  props: ShoppingTableProps,
): VNode {
  return html`
    <tbody>
      <tr class="shelf"><th colspan="4" scope="rowgroup">${SHOPPING_PARTS[part]}</th></tr>
      ${items.map((item) => row(item, props))}
    </tbody>
  `;
}

function row(item: ShoppingItem, props: ShoppingTableProps): VNode {
  const { what, quantity } = item;
  return html`
    <tr>
      <td>
        <div class="tick-box" aria-hidden="true"></div>
      </td>
      <th scope="row">${what.replace("size -", "size\u00a0-")}</th>
      <td class="number">${quantity && unbroken(shownQuantity(quantity, props.system).text)}</td>
      <td>${wanted(item, props)}</td>
    </tr>
  `;
}

function wanted(item: ShoppingItem, { system, fieldHref }: ShoppingTableProps): VNode {
  const { figures, facts, missing, because, assumed } = item;
  const lines = [
    ...figureWords(figures, system).map(figureLine),
    ...facts.filter(({ name }) => name !== "fuel").map(({ name, says }) => `${name}: ${says}`),
  ];
  const notes = [placesLine(item, system), because].filter((text) => text !== undefined);
  return html`
    <div>
      ${lines.length > 0 &&
        html`<ul>${lines.map((line) => html`<li>${unbroken(line)}</li>`)}</ul>`} ${missing.map((
          text,
        ) => html`<p class="open-figure"><b>Open:</b> ${unbroken(text)}</p>`)} ${notes.length > 0 &&
        html`<p class="note">${unbroken(notes.join(" "))}</p>`}
      ${assumed.length > 0 && html`
        <p class="note">
          Rests on assumed: ${assumed.map(({ path }, i) =>
            html`<span>${i > 0 && "; "}<a href=${fieldHref(path)}>${labelOf(path)}</a></span>`
          )}.
        </p>
      `}
    </div>
  `;
}
