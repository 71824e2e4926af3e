/** The numbers of a plot as a table that can be folded away. */
import type { VNode } from "preact";
import { fast } from "./fast.ts";
import { html } from "./html.ts";

/** Rows that belong together. */
export interface PlotGroup {
  readonly title: string;
  /** The first cell of each names the row, the others are numbers. */
  readonly rows: readonly (readonly string[])[];
}

/** What {@linkcode PlotTable} shows. */
export interface PlotTableProps {
  readonly summary: string;
  readonly columns: readonly string[];
  readonly groups: readonly PlotGroup[];
  /** True where the plot can't be read without it. */
  readonly isOpen?: boolean;
}

/** The table; wider than its place, it is moved within a box of its own. */
export function PlotTable({ summary, columns, groups, isOpen = false }: PlotTableProps): VNode {
  return html`
    <details open=${isOpen}>
      <summary>${summary}</summary>
      <div class="scroll" tabindex="0" role="group" aria-label=${summary}>
        <table>
          <thead>
            <tr>
              ${columns.map((title, i) =>
                html`<th scope="col" class=${i > 0 && "number"}>${title}</th>`
              )}
            </tr>
          </thead>
          ${groups.map(({ title, rows }) =>
            fast`<tbody><tr><th scope="rowgroup" colspan="${columns.length}">${title}</th></tr>${
              rows.map(([name = "", ...numbers]) =>
                fast`<tr><th scope="row">${name}</th>${
                  numbers.map((number) => fast`<td class="number">${number}</td>`)
                }</tr>`
              )
            }</tbody>`
          )}
        </table>
      </div>
    </details>
  `;
}
