/** Examples of whole pages and what stands around their content. */
import { DemoList } from "@/components/demo_list.ts";
import { ErrorSummary } from "@/components/error_summary.ts";
import { html } from "@/components/html.ts";
import { MessagePage } from "@/components/message_page.ts";
import { MESSAGES } from "@/components/messages.ts";
import { renderPage } from "@/components/page.ts";
import { SideBySide } from "@/components/side_by_side.ts";
import { StartPage } from "@/components/start_page.ts";
import { StepNav } from "@/components/step_nav.ts";
import { TitleBlock } from "@/components/title_block.ts";
import { checkExamples, checks } from "./checks.ts";
import { drillExamples } from "./drill.ts";
import type { Examples } from "./example.ts";
import { listExamples } from "./lists.ts";
import { methodExamples } from "./methods.ts";
import { planExamples } from "./plan.ts";

const STYLE = "/assets/style.css";
const demos = [
  {
    href: "/p/1.abc/size",
    title: "Hillclimb saloon, turbo four on E85",
    story: "A two-litre for short climbs at altitude, with two small pumps side by side.",
    verdicts: checks.map(({ verdict }) => verdict),
  },
  {
    href: "/p/1.abd/size",
    title: "Tourer <six>",
    story: "Twin carburettors no more.",
    verdicts: [],
  },
];
const sheet = {
  title: "Hillclimb saloon, turbo four on E85",
  number: "HS-04",
  revision: "A",
  date: undefined,
  creator: "R. M.",
};
const common = { stylesheet: STYLE, planPath: "/p/1.abc", sheet, assumedCount: 23, openCount: 1 };

const part = (from: Examples, component: string, name: string): unknown =>
  from[component]?.[name]?.();

/** The examples. */
export const pageExamples: Examples = {
  StepNav: {
    "no plan": () => StepNav({}),
    "on a step": () => StepNav({ step: "drill", planPath: "/p/1.abc" }),
  },
  TitleBlock: {
    "no plan": () => TitleBlock({ title: "Methods" }),
    "much is blank": () => TitleBlock({ title: "Plan", sheet: {}, assumedCount: 1, openCount: 0 }),
    full: () => TitleBlock({ title: "Plan", sheet, name: "Size, sheet 1 of 4", scale: "1:1" }),
  },
  SideBySide: {
    "two columns": () => SideBySide({ found: html`<p>found</p>`, entered: html`<p>entered</p>` }),
  },
  DemoList: { two: () => DemoList({ demos }) },
  MessagePage: Object.fromEntries(
    Object.entries(MESSAGES).map(([kind, message]) => [kind, () => MessagePage(message)]),
  ),
  StartPage: {
    blank: () => StartPage({ boxes: new Map(), faults: [], demos }),
    "with a fault": () =>
      StartPage({
        boxes: new Map([["engine.power", "lots"]]),
        faults: [{ path: "engine.power", message: "Enter a power, like 420 hp." }],
        demos,
      }),
  },
  renderPage: {
    start: () =>
      renderPage({
        title: "Start",
        stylesheet: STYLE,
        icon: "/assets/icon.svg",
        children: StartPage({ boxes: new Map(), faults: [], demos }),
      }),
    size: () =>
      renderPage({
        ...common,
        title: "Size",
        step: "size",
        children: SideBySide({
          found: html`
            <div>
              <h1>Will it feed the engine?</h1>
              ${part(checkExamples, "VerdictSummary", "all")}
              ${part(checkExamples, "CeilingsChart", "metric")}
              ${part(checkExamples, "CheckList", "all verdicts")}
              <h2>Still assumed</h2>
              ${part(planExamples, "AssumptionList", "all of a demo")}
            </div>
          `,
          entered: part(planExamples, "PlanForm", "a demo") as never,
        }),
      }),
    "size with faults": () =>
      renderPage({
        ...common,
        title: "Size",
        step: "size",
        hasErrors: true,
        children: [
          ErrorSummary({ faults: [{ path: "engine.power", message: "Enter a power." }] }),
          part(planExamples, "PlanForm", "with faults") as never,
        ],
      }),
    drill: () =>
      renderPage({
        ...common,
        title: "Drill",
        step: "drill",
        children: html`
          <div>
            <h1>Where does each hole go?</h1>
            ${part(drillExamples, "DrillDrawing", "hillclimb-four-e85")}
            ${part(listExamples, "HoleTable", "holes")}
            <h2>Order of operations</h2>
            ${part(listExamples, "StepList", "with detail and caution")}
          </div>
        `,
      }),
    prove: () =>
      renderPage({
        ...common,
        title: "Prove",
        step: "prove",
        children: html`
          <div>
            <h1>Is it dry?</h1>
            ${Array.from({ length: 8 }, () =>
              part(listExamples, "TickList", "with blanks and cautions"))}
          </div>
        `,
      }),
    working: () =>
      renderPage({
        ...common,
        title: "Working",
        children: html`
          <div>
            <h1>The working</h1>
            ${part(methodExamples, "Working", "three methods, one used twice")}
          </div>
        `,
      }),
    method: () =>
      renderPage({
        title: "Velocity",
        stylesheet: STYLE,
        children: part(methodExamples, "MethodPage", "a fit") as never,
      }),
    message: () =>
      renderPage({
        title: MESSAGES["cut-off"].title,
        stylesheet: STYLE,
        children: MessagePage(MESSAGES["cut-off"]),
      }),
  },
};
