/** What would do: each proposed change mends its check, and nothing smaller of the kind does. */
import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import fc from "fast-check";
import { type Check, evaluate, type Remedy, whatWouldDo } from "@/lib/evaluation/mod.ts";
import { firstThat } from "@/lib/evaluation/changes/first_that.ts";
import { LEVERS } from "@/lib/evaluation/changes/levers.ts";
import { startOf } from "@/lib/evaluation/changes/start.ts";
import { MOST_EVALUATIONS, Trials } from "@/lib/evaluation/changes/trials.ts";
import { remediesFrom } from "@/lib/evaluation/changes/what_would_do.ts";
import { CRITERIA } from "@/lib/evaluation/mod.ts";
import { boxesOf, fieldAt, type Plan, planFromBoxes, readPlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
import { arbitraryPlan, mended } from "../../helpers/arbitrary_plan.ts";
import { notFinite, UNFIT_TEXT } from "../../helpers/finite.ts";
import { planOf } from "../../helpers/plan_of.ts";

/** Sections of a document, as typed. */
type Document = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** A plan in which, of what can be judged, nearly everything meets. */
const SOUND: Document = {
  engine: {
    cycle: "four-stroke",
    cylinders: 4,
    displacement: "2.0 L",
    power: "200 kW",
    powerSpeed: "7000 rpm",
    maximumSpeed: "7400 rpm",
    aspiration: "boosted",
    boost: "1 bar",
  },
  fuel: { name: "petrol", hottestTank: "35 °C" },
  demand: { bsfc: "330 g/kWh" },
  injectors: { stages: [{ flow: "650 cc/min", smallestPulse: "0.4 ms" }], lowestVoltage: "13 V" },
  regulator: { setPressure: "3 bar", leastDrop: "0.3 bar", dropFlow: "300 L/h" },
  rail: { bore: "12 mm", height: "35 mm", pitch: "90 mm", length: "370 mm", drilledFrom: "both" },
  pump: {
    voltage: "12 V",
    points: [
      { pressure: "0 bar", flow: "320 L/h", current: "6 A" },
      { pressure: "4 bar", flow: "260 L/h", current: "9 A" },
      { pressure: "8 bar", flow: "150 L/h", current: "13 A" },
      { pressure: "0 bar", flow: "360 L/h", current: "7 A", voltage: "14 V" },
      { pressure: "4 bar", flow: "300 L/h", current: "10 A", voltage: "14 V" },
      { pressure: "8 bar", flow: "200 L/h", current: "14 A", voltage: "14 V" },
    ],
    shutOff: "9 bar",
  },
  wiring: { fuse: "15 A" },
  supply: {
    hoseFamily: "motorsport",
    feedBore: "11.1 mm",
    returnBore: "11.1 mm",
    feed: [
      { piece: "hose", length: "3 m" },
      { piece: "filter", flow: "600 L/h", loss: "15 kPa" },
      { piece: "straight", count: 2 },
    ],
  },
  sensor: { port: "M10x1-oring", range: "10 bar", torque: "10 N m" },
  proof: { weakestRating: "20 bar", gaugeResolution: "0.001 bar" },
};

/** The sound plan with some answers replaced, section by section. */
function plan(changed: Document): Plan {
  const sections = Object.keys({ ...SOUND, ...changed })
    .map((name) => [name, { ...SOUND[name], ...changed[name] }]);
  return planOf({ version: 1, ...Object.fromEntries(sections) });
}

function checkOf(of: Plan, id: string): Check {
  const check = evaluate(of).checks.find((each) => each.id === id);
  assert(check, `there is no check ${id}`);
  return check;
}

/** The plan as it comes back from the boxes of the form that it would be typed into. */
function typed(of: Plan): Plan {
  return planOf(planFromBoxes(boxesOf(of)));
}

/** What is wrong, with which check, the lever that mends it, and what is to be typed where. */
type Case = readonly [what: string, changed: Document, check: string, lever: string, to: string];

const feed = (...pieces: object[]): Document => ({ supply: { feed: pieces } });
const LIFT = {
  present: "lift",
  surgeVolume: "1.5 L",
  voltage: "12.5 V",
  points: [{ pressure: "0 bar", flow: "110 L/h" }, { pressure: "1 bar", flow: "50 L/h" }],
};

const CASES: readonly Case[] = [
  [
    "tiny injectors",
    { injectors: { stages: [{ flow: "300 cc/min" }] } },
    "duty-peak",
    "injector-flow-1",
    "",
  ],
  [
    "injectors that open slowly",
    { injectors: { stages: [{ flow: "700 cc/min", deadTime: "4 ms" }] } },
    "duty-maximum",
    "injector-dead-time-1",
    "",
  ],
  [
    "injectors too large to idle",
    { injectors: { stages: [{ flow: "2500 cc/min" }] } },
    "idle-pulse",
    "injector-less-flow-1",
    "",
  ],
  [
    "a small feed hose",
    { supply: { feedBore: "4 mm" } },
    "feed-velocity",
    "hose-feed",
    "-4 (5.60 mm)",
  ],
  [
    "a feed piece of a small size",
    {
      supply: {
        hoseFamily: "tube",
        feed: [{ piece: "hose", length: "3 m", size: "-4" }, { piece: "straight", size: "-4" }],
      },
    },
    "feed-velocity",
    "hose-feed",
    "-6 (7.90 mm)",
  ],
  [
    "a feed piece of a small bore",
    feed({ piece: "tube", length: "3 m", bore: "4 mm" }),
    "feed-velocity",
    "hose-feed",
    "-4 (5.60 mm)",
  ],
  [
    "a small return hose",
    { supply: { returnBore: "4 mm" } },
    "return-velocity",
    "hose-return",
    "-6 (8.70 mm)",
  ],
  [
    "a return that is full at idle",
    { supply: { returnBore: "4 mm", return: [{ piece: "hose", length: "6 m" }] } },
    "return-back-pressure",
    "hose-return",
    "",
  ],
  [
    "a regulator that loses much wide open",
    { regulator: { leastDrop: "2.5 bar", dropFlow: "250 L/h" } },
    "return-back-pressure",
    "regulator-least-drop",
    "",
  ],
  [
    "a small suction hose",
    { pump: { ...SOUND.pump, place: "line" }, supply: { suctionBore: "6 mm" } },
    "suction-velocity",
    "hose-suction",
    "-8 (11.10 mm)",
  ],
  [
    "a pump that draws hot fuel",
    { fuel: { name: "petrol", hottestTank: "55 °C" } },
    "inlet-vapour",
    "tank-cooler",
    "",
  ],
  [
    "a rail that boils",
    { supply: { holdsPressure: "no" } },
    "soak-vapour",
    "holds-pressure",
    "yes",
  ],
  ["a weak pump", { engine: { power: "600 kW" } }, "pump-margin", "pump-flow", ""],
  [
    "a pump for half the engine",
    { engine: { power: "600 kW" } },
    "pump-margin",
    "pump-count",
    "2 side by side",
  ],
  [
    "a pump that can't hold the pressure",
    { engine: { power: "800 kW" }, injectors: { stages: [{ flow: "3000 cc/min" }] } },
    "pressure-held",
    "pump-flow",
    "",
  ],
  [
    "a small filter",
    feed({ piece: "hose", length: "3 m" }, { piece: "filter", flow: "150 L/h", loss: "20 kPa" }),
    "filter-loss",
    "filter-feed",
    "",
  ],
  ["a thin wire", { wiring: { wire: "0.75 mm2" } }, "wire-loss", "wire", ""],
  ["a fuse that blows", { wiring: { fuse: "5 A" } }, "fuse", "fuse", "15 A"],
  ["a fuse above the wire's rating", { wiring: { fuse: "30 A" } }, "fuse", "fuse", ""],
  ["a wire too thin for any fuse", { wiring: { wire: "1 mm2" } }, "fuse", "wire", ""],
  [
    "a wire and a fuse that are both too small",
    { wiring: { wire: "1 mm2", fuse: "10 A" } },
    "fuse",
    "wire-and-fuse",
    "",
  ],
  ["a weak lift pump", { lift: LIFT }, "lift-margin", "lift-flow", ""],
  [
    "a small surge tank",
    { lift: { ...LIFT, surgeVolume: "0.15 L" } },
    "surge-tank",
    "surge-volume",
    "",
  ],
  // 1.1 times 3 bar and 1 bar of boost are 4.3 bar at work; 1.2 times that are 5.16.
  [
    "a sensor of low range",
    { sensor: { ...SOUND.sensor, range: "4 bar" } },
    "sensor-range",
    "sensor-range",
    "6 bar",
  ],
  [
    "a narrow gallery",
    { rail: { ...SOUND.rail, bore: "4 mm" } },
    "rail-spread",
    "gallery-wider",
    "",
  ],
  [
    "a narrow gallery fed at one end",
    { rail: { ...SOUND.rail, bore: "4 mm" } },
    "rail-spread",
    "rail-feed",
    "the middle",
  ],
  ["a thin bar", { rail: { ...SOUND.rail, height: "16 mm" } }, "wall", "bar-height", "20 mm"],
  [
    "a drill that wanders",
    { rail: { ...SOUND.rail, height: "20 mm", drilledFrom: "one" } },
    "wall",
    "rail-drilled",
    "both ends",
  ],
  [
    "a drill that cuts too wide",
    { sensor: { ...SOUND.sensor, drill: "9.6 mm" } },
    "port-hole",
    "port-drill",
    "",
  ],
  ["a weak part", { proof: { weakestRating: "4 bar" } }, "proof-rating", "part-rating", "9 bar"],
  ["much air under test", { proof: { pressurisedHose: "8 L" } }, "air-energy", "test-hose", ""],
  ["a BSFC that the air denies", { demand: { bsfc: "480 g/kWh" } }, "routes", "BSFC-down", ""],
];

describe("whatWouldDo() proposes a change that mends", () => {
  for (const [what, changed, id, leverId, to] of CASES) {
    it(`${what}: ${leverId}`, () => {
      const from = plan(changed);
      const evaluation = evaluate(from);
      const before = checkOf(from, id);
      assert(["fails", "marginal"].includes(before.verdict), `${id} is ${before.verdict}`);

      const lever = LEVERS.find((each) => each.id === leverId);
      assert(lever);
      const candidates = lever.candidates(startOf(from, evaluation));
      const texts = candidates.map((each) => JSON.stringify(each.plan));
      const remedy = whatWouldDo(from, evaluation).find((each) => each.id === id);
      const change = remedy?.changes.find((each) => texts.includes(JSON.stringify(each.plan)));
      assert(change, `not proposed; ${JSON.stringify(remedy?.none)}`);

      // By what would be typed, and against all smaller changes of the kind one by one.
      const after = checkOf(typed(change.plan), id);
      assertEquals(after.verdict, "meets");
      assertEquals([change.makes, change.value], [after.verdict, after.value]);
      const index = texts.indexOf(JSON.stringify(change.plan));
      for (const smaller of candidates.slice(0, index)) {
        const reading = readPlan(smaller.plan);
        if (!reading.ok) continue;
        assert(checkOf(reading.plan, id).verdict !== "meets", JSON.stringify(smaller.edits));
      }
      if (to !== "") assertEquals(change.edits[0]?.to, to);
      for (const { path } of change.edits) assert(fieldAt(path), path);
    });
  }
});

describe("whatWouldDo()", () => {
  const thin = plan({ wiring: { wire: "0.75 mm2" } });

  it("looks at failing and marginal checks and at no others, failing ones first", () => {
    for (const { plan: document } of demos) {
      const of = planOf(document);
      const evaluation = evaluate(of);
      const ids = (verdict: string): string[] =>
        evaluation.checks.filter((check) => check.verdict === verdict).map(({ id }) => id);
      const remedies = whatWouldDo(of, evaluation);
      assertEquals(remedies.map(({ id }) => id), [...ids("fails"), ...ids("marginal")]);
      for (const { changes, none } of remedies) {
        assertEquals(changes.length === 0, none !== undefined);
      }
    }
  });

  it("names what a change worsens, and puts what worsens nothing first", () => {
    const of = plan({ injectors: { stages: [{ flow: "300 cc/min" }] } });
    const evaluation = evaluate(of);
    const verdicts = new Map(evaluation.checks.map(({ title, verdict }) => [title, verdict]));
    const order = ["meets", "marginal", "open", "fails"];
    let worsening = 0;
    for (const { changes } of whatWouldDo(of, evaluation)) {
      const harm = changes.map(({ worsens }) => worsens.length > 0);
      assertEquals(harm, harm.toSorted((a, b) => Number(a) - Number(b)));
      for (const change of changes) {
        const worse = evaluate(change.plan).checks.filter(({ title, verdict }) =>
          order.indexOf(verdict) > order.indexOf(verdicts.get(title) ?? "open")
        ).map(({ title }) => title);
        assertEquals(change.worsens, worse);
        worsening += worse.length;
      }
    }
    assert(worsening > 0, "no change worsened anything");
  });

  it("drops what was measured on the parts that it replaces", () => {
    const of = plan({
      supply: { feedBore: "4 mm", feed: [], feedLoss: "0.5 bar" },
      wiring: { wire: "0.75 mm2", rating: "9 A" },
      pump: { ...SOUND.pump, wireLoss: "1.5 V" },
    });
    const remedies = whatWouldDo(of, evaluate(of));
    const by = (id: string, name: string): Plan | undefined =>
      remedies.find((each) => each.id === id)?.changes.find((each) => each.name === name)?.plan;
    const hose = by("feed-velocity", "a larger feed hose");
    const wire = by("wire-loss", "a thicker wire");
    assertEquals(hose?.supply?.feedLoss, undefined);
    assertEquals(hose?.supply?.feedBore, "5.6 mm");
    assertEquals([wire?.pump?.wireLoss, wire?.wiring?.rating], [undefined, undefined]);
  });

  it("brings up all that is narrower, and leaves alone what is wider", () => {
    const of = plan(feed(
      { piece: "hose", length: "1 m", size: "-4" },
      { piece: "elbow-90-swept", bore: "4 mm", count: 2 },
      { piece: "hose", length: "1 m", bore: "3.5 mm" },
      { piece: "tube", length: "1 m", bore: "10 mm" },
      { piece: "filter", flow: "600 L/h", loss: "15 kPa" },
    ));
    const remedy = whatWouldDo(of, evaluate(of)).find(({ id }) => id === "feed-velocity");
    const change = remedy?.changes.find(({ name }) => name === "a larger feed hose");
    assertEquals(change?.edits.map(({ from, to }) => [from, to]), [["3.50 mm", "-4 (5.60 mm)"]]);
    assertEquals(change?.plan.supply?.feed, [
      { piece: "hose", length: "1 m", size: "-4" },
      { piece: "elbow-90-swept", size: "-4", count: 2 },
      { piece: "hose", length: "1 m", size: "-4" },
      { piece: "tube", length: "1 m", bore: "10 mm" },
      { piece: "filter", flow: "600 L/h", loss: "15 kPa" },
    ]);
  });

  it("says which answer is lacking where the number meets and is not certain", () => {
    const points = [{ pressure: "0 bar", flow: "400 L/h" }, { pressure: "9 bar", flow: "200 L/h" }];
    const of = plan({ pump: { voltage: "13.5 V", points } });
    const remedy = whatWouldDo(of, evaluate(of)).find(({ id }) => id === "pump-margin");
    assertEquals(remedy?.changes, []);
    assertStringIncludes(remedy?.none ?? "", "Enter figures of the pump at");
  });

  it("proposes what only reaches the limit where nothing reaches the aim", () => {
    // At one voltage, not the pump's own: whatever it moves, the verdict is at best marginal.
    const points = [{ pressure: "0 bar", flow: "130 L/h" }, { pressure: "9 bar", flow: "60 L/h" }];
    const of = plan({ pump: { voltage: "13.5 V", points } });
    const remedy = whatWouldDo(of, evaluate(of)).find(({ id }) => id === "pump-margin");
    const more = remedy?.changes.find(({ name }) => name === "a pump that moves more");
    assertEquals([remedy?.verdict, more?.makes, more?.numberMeets], ["fails", "marginal", true]);
    assert((more?.value ?? 0) >= CRITERIA.pumpMargin.aim);
  });

  it("keeps to its number of evaluations, and says when they are spent", () => {
    const trials = new Trials(startOf(thin, evaluate(thin)), 2);
    const remedies = remediesFrom(trials);
    assertEquals([trials.evaluations, trials.isSpent], [2, true]);
    assert(remedies.some(({ none }) => none?.includes("not every change could be tried")));
  });

  it("writes units as they were typed", () => {
    const of = plan({ sheet: { units: "inch" }, sensor: { ...SOUND.sensor, range: "60 psi" } });
    const remedy = whatWouldDo(of, evaluate(of)).find(({ id }) => id === "sensor-range");
    const [edit] = remedy?.changes[0]?.edits ?? [];
    assertEquals([edit?.from, edit?.to], ["60 psi", "100 psi"]);
  });
});

describe("every lever", () => {
  it("has its own id and names checks that there are", () => {
    const ids = LEVERS.map(({ id }) => id);
    assertEquals(new Set(ids).size, ids.length);
  });

  it("or another may mend each check", () => {
    const mended = new Set<string>(LEVERS.flatMap(({ mends }) => mends));
    const left = Object.values(CRITERIA).map(({ id }) => id).filter((id) => !mended.has(id));
    assertEquals(left, []);
  });
});

describe("firstThat()", () => {
  it("finds the first, whatever the guess, in few looks", () => {
    fc.assert(fc.property(
      fc.integer({ min: 0, max: 300 }),
      fc.integer({ min: 0, max: 320 }),
      fc.option(fc.integer({ min: -5, max: 400 }), { nil: undefined }),
      (length, from, guess) => {
        const looked = new Set<number>();
        const found = firstThat({
          length,
          reaches(index) {
            assert(index >= 0 && index < length);
            looked.add(index);
            return index >= from;
          },
          guess: () => guess,
        });
        assertEquals(found, from < length ? from : undefined);
        assert(looked.size <= 20, `${looked.size} looks`);
      },
    ));
  });

  it("finds a stretch that ends before a guess that went too far", () => {
    const reaches = (index: number): boolean => index >= 7 && index <= 27;
    assertEquals(firstThat({ length: 42, reaches, guess: () => 40 }), 7);
  });
});

/** What has to hold of the remedies of any plan. */
function assertHonest(of: Plan): void {
  const evaluation = evaluate(of);
  const trials = new Trials(startOf(of, evaluation));
  const remedies: Remedy[] = remediesFrom(trials);
  assert(trials.evaluations <= MOST_EVALUATIONS, `${trials.evaluations} evaluations`);
  for (const { id, verdict, changes } of remedies) {
    for (const change of changes) {
      const after = evaluate(typed(change.plan)).checks.find((check) => check.id === id);
      assertEquals(after?.verdict ?? "not-asked", change.makes);
      assertEquals(after?.value, change.value);
      assertEquals(notFinite(change.value), []);
      assert(change.makes !== "fails" && change.makes !== "open");
      assert(
        change.makes !== verdict || change.numberMeets,
        `${id}: ${JSON.stringify(change.edits)}`,
      );
      for (const { from, to } of change.edits) {
        assert(from !== to && !UNFIT_TEXT.test(`${from} ${to}`));
      }
    }
  }
}

describe("remedies hold", () => {
  for (const { name, plan: document } of demos) {
    it(`of ${name}`, () => assertHonest(planOf(document)));
  }

  it("of 100 random plans", () => {
    let plans = 0;
    fc.assert(
      fc.property(arbitraryPlan, (document) => {
        const of = mended(document);
        if (of === undefined) return;
        plans++;
        assertHonest(of);
      }),
      { numRuns: 110 },
    );
    assert(plans > 90, `${plans} plans only`);
  });
});
