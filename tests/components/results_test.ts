import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { CeilingsChart } from "@/components/ceilings_chart.ts";
import { CheckList } from "@/components/check_list.ts";
import { Formula, mathmlReady } from "@/components/mathml.ts";
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

Deno.test("CeilingsChart calls no bar cut that ends before the chart does", () => {
  // The axis goes on to 300 kW, the next round number beyond 2.5 times the target.
  const html = rendered(
    CeilingsChart({ ceilings: [ceiling("a", 280e3)], target_W: 1.1e5, system: "metric" }),
  );
  assertEquals(attribute(tags(html, "rect")[0], "width"), "93.33%");
  assert(!textOf(html).includes("beyond the chart"));
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
