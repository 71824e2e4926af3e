/** A list to tick with a pen. */
import type { VNode } from "preact";
import { CautionBox, type CautionShown } from "./caution_box.ts";
import { html } from "./html.ts";

/** One thing to tick. */
export interface TickItem {
  readonly text: string;
  /** What to know about it, in smaller print. */
  readonly note?: string | undefined;
  /** What is to be written down, each with a line for it: "Pressure after 10 min". */
  readonly blanks?: readonly string[] | undefined;
  /** What to beware of at it. */
  readonly cautions?: readonly CautionShown[] | undefined;
}

/** What {@linkcode TickList} shows. */
export interface TickListProps {
  readonly items: readonly TickItem[];
  /** True when the order counts: the items are numbered. */
  readonly ordered?: boolean | undefined;
  /** Who comes before what the cautions say. */
  readonly defers?: string | undefined;
}

/** The list, a square before each item. */
export function TickList({ items, ordered, defers }: TickListProps): VNode {
  const rows = items.map(({ text, note, blanks = [], cautions = [] }) =>
    html`
      <li>
        <div class="tick-box" aria-hidden="true"></div>
        <div>
          <p>${text}</p>
          ${note && html`<p class="note">${note}</p>`} ${blanks.length > 0 && html`
            <p class="blanks">${blanks.map((blank) =>
              html`<span class="blank">${blank}: <span class="line"></span></span>`
            )}</p>
          `} ${cautions.length > 0 && CautionBox({ cautions, defers })}
        </div>
      </li>
    `
  );
  return ordered ? html`<ol class="ticks">${rows}</ol>` : html`<ul class="ticks">${rows}</ul>`;
}
