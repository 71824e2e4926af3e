/** Examples of what goes to the drill press. */
import { WorkshopInspection } from "@/components/workshop_inspection.ts";
import { WorkshopOrder } from "@/components/workshop_order.ts";
import { WorkshopPage } from "@/components/workshop_page.ts";
import { WorkshopTools } from "@/components/workshop_tools.ts";
import type { Workshop } from "@/lib/evaluation/mod.ts";
import { demos } from "@/routes/demos.ts";
import { planOf } from "../../helpers/plan_of.ts";
import { shownOf } from "../../helpers/shown_of.ts";
import type { Examples } from "./example.ts";

const sheet: Workshop = {
  missing: undefined,
  operations: [{
    id: "sensor-port",
    title: "Sensor port <M10x1>",
    does: ["Pilot.", "Seat & thread."],
    why: "In one set-up.",
    blocked: "It does not fit",
    cautions: ["taps"],
    holes: ["port-sensor"],
    tools: ["drill-4000", "tap-10000"],
    source: "common practice, no source",
  }, {
    id: "prove",
    title: "Prove",
    does: ["Go on."],
    why: undefined,
    blocked: undefined,
    cautions: ["taps"],
    holes: [],
    tools: [],
    source: "common practice, no source",
  }],
  tools: [{
    id: "drill-4000",
    kind: "drill",
    diameter_m: 0.004,
    included_rad: undefined,
    thread: undefined,
    holes: ["port-sensor"],
    serves: "Sensor port",
    deepest_m: 0.05,
    depthRatio: 12.5,
    clearing: "deep",
    limits: undefined,
    equivalents: [],
    noEquivalent: "None is near: buy this one.",
    leave: { from: 2.5e-4, to: 4e-4 },
    before: [],
    setting: undefined,
    notes: [],
    source: "common practice, no source",
  }],
  inspection: [{
    id: "flush",
    time: "bar",
    says: "Flush.",
    with: "solvent",
    why: "It stops injectors.",
    notes: [],
    figures: [],
    source: "common practice, no source",
  }],
};

/** The examples. */
export const workshopExamples: Examples = {
  WorkshopOrder: {
    "two steps, one that must not be done": () => WorkshopOrder({ sheet, system: "inch" }),
  },
  WorkshopTools: {
    "one without a speed": () => WorkshopTools({ sheet, system: "metric", drills: "inch" }),
    none: () => WorkshopTools({ sheet: { ...sheet, tools: [] }, system: "metric", drills: "both" }),
  },
  WorkshopInspection: {
    "one without a number": () => WorkshopInspection({ sheet, system: "metric" }),
  },
  WorkshopPage: Object.fromEntries(
    demos.map(({ name, plan }) => [name, () => WorkshopPage(shownOf(planOf(plan)))]),
  ),
};
