import { assertEquals, assertStringIncludes } from "@std/assert";
import { Field } from "@/components/field.ts";
import { type Assumption, type Field as Declared, fieldAt } from "@/lib/plan/mod.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

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
  assertEquals(attribute(button, "name"), "confirm");
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
