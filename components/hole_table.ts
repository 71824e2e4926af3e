/** A table of any columns: holes, tools, stages. */
import type { VNode } from "preact";
import { fast } from "./fast.ts";
import { html } from "./html.ts";

/** One column. */
export interface Column {
  readonly title: string;
  /** True for numbers, which are set to the right. */
  readonly isNumber?: boolean | undefined;
}

/** What {@linkcode HoleTable} shows. */
export interface HoleTableProps {
  readonly caption: string;
  /** The first names the row. */
  readonly columns: readonly Column[];
  /** As many cells in each as there are columns. */
  readonly rows: readonly (readonly string[])[];
}

/** The table; on a narrow screen each row stands as a block, its cells with their titles. */
export function HoleTable({ caption, columns, rows }: HoleTableProps): VNode {
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label=${caption}>
      <table class="stacks columns">
        <caption>${caption}</caption>
        <thead>
          <tr>
            ${columns.map(({ title, isNumber }) =>
              html`<th scope="col" class=${isNumber ? "number" : undefined}>${title}</th>`
            )}
          </tr>
        </thead>
        <tbody>
          ${rows.map((row) => html`<tr>${row.map((cell, i) => cellOf(cell, columns[i], i))}</tr>`)}
        </tbody>
      </table>
    </div>
  `;
}

function cellOf(cell: string, column: Column | undefined, index: number): VNode {
  if (index === 0) return fast`<th scope="row">${cell}</th>`;
  const title = column?.title ?? "";
  return column?.isNumber
    ? fast`<td class="number" data-title="${title}">${cell}</td>`
    : fast`<td data-title="${title}">${cell}</td>`;
}
