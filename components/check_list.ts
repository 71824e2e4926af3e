/** Checks with their verdicts, worst first. */
import type { VNode } from "preact";
import type { Check, Verdict as Outcome } from "@/lib/evaluation/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import { capital, sentence, showBound, showShare, showValue } from "./show.ts";
import { unbroken } from "./unbroken.ts";
import { Verdict } from "./verdict.ts";
import { WORST_FIRST } from "./verdict_summary.ts";

/** What {@linkcode CheckList} shows. */
export interface CheckListProps {
  readonly checks: readonly Check[];
  /** The units that the plan is shown in. */
  readonly system: System;
  /** Where the working of a result is shown, if it is: `(result) => "#working-" + result`. */
  readonly workingHref?: ((result: string) => string | undefined) | undefined;
  /** Where it is said what would mend a check: `(id) => "changes#" + id`. */
  readonly changesHref?: ((checkId: string) => string) | undefined;
}

const WHAT_TO_DO: Readonly<Record<Outcome, string>> = {
  fails: "past the limit",
  open: "an answer is missing",
  marginal: "past the aim, or not certain",
  meets: "on the right side of aim and limit",
};

/** The checks in groups by verdict, those to look at first on top; one that meets is a line that opens. */
export function CheckList(props: CheckListProps): VNode {
  const { checks } = props;
  return html`
    <div class="checks">
      ${WORST_FIRST.map((verdict) => {
        const group = checks.filter((check) => check.verdict === verdict);
        return group.length > 0 && html`
          <section class="check-group">
            <h3>${Verdict({ verdict })} <small>${WHAT_TO_DO[verdict]}: ${group.length}</small></h3>
            <ul>
              ${group.map((check) => item(check, props))}
            </ul>
          </section>
        `;
      })}
    </div>
  `;
}

function item(check: Check, props: CheckListProps): VNode {
  const { id, title, verdict } = check;
  return html`
    <li class=${`check check-${verdict}`} id=${`check-${id}`}>
      ${verdict === "meets"
        ? html`
          <details>
            <summary><h4>${title}</h4> ${inShort(check, props.system)}</summary>
            ${body(check, props)}
          </details>
        `
        : [html`<h4>${title}</h4>`, body(check, props)]}
    </li>
  `;
}

/** What was found against what is asked, for a line. */
function inShort({ value, limit, aim, kind, sense }: Check, system: System): VNode | undefined {
  const bound = limit ?? aim;
  if (value === undefined || bound === undefined || kind === "word") return undefined;
  return html`
    <span class="in-short"><b>${unbroken(showValue(value, kind, system))}</b>, ${unbroken(
      showBound(bound, sense, kind, system),
    )}</span>
  `;
}

function body(check: Check, { system, workingHref, changesHref }: CheckListProps): VNode {
  const { id, value, limit, aim, margin, kind, sense, because, source, without } = check;
  const href = check.result === undefined ? undefined : workingHref?.(check.result);
  const link = href !== undefined && [" ", html`<a href=${href}>Show the working</a>`];
  const isMended = check.verdict === "fails" || check.verdict === "marginal";
  const mend = isMended && changesHref &&
    html`<p class="screen-only"><a href=${changesHref(id)}>What would do</a></p>`;
  return html`
    <dl class="numbers">
      ${value !== undefined && kind !== "word" && number("found", showValue(value, kind, system))}
      ${limit !== undefined && number("limit", showBound(limit, sense, kind, system))}
      ${aim !== undefined && number("aim", showBound(aim, sense, kind, system))}
      ${margin !== undefined && number(
        limit === undefined ? "margin to aim" : "margin to limit",
        showShare(margin),
      )}
    </dl>
    <p>${unbroken(sentence(because))}</p>
    ${mend}
    <p class="source">
      ${without && `${sentence(capital(without))} `}Source: ${sentence(source)}${link}
    </p>
  `;
}

function number(label: string, value: string): VNode {
  return html`
    <div>
      <dt>${label}</dt>
      <dd>${unbroken(value)}</dd>
    </div>
  `;
}
