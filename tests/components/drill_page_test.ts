import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import { DrillPage } from "@/components/drill_page.ts";
import { RailView } from "@/components/rail_view.ts";
import dragster from "@/seeds/dragster-vee-methanol.json" with { type: "json" };
import hillclimb from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import twin from "@/seeds/twin-rotor-staged.json" with { type: "json" };
import { planOf } from "../helpers/plan_of.ts";
import { shownOf } from "../helpers/shown_of.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

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

Deno.test("hole table: the port has its place, the pilot goes through, 9 mm only to the seat", () => {
  const rows = rowsOf(pageOf(hillclimb), "Sensor port");
  assertEquals(rows.map(([, , diameter]) => diameter), ["4.00 mm", "9.00 mm"]);
  const [pilot = [], spotting = []] = rows;
  // Midway between the injectors at 57 and 149 mm.
  assertStringIncludes(pilot[1] ?? "", "103.00 mm from the datum end");
  assertStringIncludes(pilot[3] ?? "", "through into the gallery");
  // 12 - 0.5 - (9 - 6.5) / 2 mm; the tip of a 90 degree drill is 4.5 mm ahead.
  assertStringIncludes(spotting[3] ?? "", "begins at 10.25 mm");
  assertStringIncludes(spotting[3] ?? "", "tip at 14.75 mm");
});

Deno.test("the drawing has the wide hole end at its seat and the pilot go on to the gallery", () => {
  const html = rendered(RailView({
    length_m: 0.4,
    height_m: 0.03,
    bore_m: 0.01,
    pocketBore_m: 0.012,
    stations_m: [0.1, 0.3],
    system: "metric",
    port: { at_m: 0.2, bore_m: 0.009, seat: { from_m: 0.004, to_m: 0.0065, pilot_m: 0.004 } },
  }));
  const paths = tags(html, "path").map((tag) => attribute(tag, "d"));
  assert(paths.includes("M195.5 0V4L198 6.5V10H202V6.5L204.5 4V0"), paths.join("\n"));
});

Deno.test("a port that does not fit has no depths in the hole table and is not drawn", () => {
  const html = pageOf(twin);
  assertEquals(rowsOf(html, "Sensor port").map(([, , diameter, depth]) => [diameter, depth]), [
    ["–", "does not fit: see the port"],
  ]);
  // The two pockets only.
  const hidden = tags(html, "path").filter((tag) => attribute(tag, "class") === "hidden");
  assertEquals(hidden.length, 2);
  assertStringIncludes(textOf(html), "it does not fit as planned. Do not drill it.");
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
  const html = pageOf(INCH);
  const rest = textOf(html)
    .replaceAll(/\d[\d.]* mm \([^)]* in\)/g, "")
    .replaceAll(/\d\.\d mm \([+−][\d.]+ in\)/g, "")
    .replaceAll(/A 9 mm drill serves M10x1|spotting drill of 9 mm/g, "");
  assertEquals(rest.match(/.{30}\d mm\b.{10}/g) ?? [], []);
});

Deno.test("the caution on alcohol is about what is bare: the bar, or its fittings", () => {
  assertStringIncludes(textOf(pageOf(hillclimb)), "the bare aluminium of this bar");
  const steel = textOf(pageOf(dragster));
  assertStringIncludes(steel, "alcohol and bare fittings");
  assert(!steel.includes("aluminium of this bar"));
});

Deno.test("what the hole table leaves out is said", () => {
  assertStringIncludes(
    textOf(pageOf(hillclimb)),
    "end plugs, feed and return ports, hold-down screws",
  );
});

Deno.test("hole table and depths agree on where the pilot opens", () => {
  const { evaluation } = shownOf(planOf(hillclimb));
  const opened = evaluation.results.port?.stack.at(-1)?.to_m ?? NaN;
  const said = Number(/open all round at ([\d.]+)/.exec(textOf(pageOf(hillclimb)))?.[1]);
  assertAlmostEquals(said / 1000, opened, 5e-6);
});
