import { assertEquals, assertStringIncludes } from "@std/assert";
import { ErrorSummary } from "@/components/error_summary.ts";
import { Field } from "@/components/field.ts";
import { labelOf } from "@/components/label_of.ts";
import { type Assumption, type Field as Declared, fieldAt } from "@/lib/plan/mod.ts";
import { unitsReady } from "@/lib/units/mod.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

await unitsReady();

const power = fieldAt("engine.power") as Declared;
const fuel = fieldAt("fuel.name") as Declared;
const reference = fieldAt("regulator.reference") as Declared;
const assumed: Assumption = {
  path: "regulator.reference",
  label: "Reference",
  text: "manifold",
  because: "Pressure across the injectors stays the same",
  source: "ours",
};

Deno.test("Field is described by its hint, then its fault", () => {
  const html = rendered(
    Field({ path: "engine.power", field: power, text: "lots", fault: "Enter a power." }),
  );
  const [input] = tags(html, "input");
  assertEquals(attribute(input, "aria-describedby"), "engine.power-hint engine.power-fault");
  assertEquals(attribute(input, "aria-invalid"), "true");
  assertEquals(attribute(input, "value"), "lots");
  assertStringIncludes(textOf(html), "Not taken: Enter a power.");
});

Deno.test("Field and ErrorSummary say the label that a message begins with once", () => {
  const path = "injectors.stages.1.flow";
  const field = fieldAt(path) as Declared;
  const message = `${field.label}: "3 bar" is a pressure. Enter a volume flow.`;
  assertStringIncludes(
    textOf(rendered(Field({ path, field, text: "3 bar", fault: message }))),
    "Not taken: &quot;3 bar&quot; is a pressure.",
  );
  assertStringIncludes(
    textOf(rendered(ErrorSummary({ faults: [{ path, message }] }))),
    "Stage 2, Static flow of one injector: &quot;3 bar&quot; is a pressure.",
  );
});

Deno.test("Field says a metric default in inches too where the plan is in inches", () => {
  const path = "fuel.temperature";
  const field = fieldAt(path) as Declared;
  const warm: Assumption = { ...assumed, path, label: field.label, text: "40 °C" };
  const said = (system: "metric" | "inch"): string =>
    textOf(rendered(Field({ path, field, text: "", assumed: warm, system })));
  assertStringIncludes(said("inch"), "assumed 40 °C (104.0 °F): ");
  assertStringIncludes(said("metric"), "assumed 40 °C: ");
});

Deno.test("Field takes a quantity as text, without a keypad of figures", () => {
  const [quantity] = tags(
    rendered(Field({ path: "engine.power", field: power, text: "" })),
    "input",
  );
  const cylinders = fieldAt("engine.cylinders") as Declared;
  const [count] = tags(
    rendered(Field({ path: "engine.cylinders", field: cylinders, text: "4" })),
    "input",
  );
  assertEquals([attribute(quantity, "type"), attribute(quantity, "inputmode")], [
    "text",
    undefined,
  ]);
  assertEquals([attribute(count, "type"), attribute(count, "inputmode")], ["text", "numeric"]);
});

Deno.test("Field says what is assumed and offers to confirm it", () => {
  const html = rendered(
    Field({ path: assumed.path, field: reference, text: "", assumed, form: "plan-form" }),
  );
  assertStringIncludes(textOf(html), "assumed intake manifold pressure: Pressure across");
  const [button] = tags(html, "button");
  assertEquals(attribute(button, "name"), "settle");
  assertEquals(attribute(button, "value"), "regulator.reference");
  assertEquals(attribute(button, "form"), "plan-form");
});

Deno.test("Field keeps quiet about assumptions once a value is given", () => {
  const html = rendered(
    Field({ path: assumed.path, field: reference, text: "atmosphere", assumed, form: "x" }),
  );
  assertEquals(tags(html, "button"), []);
  assertStringIncludes(html, `<option value="atmosphere" selected>`);
});

Deno.test("Field lists what is not covered, so that choosing it gives the reason", () => {
  const html = rendered(Field({ path: "fuel.name", field: fuel, text: "" }));
  assertStringIncludes(html, `<option value="diesel">diesel (not covered)</option>`);
});

Deno.test("Field keeps a word that it does not know", () => {
  const html = rendered(Field({ path: "fuel.name", field: fuel, text: "jet", fault: "Choose." }));
  assertStringIncludes(html, `<option value="jet" selected>jet</option>`);
});

Deno.test("Field in a row of small boxes is described by the hint at the head of its list", () => {
  const path = "supply.feed.2.length";
  const field = fieldAt(path) as Declared;
  const html = rendered(
    Field({
      path,
      field,
      text: "",
      fault: "Length: it is missing.",
      hintAt: "supply.feed-length-hint",
    }),
  );
  const [input] = tags(html, "input");
  assertEquals(
    attribute(input, "aria-describedby"),
    "supply.feed-length-hint supply.feed.2.length-fault",
  );
  assertEquals(textOf(html), "Length Not taken: it is missing.");
});

Deno.test("an assumption of a list is called what its rows are together", () => {
  assertEquals(labelOf("supply.feed"), "Feed, pump to rail");
  assertEquals(labelOf("supply.feed.1.length"), "Feed piece 2, Length");
});
