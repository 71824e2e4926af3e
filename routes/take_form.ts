/** What becomes of a form that was sent: a plan, or the form again with what can't be taken. */
import { FaultsPage } from "@/components/faults_page.ts";
import { QUESTIONS } from "@/components/start_form.ts";
import {
  belowBlankRow,
  type Boxes,
  closedUp,
  type Fault,
  fieldAt,
  type Plan,
  planFromBoxes,
  planReady,
  resolvePlan,
  rowAt,
  settle,
  withBlankRow,
  withoutRow,
} from "@/lib/plan/mod.ts";
import { page } from "./page.ts";
import { read, sectionOf } from "./read_plan.ts";
import { startPage } from "./start_page.ts";

/** The plan and where on its sheet to go on, or the page that says what can't be taken. */
export type Taken =
  | {
    readonly plan: Plan;
    /** What goes behind the address of the sheet: query and fragment. */
    readonly place: string;
  }
  | { readonly page: string };

/**
 * Takes the boxes of a form. A button may have sent along what else it does:
 * `confirm` and `settle` name an assumption that is written into the plan as if typed,
 * `remove` and `insert` a row that goes, or that a blank one is put before,
 * `more` a list that gets more blank rows, `stay` the section to go on in.
 */
export async function takeBoxes(sent: Boxes): Promise<Taken> {
  const removed = sent.get("remove");
  const boxes = closedUp(removed === undefined ? sent : withoutRow(sent, removed));
  const blank = blankIn(sent);
  const reading = await read(planFromBoxes(boxes));
  if (!reading.ok) return { page: faultsPage(boxes, reading.faults, blank) };
  const place = placeAfter(sent, blank);
  const confirmed = boxes.get("confirm") ?? boxes.get("settle");
  const assumption = resolvePlan(reading.plan).assumed.find(({ path }) => path === confirmed);
  if (assumption === undefined) return { plan: reading.plan, place };
  const settled = settle(boxes, assumption);
  const again = await read(planFromBoxes(settled));
  return again.ok ? { plan: again.plan, place } : { page: faultsPage(settled, again.faults) };
}

/** The row that is to be blank, counted as if there were no blank ones before it. */
function blankIn(sent: Boxes): string | undefined {
  const at = rowAt(sent.get("insert") ?? "");
  if (at?.field.ordered === undefined) return undefined;
  const isFilled = (row: number): boolean =>
    [...sent].some(([name, text]) => name.startsWith(`${at.list}.${row}.`) && text.trim() !== "");
  const before = Array.from({ length: at.row }, (_, row) => row).filter(isFilled).length;
  return `${at.list}.${before}`;
}

/** Where whoever pressed a button finds what he was at. */
function placeAfter(sent: Boxes, blank: string | undefined): string {
  if (sent.has("confirm")) return "#assumed";
  if (blank !== undefined) return `?blank=${blank}#${blank}`;
  const more = sent.get("more") ?? "";
  if (fieldAt(more)?.type === "list") return `?more=${more}#${more}`;
  const path = sent.get("settle") ?? sent.get("remove") ?? "";
  const section = sectionOf(path || (sent.get("stay") ?? ""));
  if (section === undefined) return "";
  return `?open=${section}#${/^[\w.]+$/.test(path) ? path : `section-${section}`}`;
}

/** The form again: the start page when all that is wrong stands there, else the whole form. */
function faultsPage(boxes: Boxes, faults: readonly Fault[], blank = ""): string {
  const asked = new Set(QUESTIONS.flatMap(({ paths }) => paths));
  // Only the whole form sends the units of the sheets.
  const fromStart = !boxes.has("sheet.units");
  if (fromStart && faults.every(({ path }) => asked.has(path))) return startPage({ boxes, faults });
  const parted = withBlankRow(boxes, blank);
  return page({
    title: "Some answers can't be taken",
    hasErrors: true,
    children: FaultsPage({
      boxes: parted ?? boxes,
      more: boxes.get("more"),
      faults: parted
        ? faults.map((fault) => ({ ...fault, path: belowBlankRow(fault.path, blank) }))
        : faults,
    }),
  });
}

/** The form again, for a plan that no link can hold. */
export async function tooLong(boxes: Boxes): Promise<string> {
  await planReady();
  return faultsPage(boxes, [{
    path: "sheet.remarks",
    message:
      "The plan is too long for a link. Shorten the remarks and the other texts of the sheet.",
  }]);
}
