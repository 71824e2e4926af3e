/** Checks down, variants of a plan across: which check suffers in which. */
import type { VNode } from "preact";
import type { Verdict as Outcome } from "@/lib/evaluation/mod.ts";
import { fast } from "./fast.ts";
import { html } from "./html.ts";
import { capital } from "./show.ts";
import { unbroken } from "./unbroken.ts";
import { Verdict } from "./verdict.ts";
import { WORST_FIRST } from "./verdict_summary.ts";

/** How a check comes out in one variant. */
export interface MatrixCell {
  readonly verdict: Outcome;
  /** What was found, with its unit. */
  readonly value?: string;
}

/** One check in all variants. */
export interface MatrixRow {
  readonly title: string;
  /** Where more of it is shown. */
  readonly href?: string;
  /** As many as there are columns. */
  readonly cells: readonly MatrixCell[];
  /** The worst case in words; without, the worst verdict and where it is found. */
  readonly worst?: string;
}

/** What {@linkcode VerdictMatrix} shows. */
export interface VerdictMatrixProps {
  /** The variants: "E0", "E85". */
  readonly columns: readonly string[];
  readonly rows: readonly MatrixRow[];
}

/**
 * The table; on a narrow screen each check stands as a block, its variants below each other.
 *
 * @throws {RangeError} When a row has not as many cells as there are columns.
 */
export function VerdictMatrix({ columns, rows }: VerdictMatrixProps): VNode {
  for (const { title, cells } of rows) {
    if (cells.length !== columns.length) {
      throw new RangeError(`${title}: ${cells.length} cells for ${columns.length} columns`);
    }
  }
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label="Verdicts side by side">
      <table class="stacks columns">
        <caption>Verdicts side by side</caption>
        <thead>
          <tr>
            ${["Check", ...columns, "Worst case"].map((title) =>
              fast`<th scope="col">${title}</th>`
            )}
          </tr>
        </thead>
        <tbody>
          ${rows.map(({ title, href, cells, worst }) =>
            fast`<tr><th scope="row">${
              href === undefined ? title : html`<a href=${href}>${title}</a>`
            }</th>${
              cells.map(({ verdict, value }, i) =>
                fast`<td data-title="${columns[i] ?? ""}"><span>${Verdict({ verdict })}${
                  value === undefined ? null : ` ${unbroken(value)}`
                }</span></td>`
              )
            }<td data-title="Worst case">${unbroken(worst ?? worstOf(columns, cells))}</td></tr>`
          )}
        </tbody>
      </table>
    </div>
  `;
}

function worstOf(columns: readonly string[], cells: readonly MatrixCell[]): string {
  const worst = WORST_FIRST.find((each) => cells.some(({ verdict }) => verdict === each));
  if (worst === undefined) return "none";
  const where = columns.filter((_, i) => cells[i]?.verdict === worst);
  return where.length === columns.length
    ? `${capital(worst)} in all`
    : `${capital(worst)} at ${where.join(", ")}`;
}
