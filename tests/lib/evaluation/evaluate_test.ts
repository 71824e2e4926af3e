import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import fc from "fast-check";
import { type Check, CRITERIA, evaluate, type Verdict } from "@/lib/evaluation/mod.ts";
import { packPlan, type Plan, readPlan, unpackPlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
import { arbitraryPlan, mended } from "../../helpers/arbitrary_plan.ts";
import { planOf } from "../../helpers/plan_of.ts";
import { notFinite, UNFIT_TEXT } from "../../helpers/finite.ts";

const VERDICTS: readonly Verdict[] = ["meets", "marginal", "fails", "open"];

/** Random plans tried. */
const RUNS = 800;

/** Checks that every plan gets; the others hang on boost, layout, pump place or kind of port. */
const ALWAYS = [
  "routes",
  "efficiency",
  "duty-peak",
  "duty-maximum",
  "idle-pulse",
  "rail-spread",
  "feed-velocity",
  "pump-margin",
  "sensor-range",
  "wall",
  "yield",
  "air-energy",
  "proof-rating",
  "gauge-steps",
];

function find(plan: Plan, id: string): Check {
  const check = evaluate(plan).checks.find((c) => c.id === id);
  assert(check, `no check ${id}`);
  return check;
}

Deno.test("any valid plan evaluates to finite numbers and a verdict for every check", () => {
  let taken = 0;
  fc.assert(
    fc.property(arbitraryPlan, (document) => {
      const reading = readPlan(document);
      for (const { message } of reading.ok ? [] : reading.faults) {
        assert(!UNFIT_TEXT.test(message), message);
      }
      const plan = mended(document);
      if (plan === undefined) return;
      taken++;
      const evaluation = evaluate(plan);
      assertEquals(notFinite(evaluation), []);
      const ids = evaluation.checks.map(({ id }) => id);
      for (const id of ALWAYS) {
        assert(
          ids.some((found) => found === id || found.startsWith(`${id}-`)),
          `no verdict for ${id}`,
        );
      }
      assert(ids.includes("port-thread") || ids.includes("port-taper"));
      assertEquals(new Set(ids).size, ids.length, "check ids are unique");
      for (const { verdict, because, value } of evaluation.checks) {
        assert(VERDICTS.includes(verdict));
        assert(because.length > 0 && !UNFIT_TEXT.test(because), because);
        assertEquals(verdict === "open", value === undefined);
      }
    }),
    { numRuns: RUNS, seed: 4 },
  );
  assert(taken > RUNS * 0.7, `only ${taken} of the random plans were valid`);
});

Deno.test("a plan survives the round trip through its link", async () => {
  await fc.assert(
    fc.asyncProperty(arbitraryPlan, async (document) => {
      const plan = mended(document);
      if (plan === undefined) return;
      const unpacked = await unpackPlan(await packPlan(plan));
      assert(unpacked.ok);
      const again = readPlan(unpacked.plan);
      assert(again.ok);
      assertEquals(again.plan, JSON.parse(JSON.stringify(plan)));
    }),
    { numRuns: 300, seed: 5 },
  );
});

Deno.test("evaluate() is pure: the same plan twice, the plan untouched", () => {
  for (const { plan } of demos) {
    const read = planOf(plan);
    const before = structuredClone(read);
    assertEquals(evaluate(read), evaluate(before));
    assertEquals(read, before);
  }
});

Deno.test("every criterion has a limit and an aim, or says why not", () => {
  for (const criterion of Object.values(CRITERIA)) {
    const both = "limit" in criterion && "aim" in criterion;
    assert(both || "without" in criterion, criterion.id);
    assert(criterion.source.length > 3, criterion.id);
  }
});

Deno.test("limits and aims are those of the design's table", () => {
  // decisions.md, "Limits and aims", copied by hand
  const table: [keyof typeof CRITERIA, number, number][] = [
    ["dutyPeak", 0.9, 0.8],
    ["dutyMaximum", 0.9, 0.8],
    ["idlePulse", 1, 1.2],
    ["pumpMargin", 0.1, 0.2],
    ["feedVelocity", 6, 3],
    ["suctionVelocity", 1.5, 1],
    ["returnVelocity", 6, 3],
    ["returnBack", 1, 0.5],
    ["filterLoss", 50e3, 20e3],
    ["inletVapour", 5e3, 20e3],
    ["soakVapour", 5e3, 20e3],
    ["wireLoss", 1, 0.5],
    ["surgeTank", 5, 15],
    ["railSpread", 0.02, 0.01],
    ["sensorRange", 1, 1.2],
    ["wall", 0.002, 0.003],
    ["portThread", 2, 3],
    ["yield", 2, 4],
    ["seatRing", 0.001, 0.0015],
    ["seatGallery", 0.001, 0.002],
    ["sensorReach", 0.0002, 0.0005],
    ["gaugeSteps", 2, 3],
  ];
  for (const [key, limit, aim] of table) {
    const criterion = CRITERIA[key] as { readonly limit?: number; readonly aim?: number };
    assertEquals([criterion.limit, criterion.aim], [limit, aim], key);
  }
});

Deno.test("every result that a check names has its working", () => {
  for (const { name, plan } of demos) {
    const { checks, working } = evaluate(planOf(plan));
    const known = new Set(working.map(({ result }) => result));
    for (const { id, result } of checks) {
      if (result !== undefined) assert(known.has(result), `${name}: ${id} names ${result}`);
    }
  }
});

Deno.test("each demo gives a verdict on injectors, pump, rail and port", () => {
  for (const { name, plan } of demos) {
    const { checks } = evaluate(planOf(plan));
    for (const id of ["duty-peak", "pump-margin", "rail-spread", "port-t", "wall"]) {
      // port-thread, or port-taper for a taper thread
      const found = checks.filter((c) => c.id.startsWith(id));
      assert(
        found.length > 0 && found.every((c) => c.verdict !== "open"),
        `${name}: ${id} is open`,
      );
    }
  }
});

const EIGHT = {
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
  demand: { bsfc: "365 g/kWh" },
  injectors: { stages: [{ flow: "1000 cc/min", pressure: "3 bar", deadTime: "1.2 ms" }] },
  rail: { bore: "12 mm", height: "25 mm" },
};

Deno.test("duty by hand: power, BSFC, root law and dead time", () => {
  // 300 hp * 365 g/kWh / 3600 = 22.68 g/s; 4 injectors, 2 turns at 7000 rpm: 97.2 mg a shot.
  // Differential 3 bar (manifold-referenced), petrol 722.6 kg/m3 at 40 C against 684 of the
  // rating: 16.667 * sqrt(684/722.6) = 16.216 mm3/ms = 11.718 mg/ms; 8.295 ms + 1.2 of 17.143.
  const check = find(planOf(EIGHT), "duty-peak");
  assert(Math.abs((check.value ?? 0) - 0.554) < 0.004, `${check.value}`);
  assertEquals(check.verdict, "meets");
});

Deno.test("without boost reference the differential falls by the boost, and duty rises by its root", () => {
  const open = (document: unknown): number => {
    const { results } = evaluate(planOf(document));
    const stage = results.injectors?.stages[0];
    return (stage?.pulsePeak_s ?? 0) - (stage?.deadTime_s ?? 0);
  };
  const referenced = open(EIGHT);
  const plain = open({ ...EIGHT, regulator: { reference: "atmosphere" } });
  // The gallery loses some pascals of what the regulator holds.
  assert(Math.abs(plain / referenced - Math.sqrt(3 / 2)) < 1e-4);
});

const PUMP_CASES: [name: string, points: object[], verdict: Verdict][] = [
  ["no figure", [], "open"],
  [
    "a point above the need at a higher pressure",
    [{ pressure: "6 bar", flow: "300 L/h" }],
    "marginal",
  ],
  ["a point below the need at a lower pressure", [{ pressure: "2 bar", flow: "60 L/h" }], "fails"],
  [
    "a point above the need a little above the pressure",
    [{ pressure: "4.5 bar", flow: "300 L/h" }],
    "marginal",
  ],
  ["a point that tells nothing", [{ pressure: "3 bar", flow: "300 L/h" }], "open"],
];
for (const [name, points, verdict] of PUMP_CASES) {
  Deno.test(`a pump with ${name} is ${verdict}, and the flow to shop for is said`, () => {
    const check = find(planOf({ ...EIGHT, pump: { points } }), "pump-margin");
    assertEquals(check.verdict, verdict);
    assert(/Needed: .* at .* and .* V/.test(check.because), check.because);
  });
}

Deno.test("a plan without injectors says which flow to shop for", () => {
  const plan = planOf({ ...EIGHT, injectors: undefined });
  assertEquals(find(plan, "duty-peak").verdict, "open");
  const shop = evaluate(plan).results.injectors?.shopFlow_m3_s ?? 0;
  // The flow found makes the whole pulse meet the aim when it is then entered.
  const flow = `${shop * 6e7} cc/min`;
  const bought = planOf({ ...EIGHT, injectors: { stages: [{ flow, deadTime: "1.3 ms" }] } });
  const duty = Math.max(
    find(bought, "duty-peak").value ?? 0,
    find(bought, "duty-maximum").value ?? 0,
  );
  assert(Math.abs(duty - CRITERIA.dutyPeak.aim) < 1e-6, `${duty}`);
});

const CEILING_CASES: [name: string, maximumSpeed: string, check: string][] = [
  ["the power peak, where the limiter cuts just above it", "7000 rpm", "duty-peak"],
  ["maximum speed, where there is the least time", "9000 rpm", "duty-maximum"],
];
for (const [name, maximumSpeed, check] of CEILING_CASES) {
  Deno.test(`the injectors' ceiling is the power at which duty reaches its limit at ${name}`, () => {
    const engine = { ...EIGHT.engine, maximumSpeed };
    const { ceilings } = evaluate(planOf({ ...EIGHT, engine }));
    const power = ceilings.find(({ id }) => id === "injectors")?.power_W ?? 0;
    const there = planOf({ ...EIGHT, engine: { ...engine, power: `${power} W` } });
    // More flow loses a little more on the way to the injectors.
    assert(Math.abs((find(there, check).value ?? 0) - CRITERIA.dutyPeak.limit) < 1e-4);
    for (const id of ["duty-peak", "duty-maximum"]) {
      assert((find(there, id).value ?? 9) <= CRITERIA.dutyPeak.limit + 1e-4, id);
    }
  });
}

Deno.test("in a dead-ended layout a larger pump changes nothing in the rail", () => {
  const railCeiling = (count: number): number | undefined => {
    const points = [{ pressure: "3 bar", flow: "300 L/h" }, { pressure: "6 bar", flow: "200 L/h" }];
    const pump = { points, count };
    const plan = planOf({
      ...EIGHT,
      pump,
      regulator: { layout: "dead-ended", setPressure: "4 bar" },
    });
    return evaluate(plan).ceilings.find(({ id }) => id === "rail")?.power_W;
  };
  assertAlmostEquals(railCeiling(4) ?? 0, railCeiling(1) ?? 1, 1e-6 * (railCeiling(1) ?? 0));
});

Deno.test("the suction carries all that the pump gives, whatever the layout, and says so", () => {
  const points = [{ pressure: "3 bar", flow: "300 L/h" }, { pressure: "6 bar", flow: "200 L/h" }];
  const check = find(
    planOf({
      ...EIGHT,
      pump: { points, place: "line" },
      supply: { suctionBore: "12.7 mm" },
      regulator: { layout: "dead-ended", setPressure: "4 bar" },
    }),
    "suction-velocity",
  );
  assert(check.because.includes("all that the pump gives"), check.because);
  assert((check.value ?? 0) > 0.4, `${check.value}`);
});

Deno.test("wheel power asks for more fuel than crank power", () => {
  const fuel = (powerAt: string): number =>
    evaluate(planOf({ ...EIGHT, engine: { ...EIGHT.engine, powerAt, drivetrainLoss: "20 %" } }))
      .results.demand?.fuel_kg_s ?? 0;
  assert(Math.abs(fuel("wheels") / fuel("crank") - 1 / 0.8) < 1e-9);
});

Deno.test("without an injector the idle check names no flow: a larger injector idles worse", () => {
  const check = find(planOf({ ...EIGHT, injectors: undefined }), "idle-pulse");
  assertEquals(check.verdict, "open");
  assert(!/cc\/min/.test(check.because), check.because);
});

Deno.test("injector flows are said in one unit, however large", () => {
  const stages = [{ flow: "300 L/h", pressure: "3 bar", deadTime: "1.2 ms" }];
  const rotary = { ...EIGHT.engine, cycle: "rotary", cylinders: 1, power: "400 kW" };
  const check = find(planOf({ ...EIGHT, engine: rotary, injectors: { stages } }), "duty-peak");
  assert(/needs \d+ cc\/min/.test(check.because.replaceAll("\u202f", "")), check.because);
});

Deno.test("a port that does not hold the pull is no first advice", () => {
  const twin = demos.find(({ name }) => name === "twin-rotor-staged");
  const first = evaluate(planOf(twin?.plan)).results.port?.changeFirst ?? "";
  assert(first.length > 0 && !first.startsWith("Or"), first);
  assert(!first.startsWith("First look at another port") || /[2-9]\.?\d* times/.test(first), first);
});

Deno.test("an injector to shop for keeps to the rating pressure and count that are known of it", () => {
  const shop = (stage: object): [flow: number, pressure: number] => {
    const plan = planOf({ ...EIGHT, injectors: { stages: [stage] } });
    const { shopFlow_m3_s = 0, shopPressure_Pa = 0 } = evaluate(plan).results.injectors ?? {};
    return [shopFlow_m3_s, shopPressure_Pa];
  };
  const [flow] = shop({ pressure: "3 bar" });
  const [atFour, four_Pa] = shop({ pressure: "4 bar" });
  assertEquals(four_Pa, 4e5);
  assert(Math.abs(atFour / flow - Math.sqrt(4 / 3)) < 1e-9, "the root law between ratings");
  const [ofTwo] = shop({ pressure: "3 bar", perCylinder: 2 });
  assert(Math.abs(ofTwo / flow - 0.5) < 1e-9, "two at each cylinder share the fuel");
});

// decisions.md, "Filled gaps": roughness of a drilled gallery 20 um, reamed 6 um, assumed
const FINISHES: [finish: string, roughness_m: number][] = [["drilled", 20e-6], ["reamed", 6e-6]];
for (const [finish, roughness_m] of FINISHES) {
  Deno.test(`a ${finish} gallery is taken to be ${roughness_m * 1e6} um rough`, () => {
    const { working } = evaluate(planOf({ ...EIGHT, rail: { ...EIGHT.rail, finish } }));
    const found = working.filter(({ result, method }) =>
      result.startsWith("rail.") && method === "relative-roughness"
    );
    assert(found.length > 0);
    for (const { inputs } of found) assertEquals(inputs.roughness, roughness_m);
  });
}
