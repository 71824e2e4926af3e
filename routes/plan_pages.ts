/** Makes the pages of a plan. Loaded when the first of them is asked for. */
import { BlendsPage } from "@/components/blends_page.ts";
import { ChangesPage } from "@/components/changes_page.ts";
import { DrillPage } from "@/components/drill_page.ts";
import { FaultsPage } from "@/components/faults_page.ts";
import { HandOverPage } from "@/components/hand_over_page.ts";
import { mathmlReady } from "@/components/mathml.ts";
import type { PageProps } from "@/components/page.ts";
import type { PlanShown } from "@/components/plan_shown.ts";
import { ProvePage } from "@/components/prove_page.ts";
import { ShoppingPage } from "@/components/shopping_page.ts";
import { SizePage } from "@/components/size_page.ts";
import { QUESTIONS } from "@/components/start_form.ts";
import { STEPS } from "@/components/steps.ts";
import { WorkingPage } from "@/components/working_page.ts";
import { methodById } from "@/lib/book/mod.ts";
import {
  blendsOf,
  evaluate,
  evaluateBlends,
  shoppingCsv,
  shoppingList,
  type Step,
  whatWouldDo,
} from "@/lib/evaluation/mod.ts";
import {
  type Boxes,
  boxesOf,
  closedUp,
  type Fault,
  type Plan,
  planFromBoxes,
  planReady,
  type Reading,
  readPlan,
  resolvePlan,
  settle,
} from "@/lib/plan/mod.ts";
import { page } from "./page.ts";
import { startPage } from "./start_page.ts";

/** The sheets of a plan, by the last part of their address. */
export type SheetName =
  | "size"
  | "drill"
  | "prove"
  | "hand-over"
  | "working"
  | "shopping"
  | "blends"
  | "changes";

/** The sheets beside the four steps: what they are called, and the step that they belong to. */
const BESIDE: Readonly<
  Partial<Record<SheetName, { readonly name: string; readonly step?: Step }>>
> = {
  working: { name: "The working" },
  shopping: { name: "Shopping list", step: "size" },
  blends: { name: "Blends side by side", step: "size" },
  changes: { name: "What would do", step: "size" },
};

/** A plan and the address that holds it. */
export interface PlanAt {
  readonly plan: Plan;
  /** The plan, packed. */
  readonly code: string;
  /** The whole address that opens it elsewhere. */
  readonly link: string;
  /** True to show every step of the working opened. */
  readonly isOpen?: boolean;
}

/** What becomes of a form: the plan, or the page that says what can't be taken. */
export type Taken =
  | { readonly plan: Plan; readonly confirmed: string | undefined }
  | { readonly page: string };

/** Reads a plan document once units can be read. */
export async function read(document: unknown): Promise<Reading> {
  await planReady();
  return readPlan(document);
}

/**
 * Takes the boxes of a form. The box `confirm` names an assumption that the
 * user settles: its value is written into the plan as if typed.
 */
export async function takeBoxes(sent: Boxes): Promise<Taken> {
  const boxes = closedUp(sent);
  const document = planFromBoxes(boxes);
  const reading = await read(document);
  if (!reading.ok) return { page: faultsPage(boxes, reading.faults) };
  const confirmed = boxes.get("confirm");
  if (confirmed === undefined) return { plan: reading.plan, confirmed };
  const assumption = resolvePlan(reading.plan).assumed.find(({ path }) => path === confirmed);
  if (assumption === undefined) return { plan: reading.plan, confirmed };
  const settled = settle(boxes, assumption);
  const again = await read(planFromBoxes(settled));
  return again.ok ? { plan: again.plan, confirmed } : { page: faultsPage(settled, again.faults) };
}

/** The form again: the start page when all that is wrong stands there, else the whole form. */
function faultsPage(boxes: Boxes, faults: readonly Fault[]): string {
  const asked = new Set(QUESTIONS.flatMap(({ paths }) => paths));
  // Only the whole form sends the units of the sheets.
  const fromStart = !boxes.has("sheet.units");
  if (fromStart && faults.every(({ path }) => asked.has(path))) return startPage({ boxes, faults });
  return page({
    title: "Some answers can't be taken",
    hasErrors: true,
    children: FaultsPage({ boxes, faults }),
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

/** One sheet of a plan. */
export async function sheetPage(sheet: SheetName, at: PlanAt): Promise<string> {
  await planReady();
  const shown = shownOf(at);
  const { evaluation, values, planPath } = shown;
  const step = STEPS.find(({ id }) => id === sheet);
  if (sheet === "working") await mathmlReady();
  const beside = BESIDE[sheet];
  const belongsTo = step?.id ?? beside?.step;
  return page({
    title: `${step?.name ?? beside?.name}: ${values.sheet.title ?? "plan without a title"}`,
    planPath,
    sheet: sheetFacts(values.sheet),
    ...(belongsTo && { step: belongsTo }),
    ...(beside && { sheetName: beside.name }),
    ...(sheet === "drill" && { scale: "none" }),
    assumedCount: evaluation.assumed.length,
    openCount: evaluation.checks.filter(({ verdict }) => verdict === "open").length,
    children: contentOf(sheet, shown, at),
  });
}

function shownOf({ plan, code }: PlanAt): PlanShown {
  const { values } = resolvePlan(plan);
  return {
    evaluation: evaluate(plan),
    values,
    boxes: boxesOf(plan),
    planPath: `/p/${code}`,
    system: values.sheet.units,
  };
}

function contentOf(sheet: SheetName, shown: PlanShown, at: PlanAt): PageProps["children"] {
  switch (sheet) {
    case "size":
      return SizePage(shown);
    case "drill":
      return DrillPage(shown);
    case "prove":
      return ProvePage(shown);
    case "hand-over":
      return HandOverPage({ shown, link: at.link });
    case "working":
      return WorkingPage({ shown, methodOf: methodById, isOpen: at.isOpen });
    case "shopping":
      return ShoppingPage(shown);
    case "blends": {
      const { shares } = blendsOf(shown.values);
      return BlendsPage({ shown, comparison: evaluateBlends(at.plan, shares) });
    }
    case "changes":
      return ChangesPage({ shown, remedies: whatWouldDo(at.plan, shown.evaluation) });
  }
}

/** The shopping list as comma-separated values. */
export async function shoppingSheet(plan: Plan): Promise<string> {
  await planReady();
  const { values } = resolvePlan(plan);
  return shoppingCsv(shoppingList(evaluate(plan), values), values.sheet.units);
}

/** What the title block takes, without what is not given. */
function sheetFacts(sheet: PlanShown["values"]["sheet"]): PageProps["sheet"] {
  const { title, number, revision, date, owner, creator, approver } = sheet;
  return { title, number, revision, date, owner, creator, approver };
}
