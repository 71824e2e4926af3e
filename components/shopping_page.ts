/** The shopping sheet: what to ask for, to take to the shop. */
import type { VNode } from "preact";
import { fuelInWords, shoppingList } from "@/lib/evaluation/mod.ts";
import { type CautionId, DEFERS } from "@/lib/walkround/mod.ts";
import { CautionBox } from "./caution_box.ts";
import { cautionsShown, wiringCautions } from "./cautions_shown.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";
import { ShoppingTable } from "./shopping_table.ts";
import { unbroken } from "./unbroken.ts";

/** What to beware of when these parts are bought and fitted, besides the pump's wires. */
const CAUTIONS: readonly CautionId[] = ["hose-rating", "insurance-road"];

/** The sheet: the list to tick, and what to beware of. */
export function ShoppingPage(shown: PlanShown): VNode {
  const { evaluation, values, system, planPath } = shown;
  return html`
    <p class="trail"><a href=${`${planPath}/size`}>Back to the sheet</a></p>
    <h1>Shopping: what to ask for</h1>
    <p class="lead">
      Figures, no makes: any part that meets them will do. Everything that touches fuel, hoses and
      seals first, has to be made for it: ${unbroken(fuelInWords(values))}.
    </p>
    ${notYet(shown)}
    <p class="screen-only"><a href=${`${planPath}/shopping.csv`} download>The list for a spreadsheet (CSV)</a></p>
    <section aria-labelledby="to-buy">
      <h2 id="to-buy">To buy</h2>
      ${ShoppingTable({
        items: shoppingList(evaluation, values),
        system,
        fieldHref: (path) => `${planPath}/size#${path}`,
      })}
    </section>
    <section aria-labelledby="shopping-cautions">
      <h2 id="shopping-cautions">Before it is fitted</h2>
      ${CautionBox({
        cautions: cautionsShown(shown, [...wiringCautions(shown), ...CAUTIONS]),
        defers: DEFERS,
      })}
    </section>
  `;
}

/** The list buys the plan as it stands, whether that works or not. */
function notYet({ evaluation, planPath }: PlanShown): VNode | undefined {
  const fails = evaluation.checks.filter(({ verdict }) => verdict === "fails").length;
  const assumed = evaluation.assumed.length;
  if (fails === 0 && assumed === 0) return undefined;
  const reasons = [
    fails > 0 && `${fails} ${fails === 1 ? "check fails" : "checks fail"}`,
    assumed > 0 && `${assumed} ${assumed === 1 ? "answer is" : "answers are"} assumed`,
  ].filter(Boolean).join(", ");
  return html`
    <p class="blocked">
      <b>${fails > 0 ? "Do not buy yet" : "Before you buy"}:</b> ${reasons}. This list buys the plan
      as it stands; <a href=${`${planPath}/size`}>the Size sheet</a> says what to mend and to confirm.
    </p>
  `;
}
