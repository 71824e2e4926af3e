/** What would do: for each failing or marginal check the changes that mend it. */
import type { VNode } from "preact";
import type { Change, Check, Remedy } from "@/lib/evaluation/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";
import { sentence, showBound, showValue } from "./show.ts";
import { unbroken } from "./unbroken.ts";
import { Verdict } from "./verdict.ts";

/** What {@linkcode ChangesPage} shows. */
export interface ChangesPageProps {
  readonly shown: PlanShown;
  /** What would do, from `whatWouldDo`. */
  readonly remedies: readonly Remedy[];
}

/** The page; with nothing to mend it says so. */
export function ChangesPage({ shown, remedies }: ChangesPageProps): VNode {
  return html`
    <p class="trail"><a href=${`${shown.planPath}/size`}>Back to the sheet</a></p>
    <h1>What would do: the smallest change that mends each check</h1>
    ${remedies.length === 0
      ? html`<p>Nothing has to change: no check fails, and none is marginal.</p>`
      : html`
        <p>
          The smallest step of each kind that mends a check, found by working the whole plan out again
          with it. Each stands by itself, with all else as planned; what falls short alone may do
          together with another.
        </p>
      `}
    ${remedies.length > 0 &&
      html`<div class="remedies">${remedies.map((remedy) => remedyShown(remedy, shown))}</div>`}
    ${openOnes(shown)}
  `;
}

/** The id of a check's part of the page, for links to it. */
export function changesId(checkId: string): string {
  return `change-${checkId}`;
}

/** Open checks say on their sheets what is missing; no change can stand in for an answer. */
function openOnes({ evaluation, planPath }: PlanShown): VNode | undefined {
  const open = evaluation.checks.filter(({ verdict }) => verdict === "open");
  if (open.length === 0) return undefined;
  const count = open.length === 1 ? "One check is" : `${open.length} checks are`;
  return html`
    <p>
      ${count} open until an answer is given, and not looked at here:${" "}
      ${open.map(({ id, title, step }, i) =>
        html`${i > 0 && "; "}<a href=${`${planPath}/${step}#check-${id}`}>${title}</a>`
      )}.
    </p>
  `;
}

function remedyShown(remedy: Remedy, shown: PlanShown): VNode {
  const { id, title, verdict, changes, none } = remedy;
  const check = shown.evaluation.checks.find((each) => each.id === id);
  const at = changesId(id);
  return html`
    <section class=${`check check-${verdict}`} id=${at} aria-labelledby=${`${at}-title`}>
      <h2 id=${`${at}-title`}>${title}</h2>
      <p>${Verdict({ verdict })} ${check && unbroken(nowAt(check, shown.system))}</p>
      ${check && html`<p>${unbroken(sentence(check.because))}</p>`}
      ${none !== undefined && html`<p><b>No single change.</b> ${unbroken(none)}</p>`}
      ${changes.length > 0 && html`
        <ul>
          ${changes.map((change) => changeShown(change, remedy, shown))}
        </ul>
      `}
    </section>
  `;
}

/** The number as it is, against what is asked. */
function nowAt({ value, limit, aim, sense, kind }: Check, system: System): string {
  const bounds = [
    limit !== undefined && `limit ${showBound(limit, sense, kind, system)}`,
    aim !== undefined && `aim ${showBound(aim, sense, kind, system)}`,
  ].filter(Boolean).join(", ");
  const found = value === undefined ? [] : [`now ${showValue(value, kind, system)}`];
  return sentence([...found, bounds].filter(Boolean).join("; "));
}

function changeShown(change: Change, { kind }: Remedy, { planPath, system }: PlanShown): VNode {
  const { edits, worsens } = change;
  return html`
    <li>
      <p>
        ${edits.map(({ what, from, to, path }, i) =>
          html`
            <span>${i > 0 && "; "}<a href=${`${planPath}/size#${path}`}>${i > 0
              ? what.charAt(0).toLowerCase() + what.slice(1)
              : what}</a>:${" "}
            ${unbroken(from)} <span aria-hidden="true">→</span><span class="spoken">to</span>${" "}
            <b>${unbroken(to)}</b></span>
          `
        )}: ${unbroken(outcome(change, kind, system))}
      </p>
      ${worsens.length > 0 && html`
        <p class="note">It worsens: ${worsens.join("; ")}.</p>
      `}
    </li>
  `;
}

/** What becomes of the check. */
function outcome(
  { makes, value, numberMeets }: Change,
  kind: Remedy["kind"],
  system: System,
): string {
  const number = value === undefined ? "" : `, ${showValue(value, kind, system)}`;
  switch (makes) {
    case "not-asked":
      return "then this check no longer applies.";
    case "marginal":
      return numberMeets
        ? `then its number meets${number}; it stays marginal until what it rests on is certain.`
        : `then it is marginal${number}.`;
    default:
      return `then it ${makes}${number}.`;
  }
}
