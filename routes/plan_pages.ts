/** Makes the pages of a plan. Loaded when the first of them is asked for. */
import { BlendsPage } from "@/components/blends_page.ts";
import { ChangesPage } from "@/components/changes_page.ts";
import { DrawingPage } from "@/components/drawing_page.ts";
import {
  drawingOptions,
  PRINT_PAPERS,
  type PrintPaper,
  usualPaper,
} from "@/components/drawing_of.ts";
import { DrillPage } from "@/components/drill_page.ts";
import { HandOverPage } from "@/components/hand_over_page.ts";
import { mathmlReady } from "@/components/mathml.ts";
import type { PageProps } from "@/components/page.ts";
import type { PlanShown } from "@/components/plan_shown.ts";
import { ProvePage } from "@/components/prove_page.ts";
import { ShoppingPage } from "@/components/shopping_page.ts";
import { SizePage } from "@/components/size_page.ts";
import { STEPS } from "@/components/steps.ts";
import { WorkingPage } from "@/components/working_page.ts";
import { WorkshopPage } from "@/components/workshop_page.ts";
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
import { boxesOf, type Plan, planReady, resolvePlan, withBlankRow } from "@/lib/plan/mod.ts";
import { page } from "./page.ts";
import { sectionOf } from "./read_plan.ts";

/** The sheets of a plan, by the last part of their address. */
export type SheetName =
  | "size"
  | "drill"
  | "prove"
  | "hand-over"
  | "working"
  | "shopping"
  | "workshop"
  | "blends"
  | "changes"
  | "drawing";

/** The sheets beside the four steps: what they are called, and the step that they belong to. */
const BESIDE: Readonly<
  Partial<Record<SheetName, { readonly name: string; readonly step?: Step }>>
> = {
  working: { name: "The working" },
  shopping: { name: "Shopping list", step: "size" },
  workshop: { name: "Workshop sheet", step: "drill" },
  blends: { name: "Blends side by side", step: "size" },
  changes: { name: "What would do", step: "size" },
  drawing: { name: "Drawing", step: "drill" },
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
  /** The paper that the drawing is to be printed on, as the address has it. */
  readonly paper?: string | undefined;
  /** The section of the form to show opened, as the address has it. */
  readonly open?: string | undefined;
  /** A row of the form to be left blank, those behind it moved down. */
  readonly blank?: string | undefined;
  /** A list of the form that gets more blank rows. */
  readonly more?: string | undefined;
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

function shownOf({ plan, code, open = "", blank = "", more = "" }: PlanAt): PlanShown {
  const { values } = resolvePlan(plan);
  const boxes = boxesOf(plan);
  return {
    evaluation: evaluate(plan),
    values,
    boxes: withBlankRow(boxes, blank) ?? boxes,
    planPath: `/p/${code}`,
    system: values.sheet.units,
    open: sectionOf(blank || more || open),
    more,
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
    case "workshop":
      return WorkshopPage(shown);
    case "blends": {
      const { shares } = blendsOf(shown.values);
      return BlendsPage({ shown, comparison: evaluateBlends(at.plan, shares) });
    }
    case "drawing":
      return DrawingPage({ shown, paper: paperOf(shown, at.paper) });
    case "changes":
      return ChangesPage({ shown, remedies: whatWouldDo(at.plan, shown.evaluation) });
  }
}

/** The paper asked for; for any other word the usual one. */
function paperOf(shown: PlanShown, asked: string | undefined): PrintPaper {
  return PRINT_PAPERS.find((paper) => paper === asked) ?? usualPaper(shown);
}

/** The rail as a DXF file; undefined while there is none to draw. */
export async function railDxf(at: PlanAt): Promise<string | undefined> {
  await planReady();
  const shown = shownOf(at);
  const { layout } = shown.evaluation.results.drill;
  if (layout === undefined) return undefined;
  const { dxfOf } = await import("@/lib/drawing/mod.ts");
  return await dxfOf(layout, drawingOptions(shown, usualPaper(shown)));
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
