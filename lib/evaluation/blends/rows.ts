/** The checks of several evaluations side by side, and the worst case of each. */
import type { System } from "@/lib/units/mod.ts";
import { type Bound, type Check, judge, type Sense, type Verdict } from "../check.ts";
import type { Evaluation } from "../evaluation.ts";
import { inWords } from "./numbers.ts";
import { shareText } from "./shares.ts";

/** Where a check comes out worst. */
export interface WorstCase {
  /** Ethanol by volume there [-]; undefined when all shares are alike. */
  readonly share: number | undefined;
  /** In words: "85 %: fails, 93.1 %; limit at most 90.0 %". */
  readonly because: string;
}

/** One check at every share. */
export interface BlendRow {
  /** The check's id. */
  readonly id: string;
  /** What is judged, as a noun phrase. */
  readonly title: string;
  /** The check as each column's evaluation made it; undefined where it made none. */
  readonly cells: readonly (Check | undefined)[];
  /** The worst of them. */
  readonly worst: WorstCase;
}

/** One evaluation and the share it is for. */
export interface AtShare {
  /** Ethanol by volume [-]. */
  readonly share: number;
  /** The evaluation of the plan on that blend. */
  readonly evaluation: Evaluation;
}

/** From what to look at first to what is in order: what is open may yet fail. */
const WORST_FIRST: readonly Verdict[] = ["fails", "open", "marginal", "meets"];

/** Puts the checks side by side, in the order of the evaluation. */
export function rowsOf(columns: readonly AtShare[], system: System): readonly BlendRow[] {
  return idsOf(columns).map((id) => {
    const cells = columns.map(({ evaluation }) => evaluation.checks.find((c) => c.id === id));
    const title = cells.find((cell) => cell !== undefined)?.title ?? id;
    return { id, title, cells, worst: worstOf(columns, cells, system) };
  });
}

/**
 * Finds the row to look at first.
 *
 * @param rows The rows of a comparison.
 * @returns That with the worst verdict among those that the share moves; of equal ones one that
 * comes out better at another share, then the smallest margin. Undefined when the share moves none.
 */
export function worstRow(rows: readonly BlendRow[]): BlendRow | undefined {
  const moved = rows.filter(({ worst }) => worst.share !== undefined);
  return moved.toSorted((a, b) => compare(keyOf(a), keyOf(b)))[0];
}

function keyOf({ cells }: BlendRow): readonly number[] {
  const worst = cells[indexOfWorst(cells)];
  if (worst === undefined) return [Infinity];
  const isSpared = cells.some((cell) => cell !== undefined && cell.verdict !== worst.verdict);
  return [rankOf(worst), isSpared ? 0 : 1, marginOf(worst)];
}

function compare(a: readonly number[], b: readonly number[]): number {
  const i = a.findIndex((key, i) => key !== b[i]);
  return (a[i] ?? 0) < (b[i] ?? 0) ? -1 : i < 0 ? 0 : 1;
}

/** All ids; one that only some evaluations have stands where those have it. */
function idsOf(columns: readonly AtShare[]): string[] {
  const ids: string[] = [];
  for (const { evaluation } of columns) {
    let next = 0;
    for (const { id } of evaluation.checks) {
      const at = ids.indexOf(id);
      if (at < 0) ids.splice(next, 0, id);
      next = at < 0 ? next + 1 : at + 1;
    }
  }
  return ids;
}

type Cells = readonly (Check | undefined)[];

function worstOf(columns: readonly AtShare[], cells: Cells, system: System): WorstCase {
  if (isAlike(cells, system)) return { share: undefined, because: "alike at all" };
  const at = indexOfWorst(cells);
  const [share, check] = [columns[at]?.share, cells[at]];
  if (share === undefined || check === undefined) throw new RangeError("a row without any check");
  return { share, because: `${shareText(share)}: ${said(check, system)}` };
}

/** The first of the worst, so that equal ones go to the lowest share. */
function indexOfWorst(cells: Cells): number {
  let worst = -1;
  cells.forEach((cell, i) => {
    if (cell !== undefined && (worst < 0 || isWorse(cell, cells[worst]))) worst = i;
  });
  return worst;
}

function isWorse(a: Check, b: Check | undefined): boolean {
  return b === undefined || compare([rankOf(a), marginOf(a)], [rankOf(b), marginOf(b)]) < 0;
}

function rankOf({ verdict }: Check): number {
  return WORST_FIRST.indexOf(verdict);
}

function marginOf({ margin }: Check): number {
  return margin ?? Infinity;
}

/** Whether a sheet would write the same for all shares: less than that is rounding. */
function isAlike(cells: Cells, system: System): boolean {
  const written = new Set(cells.map((cell) => cell && asWritten(cell, system)));
  return written.size === 1;
}

function asWritten(check: Check, system: System): string {
  const { verdict, value, kind, limit, aim } = check;
  const found = value === undefined ? "" : inWords(value, kind, system);
  const bounds = [limit, aim].map((bound) => bound && boundText(bound, check, system));
  return [verdict, found, ...bounds].join("; ");
}

function said(check: Check, system: System): string {
  const { verdict, value, because } = check;
  if (value === undefined) return `${verdict}. ${because}`;
  const found = `${verdict}, ${inWords(value, check.kind, system)}`;
  if (isUncertain(check)) return `${found}, not certain`;
  const [name, bound] = verdict === "fails" || check.aim === undefined
    ? ["limit", check.limit]
    : ["aim", check.aim];
  return bound === undefined ? found : `${found}; ${name} ${boundText(bound, check, system)}`;
}

/** Marginal by what its value rests on, not by the value. */
function isUncertain({ verdict, value, because, aim, ...check }: Check): boolean {
  if (verdict !== "marginal" || value === undefined) return false;
  const { id, title, step, kind, sense, source } = check;
  const asked = { id, title, step, kind, sense, source, ...(aim !== undefined && { aim }) };
  return judge(asked, { value, because }).verdict === "meets";
}

const SENSES: Readonly<Record<Sense, string>> = {
  "at-most": "at most ",
  "at-least": "at least ",
  within: "",
};

function boundText(bound: Bound, { kind, sense }: Check, system: System): string {
  const ends = typeof bound === "number" ? [bound] : bound;
  return SENSES[sense] + ends.map((end) => inWords(end, kind, system)).join(" to ");
}
