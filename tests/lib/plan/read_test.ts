import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import {
  type Plan,
  planJsonSchema,
  planReady,
  readPlan,
  resolvePlan,
  SECTIONS,
} from "@/lib/plan/mod.ts";
import golden from "./golden/version-1.json" with { type: "json" };

await planReady();

const LEAST = {
  version: 1,
  engine: {
    cycle: "four-stroke",
    cylinders: 4,
    power: "200 hp",
    powerSpeed: "6500 rpm",
    aspiration: "natural",
  },
  fuel: { name: "petrol" },
};

/** A copy of the least plan with one field set. */
function withField(section: string, name: string, value: unknown): unknown {
  const plan: Record<string, unknown> = structuredClone(LEAST);
  plan[section] = { ...(plan[section] as object | undefined), [name]: value };
  return plan;
}

function faultOf(plan: unknown, path: string): string {
  const reading = readPlan(plan);
  assert(!reading.ok, "a fault was expected");
  const fault = reading.faults.find((f) => f.path === path);
  assert(fault, `no fault at ${path}, but at ${reading.faults.map((f) => f.path)}`);
  return fault.message;
}

Deno.test("readPlan() reads the golden plan of version 1, and its numbers stay", () => {
  const reading = readPlan(golden);
  assert(reading.ok, JSON.stringify(reading));
  const { values, notes } = resolvePlan(reading.plan);
  assertAlmostEquals(values.engine.power, 313e3);
  assertAlmostEquals(values.engine.powerSpeed, 120);
  assertAlmostEquals(values.engine.displacement ?? 0, 1.8e-3);
  assertAlmostEquals(values.engine.boost ?? 0, 151_684.66, 0.01);
  assertAlmostEquals(values.fuel.temperature, 308.15, 1e-6);
  assertAlmostEquals(values.demand.bsfc ?? 0, 1.1828e-7, 1e-10);
  // 95 lb/h at 684 kg/m3, by hand: 95 * 0.45359237 / 3600 / 684
  assertAlmostEquals(values.injectors.stages[0]?.flow ?? 0, 1.75e-5, 1e-7);
  assertStringIncludes(notes["injectors.stages.0.flow"] ?? "", "683.8 kg");
  assertAlmostEquals(values.rail.bore ?? 0, 0.015875);
  assertAlmostEquals(values.rail.height ?? 0, 0.03175);
  assertAlmostEquals(values.sensor.drill ?? 0, 0.009);
});

Deno.test("a plan reads back as it was written", () => {
  const reading = readPlan(golden);
  assert(reading.ok);
  assertEquals(JSON.parse(JSON.stringify(reading.plan)), golden);
});

Deno.test("the least plan is enough, and what is assumed is listed with reason and source", () => {
  const reading = readPlan(LEAST);
  assert(reading.ok, JSON.stringify(reading));
  const { assumed, missing } = resolvePlan(reading.plan);
  assert(assumed.some((a) => a.path === "fuel.temperature"));
  for (const a of assumed) {
    assert(a.because.length > 3 && a.source.length > 3, `${a.path} lacks a reason or a source`);
  }
  assert(missing.includes("rail.bore"));
  assert(!assumed.some((a) => a.path === "engine.boost"), "boost is not asked without boost");
});

Deno.test("every default can be typed back as it stands", () => {
  const plan = readPlan(LEAST);
  assert(plan.ok);
  const before = resolvePlan(plan.plan);
  let confirmed: unknown = structuredClone(LEAST);
  for (const { path, text } of before.assumed) {
    const [section = "", name = ""] = path.split(".");
    const typed = /^\d+$/.test(text) ? Number(text) : text;
    const own = confirmed as Record<string, Record<string, unknown>>;
    confirmed = { ...own, [section]: { ...own[section], [name]: typed } };
  }
  const reading = readPlan(confirmed);
  assert(reading.ok, JSON.stringify(reading));
  const after = resolvePlan(reading.plan);
  assertEquals(after.assumed, []);
  assertEquals(after.values, before.values);
});

const REFUSED: [name: string, section: string, field: string, value: unknown, says: string[]][] = [
  ["direct injection", "engine", "injection", "direct", ["direct injection", "50 bar"]],
  ["diesel", "fuel", "name", "diesel", ["diesel", "outside"]],
  ["gas", "fuel", "name", "gas", ["LPG", "outside"]],
  ["an unknown word", "engine", "cycle", "five-stroke", ["five-stroke", "four-stroke", "rotary"]],
  ["a number without a unit", "engine", "power", "420", ["Target power", "420", "unit"]],
  ["a wrong kind of quantity", "engine", "power", "3 bar", ["Target power", "pressure"]],
  ["nonsense", "rail", "bore", "twelve pis", ["Bore of the gallery", "twelve pis", "length"]],
  ["too much", "rail", "bore", "3 in", ["Bore of the gallery", "40", "drilled along a bar"]],
  ["percent without the sign", "fuel", "ethanolShare", "40", ["1 (100 %)", "Did you mean 40 %?"]],
  ["no ratio", "fuel", "ethanolShare", "lots", ["like 85 %, 0.85 or 12.5 %"]],
  ["half a cylinder", "engine", "cylinders", 4.5, ["whole number"]],
];

for (const [name, section, field, value, says] of REFUSED) {
  Deno.test(`readPlan() refuses ${name} at its field`, () => {
    const message = faultOf(withField(section, field, value), `${section}.${field}`);
    for (const word of says) assertStringIncludes(message, word);
  });
}

const AGAINST_EACH_OTHER: [
  name: string,
  change: [string, string, unknown][],
  path: string,
  says: string,
][] = [
  [
    "maximum speed below the power peak",
    [["engine", "maximumSpeed", "5000 rpm"]],
    "engine.maximumSpeed",
    "power peak",
  ],
  [
    "idle above the power peak",
    [["engine", "powerSpeed", "2000 rpm"], ["engine", "idleSpeed", "3000 rpm"]],
    "engine.idleSpeed",
    "below",
  ],
  ["cylinders that do not share out", [["rail", "count", 3]], "rail.count", "evenly"],
  [
    "BSFC below the heating value",
    [["demand", "bsfc", "80 g/kWh"]],
    "demand.bsfc",
    "heating value",
  ],
  [
    "a bore as wide as the bar",
    [["rail", "bore", "20 mm"], ["rail", "height", "20 mm"]],
    "rail.bore",
    "as wide",
  ],
  [
    "more than 10 bar",
    [["engine", "aspiration", "boosted"], ["engine", "boost", "2 bar"], [
      "regulator",
      "setPressure",
      "9 bar",
    ]],
    "regulator.setPressure",
    "10.0 bar (145 psi)",
  ],
  [
    "boost above an atmosphere-referenced set pressure",
    [["engine", "aspiration", "boosted"], ["engine", "boost", "3 bar"], [
      "regulator",
      "setPressure",
      "3 bar",
    ], ["regulator", "reference", "atmosphere"]],
    "regulator.setPressure",
    "above",
  ],
  ["a bar shorter than its injectors", [["rail", "length", "100 mm"]], "rail.length", "span"],
  [
    "a pump that gives more at more pressure",
    [["pump", "points", [{ pressure: "3 bar", flow: "200 L/h" }, {
      pressure: "4 bar",
      flow: "210 L/h",
    }]]],
    "pump.points.1.flow",
    "rises",
  ],
  ["half a point", [["pump", "points", [{ pressure: "3 bar" }]]], "pump.points.0.flow", "missing"],
  [
    "a pressure twice",
    [["pump", "points", [{ pressure: "3 bar", flow: "2 L/min" }, {
      pressure: "3 bar",
      flow: "1 L/min",
    }]]],
    "pump.points.1.pressure",
    "twice",
  ],
];

for (const [name, changes, path, says] of AGAINST_EACH_OTHER) {
  Deno.test(`readPlan() refuses ${name}`, () => {
    let plan = LEAST as unknown as Record<string, Record<string, unknown>>;
    for (const [section, field, value] of changes) {
      plan = { ...plan, [section]: { ...plan[section], [field]: value } };
    }
    assertStringIncludes(faultOf(plan, path), says);
  });
}

Deno.test("readPlan() names faults of fields and between fields in one go", () => {
  const engine = { ...LEAST.engine, power: "420", maximumSpeed: "5000 rpm" };
  const rail = { bore: "20 mm", height: "20 mm" };
  const reading = readPlan({ ...LEAST, engine, rail });
  assert(!reading.ok);
  assertEquals(reading.faults.map(({ path }) => path), [
    "engine.power",
    "engine.maximumSpeed",
    "rail.bore",
  ]);
});

Deno.test("readPlan() finds nothing between fields where one of them is at fault itself", () => {
  const engine = { ...LEAST.engine, cylinders: 4.5, aspiration: "boosted", boost: "lots" };
  const reading = readPlan({
    ...LEAST,
    engine,
    rail: { count: 3 },
    regulator: { setPressure: "0.5 bar", reference: "atmosphere" },
    pump: { points: [{ flow: "200" }] },
  });
  assert(!reading.ok);
  assertEquals(reading.faults.map(({ path }) => path), [
    "engine.cylinders",
    "engine.boost",
    "regulator.setPressure",
    "pump.points.0.flow",
  ]);
});

Deno.test("bounds between fields are given in the plan's units first", () => {
  const rail = { bore: "1 in", height: "0.75 in" };
  const inch = { ...LEAST, rail, sheet: { units: "inch" } };
  assertStringIncludes(faultOf(inch, "rail.bore"), "less than 0.750 in (19.05 mm).");
  assertStringIncludes(faultOf({ ...LEAST, rail }, "rail.bore"), "less than 19.05 mm (0.750 in).");
});

Deno.test("an answer that the others leave no place for is kept and said to be unused", () => {
  const reading = readPlan(withField("engine", "boost", "17 psi"));
  assert(reading.ok, JSON.stringify(reading));
  const { values, notes } = resolvePlan(reading.plan);
  assertEquals(values.engine.boost, undefined);
  assertEquals(notes["engine.boost"], "not used: the engine is said to be naturally aspirated");
});

for (const powerSpeed of ["1000 rpm", "1010 rpm", "1500 rpm", "1800 rpm", "1801 rpm"]) {
  for (const cycle of ["four-stroke", "two-stroke"]) {
    Deno.test(`no speed that is assumed is at fault: ${cycle}, power peak at ${powerSpeed}`, () => {
      const reading = readPlan({ ...LEAST, engine: { ...LEAST.engine, cycle, powerSpeed } });
      assert(reading.ok, JSON.stringify(reading));
      const { engine } = resolvePlan(reading.plan).values;
      assert((engine.idleSpeed ?? 0) * 60 > 300, "an idle speed is assumed, within its bounds");
    });
  }
}

Deno.test("readPlan() says what misses, what is unknown and which version is wanted", () => {
  assertStringIncludes(faultOf({ version: 1, fuel: { name: "petrol" } }, "engine"), "");
  assertStringIncludes(
    faultOf({ ...LEAST, engine: { ...LEAST.engine, colour: "red" } }, "engine"),
    "colour",
  );
  assertStringIncludes(faultOf({ ...LEAST, paint: {} }, ""), "paint");
  assertStringIncludes(faultOf({ ...LEAST, version: 2 }, "version"), "versions up to 1");
  assertStringIncludes(faultOf({ ...LEAST, version: 0 }, "version"), "version 1 is wanted");
  for (const odd of [null, [], 7, "plan", {}, { version: "1" }]) {
    assertEquals(readPlan(odd).ok, false);
  }
});

Deno.test("readPlan() keeps to bare data: odd keys change nothing", () => {
  const plan = JSON.parse(`{"version":1,"__proto__":{"x":1},"constructor":{}}`);
  assertEquals(readPlan(plan).ok, false);
});

Deno.test("the JSON Schema of a plan describes every field", async () => {
  const schema = await planJsonSchema() as {
    properties: Record<string, { properties: Record<string, Record<string, unknown>> }>;
  };
  for (const [name, { fields }] of Object.entries(SECTIONS)) {
    for (const [key, field] of Object.entries(fields)) {
      const described = schema.properties[name]?.properties[key];
      assertEquals([described?.title, described?.description], [field.label, field.hint]);
    }
  }
});

Deno.test("resolvePlan() is pure", () => {
  const reading = readPlan(golden);
  assert(reading.ok);
  const frozen: Plan = structuredClone(reading.plan);
  assertEquals(resolvePlan(reading.plan), resolvePlan(frozen));
  assertEquals(reading.plan, frozen);
});
