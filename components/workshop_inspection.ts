/** Inspection points with their limits, and a blank for each number measured. */
import type { VNode } from "preact";
import type { Inspection, InspectionTime, Workshop } from "@/lib/evaluation/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import { capital, sentence } from "./show.ts";
import { unbroken } from "./unbroken.ts";
import { figureLimits } from "./workshop_words.ts";

/** What {@linkcode WorkshopInspection} shows. */
export interface WorkshopInspectionProps {
  readonly sheet: Workshop;
  readonly system: System;
}

const TIMES: Readonly<Record<InspectionTime, string>> = {
  bar: "On the bare bar",
  fitting: "As the rail is fitted",
};

/** The points to tick. */
export function WorkshopInspection({ sheet, system }: WorkshopInspectionProps): VNode {
  const times = Map.groupBy(sheet.inspection, ({ time }) => time);
  return html`
    <div class="workshop-inspection">
      ${[...times].map(([time, points]) =>
        html`
          <h3>${TIMES[time]}</h3>
          <ul class="ticks">${points.map((point) => pointOf(point, system))}</ul>
        `
      )}
    </div>
  `;
}

function pointOf(point: Inspection, system: System): VNode {
  const { says, why, notes, figures, source } = point;
  return html`
    <li>
      <div class="tick-box" aria-hidden="true"></div>
      <div>
        <p>${unbroken(says)}</p>
        <p class="note">
          With ${point.with}. ${why} ${notes.length > 0 &&
            unbroken(notes.join(" "))} Source: ${sentence(source)}
        </p>
        ${figures.length > 0 && html`
          <p class="blanks">${figures.map((figure) =>
            html`
              <span class="blank">${capital(figure.name)}: ${unbroken(
                figureLimits(figure, system),
              )} <span class="line"></span></span>
            `
          )}</p>
        `}
      </div>
    </li>
  `;
}
