/** The ladder of leak tests: order, limits, and what it must and must not say. */
import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import {
  AIR_ENERGY_LIMIT_J,
  FIRST_AIR_LIMIT_Pa,
  PROOF_HOLD_s,
  TANK_AIR_LIMIT_Pa,
} from "@/lib/proof/mod.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import {
  CAUTIONS,
  cautionsOf,
  fillLine,
  type Line,
  type Rung,
  type RungId,
  testLadder,
} from "@/lib/walkround/mod.ts";
import { contextOf, CONTEXTS, E10, E85, METHANOL } from "./contexts.ts";
import { linesOf } from "./said.ts";

const inMetric = (line: Line) =>
  fillLine(line, ({ value, kind }) => formatQuantity(value, kind, "metric"));

function rungOf(context: Parameters<typeof testLadder>[0], id: RungId): Rung {
  const rung = testLadder(context).find((each) => each.id === id);
  assert(rung, id);
  return rung;
}

function stepOf(rung: Rung, id: string): Rung["steps"][number] {
  const step = rung.steps.find((each) => each.id === id);
  assert(step, `${rung.id} has no step ${id}`);
  return step;
}

for (const [name, context] of Object.entries(CONTEXTS)) {
  const rungs = testLadder(context);

  Deno.test(`${name}: the rungs stand in order`, () => {
    assertEquals(rungs.map((rung) => rung.id), [
      "bench-air",
      "bench-proof",
      "drain-dry",
      "bench-seals",
      "car-static",
      "running",
      "hot-soak",
      "first-drive",
      "yearly",
    ]);
  });

  Deno.test(`${name}: every rung says why, what, where and when it passes`, () => {
    for (const { id, steps, look, passes, ifNot, sees, fitted } of rungs) {
      for (const part of [steps, look, passes, ifNot, sees, fitted]) assert(part.length > 0, id);
      for (const named of [steps, look, ifNot]) {
        const ids = named.map((each) => each.id);
        assertEquals(ids.length, new Set(ids).size, `${id}: ${ids}`);
      }
    }
  });

  Deno.test(`${name}: every line fills in, in both systems, and no value is left over`, () => {
    for (const [where, line] of linesOf(context)) {
      for (const system of ["metric", "inch"] as const) {
        const used = new Set<string>();
        const text = fillLine(line, ({ value, kind }) => {
          assert(Number.isFinite(value), `${where}: ${line.text}`);
          return formatQuantity(value, kind, system);
        });
        assert(!/[{}]|NaN|Infinity|undefined/.test(text), `${where}: ${text}`);
        for (const [, n = ""] of line.text.matchAll(/\{(\w+)\}/g)) used.add(n);
        assertEquals([...used].toSorted(), Object.keys(line.values ?? {}).toSorted(), line.text);
      }
    }
  });

  Deno.test(`${name}: nothing is called safe, legal or allowed by law`, () => {
    for (const [where, line] of linesOf(context)) {
      assert(!/safe|legal|complies|guarantee/i.test(line.text), `${where}: ${line.text}`);
    }
  });

  Deno.test(`${name}: air stays within its limits and proof is with liquid`, () => {
    for (const rung of rungs) {
      if (rung.medium !== "air") continue;
      assert(rung.pressure_Pa !== undefined && rung.pressure_Pa <= FIRST_AIR_LIMIT_Pa, rung.id);
      assertEquals(rung.energy_J, context.numbers.airEnergy_J);
    }
    const proof = rungOf(context, "bench-proof");
    assertEquals(proof.medium, "water or test liquid");
    assertEquals(proof.pressure_Pa, context.pressures.proofPressure_Pa);
    assertEquals(proof.hold_s, PROOF_HOLD_s);
  });
}

Deno.test("a step that raises air pressure carries the limits and the shield", () => {
  for (const id of ["bench-air", "bench-seals"] as const) {
    const raise = stepOf(rungOf(contextOf({ fuel: E10 }), id), "raise");
    assertEquals(raise.cautions, ["air-limits", "pressure-test-person"]);
  }
});

Deno.test("the proof fills with water and is never valved off", () => {
  const proof = rungOf(contextOf({ fuel: E10 }), "bench-proof");
  assertEquals(stepOf(proof, "fill").cautions, ["proof-liquid"]);
  assertEquals(stepOf(proof, "connect").cautions, ["never-valved-off"]);
  assert(proof.passes.some((line) => line.text.includes("does not judge")));
});

Deno.test("tanks get a fifth of a bar at most, and none after fuel without a gas-free paper", () => {
  const [tanks] = cautionsOf(["tanks"], E10);
  assertEquals(tanks?.points[0]?.values?.most, { value: TANK_AIR_LIMIT_Pa, kind: "pressure" });
  assertStringIncludes(tanks?.points[1]?.text ?? "", "gas-free");
});

Deno.test("air at working pressure is offered up to 100 J and refused above", () => {
  const little = contextOf({ fuel: E10 });
  assert(little.numbers.workingAirEnergy_J <= AIR_ENERGY_LIMIT_J);
  const offered = stepOf(rungOf(little, "bench-seals"), "working-air");
  assertStringIncludes(inMetric(offered.text), "4.30 bar");
  assertStringIncludes(inMetric(offered.text), "relief at no more than 4.73 bar");
  const much = contextOf({ fuel: E10, hose_m3: 1e-3 });
  const refused = stepOf(rungOf(much, "bench-seals"), "no-working-air");
  assertStringIncludes(inMetric(refused.text), "100 J is the limit");
});

Deno.test("a long hose full of air is warned of even at low pressure", () => {
  const notes = (hose_m3: number) => rungOf(contextOf({ fuel: E10, hose_m3 }), "bench-air").notes;
  assertEquals(notes(1e-4), []);
  assertStringIncludes(notes(5e-3).map(inMetric).join(), "test less hose");
});

Deno.test("a part too weak for working blocks all that presses harder than the first air", () => {
  const context = CONTEXTS["a hose too weak to work"];
  assert(context);
  for (const rung of testLadder(context)) {
    const weak = rung.medium === "fuel" || rung.id === "bench-proof";
    assertEquals(rung.blocked !== undefined, weak, rung.id);
    if (rung.blocked) assertStringIncludes(inMetric(rung.blocked), "feed hose");
  }
  const seals = rungOf(context, "bench-seals");
  assertStringIncludes(inMetric(stepOf(seals, "no-working-air").text), "may not be given");
});

Deno.test("the proof says what is not known and what does not fit", () => {
  const blank = rungOf(contextOf({ fuel: E10 }), "bench-proof").notes.map(inMetric).join("\n");
  assertStringIncludes(blank, "Not known: what the pump makes at shut-off");
  assertStringIncludes(blank, "Not known: the rating of the weakest part");
  const full = contextOf({
    fuel: E10,
    fault: { pressure_Pa: 12e5, cause: "pump", isLeast: false },
    weakest: { part: "feed hose", rating_Pa: 9e5 },
    sensorRange_Pa: 7e5,
  });
  const notes = rungOf(full, "bench-proof").notes.map(inMetric).join("\n");
  assert(!notes.includes("Not known"), notes);
  assertStringIncludes(notes, "12.0 bar is wanted, but the feed hose may have 9.00 bar");
  assertStringIncludes(notes, "The sensor ends at 7.00 bar");
});

Deno.test("fuel that is trapped is spoken of where the layout traps it, without a number", () => {
  for (const id of ["car-static", "hot-soak"] as const) {
    const notes = rungOf(contextOf({ fuel: E10, layout: "dead-ended" }), id).notes.map(inMetric);
    assertEquals(notes.length, 1);
    assertStringIncludes(notes.join(), "How far is not computed");
    assertEquals(rungOf(contextOf({ fuel: E10 }), id).notes, []);
  }
});

Deno.test("a fault known only from the pump's curve is said to be the least", () => {
  const part = { pressure_Pa: 9.5e5, cause: "pump", isLeast: true } as const;
  const notes = rungOf(contextOf({ fuel: E10, fault: part }), "bench-proof").notes.map(inMetric);
  assertStringIncludes(notes.join("\n"), "something fails, at least 9.50 bar");
  assertStringIncludes(notes.join("\n"), "Not known: what the pump makes at shut-off");
});

Deno.test("a weakest part that comes off for the proof is named, another is not", () => {
  const notes = (part: string) =>
    rungOf(contextOf({ fuel: E10, weakest: { part, rating_Pa: 14e5 } }), "bench-proof").notes
      .map(inMetric).join("\n");
  assertStringIncludes(notes("regulator"), "The regulator comes off for this test");
  assertStringIncludes(notes("regulator"), "14.0 bar says what may run");
  assert(!notes("feed hose").includes("comes off"));
});

Deno.test("idle is tested at the rail's pressure there, set pressure with the hose off", () => {
  const idle = rungOf(contextOf({ fuel: E10 }), "running");
  assertEquals(idle.pressure_Pa, 2.4e5);
  assertStringIncludes(
    idle.passes.map(inMetric).join("\n"),
    "near 2.40 bar, and near 3.00 bar with",
  );
  const plain = rungOf(contextOf({ fuel: E10, reference: "atmosphere" }), "running");
  assertEquals(plain.pressure_Pa, 3e5);
});

Deno.test("the hot soak passes up to working pressure, and stops at proof", () => {
  const soak = rungOf(contextOf({ fuel: E10 }), "hot-soak");
  assertStringIncludes(soak.passes.map(inMetric).join("\n"), "never passed 4.30 bar");
  assertStringIncludes(inMetric(stepOf(soak, "stop").text), "reach 6.45 bar");
  assertStringIncludes(inMetric(soak.ifNot[0]?.text ?? { text: "" }), "above 4.30 bar");
});

Deno.test("the relief of air at working pressure is never above the weakest part", () => {
  const weak = contextOf({ fuel: E10, weakest: { part: "feed hose", rating_Pa: 4.4e5 } });
  const { text } = stepOf(rungOf(weak, "bench-seals"), "working-air");
  assertStringIncludes(inMetric(text), "relief at no more than 4.40 bar");
  assertStringIncludes(inMetric(text), "to 4.30 bar and no higher");
});

Deno.test("an emptied rail is looked into, not round its leak places", () => {
  const drained = rungOf(contextOf({ fuel: E10, rails: 2 }), "drain-dry").look;
  assertEquals(drained.map(({ what }) => what), [
    "Rail 1, gallery, end to end",
    "Rail 1, mouth of every pocket and port",
    "Rail 2, gallery, end to end",
    "Rail 2, mouth of every pocket and port",
  ]);
});

Deno.test("the walk round names every pocket, both rails, and what only this plan has", () => {
  const two = contextOf({ fuel: E10, rails: 2, injectorsPerRail: 3 });
  const bench = rungOf(two, "bench-air").look.map((place) => place.what);
  for (const rail of [1, 2]) {
    for (const n of [1, 2, 3]) assert(bench.includes(`Rail ${rail}, pocket ${n}, plug and ring`));
  }
  assertEquals(bench.filter((what) => what.includes("pocket")).length, 6);
  const car = rungOf(two, "car-static").look.map((place) => place.id);
  assert(car.includes("return-hose") && car.includes("reference-hose"));
  const plain = contextOf({ fuel: E10, layout: "dead-ended", reference: "atmosphere" });
  const ids = rungOf(plain, "car-static").look.map((place) => place.id);
  assert(!ids.includes("return-hose") && ids.includes("reference-vent"));
  assertEquals(rungOf(plain, "bench-air").look[0]?.what, "Feed fitting and its seal");
});

Deno.test("the bubbles decide where the gauge cannot, the gauge too where it can", () => {
  const coarse = rungOf(contextOf({ fuel: E10 }), "bench-air").passes.map(inMetric).join("\n");
  assertStringIncludes(coarse, "the bubbles decide");
  const fine = rungOf(contextOf({ fuel: E10, gaugeResolution_Pa: 1 }), "bench-air");
  assertStringIncludes(fine.passes.map(inMetric).join("\n"), "falls by less than");
});

const ALCOHOL: [fuel: typeof E10 | typeof E85 | typeof METHANOL, called: string[]][] = [
  [E10, []],
  [E85, ["alcohol-foam", "alcohol-headspace", "pale-flame"]],
  [METHANOL, ["alcohol-foam", "alcohol-headspace", "methanol-flame", "methanol-toxic"]],
];

for (const [fuel, called] of ALCOHOL) {
  Deno.test(`${fuel.base} with ${fuel.ethanolShare} ethanol calls for ${called.length} alcohol cautions`, () => {
    const steps = testLadder(contextOf({ fuel })).flatMap((rung) => [...rung.steps, ...rung.ifNot]);
    const ids = new Set<string>(steps.flatMap((step) => step.cautions));
    const alcohol = CAUTIONS.filter((caution) => caution.when).map((caution) => caution.id);
    assertEquals(alcohol.filter((id) => ids.has(id)).toSorted(), called.toSorted());
  });
}

Deno.test("every caution without a condition stands beside a step of the ladder", () => {
  const steps = testLadder(contextOf({ fuel: E10 })).flatMap((r) => [...r.steps, ...r.ifNot]);
  const printed = new Set(steps.flatMap((step) => step.cautions));
  const always = CAUTIONS.filter((caution) => caution.when === undefined);
  assertEquals(always.filter(({ id }) => !printed.has(id)).map(({ id }) => id), []);
});

Deno.test("every caution has a source, its points' ids differ, and all defer alike", () => {
  for (const { id, source, defers, points } of CAUTIONS) {
    assert(source.length > 3, id);
    assertEquals(new Set(points.map((point) => point.id)).size, points.length, id);
    assertEquals(defers, CAUTIONS[0]?.defers);
  }
});

const IN_CAR: RungId[] = ["car-static", "running", "hot-soak", "first-drive", "yearly"];

for (const [name, context] of Object.entries(CONTEXTS)) {
  Deno.test(`${name}: after a leak of fuel nothing is cranked or run to let the pressure off`, () => {
    for (const id of IN_CAR) {
      const { ifNot } = rungOf(context, id);
      assert(ifNot.some(({ cautions }) => cautions.includes("leaking")), id);
      assert(!ifNot.some(({ cautions }) => cautions.includes("depressurise")), id);
    }
  });
}

Deno.test("an engine that leaks is never run to a stall", () => {
  const [leaking, dry] = cautionsOf(["leaking", "depressurise"], E10);
  const text = (leaking?.points ?? []).map((point) => point.text).join(" ");
  assertStringIncludes(text, "Never crank or start");
  assertStringIncludes(text, "closed container");
  assert(!text.includes("stall"), text);
  assertStringIncludes(
    dry?.points[0]?.text ?? "",
    "only where all is dry, run the engine to a stall",
  );
});

/** What is said of smell or boost, each line once. */
function said(context: Parameters<typeof linesOf>[0], word: RegExp): string[] {
  return linesOf(context).map(([, line]) => line.text).filter((text) => word.test(text));
}

Deno.test("nobody is told to sniff at methanol, or to take no smell for a pass", () => {
  const methanol = said(contextOf({ fuel: METHANOL }), /smell|sniff|nose/i);
  for (const text of methanol) assert(/no sniffing|no smell proves nothing/.test(text), text);
  const mend = rungOf(contextOf({ fuel: METHANOL }), "car-static").ifNot;
  const air = mend.find(({ id }) => id === "air");
  assertStringIncludes(
    air ? inMetric(air.text) : "",
    "for 30 min, and on while a methanol detector",
  );
  assert(said(contextOf({ fuel: E10 }), /smell/).length > 0);
});

Deno.test("an engine without boost is told of none", () => {
  assertEquals(said(contextOf({ fuel: E10, boosted: false }), /boost/i), []);
  assertEquals(said(contextOf({ fuel: E10 }), /boost/i).length, 3);
});

Deno.test("the sensor sits in the first rail only", () => {
  const look = rungOf(contextOf({ fuel: E10, rails: 2 }), "bench-seals").look;
  assertEquals(look.filter(({ id }) => id.endsWith("sensor")).map(({ what }) => what), [
    "Rail 1, sensor port",
    "Rail 2, plug in the sensor port, if one was drilled",
  ]);
});

Deno.test("a dead end is proved at the least that a fault makes, whatever is known of the pump", () => {
  const context = CONTEXTS["E85, dead-ended, pump outside"];
  assert(context);
  const notes = rungOf(context, "bench-proof").notes.map(inMetric).join("\n");
  assertStringIncludes(notes, "at least 8.00 bar");
  assertStringIncludes(notes, "Not known: what fuel makes that is shut in and warmed");
});
