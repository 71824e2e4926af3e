/** The Size sheet: will it feed the engine? */
import type { VNode } from "preact";
import type { Step } from "@/lib/evaluation/mod.ts";
import { fuelSpecOf } from "@/lib/plan/mod.ts";
import { AssumptionList } from "./assumption_list.ts";
import { CeilingsChart } from "./ceilings_chart.ts";
import { changesHref } from "./changes_link.ts";
import { CheckList } from "./check_list.ts";
import { earlierOf } from "./earlier.ts";
import { html } from "./html.ts";
import { NoteList } from "./note_list.ts";
import { NumberTable } from "./number_table.ts";
import { PLAN_FORM, PlanForm } from "./plan_form.ts";
import type { PlanShown } from "./plan_shown.ts";
import { shoppingRows } from "./shopping.ts";
import { SideBySide } from "./side_by_side.ts";
import { needRows } from "./size_numbers.ts";
import { STEPS } from "./steps.ts";
import { SupplyShown } from "./supply_shown.ts";
import { VerdictSummary } from "./verdict_summary.ts";
import { workingHref } from "./working_link.ts";

/** The sheet: what was found beside the form it was found from. */
export function SizePage(shown: PlanShown): VNode {
  return html`
    <h1>Size: will it feed the engine?</h1>
    ${SideBySide({ found: found(shown), entered: entered(shown) })}
  `;
}

/** What a builder decides by first, what it rests on last. */
function found(shown: PlanShown): (VNode | undefined)[] {
  return [
    defaultButton(),
    verdicts(shown),
    toBuy(shown),
    SupplyShown(shown),
    numbers(shown),
    otherSheets(shown),
    stillAssumed(shown),
  ];
}

/**
 * The return key presses a form's first button, wherever on the page that stands: without
 * this one it would confirm the first assumption. Safari skips buttons that are not laid out.
 */
function defaultButton(): VNode {
  return html`
    <button class="spoken" form=${PLAN_FORM} tabindex="-1" aria-hidden="true">Work it out</button>
  `;
}

function verdicts(shown: PlanShown): VNode {
  const { evaluation, system, planPath } = shown;
  const checks = evaluation.checks.filter(({ step }) => step === "size");
  const target_W = evaluation.results.demand?.crankPower_W;
  return html`
    <section aria-labelledby="verdicts">
      <h2 id="verdicts">Verdicts</h2>
      ${VerdictSummary({ verdicts: checks.map(({ verdict }) => verdict) })}
      <p class="to-form"><a href=${`#${PLAN_FORM}`}>Change the answers</a></p>
      ${target_W !== undefined &&
        CeilingsChart({ ceilings: evaluation.ceilings, target_W, system })}
      <ul class="more-sheets screen-only">
        <li><a href=${`${planPath}/changes`}>What would do</a> where a check fails or is marginal</li>
        <li><a href=${`${planPath}/shopping`}>Shopping list</a>, to print or as a table</li>
        ${fuelSpecOf(shown.values.fuel).base === "petrol" && html`
          <li><a href=${`${planPath}/blends`}>Blends side by side</a>: the plan at other ethanol shares</li>
        `}
      </ul>
      ${CheckList({
        checks,
        system,
        workingHref: workingHref(shown),
        changesHref: changesHref(shown),
      })}
    </section>
  `;
}

function toBuy(shown: PlanShown): VNode {
  return html`
    <section aria-labelledby="to-buy">
      <h2 id="to-buy">To buy, in short</h2>
      ${NumberTable({ caption: "What the deciding parts have to meet", rows: shoppingRows(shown) })}
      <p class="screen-only"><a href=${`${shown.planPath}/shopping`}>The whole shopping list</a></p>
    </section>
  `;
}

function numbers(shown: PlanShown): VNode {
  return html`
    <section aria-labelledby="numbers">
      <h2 id="numbers">Numbers</h2>
      ${NumberTable({ caption: "What the engine asks for", rows: needRows(shown) })}
      ${NoteList({ notes: shown.evaluation.notes, fieldHref: (path) => `#${path}` })}
      <p class="screen-only"><a href=${`${shown.planPath}/working`}>Show the working of every number</a></p>
    </section>
  `;
}

function otherSheets(shown: PlanShown): VNode {
  return html`
    <section aria-labelledby="other-sheets">
      <h2 id="other-sheets">On the other sheets</h2>
      <ul class="other-sheets">
        ${STEPS.filter(({ id }) => id !== "size").map(({ id, name }) =>
          html`
            <li>
              <a href=${`${shown.planPath}/${id}`}>${name}</a>${" "}${VerdictSummary({
                verdicts: verdictsOf(shown, id),
              })}
            </li>
          `
        )}
      </ul>
    </section>
  `;
}

function stillAssumed({ evaluation, system }: PlanShown): VNode {
  return html`
    <section aria-labelledby="assumed">
      <h2 id="assumed">Still assumed: ${evaluation.assumed.length}</h2>
      ${AssumptionList({
        assumed: evaluation.assumed,
        form: PLAN_FORM,
        fieldHref: (path) => `#${path}`,
        system,
      })}
    </section>
  `;
}

function verdictsOf({ evaluation }: PlanShown, step: Step) {
  return evaluation.checks.filter((check) => check.step === step).map(({ verdict }) => verdict);
}

function entered(shown: PlanShown): VNode {
  const { evaluation, values, boxes, system } = shown;
  const { assumed, missing, notes } = evaluation;
  return PlanForm({
    boxes,
    faults: [],
    assumed,
    missing,
    notes,
    earlier: earlierOf(values),
    system,
    open: shown.open ?? "engine",
    more: shown.more,
  });
}
