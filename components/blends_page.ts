/** A plan at several ethanol shares side by side: which check suffers at which. */
import type { VNode } from "preact";
import {
  type BlendColumn,
  type BlendComparison,
  type BlendRow,
  type BlendsCompared,
  blendsOf,
  type NumberAcross,
} from "@/lib/evaluation/mod.ts";
import type { Check } from "@/lib/evaluation/mod.ts";
import { fieldAt } from "@/lib/plan/mod.ts";
import { formatNumber } from "@/lib/units/mod.ts";
import { fast } from "./fast.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";
import { sentence, showValue } from "./show.ts";
import { unbroken } from "./unbroken.ts";
import { Verdict } from "./verdict.ts";
import { type MatrixCell, type MatrixRow, VerdictMatrix } from "./verdict_matrix.ts";
import { WORST_FIRST } from "./verdict_summary.ts";

/** What {@linkcode BlendsPage} shows. */
export interface BlendsPageProps {
  readonly shown: PlanShown;
  /** The plan at the shares that `blendsOf` gives. */
  readonly comparison: BlendComparison;
}

/** The page: the worst case first, then numbers and checks by share. */
export function BlendsPage({ shown, comparison }: BlendsPageProps): VNode {
  return html`
    <p class="trail"><a href=${`${shown.planPath}/size`}>Back to the sheet</a></p>
    <h1>Blends side by side: which share is the hardest?</h1>
    ${comparison.ok
      ? compared(shown, comparison)
      : html`<p class="lead">${comparison.message} <a href=${`${shown.planPath}/size#fuel.name`}>Change the fuel</a></p>`}
  `;
}

function compared(shown: PlanShown, comparison: BlendsCompared): VNode {
  const { columns, rows } = comparison;
  const moved = rows.filter(({ worst }) => worst.share !== undefined);
  const alike = rows.filter(({ worst }) => worst.share === undefined);
  return html`
    <div>
      <p class="lead">${unbroken(worstCase(comparison))}</p>
      ${sharesOf(shown, comparison)}
      <section aria-labelledby="numbers">
        <h2 id="numbers">Numbers</h2>
        ${numbersTable(shown, comparison)}
        ${carriedNote(shown, comparison)}
      </section>
      <section aria-labelledby="verdicts">
        <h2 id="verdicts">Checks that the share moves: ${moved.length}</h2>
        ${VerdictMatrix({
          columns: columns.map(({ name }) => name),
          rows: moved.map((row) => matrixRow(shown, row)),
        })}
      </section>
      <section aria-labelledby="alike">
        <h2 id="alike">Checks that come out alike at all shares: ${alike.length}</h2>
        ${alikeList(shown, alike)}
      </section>
    </div>
  `;
}

function worstCase({ worst }: BlendsCompared): string {
  return worst === undefined
    ? "The share of ethanol moves no check."
    : sentence(`${worst.title} is the worst case, at ${worst.worst.because}`);
}

function sharesOf({ values, planPath }: PlanShown, { columns }: BlendsCompared): VNode {
  const { assumed } = blendsOf(values);
  const names = columns.map(({ name }) => name).join(", ");
  return html`
    <p>
      Ethanol by volume: ${unbroken(names)}${assumed && [
        ", ",
        html`<b>assumed</b>`,
        `. ${sentence(assumed.because)} Source: ${assumed.source}`,
      ]}. Each column is the whole plan worked out on that blend; lambda stays as in the plan.${" "}
      <a class="screen-only" href=${`${planPath}/size#fuel.blends`}>Change the shares</a>
    </p>
  `;
}

/** What was typed for the plan's own fuel and can't stand for another. */
function carriedNote({ boxes }: PlanShown, comparison: BlendsCompared): VNode | undefined {
  const { carried, problems } = comparison;
  if (carried.length === 0) return undefined;
  return html`
    <ul>
      ${carried.map(({ path, by }) =>
        html`
          <li>
            ${fieldAt(path)?.label}: ${unbroken(
              boxes.get(path) ?? "",
            )} belongs to the fuel of the plan,
            and is carried to the others ${by}.
          </li>
        `
      )}
      ${problems.map((problem) => html`<li>${problem}</li>`)}
    </ul>
  `;
}

function numbersTable(shown: PlanShown, { columns, numbers }: BlendsCompared): VNode {
  const names = columns.map(({ name, isOwn }) => isOwn ? `${name}, this plan` : name);
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label="Numbers by ethanol share">
      <table class="stacks columns">
        <caption>By ethanol share</caption>
        <thead>
          <tr>
            ${["Number", ...names].map((name) => fast`<th scope="col">${unbroken(name)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${numbers.map((number) => numberRow(shown, number, names))}
          ${tableRow("Checks to look at", columns.map(toLookAt), names)}
        </tbody>
      </table>
    </div>
  `;
}

function numberRow({ system }: PlanShown, number: NumberAcross, names: readonly string[]): VNode {
  const { title, kind, digits, values } = number;
  const texts = values.map((value) => {
    if (value === undefined) return "open";
    return digits === undefined ? showValue(value, kind, system) : formatNumber(value, digits);
  });
  return tableRow(title, texts, names);
}

function tableRow(title: string, texts: readonly string[], names: readonly string[]): VNode {
  return fast`<tr><th scope="row">${title}</th>${
    texts.map((text, i) =>
      fast`<td data-title="${unbroken(names[i] ?? "")}"><span>${unbroken(text)}</span></td>`
    )
  }</tr>`;
}

function toLookAt({ evaluation }: BlendColumn): string {
  const words = WORST_FIRST.filter((verdict) => verdict !== "meets").flatMap((verdict) => {
    const count = evaluation.checks.filter((check) => check.verdict === verdict).length;
    return count > 0 ? `${count} ${verdict}` : [];
  });
  return words.length > 0 ? words.join(", ") : "none";
}

function matrixRow(shown: PlanShown, { title, cells, worst }: BlendRow): MatrixRow {
  const href = hrefOf(shown, cells);
  return {
    title,
    ...(href !== undefined && { href }),
    cells: cells.map((cell): MatrixCell => cell ? shownCell(cell, shown) : NOT_JUDGED),
    worst: worst.because,
  };
}

const NOT_JUDGED: MatrixCell = { verdict: "open", value: "not judged" };

function shownCell({ verdict, value, kind }: Check, { system }: PlanShown): MatrixCell {
  return value === undefined ? { verdict } : { verdict, value: showValue(value, kind, system) };
}

/** Where the plan's own sheet says why; a check that only other blends have stands nowhere. */
function hrefOf(
  { evaluation, planPath }: PlanShown,
  cells: readonly (Check | undefined)[],
): string | undefined {
  const id = cells.find((cell) => cell !== undefined)?.id;
  const own = evaluation.checks.find((check) => check.id === id);
  return own && `${planPath}/${own.step}#check-${own.id}`;
}

function alikeList(shown: PlanShown, rows: readonly BlendRow[]): VNode {
  return html`
    <ul>
      ${WORST_FIRST.flatMap((verdict) => rows.filter(({ cells }) => cells[0]?.verdict === verdict))
        .map(({ title, cells }) =>
          html`<li>${Verdict({ verdict: cells[0]?.verdict ?? "open" })}${" "}<a
            href=${hrefOf(shown, cells)}
          >${title}</a></li>`
        )}
    </ul>
  `;
}
