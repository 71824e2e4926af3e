import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import {
  boxesOf,
  type Plan,
  planFromBoxes,
  planJsonSchema,
  planReady,
  readPlan,
  resolvePlan,
  SECTIONS,
  settle,
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

/** Plans that between them are asked every field that has a default. */
const SHAPES: readonly [name: string, plan: Record<string, Record<string, unknown> | number>][] = [
  ["the least plan", LEAST],
  ["a dead-ended rail", { ...LEAST, regulator: { layout: "dead-ended" } }],
  ["a regulator in the feed", { ...LEAST, regulator: { layout: "dead-ended", place: "feed" } }],
  ["two pumps in the line, slowed", {
    ...LEAST,
    pump: { count: 2, place: "line", control: "reduced" },
  }],
  ["an engine-driven pump", { ...LEAST, pump: { drive: "engine", ratedSpeed: "4000 rpm" } }],
  ["a surge tank", { ...LEAST, lift: { present: "lift" } }],
  ["rails in a loop", { ...LEAST, rail: { count: 2, connection: "loop" } }],
  ["rails in series", { ...LEAST, rail: { count: 2, connection: "series" } }],
  ["a stated least drop", { ...LEAST, regulator: { leastDrop: "0.5 bar" } }],
  ["a bar of known size", { ...LEAST, rail: { bore: "1/2 in", height: "1 1/4 in" } }],
  ["a narrow gallery and pocket", { ...LEAST, rail: { bore: "5 mm", pocketBore: "7 mm" } }],
  ["caps welded on", { ...LEAST, rail: { ends: "welded" } }],
];

for (const [name, plan] of SHAPES) {
  Deno.test(`every default can be typed back as it stands: ${name}`, () => {
    const reading = readPlan(plan);
    assert(reading.ok, JSON.stringify(reading));
    const before = resolvePlan(reading.plan);
    const boxes = before.assumed.reduce(settle, boxesOf(reading.plan));
    const again = readPlan(planFromBoxes(boxes));
    assert(again.ok, JSON.stringify(again));
    const after = resolvePlan(again.plan);
    assertEquals(after.assumed, []);
    assertEquals(after.missing, before.missing);
    assertEquals(after.values, before.values);
  });
}

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

/** Rows of the feed that cannot be taken, each with the field that is at fault. */
const PIECES_AT_FAULT: [name: string, row: Record<string, unknown>, field: string, says: string][] =
  [
    ["a piece that is not named", { length: "1 m" }, "piece", "choose what it is"],
    ["a hose without its length", { piece: "hose", size: "-8" }, "length", "missing"],
    ["a tube without its length", { piece: "tube" }, "length", "missing"],
    ["a filter's flow without its loss", { piece: "filter", flow: "300 L/h" }, "loss", "missing"],
    ["a loss without its flow", { piece: "other", loss: "5 kPa" }, "flow", "missing"],
    [
      "a second flow without its loss",
      { piece: "filter", flow: "300 L/h", loss: "20 kPa", flow2: "400 L/h" },
      "loss2",
      "missing",
    ],
    [
      "a second loss without its flow",
      { piece: "filter", flow: "300 L/h", loss: "20 kPa", loss2: "30 kPa" },
      "flow2",
      "missing",
    ],
    [
      "a second point without the first",
      { piece: "filter", flow2: "400 L/h", loss2: "30 kPa" },
      "flow",
      "missing",
    ],
    [
      "a second flow that is the first",
      { piece: "filter", flow: "300 L/h", loss: "20 kPa", flow2: "5 L/min", loss2: "30 kPa" },
      "flow2",
      "once more",
    ],
    [
      "a filter that loses less at more flow",
      { piece: "filter", flow: "300 L/h", loss: "20 kPa", flow2: "400 L/h", loss2: "20 kPa" },
      "loss2",
      "lose more",
    ],
    [
      "a filter that loses less when dirty",
      { piece: "filter", flow: "300 L/h", loss: "20 kPa", dirtyLoss: "15 kPa" },
      "dirtyLoss",
      "at least 0.200 bar",
    ],
  ];

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
  [
    "a pressure twice in two units",
    [["pump", "points", [{ pressure: "0.7 bar", flow: "2 L/min" }, {
      pressure: "70 kPa",
      flow: "1 L/min",
    }]]],
    "pump.points.1.pressure",
    "twice",
  ],
  [
    "a current without its point",
    [["pump", "points", [{ pressure: "3 bar", flow: "2 L/min" }, { current: "8 A" }]]],
    "pump.points.1.pressure",
    "missing",
  ],
  [
    "a pump that gives more at more pressure at one of two voltages",
    [["pump", "points", [
      { pressure: "3 bar", flow: "200 L/h" },
      { pressure: "4 bar", flow: "150 L/h", voltage: "12 V" },
      { pressure: "3 bar", flow: "140 L/h", voltage: "12 V" },
    ]]],
    "pump.points.1.flow",
    "rises",
  ],
  [
    "a pressure twice at one voltage, once said and once meant",
    [["pump", "points", [
      { pressure: "3 bar", flow: "200 L/h" },
      { pressure: "3 bar", flow: "190 L/h", voltage: "13.5 V" },
    ]]],
    "pump.points.1.pressure",
    "twice",
  ],
  [
    "a pump that gives less at a higher voltage",
    [["pump", "points", [
      { pressure: "3 bar", flow: "200 L/h" },
      { pressure: "3 bar", flow: "210 L/h", voltage: "12 V" },
    ]]],
    "pump.points.0.flow",
    "lower voltage",
  ],
  [
    "half a point of a lift pump",
    [["lift", "present", "lift"], ["lift", "points", [{ flow: "100 L/h" }]]],
    "lift.points.0.pressure",
    "missing",
  ],
  [
    "an engine-driven pump in the tank",
    [["pump", "drive", "engine"], ["pump", "place", "tank"]],
    "pump.place",
    "at the engine",
  ],
  [
    "a least drop above the set pressure",
    [["regulator", "setPressure", "2 bar"], ["regulator", "leastDrop", "2.5 bar"]],
    "regulator.leastDrop",
    "less than 2.00 bar",
  ],
  [
    "a blend twice",
    [["fuel", "blends", [{ ethanolShare: "10 %" }, { ethanolShare: "0.1" }]]],
    "fuel.blends.1.ethanolShare",
    "twice",
  ],
  [
    "a cruise above the maximum speed",
    [["operating", "cruiseSpeed", "9000 rpm"]],
    "operating.cruiseSpeed",
    "at most 6900 rpm",
  ],
  ...PIECES_AT_FAULT.map(([name, row, field, says]): typeof AGAINST_EACH_OTHER[number] => [
    name,
    [["supply", "feed", [{ piece: "hose", length: "2 m" }, row]]],
    `supply.feed.1.${field}`,
    says,
  ]),
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

Deno.test("readPlan() names every row of a run that is at fault", () => {
  const feed = [{ piece: "hose" }, { piece: "straight" }, { piece: "tube" }, { flow: "1 L/min" }];
  const reading = readPlan(withField("supply", "feed", feed));
  assert(!reading.ok);
  assertEquals(reading.faults.map(({ path }) => path), [
    "supply.feed.0.length",
    "supply.feed.2.length",
    "supply.feed.3.piece",
  ]);
});

Deno.test("a filter of which nothing is known is taken, and so are points at two voltages", () => {
  const points = [
    { pressure: "3 bar", flow: "200 L/h", current: "9 A" },
    { pressure: "3 bar", flow: "160 L/h", voltage: "12 V" },
    { pressure: "5 bar", flow: "150 L/h" },
  ];
  const reading = readPlan({ ...LEAST, supply: { feed: [{ piece: "filter" }] }, pump: { points } });
  assert(reading.ok, JSON.stringify(reading));
  const { values, missing } = resolvePlan(reading.plan);
  assertEquals(values.supply.feed.map(({ piece, loss }) => [piece, loss]), [["filter", undefined]]);
  assertEquals(values.pump.points.map(({ voltage }) => voltage), [undefined, 12, undefined]);
  assertEquals(missing.filter((path) => /supply.feed|pump.points/.test(path)), []);
});

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
