import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { drawingMarks } from "@/components/drawing_marks.ts";
import { DrawingSheet } from "@/components/drawing_sheet.ts";
import { html } from "@/components/html.ts";
import { drawingSheets, type Mark, STROKES } from "@/lib/drawing/mod.ts";
import { INCH, METRIC } from "../lib/drawing/options.ts";
import { roundBar } from "../lib/drawing/sample_layouts.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

const CSS = await Deno.readTextFile(new URL("../../components/style.css", import.meta.url));

function drawn(marks: readonly Mark[]): string {
  return rendered(html`<svg>${drawingMarks(marks, 100)}</svg>`);
}

Deno.test("a sheet is as large as its paper, in millimetres, and named for those who can't see it", () => {
  const [sheet] = drawingSheets(roundBar(), INCH);
  assert(sheet);
  const page = rendered(html`<${DrawingSheet} sheet=${sheet} title="Left rail" />`);
  const [svg] = tags(page, "svg");
  assertEquals(attribute(svg, "width"), "279.4mm");
  assertEquals(attribute(svg, "height"), "215.9mm");
  assertEquals(attribute(svg, "viewBox"), "0 0 279.4 215.9");
  assertEquals(attribute(svg, "aria-label"), "Left rail: Overview, scale 1:1");
  assertEquals(attribute(tags(page, "figure")[0], "class"), "drawing-sheet paper-letter-landscape");
});

Deno.test("nothing on a sheet is styled inline", () => {
  for (const sheet of drawingSheets(roundBar(), METRIC)) {
    assertEquals(
      / style=/.test(rendered(html`<${DrawingSheet} sheet=${sheet} title="a" />`)),
      false,
    );
  }
});

Deno.test("y runs up on a drawing and down in SVG", () => {
  const mark: Mark = { kind: "line", layer: "outline", type: "01.2", from: [1, 2], to: [3, 40] };
  const [path] = tags(drawn([mark]), "path");
  assertEquals(attribute(path, "d"), "M1 98L3 60");
  assertEquals(attribute(path, "class"), "outline line-01-2");
});

Deno.test("arcs go counter-clockwise from their begin to their end, the long way where they are long", () => {
  const arc = (to_deg: number): Mark => ({
    kind: "arc",
    layer: "ports",
    type: "01.1",
    centre: [50, 50],
    radius: 10,
    from_deg: 0,
    to_deg,
  });
  assertEquals(attribute(tags(drawn([arc(90)]), "path")[0], "d"), "M60 50A10 10 0 0 0 50 40");
  assertEquals(attribute(tags(drawn([arc(270)]), "path")[0], "d"), "M60 50A10 10 0 1 0 50 60");
});

Deno.test("words that look like markup are shown as words", () => {
  const mark: Mark = {
    kind: "text",
    layer: "text",
    at: [10, 10],
    height: 2.5,
    anchor: "middle",
    turned: 90,
    says: `<b>"Ø8" & more`,
  };
  const page = drawn([mark]);
  assertEquals(tags(page, "b"), []);
  assertStringIncludes(textOf(page), "&lt;b&gt;&quot;Ø8&quot; &amp; more");
  assertEquals(attribute(tags(page, "text")[0], "transform"), "translate(10 90) rotate(-90)");
});

Deno.test("the stylesheet draws each line type with the width and dashes of its table", () => {
  const rule = (name: string) =>
    [...CSS.matchAll(/([^{}]*)\{([^{}]*)\}/g)].filter(([, selector = ""]) =>
      selector.includes(".drawing-sheet") && selector.includes(name)
    ).map(([, , body]) => body).join("");
  for (const [type, { width, dashes }] of Object.entries(STROKES)) {
    const own = rule(`.line-${type.replace(".", "-")}`);
    const base = rule(".drawing-sheet path");
    const said = /stroke-width: ([\d.]+)/.exec(own)?.[1] ??
      /stroke-width: ([\d.]+)/.exec(base)?.[1];
    assertEquals(Number(said), width, type);
    const dash = /stroke-dasharray: ([\d. ]+)/.exec(own)?.[1] ?? "";
    assertEquals(dash.split(" ").filter(Boolean).map(Number), [...dashes], type);
  }
});
