/** Named numbers. */
import type { VNode } from "preact";
import { fast } from "./fast.ts";
import { html } from "./html.ts";

/** One number. */
export interface NumberRow {
  readonly label: string;
  /** The number as it is written, with its unit; "open" where there is none. */
  readonly value: string;
  /** What to know about it. */
  readonly note?: string | undefined;
}

/** What {@linkcode NumberTable} shows. */
export interface NumberTableProps {
  readonly caption: string;
  readonly rows: readonly NumberRow[];
}

/** A table of label, number and note. */
export function NumberTable({ caption, rows }: NumberTableProps): VNode {
  return html`
    <div class="scroll">
      <table class="stacks named">
        <caption>${caption}</caption>
        <tbody>
          ${rows.map(({ label, value, note }) =>
            fast`<tr><th scope="row">${label}</th><td class="number">${value}</td><td class="about">${note}</td></tr>`
          )}
        </tbody>
      </table>
    </div>
  `;
}
