/** What the table of fields itself has to keep to. */
import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import {
  type DefaultRows,
  type Earlier,
  type Field,
  type ListField,
  planReady,
  readPlan,
  type Resolved,
  resolvePlan,
  type Row,
  type Section,
  SECTIONS,
} from "@/lib/plan/mod.ts";

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

function resolved(sections: Record<string, unknown>): Resolved {
  const reading = readPlan({ ...LEAST, ...sections });
  assert(reading.ok, JSON.stringify(reading));
  return resolvePlan(reading.plan);
}

const LAID_OUT: readonly (readonly [path: string, field: Field | ListField])[] = Object.entries<
  Section
>(SECTIONS).flatMap(([name, { fields }]) =>
  Object.entries(fields).map(([key, field]) => [`${name}.${key}`, field] as const)
);

const NO_ROW: Row = { number: () => undefined, word: () => undefined };

/** The words and numbers that conditions are tried with, so that each branch of them is taken. */
const TRIED: readonly (readonly [word: string | undefined, number: number | undefined])[] = [
  [undefined, undefined],
  ["", 1],
  ["engine", 2],
  ["feed", 0],
  ["dead-ended", 2],
  ["lift", 3],
];

/** The paths that a field's condition and default look at. */
function lookedAt(field: Field | ListField): Set<string> {
  const paths = new Set<string>();
  for (const [word, number] of TRIED) {
    const earlier: Earlier = {
      word: (path) => (paths.add(path), word),
      number: (path) => (paths.add(path), number),
    };
    field.when?.(earlier, NO_ROW);
    const fallback = field.type === "text" ? undefined : field.default;
    try {
      if (typeof fallback === "function") fallback(earlier, NO_ROW);
    } catch (error) {
      // No density of a fuel, say; what it looked at counts all the same.
      if (!(error instanceof InputError || error instanceof TypeError)) throw error;
    }
    if (field.type !== "list") continue;
    for (const each of Object.values(field.fields)) {
      for (const path of lookedAt(each)) paths.add(path);
    }
  }
  return paths;
}

for (const [path, field] of LAID_OUT) {
  const seen = lookedAt(field);
  if (seen.size === 0) continue;
  Deno.test(`${path} looks only at what stands before it, or at how many rows a list has`, () => {
    const before = new Set(
      LAID_OUT.slice(0, LAID_OUT.findIndex(([p]) => p === path)).map(([p]) => p),
    );
    const lists = LAID_OUT.filter(([, { type }]) => type === "list").map(([p]) => p);
    assertEquals([...seen].filter((p) => !before.has(p) && !lists.includes(p)), []);
  });
}

Deno.test("rows that are assumed leave nothing in them assumed, open or unused", () => {
  for (
    const sections of [
      {
        pump: { place: "line" },
        lift: { present: "lift" },
        rail: { count: 2, connection: "loop" },
      },
      { regulator: { layout: "dead-ended", place: "feed" } },
    ]
  ) {
    const { assumed, missing, notes } = resolved(sections);
    const lists = assumed.filter(({ rows }) => rows !== undefined);
    assert(lists.length >= 2);
    for (const { path, text, rows } of lists) {
      assert(rows && rows.length > 0 && text.length > 10, path);
      const within = (other: string): boolean => other.startsWith(`${path}.`);
      assertEquals(assumed.map((each) => each.path).filter(within), []);
      assertEquals(missing.filter(within), []);
      assertEquals(Object.keys(notes).filter(within), []);
    }
  }
});

Deno.test("an assumed run is said on one line, how many first", () => {
  const feed = resolved({}).assumed.find(({ path }) => path === "supply.feed");
  assertEquals(
    feed?.text,
    "hose, 3.5 m; 2 × 90° elbow, swept; 2 × straight fitting; filter, 300 L/h, 20 kPa",
  );
  assertEquals(feed?.label, "Feed, pump to rail");
});

Deno.test("runs are assumed only where the plan has them", () => {
  const runs = (sections: Record<string, unknown>): string[] => {
    const { supply } = resolved(sections).values;
    return (["suction", "feed", "branch", "crossover", "return", "lift"] as const)
      .filter((name) => supply[name].length > 0);
  };
  assertEquals(runs({}), ["feed", "return"]);
  assertEquals(runs({ regulator: { layout: "dead-ended" } }), ["feed"]);
  assertEquals(runs({ regulator: { layout: "dead-ended", place: "feed" } }), [
    "feed",
    "branch",
    "return",
  ]);
  assertEquals(runs({ pump: { place: "line" } }), ["suction", "feed", "return"]);
  assertEquals(runs({ pump: { drive: "engine" } }), ["suction", "feed", "return"]);
  assertEquals(runs({ rail: { count: 2 } }), ["feed", "branch", "return"]);
  assertEquals(runs({ rail: { count: 2, connection: "series" } }), ["feed", "crossover", "return"]);
  assertEquals(runs({ lift: { present: "lift" } }), ["feed", "return", "lift"]);
});

Deno.test("the branch parts by a tee only where rails are fed side by side", () => {
  const pieces = (sections: Record<string, unknown>) =>
    resolved(sections).values.supply.branch.map(({ piece }) => piece);
  assertEquals(pieces({ rail: { count: 2 } }), ["tee-branch", "hose", "straight"]);
  assertEquals(pieces({ regulator: { layout: "dead-ended", place: "feed" } }), [
    "hose",
    "straight",
  ]);
});

Deno.test("a measured loss stands for the feed until its pieces are listed", () => {
  const measured = resolved({ supply: { feedLoss: "0.5 bar" } });
  assertEquals(measured.values.supply.feed, []);
  assertEquals(measured.values.supply.feedLoss, 5e4);
  const listed = resolved({ supply: { feedLoss: "0.5 bar", feed: [{ piece: "filter" }] } });
  assertEquals(listed.values.supply.feedLoss, undefined);
  assertStringIncludes(listed.notes["supply.feedLoss"] ?? "", "not used: the pieces");
});

Deno.test("what a piece has no use for is said to be unused", () => {
  const row = { piece: "straight", length: "1 m", flow: "1 L/min", loss: "1 kPa", count: 2 };
  const { values, notes } = resolved({ supply: { feed: [row] } });
  const [piece] = values.supply.feed;
  assertEquals([piece?.count, piece?.length, piece?.loss], [2, undefined, undefined]);
  assertEquals(Object.keys(notes), [
    "supply.feed.0.length",
    "supply.feed.0.flow",
    "supply.feed.0.loss",
  ]);
});

Deno.test("a list that is not asked counts for nothing, and says so", () => {
  const { values, notes } = resolved({ supply: { suction: [{ piece: "hose", length: "1 m" }] } });
  assertEquals(values.supply.suction, []);
  assertEquals(notes["supply.suction"], "not used: the pump sits in the tank");
});

Deno.test("a pump in the tank has no suction run to ask about", () => {
  const { values, missing } = resolved({});
  assertEquals(values.supply.suctionBore, undefined);
  assertEquals(missing.filter((path) => path.startsWith("supply.")), []);
  assertEquals(resolved({ pump: { place: "line" } }).values.supply.suctionBore, 0.0127);
});

Deno.test("the bar that is assumed is as long as a stated pitch needs", () => {
  const { values } = resolved({ rail: { pitch: "150 mm" } });
  assertAlmostEquals(values.rail.length, 3 * 0.15 + 0.1);
});

Deno.test("what may stay blank is never open", () => {
  const { missing } = resolved({ lift: { present: "lift" } });
  assertEquals(missing.filter((path) => /^(pump|wiring|lift|regulator)\./.test(path)), [
    "regulator.leastDrop",
    "pump.shutOff",
    "wiring.fuse",
    "lift.surgeVolume",
  ]);
});

Deno.test("an engine-driven pump is asked for speed and relief, not for volts", () => {
  const { values, missing, notes } = resolved({
    pump: {
      drive: "engine",
      voltage: "12 V",
      points: [{ pressure: "3 bar", flow: "9 L/min", current: "9 A" }],
    },
  });
  assertEquals(values.pump.voltage, undefined);
  assertEquals(values.pump.points[0]?.current, undefined);
  assertEquals(values.wiring.wire, undefined);
  assertEquals(values.pump.place, "line");
  assert(missing.includes("pump.ratedSpeed") && missing.includes("pump.relief"));
  assertEquals(Object.keys(notes), ["pump.voltage", "pump.points.0.current"]);
});

Deno.test("the assumed wire is the thinnest metric one that loses under 0.5 V at 15 A", () => {
  // IEC 60228, class 5, greatest resistance at 20 °C [ohm/m]; copper 0.393 % per kelvin.
  const RESISTANCE = { "2.5 mm2": 7.98e-3, "4 mm2": 4.95e-3 };
  const { wire, outLength = 0, returnLength = 0, temperature = 0 } = resolved({}).values.wiring;
  const lost = (ohm_m: number): number =>
    15 * ohm_m * (1 + 0.00393 * (temperature - 293.15)) * (outLength + returnLength);
  assertEquals(wire, "4 mm2");
  assert(lost(RESISTANCE["4 mm2"]) < 0.5 && lost(RESISTANCE["2.5 mm2"]) > 0.5);
});

Deno.test("every list says how many rows it takes, and its default keeps to it", () => {
  for (const [path, field] of LAID_OUT) {
    if (field.type !== "list") continue;
    assert(field.rows <= field.max, path);
    const fixed = field.default as DefaultRows | undefined;
    if (typeof fixed === "object") assert(fixed.rows.length <= field.max, path);
  }
});
