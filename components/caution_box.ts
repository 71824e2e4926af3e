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
  /** Where on the same sheet it stands in full; then only its title is repeated. */
  readonly inFullAt?: string | undefined;
}

/** What {@linkcode CautionBox} shows. */
export interface CautionBoxProps {
  readonly cautions: readonly CautionShown[];
  /** Who comes before what is said here; printed once, under those in full. */
  readonly defers?: string | undefined;
}

/** The cautions in a frame. */
export function CautionBox({ cautions, defers }: CautionBoxProps): VNode {
  const anyInFull = cautions.some(({ inFullAt }) => inFullAt === undefined);
  return html`
    <aside class="cautions">
      ${cautions.map((caution) =>
        caution.inFullAt === undefined ? inFull(caution) : again(caution)
      )}
      ${defers && anyInFull && html`<p class="source">${defers}</p>`}
    </aside>
  `;
}

function inFull({ title, points, source }: CautionShown): VNode {
  return html`
    <div>
      <p><b>Caution: ${title}</b></p>
      <ul>
        ${points.map((point) => html`<li>${point}</li>`)}
      </ul>
      ${source && html`<p class="source">Source: ${sentence(source)}</p>`}
    </div>
  `;
}

function again({ title, inFullAt }: CautionShown): VNode {
  return html`
    <div>
      <p><b>Caution: ${title}</b> (in full at ${inFullAt})</p>
    </div>
  `;
}
