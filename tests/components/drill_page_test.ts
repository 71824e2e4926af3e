import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import { DrillPage } from "@/components/drill_page.ts";
import dragster from "@/seeds/dragster-vee-methanol.json" with { type: "json" };
import hillclimb from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import twin from "@/seeds/twin-rotor-staged.json" with { type: "json" };
import { planOf } from "../helpers/plan_of.ts";
import { shownOf } from "../helpers/shown_of.ts";
import { rendered, textOf } from "./render.ts";

const pageOf = (document: unknown): string => rendered(DrillPage(shownOf(planOf(document))));

/** The cells of the hole table's rows whose name begins so. */
function rowsOf(html: string, name: string): string[][] {
  return [...html.matchAll(/<tr[^>]*>([^]*?)<\/tr>/g)]
    .map(([, row = ""]) =>
      [...row.matchAll(/<t[hd][^>]*>([^]*?)<\/t[hd]>/g)].map(([, c]) => c ?? "")
    )
    .map((cells) => cells.map(textOf))
    .filter(([first]) => first?.startsWith(name));
}

/** The hill climb's bar with the sheet in inches. */
const INCH = { ...hillclimb, sheet: { ...hillclimb.sheet, units: "inch" } };

/** A round bar that the gallery leaves no wall of. */
const THIN = {
  ...hillclimb,
  rail: {
    ...hillclimb.rail,
    shape: "round",
    width: undefined,
    height: "20 mm",
    bore: "18 mm",
    drilledFrom: "one",
  },
  sensor: { port: "M10x1-cone" },
};

/** The cells of a row of the hole table, by the hole's name without its number. */
function hole(html: string, name: string): string[] {
  const [found = []] = rowsOf(html, "").filter(([first]) => first?.replace(/^\d+ /, "") === name);
  return found;
}

Deno.test("hole table: every hole has its place and its cuts, the port ends at its seat and pilot", () => {
  const html = pageOf(hillclimb);
  const [, face, x, y, z, size = ""] = hole(html, "Sensor port");
  // Midway between the injectors at 57 and 149 mm, in the middle of a bar 30 mm wide.
  assertEquals([face, x, y, z], ["Opposite face", "103", "15", ""]);
  // 12 - 0.5 - (9 - 6.5) / 2 mm to where the cone begins.
  assertStringIncludes(size, "Ø9 x 10.25; seat Ø9, 90°; Ø4 x");
  assertEquals(hole(html, "Pocket 2").slice(1, 4), ["Injector face", "149", "15"]);
  assertEquals(hole(html, "Plug, far end")[1], "Far end");
});

Deno.test("a port that does not fit is marked in the table and in the drawing, with the reason", () => {
  const html = pageOf(twin);
  assertStringIncludes(hole(html, "Sensor port").at(-1) ?? "", "TROUBLE: too little full thread");
  const [svg = ""] = /<svg[^]*?<\/svg>/.exec(html) ?? [];
  assert(svg.includes('class="trouble'), "no mark of trouble in the drawing");
});

Deno.test("the sheet leads with what fails, before what is open or assumed", () => {
  const { evaluation } = shownOf(planOf(twin));
  const fails = evaluation.checks.filter((c) => c.step === "drill" && c.verdict === "fails").length;
  assert(fails > 1);
  const text = textOf(pageOf(twin));
  const [first, last] = [`Do not drill: ${fails} checks fail.`, "Do not drill yet:"].map((words) =>
    text.indexOf(words)
  );
  assert((first ?? -1) > 0 && (last ?? -1) > (first ?? 0));
  assert(!textOf(pageOf(hillclimb)).includes("Do not drill:"));
});

Deno.test("without a wall the sheet shows no length below zero", () => {
  const text = textOf(pageOf(THIN));
  assertStringIncludes(text, "Do not drill:");
  assertStringIncludes(text, "No depths to drill to");
  assertEquals(rowsOf(pageOf(THIN), "Least wall left")[0]?.[1], "none");
  assertEquals(rowsOf(pageOf(THIN), "Full thread before")[0]?.[1], "none");
  assertEquals(new Set(text.match(/It takes [^ ]+ mm more/g)).size, 1);
});

Deno.test("an inch sheet says millimetres only where they are a drill's or a thread's own name", () => {
  const html = pageOf(INCH).replaceAll(/<svg[^]*?<\/svg>/g, "");
  const rest = textOf(html)
    .replaceAll(/\d[\d.]* mm \([^)]* in\)/g, "")
    .replaceAll(/\d[\d.]* mm (?:the standard's list|metric)/g, "")
    .replaceAll(/\d\.\d mm \([+−][\d.]+ in\)/g, "")
    // The material's own words: a temper is promised by its size.
    .replaceAll("extruded bar over 20 mm", "")
    .replaceAll(/A 9 mm drill serves M10x1|spotting drill of 9 mm/g, "");
  assertEquals(rest.match(/.{30}\d mm\b.{10}/g) ?? [], []);
});

Deno.test("the caution on alcohol is about what is bare: the bar, or its fittings", () => {
  assertStringIncludes(textOf(pageOf(hillclimb)), "the bare aluminium of this bar");
  const steel = textOf(pageOf(dragster));
  assertStringIncludes(steel, "alcohol and bare fittings");
  assert(!steel.includes("aluminium of this bar"));
});

Deno.test("hole table and depths agree on where the pilot opens", () => {
  const { evaluation } = shownOf(planOf(hillclimb));
  const opened = evaluation.results.port?.stack.at(-1)?.to_m ?? NaN;
  const [, said = ""] = /Ø4 x ([\d.]+)/.exec(hole(pageOf(hillclimb), "Sensor port").at(-1) ?? "") ??
    [];
  assertAlmostEquals(Number(said) / 1000, opened, 5e-6);
});

Deno.test("spacers, play and screws stand on the sheet with the plan's own numbers", () => {
  const text = textOf(pageOf(hillclimb));
  assertStringIncludes(text, "Injector 1 0.80 mm");
  assertStringIncludes(text, "Boss 2 142.00 mm 14.60 mm");
  assertStringIncludes(text, "2 screws M6x1, class 8.8");
  assertStringIncludes(text, "Stand the rail's injector face");
});

Deno.test("a plan without a bar says what to enter, and has no drawing", () => {
  const html = pageOf({
    version: 1,
    engine: hillclimb.engine,
    fuel: { name: "petrol" },
  });
  assert(!html.includes("drawing-sheet"));
  assertStringIncludes(textOf(html), "The drawing needs the bar and its bore");
});
