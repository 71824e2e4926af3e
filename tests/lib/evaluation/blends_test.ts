/** A plan at several ethanol shares: what each column is, what is carried to it, what is worst. */
import { assert, assertEquals, assertMatch, assertStringIncludes, assertThrows } from "@std/assert";
import fc from "fast-check";
import { InputError } from "@/lib/basics/mod.ts";
import { type BlendsCompared, blendsOf, evaluateBlends } from "@/lib/evaluation/blends.ts";
import { type Check, evaluate, type Verdict } from "@/lib/evaluation/mod.ts";
import { type Plan, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
import rotor from "@/seeds/twin-rotor-staged.json" with { type: "json" };
import { arbitraryPlan, mended } from "../../helpers/arbitrary_plan.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { notFinite, UNFIT_TEXT } from "../../helpers/finite.ts";
import { planOf } from "../../helpers/plan_of.ts";

const ENGINE = {
  cycle: "four-stroke",
  cylinders: 4,
  displacement: "2.0 L",
  power: "300 hp",
  powerSpeed: "7000 rpm",
  aspiration: "boosted",
  boost: "1.0 bar",
};
const REST = {
  injectors: { stages: [{ flow: "850 cc/min", smallestPulse: "0.5 ms" }] },
  pump: {
    voltage: "13.5 V",
    points: [
      { pressure: "3 bar", flow: "250 L/h" },
      { pressure: "5 bar", flow: "200 L/h" },
      { pressure: "7 bar", flow: "130 L/h" },
    ],
  },
};
const SHARES = [0, 0.1, 0.51, 0.85, 1];
const DEMO_PLANS = demos.map(({ plan }) => planOf(plan)).filter(({ fuel }) =>
  fuel?.name !== "methanol"
);

function plan(sections: object): Plan {
  return planOf({ version: 1, engine: ENGINE, ...REST, ...sections });
}

function compared(plan: Plan, shares: readonly number[] = SHARES): BlendsCompared {
  const comparison = evaluateBlends(plan, shares);
  assert(comparison.ok, JSON.stringify(comparison));
  return comparison;
}

function at(comparison: BlendsCompared, id: string): readonly (number | undefined)[] {
  return comparison.numbers.find((number) => number.id === id)?.values ?? [];
}

const AS_TYPED: readonly (readonly [share: number, fuel: object])[] = [
  [0, { name: "petrol" }],
  [0.1, { name: "blend", ethanolShare: "10 %" }],
  [0.51, { name: "blend", ethanolShare: "0.51" }],
  [0.85, { name: "E85" }],
  [1, { name: "E100" }],
];

for (const [share, fuel] of AS_TYPED) {
  Deno.test(`the column at ${share} is the evaluation of a plan typed that way`, () => {
    // What is assumed differs by the fuel's own name and share, which stand for the same liquid.
    const { assumed: _, ...found } = compared(plan({ fuel: { name: "E20" } }), [share]).columns[0]
      ?.evaluation ?? {};
    const { assumed: __, ...typed } = evaluate(plan({ fuel }));
    assertEquals(found, typed);
  });
}

Deno.test("petrol and ethanol alone go by their names", () => {
  const fuels = compared(plan({ fuel: { name: "blend", ethanolShare: "30 %" } }), [0, 0.51, 1])
    .columns.map(({ plan }) => plan.fuel);
  assertEquals(fuels, [
    { name: "petrol" },
    { name: "blend", ethanolShare: "51 %" },
    { name: "E100" },
  ]);
});

Deno.test("an assumed BSFC is that of each blend, with nothing carried", () => {
  const { columns, carried } = compared(plan({ fuel: { name: "E10" } }));
  assertEquals(carried, []);
  for (const { plan } of columns) assertEquals(plan.demand?.bsfc, undefined);
});

Deno.test("a typed BSFC is carried from petrol to ethanol as the energy balance has it", () => {
  // 300 g/kWh on 43.0 MJ/kg, carried to 26.8 MJ/kg: case L-SC-1 of engine-demand.json, computed
  // there with a library from an energy balance.
  const comparison = compared(
    plan({ fuel: { name: "petrol" }, demand: { bsfc: "300 g/kWh" } }),
    [0, 1],
  );
  const [petrol, ethanol] = at(comparison, "bsfc_kg_J");
  assertClose((petrol ?? NaN) * 3.6e9, 300, 1e-9);
  assertClose((ethanol ?? NaN) * 3.6e9, 481.3432836, 1e-8);
  assertEquals(comparison.carried.map(({ path }) => path), ["demand.bsfc"]);
  const typed = plan({ fuel: { name: "E100" }, demand: { bsfc: "481.343284 g/kWh" } });
  assertEquals(comparison.columns[1]?.evaluation, evaluate(typed));
});

Deno.test("a typed BSFC keeps the efficiency at every share, from whatever fuel it was typed for", () => {
  for (const name of ["petrol", "E20", "E85", "E100"]) {
    const { columns } = compared(plan({ fuel: { name }, demand: { bsfc: "0.62 lb/(hp h)" } }));
    const efficiencies = columns.map(({ evaluation }) =>
      evaluation.results.demand?.overallEfficiency ?? NaN
    );
    for (const each of efficiencies) assertClose(each, efficiencies[0] ?? NaN, 1e-7, name);
    const own = columns.find(({ isOwn }) => isOwn);
    if (name !== "E20") assertEquals(own?.plan.demand?.bsfc, "0.62 lb/(hp h)", name);
  }
});

Deno.test("by the air route fuel goes with the stoichiometric ratio alone, as lambda stays", () => {
  const comparison = compared(
    plan({ fuel: { name: "petrol" }, demand: { route: "air", bsfc: "330 g/kWh", lambda: "0.8" } }),
  );
  const air = comparison.columns.map(({ evaluation }) => evaluation.results.demand?.air_kg_s);
  const ratios = at(comparison, "stoichiometricRatio");
  at(comparison, "fuel_kg_s").forEach((fuel, i) => {
    assertEquals(air[i], air[0]);
    assertClose(fuel ?? NaN, (air[0] ?? NaN) / (0.8 * (ratios[i] ?? NaN)), 1e-9);
  });
});

Deno.test("a measured loss of the feed goes with the square of mass flow over density", () => {
  // Darcy: the dynamic pressure of a mass flow in a bore is m^2 / (2 rho A^2).
  const comparison = compared(
    plan({
      fuel: { name: "E85" },
      demand: { bsfc: "520 g/kWh" },
      supply: { feed: [], feedLoss: "0.5 bar" },
    }),
    [0, 0.85],
  );
  const dynamic = comparison.columns.map((_, i) =>
    (at(comparison, "fuel_kg_s")[i] ?? NaN) ** 2 / (at(comparison, "density_kg_m3")[i] ?? NaN)
  );
  const lost = comparison.columns.map(({ plan }) => resolvePlan(plan).values.supply.feedLoss);
  assertEquals(lost[1], 5e4);
  assertClose(lost[0] ?? NaN, 5e4 * (dynamic[0] ?? NaN) / (dynamic[1] ?? NaN), 1e-7);
  assert((lost[0] ?? 0) < 3e4, "petrol takes less than two thirds of the mass");
  assertEquals(comparison.carried.map(({ path }) => path), ["demand.bsfc", "supply.feedLoss"]);
});

Deno.test("a figure that a field would not take stays as typed, and it is said", () => {
  const comparison = compared(
    plan({ fuel: { name: "petrol" }, demand: { bsfc: "1700 g/kWh" } }),
    [0, 1],
  );
  assertEquals(comparison.columns[1]?.plan.demand?.bsfc, "1700 g/kWh");
  assertEquals(comparison.problems.length, 1);
  assertStringIncludes(comparison.problems[0] ?? "", "100 %: BSFC at full power stays as typed");
});

Deno.test("nothing but the fuel and what is carried differs from the plan, and it can be typed", () => {
  for (const own of DEMO_PLANS) {
    for (const { plan } of compared(own).columns) {
      const reading = readPlan(JSON.parse(JSON.stringify(plan)));
      assert(reading.ok, JSON.stringify(reading));
      const without = ({ fuel, demand, ...rest }: Plan) => ({
        ...rest,
        fuel: { ...fuel, name: "", ethanolShare: "" },
        demand: { ...demand, bsfc: "" },
      });
      assertEquals(without(plan), without(own));
    }
  }
});

Deno.test("the order of the shares, and one that stands twice, make no difference", () => {
  for (const own of DEMO_PLANS) {
    const inOrder = compared(own);
    assertEquals(evaluateBlends(own, SHARES.toReversed()), inOrder);
    assertEquals(evaluateBlends(own, [0.85, 0, 1, 0.1, 0.51, 0.85, 0.1]), inOrder);
    assertEquals(inOrder.columns.map(({ share }) => share), SHARES);
  }
});

Deno.test("the same share gives the same column, whatever stands beside it", () => {
  for (const own of DEMO_PLANS) {
    const { columns } = compared(own);
    for (const column of columns) assertEquals(compared(own, [column.share]).columns, [column]);
  }
});

/** From worst to best. */
const SEVERITY: Readonly<Record<Verdict, number>> = { fails: 0, open: 1, marginal: 2, meets: 3 };

/** Fails unless no cell of any row comes out worse than the one that is named. */
function assertWorst({ columns, rows, worst }: BlendsCompared): void {
  for (const { id, cells, worst: { share, because } } of rows) {
    const judged = cells.filter((cell): cell is Check => cell !== undefined);
    if (share === undefined) {
      assertEquals(new Set(cells.map((cell) => cell?.verdict)).size, 1, id);
      assertEquals(because, "alike at all");
      continue;
    }
    const i = columns.findIndex((column) => column.share === share);
    const named = cells[i];
    assert(named, `${id}: the worst column has no such check`);
    for (const { verdict, margin } of judged) {
      const by = SEVERITY[verdict] - SEVERITY[named.verdict];
      assert(by >= 0, `${id}: ${verdict} is worse than ${named.verdict}`);
      if (by > 0 || margin === undefined || named.margin === undefined) continue;
      assert(margin >= named.margin, `${id}: a margin of ${margin} is less than ${named.margin}`);
    }
    assert(because.startsWith(`${columns[i]?.name}: ${named.verdict}`), because);
  }
  const moved = rows.filter((row) => row.worst.share !== undefined);
  const verdicts = moved.flatMap(({ cells }) => cells.flatMap((cell) => cell?.verdict ?? []));
  const gravest = Math.min(...verdicts.map((verdict) => SEVERITY[verdict]));
  const first = worst?.cells.flatMap((cell) => cell ? SEVERITY[cell.verdict] : []) ?? [];
  assertEquals(Math.min(...first), gravest, "the row to look at first holds the worst verdict");
}

Deno.test("the worst case really is the worst, for demos and random plans, and all is finite", () => {
  for (const own of DEMO_PLANS) assertWorst(compared(own));
  let taken = 0;
  let cases = 0;
  fc.assert(
    fc.property(arbitraryPlan, (document) => {
      const own = mended(document);
      if (own === undefined) return;
      const comparison = evaluateBlends(own, blendsOf(resolvePlan(own).values).shares);
      assertEquals(comparison.ok, own.fuel?.name !== "methanol");
      if (!comparison.ok) return;
      taken++;
      cases += comparison.rows.filter(({ worst }) => worst.share !== undefined).length;
      assertWorst(comparison);
      assertEquals(notFinite({ ...comparison, columns: [] }), []);
      const texts = [
        ...comparison.rows.map(({ worst }) => worst.because),
        ...comparison.problems,
      ];
      for (const text of texts) assert(!UNFIT_TEXT.test(text), text);
    }),
    { numRuns: 150, seed: 11 },
  );
  assert(taken > 70, `only ${taken} plans were compared`);
  assert(cases > 5 * taken, `only ${cases} worst cases in ${taken} plans`);
});

Deno.test("a petrol car fails on E85 by its injectors, and boils soonest on E10", () => {
  // More fuel by mass for less heat; and vapour pressure of blends peaks near 10 % (R. L. Furey,
  // SAE 852116, from memory).
  const own = plan({
    fuel: { name: "petrol" },
    injectors: { stages: [{ flow: "650 cc/min", smallestPulse: "0.5 ms" }] },
  });
  const comparison = compared(own, [0, 0.1, 0.51, 0.85]);
  const worstOf = (id: string) => comparison.rows.find((row) => row.id === id)?.worst;
  assertEquals(worstOf("duty-peak")?.share, 0.85);
  assertStringIncludes(worstOf("duty-peak")?.because ?? "", "85 %: fails, ");
  assertStringIncludes(worstOf("duty-peak")?.because ?? "", "; limit at most 90.0 %");
  assertEquals(worstOf("soak-vapour")?.share, 0.1);
  assertEquals(worstOf("inlet-vapour")?.share, 0.1);
  assertEquals(worstOf("idle-pulse")?.share, 0);
  assertEquals(worstOf("wall")?.because, "alike at all");
});

Deno.test("what is marginal by its figures alone is said to be uncertain, not past the aim", () => {
  const { rows } = compared(plan({ fuel: { name: "petrol" } }), [0, 0.1]);
  const margin = rows.find(({ id }) => id === "pump-margin");
  const values = margin?.cells.map((cell) => cell?.value ?? NaN) ?? [];
  assert(values.every((value) => value > 0.2), "beyond the aim, on figures for another voltage");
  assertMatch(margin?.worst.because ?? "", /^10 %: marginal, \d+(\.\d)? %, not certain$/);
});

Deno.test("rows stand in the order of the evaluation, stage by stage", () => {
  const { rows, columns } = compared(planOf(rotor));
  assertEquals(
    rows.map(({ id }) => id),
    columns[0]?.evaluation.checks.map(({ id }) => id),
  );
  assert(rows.some(({ id }) => id === "duty-peak-2"));
});

Deno.test("methanol is no blend of petrol and ethanol: it says so, and what to do", () => {
  const comparison = evaluateBlends(plan({ fuel: { name: "methanol" } }), SHARES);
  assert(!comparison.ok);
  assertStringIncludes(comparison.message, "Only blends of petrol and ethanol can be compared");
  assertStringIncludes(comparison.message, "choose");
});

Deno.test("shares are those of the plan in rising order, or assumed and said to be", () => {
  const listed = plan({
    fuel: {
      name: "E10",
      blends: ["85 %", "0", "0.3"].map((ethanolShare) => ({ ethanolShare })),
    },
  });
  assertEquals(blendsOf(resolvePlan(listed).values), {
    shares: [0, 0.3, 0.85],
    assumed: undefined,
  });
  for (const name of ["petrol", "E100"]) {
    const { shares, assumed } = blendsOf(resolvePlan(plan({ fuel: { name } })).values);
    assertEquals(shares, [0, 0.1, 0.51, 0.85]);
    assertEquals(assumed?.text, "0 %, 10 %, 51 %, 85 %");
    assertEquals(assumed?.source, "ASTM D5798");
  }
});

Deno.test("no share, or one that is none, is refused", () => {
  const own = plan({ fuel: { name: "petrol" } });
  for (const shares of [[], [-0.1], [0.5, 1.01], [NaN]]) {
    assertThrows(() => evaluateBlends(own, shares), InputError, "shares");
  }
});
