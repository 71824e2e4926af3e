import { assertAlmostEquals, assertEquals } from "@std/assert";
import { type Criterion, judge, type Verdict } from "@/lib/evaluation/mod.ts";

const BASE = { id: "x", title: "X", step: "size", kind: "ratio", source: "ours" } as const;
const AT_MOST: Criterion = { ...BASE, sense: "at-most", limit: 0.9, aim: 0.8 };
const AT_LEAST: Criterion = { ...BASE, sense: "at-least", limit: 1, aim: 1.2 };
const WITHIN: Criterion = { ...BASE, sense: "within", limit: [1, 3] };
const AIM_ONLY: Criterion = { ...BASE, sense: "at-most", aim: 0.15, without: "a cross-check" };

const CASES: [Criterion, number | undefined, Verdict][] = [
  [AT_MOST, 0.8, "meets"],
  [AT_MOST, 0.800001, "marginal"],
  [AT_MOST, 0.9, "marginal"],
  [AT_MOST, 0.900001, "fails"],
  [AT_LEAST, 1.2, "meets"],
  [AT_LEAST, 1.19, "marginal"],
  [AT_LEAST, 1, "marginal"],
  [AT_LEAST, 0.99, "fails"],
  [WITHIN, 1, "meets"],
  [WITHIN, 3, "meets"],
  [WITHIN, 3.01, "fails"],
  [WITHIN, 0.9, "fails"],
  [AIM_ONLY, 5, "marginal"],
  [AIM_ONLY, 0.1, "meets"],
  [AT_MOST, undefined, "open"],
];

for (const [criterion, value, verdict] of CASES) {
  Deno.test(`judge() finds ${value} ${verdict} for ${criterion.sense} ${JSON.stringify(criterion.limit)}`, () => {
    assertEquals(judge(criterion, { value, because: "" }).verdict, verdict);
  });
}

Deno.test("judge() gives the margin to the limit, negative past it", () => {
  assertAlmostEquals(judge(AT_MOST, { value: 0.81, because: "" }).margin ?? 0, 0.1);
  assertAlmostEquals(judge(AT_LEAST, { value: 0.9, because: "" }).margin ?? 0, -0.1);
  assertAlmostEquals(judge(WITHIN, { value: 2, because: "" }).margin ?? 0, 1);
  assertEquals(judge(AT_MOST, { value: undefined, because: "" }).margin, undefined);
});

Deno.test("judge() never says better than the input allows", () => {
  assertEquals(judge(AT_MOST, { value: 0.1, because: "", atBest: "marginal" }).verdict, "marginal");
  assertEquals(judge(AT_MOST, { value: 2, because: "", atBest: "marginal" }).verdict, "fails");
  assertEquals(
    judge(AT_MOST, { value: undefined, because: "", atBest: "marginal" }).verdict,
    "open",
  );
});

Deno.test("judge() says no worse than what another means makes good", () => {
  const kinder = { because: "", atWorst: "marginal" } as const;
  assertEquals(judge(AT_MOST, { value: 2, ...kinder }).verdict, "marginal");
  assertEquals(judge(AT_MOST, { value: 0.1, ...kinder }).verdict, "meets");
});
