import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { earlierOf, earlierOfBoxes } from "@/components/earlier.ts";
import { PlanForm, type PlanFormProps } from "@/components/plan_form.ts";
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

Deno.test("PlanForm offers one blank row more than is filled, up to the most", () => {
  const rows = (filled: number): number => {
    const boxes = new Map(
      Array.from({ length: filled }, (_, i) => [`pump.points.${i}.flow`, "100 L/h"] as const),
    );
    const html = rendered(PlanForm({ ...demo, boxes, earlier: earlierOfBoxes(boxes) }));
    return [...html.matchAll(/<legend>Point \d+/g)].length;
  };
  assertEquals([0, 5, 6, 9, 10].map(rows), [6, 6, 7, 10, 10]);
});

Deno.test("PlanForm counts what is assumed in each section", () => {
  const html = rendered(PlanForm(demo));
  const inFuel = demoResolved.assumed.filter(({ path }) => path.startsWith("fuel.")).length;
  assert(inFuel > 0);
  assertStringIncludes(textOf(html), `Fuel ${inFuel} assumed`);
});
