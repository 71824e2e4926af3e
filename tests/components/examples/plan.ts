/** Examples of what a plan is entered with. */
import { Assumed } from "@/components/assumed.ts";
import { AssumptionList } from "@/components/assumption_list.ts";
import { earlierOf, earlierOfBoxes } from "@/components/earlier.ts";
import { ErrorSummary } from "@/components/error_summary.ts";
import { Field, type FieldProps } from "@/components/field.ts";
import { html } from "@/components/html.ts";
import { NoteList } from "@/components/note_list.ts";
import { PLAN_FORM, PlanForm } from "@/components/plan_form.ts";
import { StartForm } from "@/components/start_form.ts";
import {
  type Assumption,
  boxesOf,
  type Field as Declared,
  fieldAt,
  planReady,
  readPlan,
  resolvePlan,
} from "@/lib/plan/mod.ts";
import demo from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import type { Examples } from "./example.ts";

await planReady();

const reading = readPlan(demo);
if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
/** The demo's boxes and what it resolves to. */
export const demoBoxes: ReadonlyMap<string, string> = boxesOf(reading.plan);
export const demoResolved: ReturnType<typeof resolvePlan> = resolvePlan(reading.plan);

const assumption: Assumption = {
  path: "fuel.temperature",
  label: "Fuel temperature in the rail",
  text: "40 °C",
  because: "Petrol after an hour under a hot bonnet",
  source: "common practice, no source",
};
const choice: Assumption = {
  path: "regulator.reference",
  label: "Reference",
  text: "manifold",
  because: "The pressure across the injectors stays the same",
  source: "common practice, no source",
};
const run: Assumption = {
  path: "supply.feed",
  label: "Feed, pump to rail",
  text: "hose, 3.5 m; 2 × straight fitting",
  rows: [{ piece: "hose", length: "3.5 m" }, { piece: "straight", count: 2 }],
  because: "Tank behind, engine in front",
  source: "ours",
};
const faults = [
  { path: "engine.power", message: "Enter a power with its unit, like 420 hp, 313 kW or 425 PS." },
  { path: "injectors.stages.0.flow", message: 'must be at most 6000 cc/min: "9e9" & <b>' },
  { path: "version", message: "This plan is of version 7, which is not known here." },
];
const typedWrong = new Map([...demoBoxes, ["engine.power", "lots"], [
  "injectors.stages.0.flow",
  `9e9 "&<b>`,
], ["fuel.name", "jet <fuel>"]]);

const withRuns = new Map([
  ...demoBoxes,
  ["pump.place", "line"],
  ["supply.feed.0.piece", "filter"],
  ["supply.feed.0.length", "1 m"],
  ["supply.feed.1.piece", "hose"],
  ["supply.feed.2.piece", "<jet>"],
  ["supply.lift.0.piece", "barb"],
]);

function field(path: string, props: Partial<FieldProps>): () => ReturnType<typeof Field> {
  return () => Field({ path, field: fieldAt(path) as Declared, text: "", ...props });
}

/** The examples. */
export const planExamples: Examples = {
  Field: {
    "given, said again in other units": field("engine.power", { text: "420 hp", echo: "= 313 kW" }),
    "converted on reading": field("injectors.stages.0.flow", {
      text: "95 lb/h",
      echo: "= 1050 cc/min",
      note: "A mass flow, at 684 kg/m³",
    }),
    "assumed quantity": field("fuel.temperature", { assumed: assumption, form: PLAN_FORM }),
    "assumed choice": field("regulator.reference", { assumed: choice, form: PLAN_FORM }),
    open: field("rail.bore", { missing: true }),
    fault: field("engine.power", { text: `lots "<of>" it`, fault: "Enter a power, like 420 hp." }),
    "fault in a choice": field("fuel.name", {
      text: "diesel",
      fault: "Diesel is not covered: its pressures are far above 10 bar.",
    }),
    "choice of an unknown word": field("fuel.name", { text: "<jet>" }),
    "choice to be made": field("fuel.name", {}),
    count: field("engine.cylinders", { text: "4" }),
    text: field("sheet.title", { text: "Blue <hatchback>" }),
    "in a row of small boxes": () =>
      html`
        <div>
          <p id="hints">Like 1.2 m</p>
          ${field("supply.feed.0.length", {
            text: "1.2 m",
            echo: "= 3.94 ft",
            note: "not used",
            hintAt: "hints",
          })()} ${field("supply.feed.0.piece", { hintAt: "hints", fault: "Choose <it>." })()}
        </div>
      `,
  },
  Assumed: {
    "with its button": () => Assumed({ assumed: assumption, form: PLAN_FORM, id: "x" }),
    "without a button": () => Assumed({ assumed: choice }),
    "rows of a list": () => Assumed({ assumed: run, form: PLAN_FORM, system: "inch" }),
  },
  AssumptionList: {
    none: () => AssumptionList({ assumed: [], fieldHref: (path) => `#${path}` }),
    "some, to be confirmed": () =>
      AssumptionList({
        assumed: [assumption, choice, run, { ...assumption, path: "injectors.stages.1.pressure" }],
        form: PLAN_FORM,
        fieldHref: (path) => `/p/1.abc/size#${path}`,
      }),
    "all of a demo": () =>
      AssumptionList({ assumed: demoResolved.assumed, fieldHref: (path) => `#${path}` }),
  },
  NoteList: {
    none: () => NoteList({ notes: {}, fieldHref: (path) => `#${path}` }) ?? html`<p></p>`,
    "a mass flow and an answer not used": () =>
      NoteList({
        notes: {
          "injectors.stages.0.flow": "95 lb/h & <more> is a mass flow",
          "engine.boost": "not used: the engine is said to be naturally aspirated",
        },
        fieldHref: (path) => `/p/1.abc/size#${path}`,
      }) ?? html`<p></p>`,
  },
  ErrorSummary: {
    one: () => ErrorSummary({ faults: faults.slice(0, 1) }),
    several: () => ErrorSummary({ faults }),
  },
  PlanForm: {
    "a demo": () =>
      PlanForm({
        boxes: demoBoxes,
        faults: [],
        ...demoResolved,
        earlier: earlierOf(demoResolved.values),
        system: "metric",
        open: "engine",
      }),
    "with faults": () =>
      PlanForm({
        boxes: typedWrong,
        faults: [...faults, { path: "pump.points", message: "Two points have the same pressure." }],
        assumed: [],
        missing: [],
        notes: {},
        earlier: earlierOfBoxes(typedWrong),
        system: "inch",
      }),
    "runs with pieces, one of them at fault": () =>
      PlanForm({
        boxes: withRuns,
        faults: [{ path: "supply.feed.1.length", message: "Length: it is missing." }],
        assumed: [run],
        missing: [],
        notes: {},
        earlier: earlierOfBoxes(withRuns),
        system: "metric",
      }),
    empty: () =>
      PlanForm({
        boxes: new Map(),
        faults: [],
        assumed: [],
        missing: [],
        notes: {},
        earlier: earlierOfBoxes(new Map()),
        system: "metric",
      }),
  },
  StartForm: {
    blank: () => StartForm({ boxes: new Map(), faults: [] }),
    "with faults": () => StartForm({ boxes: typedWrong, faults }),
  },
};
