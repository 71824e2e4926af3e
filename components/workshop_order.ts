/** The order of work, each caution at the operation that it belongs to. */
import type { VNode } from "preact";
import {
  type Operation,
  type Workshop,
  WORKSHOP_CAUTIONS,
  type WorkshopCautionId,
} from "@/lib/evaluation/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { DEFERS } from "@/lib/walkround/mod.ts";
import { CautionBox, type CautionShown } from "./caution_box.ts";
import { html } from "./html.ts";
import { sentence } from "./show.ts";
import { unbroken } from "./unbroken.ts";
import { toolNumbers } from "./workshop_words.ts";

/** What {@linkcode WorkshopOrder} shows. */
export interface WorkshopOrderProps {
  readonly sheet: Workshop;
  readonly system: System;
}

/** The operations, numbered. */
export function WorkshopOrder({ sheet, system }: WorkshopOrderProps): VNode {
  const inFull = new Map<WorkshopCautionId, string>();
  const numbers = toolNumbers(sheet.tools);
  return html`
    <div>
      <ol class="step-list">
      ${sheet.operations.map((operation, i) => {
        const cautions = operation.cautions.map((id) =>
          caution(inFull, id, `step ${i + 1}`, system)
        );
        return html`
          <li>
            <h3>${operation.title}</h3>
            ${operation.blocked && html`
              <p class="blocked"><b>Not as planned:</b> ${unbroken(sentence(operation.blocked))}</p>
            `}
            <ul>${operation.does.map((text) => html`<li>${unbroken(text)}</li>`)}</ul>
            ${operation.why && html`<p class="note">Why: ${unbroken(operation.why)}</p>`}
            ${toolsLine(operation, numbers)}
            ${cautions.length > 0 && CautionBox({ cautions, defers: DEFERS })}
          </li>
        `;
      })}
      </ol>
      <p
        class="source">How each is done: common practice, no source, unless a source stands with it.</p>
    </div>
  `;
}

function caution(
  inFull: Map<WorkshopCautionId, string>,
  id: WorkshopCautionId,
  place: string,
  system: System,
): CautionShown {
  const { title, says, source } = WORKSHOP_CAUTIONS[id];
  const inFullAt = inFull.get(id);
  if (inFullAt === undefined) inFull.set(id, place);
  return { title, points: says(system).map(unbroken), source, inFullAt };
}

function toolsLine(
  { tools }: Operation,
  numbers: ReadonlyMap<string, number>,
): VNode | undefined {
  if (tools.length === 0) return undefined;
  const inOrder = tools.toSorted((a, b) => (numbers.get(a) ?? 0) - (numbers.get(b) ?? 0));
  return html`
    <p class="note">
      ${tools.length === 1 ? "Tool" : "Tools"}${" "}${inOrder.map((id, i) =>
        html`<span>${i > 0 && ", "}<a href=${`#tool-${id}`}>${numbers.get(id)}</a></span>`
      )} of the list.
    </p>
  `;
}
