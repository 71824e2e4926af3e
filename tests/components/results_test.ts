import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { CeilingsChart } from "@/components/ceilings_chart.ts";
import { CheckList } from "@/components/check_list.ts";
import { Formula, mathmlReady } from "@/components/mathml.ts";
import { RailView } from "@/components/rail_view.ts";
import { VerdictSummary } from "@/components/verdict_summary.ts";
import { CRITERIA, judge } from "@/lib/evaluation/mod.ts";
import { method } from "@/lib/method/mod.ts";
import { checks } from "./examples/checks.ts";
import { attribute, rendered, tags, textOf } from "./render.ts";

Deno.test("CheckList puts what fails first, what meets last", () => {
  const html = rendered(CheckList({ checks, system: "metric" }));
  const verdicts = tags(html, "li").map((tag) =>
    attribute(tag, "class")?.slice("check check-".length)
  );
  assertEquals(verdicts.length, checks.length);
  const order = ["fails", "open", "marginal", "meets"].map((each) => verdicts.indexOf(each));
  assertEquals(order, order.toSorted((a, b) => a - b));
  assert(order.every((at) => at >= 0));
});

Deno.test("CheckList shows value, limit, aim and margin in the plan's units", () => {
  const text = textOf(rendered(CheckList({ checks: checks.slice(2, 3), system: "inch" })));
  assertStringIncludes(
    text,
    "found 0.260 in limit at least 0.079 in aim at least 0.118 in margin to limit over 200 %",
  );
});

Deno.test("CheckList says of a marginal check only what holds of one that was capped too", () => {
  // Far on the right side, but its figures were scaled: at best marginal.
  const capped = judge(CRITERIA.pumpMargin, { value: 1.26, because: "Scaled", atBest: "marginal" });
  const text = textOf(rendered(CheckList({ checks: [capped], system: "metric" })));
  assertStringIncludes(text, "marginal past the aim, or not certain: 1");
});

Deno.test("CheckList links to the working where there is one", () => {
  const html = rendered(CheckList({ checks, system: "metric", workingHref: (r) => `/w#${r}` }));
  assertEquals(tags(html, "a").map((tag) => attribute(tag, "href")).toSorted(), [
    "/w#injectors.0.dutyPeak",
    "/w#pump.margin",
  ]);
});

Deno.test("VerdictSummary counts", () => {
  const html = rendered(VerdictSummary({ verdicts: ["meets", "fails", "meets"] }));
  assertEquals(textOf(html), "1 fails 2 meets");
});

const ceiling = (id: string, power_W?: number) => ({
  id,
  title: id,
  dependsOnPower: true,
  power_W,
  because: "so",
});

Deno.test("CeilingsChart draws bars in proportion, the lowest first", () => {
  const html = rendered(CeilingsChart({
    ceilings: [ceiling("b", 200e3), ceiling("none"), ceiling("a", 100e3)],
    target_W: 150e3,
    system: "metric",
  }));
  const bars = tags(html, "rect");
  assertEquals(bars.map((tag) => attribute(tag, "width")), ["50.00%", "100.00%"]);
  assertEquals(bars.map((tag) => attribute(tag, "class")), ["bar-short", "bar-long"]);
  const target = tags(html, "line").find((tag) => attribute(tag, "class") === "target");
  assertEquals(attribute(target, "x1"), "75.00%");
  assertStringIncludes(
    textOf(html),
    "the lowest known is that of the a, at 100 kW, short of the target of 150 kW; not known: none",
  );
  assertStringIncludes(textOf(html), "none no number");
});

Deno.test("CeilingsChart cuts a bar far beyond the target and says so", () => {
  const html = rendered(
    CeilingsChart({ ceilings: [ceiling("a", 9e6)], target_W: 1e5, system: "metric" }),
  );
  assertStringIncludes(textOf(html), "a: 9000 kW, beyond the chart");
});

const rail = {
  length_m: 0.4,
  height_m: 0.03,
  bore_m: 0.014,
  pocketBore_m: 0.012,
  stations_m: [0.1, 0.3],
  system: "metric",
} as const;

Deno.test("RailView draws at true proportion and writes every place from one end", () => {
  const html = rendered(RailView({ ...rail, port: { at_m: 0.2, bore_m: 0.009 } }));
  const [bar] = tags(html, "rect");
  assertEquals([attribute(bar, "width"), attribute(bar, "height")], ["400", "30"]);
  const pockets = tags(html, "path").map((tag) => attribute(tag, "d"));
  assert(pockets.includes("M94 30V22H106V30"), "a pocket from the lower face to the gallery");
  assert(pockets.includes("M195.5 0V8H204.5V0"), "the port from the upper face to the gallery");
  const figures = [...html.matchAll(/<text[^>]*>([^<]*)</g)].map(([, text]) => text);
  assertEquals(figures.toSorted(), ["100.00", "200.00", "30.00", "300.00", "400.00", "Ø14.00"]);
});

Deno.test("RailView says that it is not to scale, unless it is", () => {
  assertStringIncludes(textOf(rendered(RailView(rail))), "not to scale");
  assertStringIncludes(textOf(rendered(RailView({ ...rail, scale: "1:1" }))), "scale 1:1");
});

Deno.test("RailView keeps figures of near neighbours apart", () => {
  const html = rendered(RailView({ ...rail, stations_m: [0.1, 0.101, 0.102] }));
  const places = [...html.matchAll(/<text x="([\d.]+)"[^>]*>1\d\d\.00</g)].map(([, x]) =>
    Number(x)
  );
  const size = Number(attribute(tags(html, "svg")[0], "font-size"));
  assertEquals(places.length, 3);
  for (let i = 1; i < 3; i++) assert((places[i] ?? 0) - (places[i - 1] ?? 0) >= size);
});

Deno.test("Formula says the result's symbol, the formula, and no inline style", async () => {
  await mathmlReady();
  const half = method({
    id: "half-of-a-test",
    title: "Half",
    inputs: { whole: { unit: "m", min: 0, max: 1, says: "Whole", symbol: "w" } },
    output: { name: "half", unit: "m", min: 0, max: 1, says: "Half", symbol: "h" },
    formula: "whole > 0.5 ? whole / 2 : whole / 2",
    source: "arithmetic",
    compute: ({ whole }) => whole / 2,
  });
  const html = rendered(Formula(half));
  assertStringIncludes(html, "<mi>h</mi>");
  assertStringIncludes(html, "<mfrac><mi>w</mi><mn>2</mn></mfrac>");
  assert(!html.includes("style="));
});
