import { assert, assertEquals, assertMatch, assertStringIncludes } from "@std/assert";
import fc from "fast-check";
import { WorkshopPage } from "@/components/workshop_page.ts";
import { equivalentLine, figureLimits, signed, toolSize } from "@/components/workshop_words.ts";
import { WORKSHOP_CAUTIONS } from "@/lib/evaluation/mod.ts";
import { DEFERS } from "@/lib/walkround/mod.ts";
import { demos } from "@/routes/demos.ts";
import hillclimb from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import tourer from "@/seeds/tourer-six-e10.json" with { type: "json" };
import { arbitraryPlan, mended } from "../helpers/arbitrary_plan.ts";
import { UNFIT_TEXT } from "../helpers/finite.ts";
import { planOf } from "../helpers/plan_of.ts";
import { shownOf } from "../helpers/shown_of.ts";
import { faultsIn } from "./markup.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

const pageOf = (document: unknown): string => rendered(WorkshopPage(shownOf(planOf(document))));

/** Random plans tried. */
const RUNS = 150;

for (const { name, plan } of demos) {
  Deno.test(`the page of ${name}: sound markup, every tool named at a step stands in the list`, () => {
    const html = pageOf(plan);
    assertEquals(faultsIn(`<main>${html}</main>`), []);
    const ids = new Set(tags(html, "tr").map((tag) => attribute(tag, "id")));
    const links = tags(html, "a").map((tag) => attribute(tag, "href") ?? "")
      .filter((href) => href.startsWith("#tool-"));
    assert(links.length > 5, `${links.length} links`);
    assertEquals(links.filter((href) => !ids.has(href.slice(1))), []);
  });
}

Deno.test("each caution stands in full once, each box that has one says who comes first", () => {
  const html = pageOf(hillclimb);
  const boxes = [...html.matchAll(/<aside class="cautions">([^]*?)<\/aside>/g)].map(([, box]) =>
    textOf(box ?? "")
  );
  assert(boxes.length > 5, `${boxes.length} boxes`);
  const said = boxes.join("\n").replaceAll("\u00a0", " ");
  for (const [id, { title, says }] of Object.entries(WORKSHOP_CAUTIONS)) {
    // The bar of the demo has plugs: nothing is welded.
    const times = id === "welding" ? 0 : 1;
    for (const point of says("metric")) assertEquals(said.split(point).length - 1, times, point);
    assertEquals(said.includes(`Caution: ${title}`), times === 1, id);
  }
  for (const box of boxes) {
    assertEquals(box.includes("Source:"), box.includes(DEFERS), box);
  }
});

Deno.test("an inch sheet is in inches, with the names of the drills there are", () => {
  const said = textOf(pageOf(tourer)).replaceAll("\u00a0", " ");
  assertStringIncludes(said, "0.5000 in (1/2 in)");
  assertStringIncludes(said, "0.5512 in (14.0 mm)");
  assertStringIncludes(said, "30.0 psi");
  // What is left in millimetres is a name: of a drill, or of the blade that is compared.
  const millimetres = said.match(/\d[\d.]* mm\b/g) ?? [];
  assertEquals(millimetres.filter((each) => !/^\d+\.\d mm$|^0\.051 mm$/.test(each)), []);
});

Deno.test("without a bar the page says what to enter, and where", () => {
  const html = pageOf({ version: 1, engine: hillclimb.engine, fuel: { name: "petrol" } });
  assertMatch(textOf(html), /No sheet yet/);
  assertStringIncludes(html, 'href="/p/1.abc/size#rail.bore"');
  assertEquals(tags(html, "table").length, 0);
});

Deno.test("each measured number has a line to be written on", () => {
  const html = pageOf(hillclimb);
  const inspection = html.slice(html.indexOf('id="inspection"'));
  const blanks = inspection.match(/<span class="blank">/g) ?? [];
  const lines = inspection.match(/<span class="line">/g) ?? [];
  assert(blanks.length > 20, `${blanks.length} blanks`);
  assertEquals(lines.length, blanks.length);
  assertMatch(textOf(inspection), /Pocket 4: 14\.000\smm to 14\.027\smm/);
});

Deno.test("on any plan the page reads as it should", () => {
  let tables = 0;
  fc.assert(
    fc.property(arbitraryPlan, (document) => {
      const { rail, ...rest } = document as { readonly rail?: object };
      const plan = mended({ ...rest, rail: { ...rail, bore: "12 mm", height: "40 mm" } });
      if (plan === undefined) return;
      const html = rendered(WorkshopPage(shownOf(plan)));
      const said = textOf(html);
      assert(!UNFIT_TEXT.test(said), UNFIT_TEXT.exec(said)?.[0]);
      assert(!/\bsafe/i.test(said));
      assertEquals(faultsIn(`<main>${html}</main>`), []);
      tables += tags(html, "table").length;
    }),
    { numRuns: RUNS, seed: 5 },
  );
  assert(tables > RUNS / 10, `only ${tables} sheets`);
});

Deno.test("drills in words: sign, both bases, inside or not", () => {
  const drill = {
    name: "23/64 in",
    diameter_m: 9.128125e-3,
    error_m: 1.28125e-4,
    heightIso: 0.805,
    heightUs: 0.671,
    inside: true,
  };
  assertEquals(
    equivalentLine(drill, "metric"),
    "23/64 in (+0.128 mm), thread height 80.5 % ISO, 67.1 % US, inside the limits",
  );
  assertMatch(equivalentLine({ ...drill, inside: false }, "metric"), /outside the limits$/);
  assertEquals(signed(-1e-4, "inch"), "−0.0039 in");
  assertEquals(signed(0, "metric"), "exact");
  assertEquals(toolSize(0.0127, "metric"), "12.70 mm");
  assertEquals(toolSize(9.128125e-3, "metric"), "9.13 mm (23/64 in)");
});

Deno.test("limits in words", () => {
  const of = { name: "it", kind: "length", isFine: false } as const;
  const none = { nominal: undefined, least: undefined, most: undefined };
  assertEquals(
    figureLimits({ ...of, nominal: 0.149, least: 0.1489, most: 0.1491 }, "metric"),
    "149.00 mm ±\u00a00.10 mm",
  );
  assertEquals(
    figureLimits({ ...of, ...none, most: 1e-4, isFine: true }, "metric"),
    "under 0.100 mm",
  );
  assertEquals(figureLimits({ ...of, ...none, least: 0.002 }, "inch"), "at least 0.079 in");
  assertEquals(
    figureLimits({ ...of, ...none, kind: "torque", least: 8.46, most: 9.54 }, "metric"),
    "8.46 N m to 9.54 N m",
  );
});
