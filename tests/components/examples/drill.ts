/** Examples of what the Drill sheet is put together from: every demo, and a plan without a bar. */
import type { VNode } from "preact";
import { DrillDrawing } from "@/components/drill_drawing.ts";
import { DrillFuel, DrillHeld } from "@/components/drill_held.ts";
import { DrillHoles } from "@/components/drill_holes.ts";
import { DrillInjectors } from "@/components/drill_injectors.ts";
import { DrillPorts } from "@/components/drill_ports.ts";
import { html } from "@/components/html.ts";
import type { PlanShown } from "@/components/plan_shown.ts";
import { demos } from "@/routes/demos.ts";
import { planOf } from "../../helpers/plan_of.ts";
import { shownOf } from "../../helpers/shown_of.ts";
import type { Examples } from "./example.ts";

const NO_BAR = {
  version: 1,
  engine: {
    cycle: "four-stroke",
    cylinders: 4,
    power: "200 hp",
    powerSpeed: "7000 rpm",
    aspiration: "natural",
  },
  fuel: { name: "petrol" },
};

const PLANS: readonly (readonly [name: string, document: unknown])[] = [
  ...demos.map(({ name, plan }) => [name, plan] as const),
  ["no bar yet", NO_BAR],
];

/** One example for each plan; a part that a plan has nothing for stands in an empty block. */
function forEach(part: (shown: PlanShown) => VNode | undefined): Record<string, () => VNode> {
  return Object.fromEntries(
    PLANS.map(([name, document]) => [
      name,
      () => html`<div>${part(shownOf(planOf(document)))}</div>`,
    ]),
  );
}

/** The examples. */
export const drillExamples: Examples = {
  DrillDrawing: forEach(DrillDrawing),
  DrillHoles: forEach(DrillHoles),
  DrillInjectors: forEach(DrillInjectors),
  DrillPorts: forEach(DrillPorts),
  DrillHeld: forEach(DrillHeld),
  DrillFuel: forEach(DrillFuel),
};
