/** What the evaluation makes of pump, gauge and weakest part for the leak tests. */
import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import { type Check, evaluate, type Evaluation, type Verdict } from "@/lib/evaluation/mod.ts";
import { planOf } from "../../helpers/plan_of.ts";

/** A four-cylinder engine at 3 bar and 1 bar of boost: works at 4.30 bar, so 1.5 times is 6.45. */
function evaluated(sections: Record<string, unknown>): Evaluation {
  return evaluate(planOf({
    version: 1,
    engine: {
      cycle: "four-stroke",
      cylinders: 4,
      power: "300 hp",
      powerSpeed: "7000 rpm",
      aspiration: "boosted",
      boost: "1 bar",
    },
    fuel: { name: "petrol" },
    injectors: { stages: [{ flow: "1000 cc/min", pressure: "3 bar", deadTime: "1.2 ms" }] },
    rail: { bore: "12 mm", height: "25 mm" },
    ...sections,
  }));
}

function find({ checks }: Evaluation, id: string): Check {
  const check = checks.find((each) => each.id === id);
  assert(check, id);
  return check;
}

const FAULTS: [says: string, pump: object, fault_Pa: number | undefined, isLeast: boolean][] = [
  ["nothing of the pump", {}, undefined, true],
  ["one point", { points: [{ pressure: "9.5 bar", flow: "60 L/h" }] }, 9.5e5, true],
  [
    "the highest of several points, whatever their order",
    {
      points: [
        { pressure: "5 bar", flow: "250 L/h" },
        { pressure: "9.5 bar", flow: "60 L/h" },
        { pressure: "3 bar", flow: "300 L/h" },
      ],
    },
    9.5e5,
    true,
  ],
  [
    "a last point without flow",
    {
      points: [{ pressure: "3 bar", flow: "300 L/h" }, { pressure: "8.5 bar", flow: "0 L/h" }],
    },
    8.5e5,
    false,
  ],
  [
    "a relief valve below the curve's end",
    { points: [{ pressure: "9.5 bar", flow: "60 L/h" }], shutOff: "7 bar" },
    7e5,
    false,
  ],
];
for (const [says, pump, fault_Pa, isLeast] of FAULTS) {
  Deno.test(`fault pressure from ${says}`, () => {
    const fault = evaluated({ pump }).results.proof?.fault;
    assertEquals(fault?.isLeast ?? true, isLeast);
    assertEquals(fault === undefined, fault_Pa === undefined);
    if (fault_Pa !== undefined) assertAlmostEquals(fault?.pressure_Pa ?? 0, fault_Pa, 1e-6);
  });
}

const RATINGS: [says: string, pump: object, rating: string, verdict: Verdict, because: string][] = [
  [
    "shut-off known",
    { shutOff: "9 bar" },
    "10 bar",
    "meets",
    "Proof wants 9.00 bar, the most that",
  ],
  ["shut-off not known", {}, "10 bar", "marginal", "Until the pump's shut-off"],
  [
    "a point of the curve known",
    { points: [{ pressure: "9.5 bar", flow: "60 L/h" }] },
    "10 bar",
    "marginal",
    "Proof wants at least 9.50 bar, what a fault can make",
  ],
  [
    "a point of the curve above the rating",
    { points: [{ pressure: "9.5 bar", flow: "60 L/h" }] },
    "9 bar",
    "fails",
    "relief valve",
  ],
];
for (const [says, pump, weakestRating, verdict, because] of RATINGS) {
  Deno.test(`rating over proof with ${says}: ${verdict}`, () => {
    const proof = { weakestPart: "feed hose", weakestRating };
    const check = find(evaluated({ pump, proof }), "proof-rating");
    assertEquals(check.verdict, verdict);
    assertStringIncludes(check.because, because);
    assert(!check.because.includes("comes off"), check.because);
  });
}

Deno.test("a dead end behind a check valve never meets, as its shut-in fuel is not computed", () => {
  const dead = (weakestRating: string, feed = [{ piece: "check-valve" }]) =>
    find(
      evaluated({
        pump: { shutOff: "9 bar" },
        regulator: { layout: "dead-ended" },
        supply: { feed },
        proof: { weakestPart: "feed hose", weakestRating },
      }),
      "proof-rating",
    );
  const strong = dead("10 bar");
  assertEquals(strong.verdict, "marginal");
  assertStringIncludes(
    strong.because,
    "Proof wants at least 9.00 bar, the most that the pump can make; fuel shut in and warmed may " +
      "make more",
  );
  assert(!strong.because.includes("Until the pump's"), strong.because);
  assertEquals(dead("8 bar").verdict, "fails");
  // Without a valve between them, the regulator lets shut-in fuel by.
  assertEquals(dead("10 bar", []).verdict, "meets");
});

Deno.test("a weakest part that comes off for the proof is said to", () => {
  const proof = { weakestPart: "regulator", weakestRating: "14 bar" };
  const { because } = find(evaluated({ pump: { shutOff: "9 bar" }, proof }), "proof-rating");
  assertStringIncludes(because, "The regulator comes off for the proof");
});

Deno.test("a gauge past the limit says that bubbles decide, and the time that it would need", () => {
  const evaluation = evaluated({ proof: { gaugeResolution: "0.02 bar" } });
  const check = find(evaluation, "gauge-steps");
  assertEquals(check.verdict, "marginal");
  assertStringIncludes(check.because, "Past the limit, but the bubbles under water decide");
  // Three steps of 2000 Pa at the rate that the expected fall has within its hold.
  const { numbers } = evaluation.results.proof ?? {};
  assert(numbers);
  const hours = 3 * 2000 / (numbers.expectedFall_Pa / numbers.airHold_s) / 3600;
  assertStringIncludes(check.because, `${hours.toFixed(0)} h.`);
});
