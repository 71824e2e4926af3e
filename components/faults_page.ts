/** The form again, with what could not be taken. */
import type { VNode } from "preact";
import { earlierOfBoxes } from "./earlier.ts";
import { ErrorSummary } from "./error_summary.ts";
import { html } from "./html.ts";
import { PlanForm } from "./plan_form.ts";
import type { FormShown } from "./plan_shown.ts";

/** All that was typed, and at each box that can't be taken, why. */
export function FaultsPage({ boxes, faults, more }: FormShown): VNode {
  return html`
    ${ErrorSummary({ faults })}
    <h1>Almost: some answers can't be taken</h1>
    ${PlanForm({
      boxes,
      faults,
      assumed: [],
      missing: [],
      notes: {},
      earlier: earlierOfBoxes(boxes),
      system: boxes.get("sheet.units") === "inch" ? "inch" : "metric",
      more,
    })}
  `;
}
