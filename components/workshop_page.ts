/** The workshop sheet: order of work, tools and inspection, to take to the drill press. */
import type { VNode } from "preact";
import { type Workshop, workshopOf } from "@/lib/evaluation/mod.ts";
import { HEIGHT_BASES } from "@/lib/thread/mod.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";
import { sentence } from "./show.ts";
import { TickList } from "./tick_list.ts";
import { WorkshopInspection } from "./workshop_inspection.ts";
import { WorkshopOrder } from "./workshop_order.ts";
import { WorkshopTools } from "./workshop_tools.ts";
import { kindPlural } from "./workshop_words.ts";

/** The sheet: what to do, with what, and what to measure. */
export function WorkshopPage(shown: PlanShown): VNode {
  const { evaluation, values, planPath } = shown;
  const sheet = workshopOf(evaluation, values);
  return html`
    <h1>Workshop sheet</h1>
    ${sheet.missing === undefined ? work(shown, sheet) : html`
      <p class="blocked">
        <b>No sheet yet:</b> ${sentence(sheet.missing)}${" "}
        <a href=${`${planPath}/size#rail.bore`}>Enter what is missing</a>.
      </p>
    `}
  `;
}

function work(shown: PlanShown, sheet: Workshop): VNode[] {
  const { system, values } = shown;
  return [
    html`
      <p class="lead">
        For the drill press: what to do in which order, with which tool, and what to measure. Places
        and depths stand on the${" "}<a href=${`${shown.planPath}/drill`}>Drill sheet</a>; depths count
        from the face.
      </p>
    `,
    html`<div>${notYet(shown)}</div>`,
    html`
      <section aria-labelledby="order" class="workshop-order">
        <h2 id="order">Order of the work</h2>
        ${WorkshopOrder({ sheet, system })}
      </section>
    `,
    html`
      <section aria-labelledby="tools" class="workshop-tools">
        <h2 id="tools">Tools</h2>
        ${WorkshopTools({ sheet, system, drills: values.shop.drills })}
        ${toolNotes(shown, sheet)}
      </section>
    `,
    html`
      <section aria-labelledby="inspection">
        <h2 id="inspection">Inspection</h2>
        ${WorkshopInspection({ sheet, system })}
        ${TickList({
          items: [{
            text: "All points of the bar looked at and written down",
            blanks: ["Bar number", "Date", "Initials"],
          }],
        })}
      </section>
    `,
  ];
}

/** What goes for the whole list, and where its speeds are published. */
function toolNotes({ planPath }: PlanShown, { tools }: Workshop): VNode {
  const bySource = Map.groupBy(tools, ({ source }) => source);
  return html`
    <ul class="notes">
      <li class="note">
        Speeds are for high-speed steel, from the low end of published tables, which scatter widely;
        the next step of the press below is as good. The press, and the drills at hand, are those of
        the${" "}<a href=${`${planPath}/size#shop.mostSpeed`}>plan</a>.
      </li>
      <li class="note">
        Thread height has two bases: ISO is a share ${HEIGHT_BASES.iso}; US is a share
        ${" "}${HEIGHT_BASES.us}. A drill cuts a little over its size.
      </li>
      ${[...bySource].map(([source, ofIt]) =>
        html`
          <li class="note">
            Speed of ${listed(ofIt)}: ${sentence(source)}
          </li>
        `
      )}
    </ul>
  `;
}

function listed(tools: Workshop["tools"]): string {
  return [...new Set(tools.map(({ kind }) => kindPlural(kind)))].join(", ");
}

/** The sheet drills the plan as it stands, whether that works or not. */
function notYet({ evaluation, planPath }: PlanShown): VNode | undefined {
  const checks = evaluation.checks.filter(({ step }) => step === "drill");
  const counted = (verdict: "fails" | "open"): number =>
    checks.filter((check) => check.verdict === verdict).length;
  const [fails, open, assumed] = [counted("fails"), counted("open"), evaluation.assumed.length];
  if (fails + open + assumed === 0) return undefined;
  const reasons = [
    fails > 0 && `${fails} ${fails === 1 ? "check fails" : "checks fail"}`,
    open > 0 && `${open} ${open === 1 ? "check is" : "checks are"} open`,
    assumed > 0 && `${assumed} ${assumed === 1 ? "answer is" : "answers are"} assumed`,
  ].filter(Boolean).join(", ");
  return html`
    <p class="blocked">
      <b>${fails > 0 ? "Do not drill" : "Do not drill yet"}:</b> ${reasons}.${" "}
      <a href=${`${planPath}/drill#drill-verdicts`}>The Drill sheet</a> says what to change;${" "}
      <a href=${`${planPath}/size#assumed`}>confirm what is assumed</a> after measuring.
    </p>
  `;
}
