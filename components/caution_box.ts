/** Cautions, to stand beside the step that they belong to. */
import type { VNode } from "preact";
import { html } from "./html.ts";
import { sentence } from "./show.ts";

/** One caution. */
export interface CautionShown {
  /** What it is about, in a few words. */
  readonly title: string;
  /** What it says. */
  readonly points: readonly string[];
  /** Where it is from. */
  readonly source?: string | undefined;
}

/** What {@linkcode CautionBox} shows. */
export interface CautionBoxProps {
  readonly cautions: readonly CautionShown[];
}

/** The cautions in a frame. */
export function CautionBox({ cautions }: CautionBoxProps): VNode {
  return html`
    <aside class="cautions">
      ${cautions.map(({ title, points, source }) =>
        html`
          <div>
            <p><b>Caution: ${title}</b></p>
            <ul>
              ${points.map((point) => html`<li>${point}</li>`)}
            </ul>
            ${source && html`<p class="source">Source: ${sentence(source)}</p>`}
          </div>
        `
      )}
    </aside>
  `;
}
