import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { earlierOf, earlierOfBoxes } from "@/components/earlier.ts";
import { PlanForm, type PlanFormProps } from "@/components/plan_form.ts";
import {
  boxesOf,
  type Field,
  type ListField,
  readPlan,
  resolvePlan,
  type Section,
  SECTIONS,
} from "@/lib/plan/mod.ts";
import { demoBoxes, demoResolved } from "./examples/plan.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

const demo: PlanFormProps = {
  boxes: demoBoxes,
  faults: [],
  ...demoResolved,
  earlier: earlierOf(demoResolved.values),
  system: "metric",
};

Deno.test("PlanForm's first button works the plan out: the return key presses that one", () => {
  const [first] = tags(rendered(PlanForm(demo)), "button");
  assertEquals(attribute(first, "name"), undefined);
});

Deno.test("PlanForm sends back every box that was filled", () => {
  const html = rendered(PlanForm(demo));
  const sent = new Set(
    [...tags(html, "input"), ...tags(html, "select")].map((tag) => attribute(tag, "name")),
  );
  assertEquals([...demoBoxes.keys()].filter((path) => !sent.has(path)), []);
});

Deno.test("PlanForm shows what was typed but is not asked for, and says that it is not used", () => {
  const boxes = new Map([...demoBoxes, ["engine.aspiration", "natural"]]);
  const html = rendered(PlanForm({ ...demo, boxes, earlier: earlierOfBoxes(boxes) }));
  const boost = tags(html, "input").filter((tag) => attribute(tag, "name") === "engine.boost");
  assertEquals(boost.map((tag) => [attribute(tag, "type"), attribute(tag, "value")]), [
    ["text", "1.6 bar"],
  ]);
  assertStringIncludes(textOf(html), "not used: the engine is said to be naturally aspirated.");
});

Deno.test("PlanForm leaves out what is not asked for while it is blank", () => {
  const boxes = new Map([["engine.aspiration", "natural"]]);
  const html = rendered(PlanForm({ ...demo, boxes, earlier: earlierOfBoxes(boxes) }));
  assertEquals(tags(html, "input").some((tag) => attribute(tag, "name") === "engine.boost"), false);
});

Deno.test("PlanForm shows a hidden field that holds a fault", () => {
  const boxes = new Map([["engine.aspiration", "natural"], ["engine.boost", "x"]]);
  const faults = [{ path: "engine.boost", message: "Enter a pressure." }];
  const html = rendered(PlanForm({ ...demo, boxes, faults, earlier: earlierOfBoxes(boxes) }));
  assertStringIncludes(html, `id="engine.boost"`);
});

Deno.test("PlanForm opens the sections with faults and the one asked for, no other", () => {
  const faults = [{ path: "pump.voltage", message: "Enter a voltage." }];
  const html = rendered(PlanForm({ ...demo, faults, open: "fuel" }));
  const open = tags(html, "details").filter((tag) => / open\b/.test(tag)).map((tag) =>
    attribute(tag, "id")
  );
  assertEquals(open, ["section-fuel", "section-pump"]);
});

Deno.test("PlanForm offers one blank row more than is filled, and more where asked, up to the most", () => {
  const rows = (filled: number, more?: string): number => {
    const boxes = new Map(
      Array.from({ length: filled }, (_, i) => [`pump.points.${i}.flow`, "100 L/h"] as const),
    );
    const html = rendered(PlanForm({ ...demo, boxes, more, earlier: earlierOfBoxes(boxes) }));
    return [...html.matchAll(/<legend>Pump point \d+/g)].length;
  };
  assertEquals([0, 3, 4, 9, 15, 16].map((filled) => rows(filled)), [4, 4, 5, 10, 16, 16]);
  assertEquals([0, 3, 4, 9, 15].map((filled) => rows(filled, "pump.points")), [6, 9, 10, 15, 16]);
  assertEquals(rows(3, "supply.feed"), 4);
});

Deno.test("a filled row can be removed, and one be inserted above it where order counts", () => {
  const buttons = (html: string, name: string): (string | undefined)[] =>
    tags(html, "button").filter((tag) => attribute(tag, "name") === name)
      .map((tag) => attribute(tag, "value"));
  const points = [{ pressure: "3 bar", flow: "200 L/h" }];
  const feed = [{ piece: "straight" }, { piece: "hose", length: "1 m" }];
  const html = formOf({ pump: { points }, supply: { feed } });
  assertEquals(buttons(html, "remove"), ["pump.points.0", "supply.feed.0", "supply.feed.1"]);
  assertEquals(buttons(html, "insert"), ["supply.feed.0", "supply.feed.1"]);
  const full = formOf({ supply: { feed: Array(14).fill({ piece: "straight" }) } });
  assertEquals(buttons(full, "insert"), []);
});

Deno.test("every section has a button that leads back to it", () => {
  const html = formOf({});
  const led = tags(html, "button").filter((tag) => attribute(tag, "name") === "stay")
    .map((tag) => `section-${attribute(tag, "value")}`);
  const sections = tags(html, "details").map((tag) => attribute(tag, "id"))
    .filter((id) => id !== undefined);
  assertEquals(led, sections);
});

Deno.test("PlanForm counts what is assumed in each section", () => {
  const html = rendered(PlanForm(demo));
  const inFuel = demoResolved.assumed.filter(({ path }) => path.startsWith("fuel.")).length;
  assert(inFuel > 0);
  assertStringIncludes(textOf(html), `Fuel ${inFuel} assumed`);
});

const LEAST = {
  version: 1,
  engine: {
    cycle: "four-stroke",
    cylinders: 4,
    power: "200 hp",
    powerSpeed: "6500 rpm",
    aspiration: "natural",
  },
  fuel: { name: "petrol" },
};

/** The form of a plan as its own page shows it. */
function formOf(sections: Record<string, unknown>): string {
  const reading = readPlan({ ...LEAST, ...sections });
  assert(reading.ok, JSON.stringify(reading));
  const found = resolvePlan(reading.plan);
  return rendered(PlanForm({
    ...found,
    boxes: boxesOf(reading.plan),
    faults: [],
    earlier: earlierOf(found.values),
    system: "metric",
  }));
}

/** The names of the boxes of a form, those of a part of the plan only. */
function boxNames(html: string, within: string): string[] {
  return [...tags(html, "input"), ...tags(html, "select")]
    .map((tag) => attribute(tag, "name") ?? "")
    .filter((name) => name.startsWith(within))
    .map((name) => name.slice(within.length));
}

Deno.test("between them, forms of a few plans ask for every field, each with a label", () => {
  const boosted = { ...LEAST.engine, aspiration: "boosted", powerAt: "wheels" };
  const html = [
    formOf({
      engine: boosted,
      fuel: { name: "blend" },
      regulator: { leastDrop: "0.4 bar" },
      rail: { count: 2, connection: "loop" },
      pump: { count: 2, place: "line", control: "reduced" },
      lift: { present: "lift" },
      supply: { feed: [{ piece: "filter" }] },
    }),
    formOf({
      pump: { drive: "engine" },
      regulator: { layout: "dead-ended", place: "feed" },
      rail: { shape: "own", ends: "blind" },
    }),
  ].join("");
  const labelled = new Set(tags(html, "label").map((tag) => attribute(tag, "for")));
  for (const [name, { fields }] of Object.entries<Section>(SECTIONS)) {
    for (const [key, field] of Object.entries<Field | ListField>(fields)) {
      const path = `${name}.${key}`;
      const paths = field.type === "list"
        ? Object.keys(field.fields).map((inner) => `${path}.0.${inner}`)
        : [path];
      // A filter stands in the feed; the blank rows of other runs can't know.
      const isFeed = path === "supply.feed";
      const lacks = paths.filter((each) =>
        !labelled.has(each) && (isFeed || !OF_FILTERS.test(each))
      );
      assertEquals(lacks, []);
    }
  }
});

/** Boxes that come once a row is known to be a filter. */
const OF_FILTERS = /^supply\.\w+\.0\.(flow2|loss2|dirtyLoss|fineness)$/;

Deno.test("a row of a run asks for what its piece has, a blank row for what any may have", () => {
  const feed = [{ piece: "hose", length: "1 m" }, { piece: "straight" }, { piece: "filter" }];
  const html = formOf({ supply: { feed } });
  const of = (row: number): string[] => boxNames(html, `supply.feed.${row}.`).toSorted();
  assertEquals(of(0), ["bore", "length", "piece", "rise", "size"].toSorted());
  assertEquals(of(1), ["bore", "count", "piece", "rise", "size"].toSorted());
  assertEquals(
    of(2),
    ["dirtyLoss", "fineness", "flow", "flow2", "loss", "loss2", "piece", "rise"].toSorted(),
  );
  assertEquals(
    of(3),
    ["bore", "count", "flow", "length", "loss", "piece", "rise", "size"].toSorted(),
  );
  assertEquals(of(4), []);
});

Deno.test("a piece can be cleared, so that its row goes", () => {
  const html = formOf({ supply: { feed: [{ piece: "straight" }] } });
  const select = html.slice(html.indexOf(`id="supply.feed.0.piece"`));
  assertStringIncludes(select.slice(0, select.indexOf("</select>")), `<option value>–</option>`);
});

Deno.test("what was typed into a row and is not used stays, and says so", () => {
  const html = formOf({ supply: { feed: [{ piece: "straight", length: "1 m" }] } });
  assert(boxNames(html, "supply.feed.0.").includes("length"));
  assertStringIncludes(textOf(html), "not used: only hose and tube have a length that counts.");
});

Deno.test("hints of rows stand once, and every box is described by its own", () => {
  const html = formOf({ lift: { present: "lift" }, pump: { place: "line" } });
  const described = tags(html, "input").filter((tag) => attribute(tag, "name")?.endsWith(".length"))
    .filter((tag) => attribute(tag, "name")?.startsWith("supply."))
    .map((tag) => attribute(tag, "aria-describedby"));
  assert(described.length >= 4);
  assertEquals(new Set(described), new Set(["supply.suction-length-hint"]));
  assertEquals(html.split("Of hose or tube, like 1.2 m").length, 2);
});

Deno.test("a run that is assumed is said above its rows, with a button that confirms it", () => {
  const html = formOf({});
  assertStringIncludes(textOf(html), "assumed hose, 3.5 m; 2 × 90° elbow, swept;");
  const confirm = tags(html, "button").filter((tag) => attribute(tag, "name") === "settle")
    .filter((tag) => attribute(tag, "value") === "supply.feed");
  assertEquals(confirm.map((tag) => attribute(tag, "aria-label")), ["Confirm Feed, pump to rail"]);
});

Deno.test("a list without a place is left out while blank, and kept with its reason while not", () => {
  assertEquals(boxNames(formOf({}), "supply.suction."), []);
  const html = formOf({ supply: { suction: [{ piece: "hose", length: "1 m" }] } });
  assert(boxNames(html, "supply.suction.").length > 0);
  assertStringIncludes(textOf(html), "not used: the pump sits in the tank.");
});

Deno.test("a measured loss of the feed is asked for until pieces are listed", () => {
  assert(boxNames(formOf({}), "supply.").includes("feedLoss"));
  const listed = formOf({ supply: { feed: [{ piece: "filter" }] } });
  assertEquals(boxNames(listed, "supply.").includes("feedLoss"), false);
});

Deno.test("no section of an engine-driven pump asks about wires", () => {
  const html = formOf({ pump: { drive: "engine" } });
  assertEquals(html.includes(`id="section-wiring"`), false);
  assertEquals(boxNames(html, "wiring."), []);
});

Deno.test("a form with faults asks for what its counts and quantities call for", () => {
  const boxes = new Map([
    ["engine.power", "lots"],
    ["rail.count", "2"],
    ["regulator.droop", "0.1 bar"],
    ["supply.branch.0.piece", "hose"],
  ]);
  const faults = [
    { path: "engine.power", message: "Enter a power." },
    { path: "supply.branch.0.length", message: "Length: it is missing." },
  ];
  const html = rendered(
    PlanForm({ ...demo, assumed: [], boxes, faults, earlier: earlierOfBoxes(boxes) }),
  );
  const names = boxNames(html, "");
  for (const name of ["rail.connection", "regulator.dropFlow", "supply.branch.1.piece"]) {
    assert(names.includes(name), name);
  }
  assertEquals(textOf(html).includes("not used"), false);
});
