import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import fc from "fast-check";
import {
  type Check,
  CRITERIA,
  evaluate,
  shoppingCsv,
  type ShoppingFigure,
  type ShoppingItem,
  shoppingList,
} from "@/lib/evaluation/mod.ts";
import { FITTINGS, Run } from "@/lib/line/mod.ts";
import { type Plan, type PlanValues, resolvePlan, type RunName } from "@/lib/plan/mod.ts";
import { layRails } from "@/lib/supply/mod.ts";
import { parseQuantity } from "@/lib/units/mod.ts";
import { demos } from "@/routes/demos.ts";
import { arbitraryPlan, mended } from "../../helpers/arbitrary_plan.ts";
import { notFinite, UNFIT_TEXT } from "../../helpers/finite.ts";
import { planOf } from "../../helpers/plan_of.ts";

/** Random plans tried. */
const RUNS = 300;

const LEAST = {
  version: 1,
  engine: {
    cycle: "four-stroke",
    cylinders: 8,
    displacement: "5 L",
    power: "500 hp",
    powerSpeed: "6500 rpm",
    aspiration: "natural",
  },
  fuel: { name: "E85" },
  rail: { count: 2, bore: "14 mm", height: "35 mm" },
} as const;

interface Listed {
  readonly items: readonly ShoppingItem[];
  readonly values: PlanValues;
  readonly checks: readonly Check[];
}

function listed(plan: Plan): Listed {
  const evaluation = evaluate(plan);
  const { values } = resolvePlan(plan);
  return { items: shoppingList(evaluation, values), values, checks: evaluation.checks };
}

function item({ items }: Pick<Listed, "items">, id: string): ShoppingItem {
  const found = items.find((each) => each.id === id);
  assert(found, `no ${id} among ${items.map(({ id }) => id).join(", ")}`);
  return found;
}

function figure(of: ShoppingItem, name: string): ShoppingFigure {
  const found = of.figures.find((each) => each.name.startsWith(name));
  assert(found, `no ${name} among ${of.figures.map(({ name }) => name).join(", ")}`);
  return found;
}

/** How many alike runs there are, counted in the network that the supply is solved with. */
function timesOf(values: PlanValues): Readonly<Record<RunName, number>> {
  const { rail, regulator } = values;
  const water = { density_kg_m3: 1000, viscosity_Pa_s: 1e-3 };
  const branch = new Run([], water);
  const crossover = new Run([], water);
  const net = layRails(
    {
      count: rail.count,
      length_m: rail.length,
      bore_m: 0.01,
      roughness_m: 0,
      stations_m: [rail.length / 3],
      feed: rail.feed,
      connection: rail.connection ?? "parallel",
    },
    { branch, crossover },
    water,
    regulator.layout === "return",
  );
  const laid = (law: unknown): number => net.links.filter((link) => link.law === law).length;
  return {
    suction: 1,
    feed: 1,
    branch: laid(branch.law),
    crossover: laid(crossover.law),
    return: 1,
    lift: 1,
  };
}

const NAMES = ["suction", "feed", "branch", "crossover", "return", "lift"] as const;

/** Sums over all rows of a plan, each as often as its run is laid. */
function summed(values: PlanValues): { length_m: number; fittings: number; stated: number } {
  const times = timesOf(values);
  const sums = { length_m: 0, fittings: 0, stated: 0 };
  for (const name of NAMES) {
    for (const { piece, length, count } of values.supply[name]) {
      if (piece === undefined) continue;
      if (["hose", "corrugated", "tube"].includes(piece)) {
        sums.length_m += times[name] * (length ?? 0);
      } else if (piece in FITTINGS) sums.fittings += times[name] * (count ?? 1);
      else sums.stated += times[name];
    }
  }
  return sums;
}

function countOf({ quantity }: ShoppingItem): number {
  return quantity?.unit === "pieces" ? quantity.value : 0;
}

function checkList({ items, values }: Listed): void {
  assertEquals(notFinite(items), []);
  const ids = items.map(({ id }) => id);
  assertEquals(new Set(ids).size, ids.length, `ids are unique: ${ids.join(", ")}`);
  for (const { id, figures, missing, quantity } of items) {
    assert(figures.length + missing.length > 0, `${id} says nothing`);
    assert(figures[0]?.sense !== "at", `${id} begins with where nothing holds`);
    if (quantity?.unit === "pieces") {
      assert(Number.isInteger(quantity.value) && quantity.value > 0, `${id}: ${quantity.value}`);
    }
    if (quantity?.unit === "length") assert(quantity.value_m >= 0, `${id}: ${quantity.value_m}`);
  }
  const { length_m, fittings, stated } = summed(values);
  const on = (part: string): ShoppingItem[] => items.filter((each) => each.part === part);
  const metres = on("hoses").map(({ quantity }) =>
    quantity?.unit === "length" ? quantity.value_m : 0
  );
  assertAlmostEquals(metres.reduce((a, b) => a + b, 0), length_m, 1e-9 * (1 + length_m));
  const counted = on("fittings").map(countOf).reduce((a, b) => a + b, 0);
  const places = on("fittings").flatMap(({ shares }) => shares);
  assertEquals(places.reduce((sum, { times, each }) => sum + times * each, 0), fittings);
  const tees = on("fittings").filter(({ id }) => id.startsWith("tee-")).length;
  assert(fittings - counted >= 0 && fittings - counted <= tees, "only tees are shared");
  const parts = [
    ...on("filters"),
    ...on("valves"),
    ...on("sensors").filter(({ id }) => id !== "pressure-sensor"),
  ];
  assertEquals(parts.map(countOf).reduce((a, b) => a + b, 0), stated);
}

Deno.test("on any plan every item has figures or says what is missing, and all adds up", () => {
  let taken = 0;
  let withTees = 0;
  fc.assert(
    fc.property(arbitraryPlan, (document) => {
      const plan = mended(document);
      if (plan === undefined) return;
      taken++;
      const list = listed(plan);
      checkList(list);
      if (list.items.some(({ id }) => id.startsWith("tee-"))) withTees++;
      // What people typed may say anything; it stands in what the weakest part is called.
      const ours = list.items.filter(({ id }) => id !== "weakest-part");
      const text = shoppingCsv(ours, list.values.sheet.units);
      assert(!UNFIT_TEXT.test(text), text);
    }),
    { numRuns: RUNS, seed: 11 },
  );
  assert(taken > RUNS * 0.6, `only ${taken} of the random plans were valid`);
  assert(withTees > 20, `only ${withTees} lists had tees`);
});

for (const { name, plan } of demos) {
  Deno.test(`the list of ${name} adds up`, () => checkList(listed(planOf(plan))));
}

const branch = [
  { piece: "tee-branch", size: "-8" },
  { piece: "hose", size: "-8", length: "0.5 m" },
  { piece: "straight", size: "-8", count: 2 },
];
const crossover = [{ piece: "hose", size: "-8", length: "0.3 m" }];

const JOINED: [what: string, rail: object, metres: number, straights: number, tees: number][] = [
  ["two rails side by side", { count: 2, connection: "parallel" }, 1, 4, 1],
  ["two rails joined at their far ends", { count: 2, connection: "loop" }, 1.6, 4, 1],
  ["four rails side by side", { count: 4, connection: "parallel" }, 2, 8, 3],
  ["two rails fed at both ends", { count: 2, connection: "parallel", feed: "both-ends" }, 2, 8, 3],
];

for (const [what, rail, metres, straights, tees] of JOINED) {
  Deno.test(`branches are bought as often as they are laid: ${what}`, () => {
    const { items } = listed(planOf({
      ...LEAST,
      rail: { ...LEAST.rail, ...rail },
      supply: {
        feed: [{ piece: "tube", bore: "10 mm", length: "2 m" }],
        return: [{ piece: "tube", bore: "10 mm", length: "2 m" }],
        branch,
        crossover,
      },
    }));
    assertEquals(item({ items }, "hose-dash-8").quantity, { unit: "length", value_m: metres });
    assertEquals(countOf(item({ items }, "straight-dash-8")), straights);
    assertEquals(countOf(item({ items }, "tee-dash-8")), tees);
  });
}

Deno.test("rails one after the other are joined by one run less than there are rails", () => {
  const { items } = listed(planOf({
    ...LEAST,
    rail: { ...LEAST.rail, count: 4, connection: "series" },
    supply: {
      feed: [{ piece: "hose", size: "-6", length: "2 m" }],
      return: [{ piece: "hose", bore: "8.7 mm", length: "1 m" }],
      crossover,
    },
  }));
  const metres = item({ items }, "hose-dash-8").quantity;
  assert(metres?.unit === "length");
  assertAlmostEquals(metres.value_m, 0.9, 1e-12);
  // A bore that is a size's own is that size.
  assertEquals(item({ items }, "hose-dash-6").quantity, { unit: "length", value_m: 3 });
});

/** The list's figures as a plan would hold them, typed in SI. */
function asListed(document: object): object {
  const list = listed(planOf(document));
  const pump = item(list, "pump");
  const [flow, rise, volts] = ["flow", "pressure rise", "at its terminals"].map((name) =>
    figure(pump, name).value
  );
  const filter = item(list, "filter-feed-2");
  return {
    ...document,
    injectors: {
      ...(document as { injectors: object }).injectors,
      stages: [{ flow: `${figure(item(list, "injectors"), "static flow").value * 6e7} cc/min` }],
    },
    pump: {
      voltage: `${volts} V`,
      points: [0.5, 1, 1.5].map((share) => ({
        pressure: `${(rise ?? 0) * share} Pa`,
        flow: `${(flow ?? 0) * (2 - share) ** 0.2 * 3.6e6} L/h`,
      })),
      shutOff: "7 bar",
    },
    supply: {
      feed: [{ piece: "hose", size: "-8", length: "3 m" }, {
        piece: "filter",
        flow: `${figure(filter, "rated flow").value * 3.6e6} L/h`,
        loss: `${figure(filter, "loss").value} Pa`,
      }],
    },
    lift: {
      present: "lift",
      surgeVolume: `${figure(item(list, "surge-tank"), "usable volume").value * 1e3} L`,
    },
    sensor: { range: `${figure(item(list, "pressure-sensor"), "range").value} Pa` },
    proof: { weakestRating: `${figure(item(list, "every-part"), "pressure rating").value} Pa` },
  };
}

const SHOPPED = {
  ...LEAST,
  engine: { ...LEAST.engine, cylinders: 4, power: "220 hp" },
  rail: { ...LEAST.rail, count: 1 },
  injectors: { lowestVoltage: "13 V" },
  supply: { feed: [{ piece: "hose", size: "-8", length: "3 m" }, { piece: "filter" }] },
  pump: { shutOff: "7 bar" },
  lift: { present: "lift" },
};

Deno.test("a plan that is bought from its list meets what the list was made for", () => {
  const { checks } = listed(planOf(asListed(SHOPPED)));
  const check = (id: string): Check => {
    const found = checks.find((each) => each.id === id);
    assert(found, id);
    return found;
  };
  const aims: [id: string, aim: number, within: number][] = [
    ["duty-maximum", CRITERIA.dutyMaximum.aim, 1e-6],
    ["surge-tank", CRITERIA.surgeTank.aim, 1e-6],
    ["sensor-range", CRITERIA.sensorRange.aim, 1e-6],
    ["proof-rating", CRITERIA.proofRating.limit, 1e-6],
    // The pump that is bought moves a little more than the list counts on.
    ["filter-loss", CRITERIA.filterLoss.aim, 0.03],
    // Its filter loses the aim, where the one of the plan lost nothing yet.
    ["pump-margin", CRITERIA.pumpMargin.aim, 0.15],
  ];
  for (const [id, aim, within] of aims) {
    const { value = NaN } = check(id);
    assertAlmostEquals(value / aim, 1, within, `${id}: ${value} against ${aim}`);
  }
});

const RETURNED = {
  ...LEAST,
  engine: { ...LEAST.engine, cylinders: 4, power: "300 hp", aspiration: "boosted", boost: "1 bar" },
  rail: { ...LEAST.rail, count: 1 },
  pump: {
    points: [
      { pressure: "2 bar", flow: "420 L/h" },
      { pressure: "4 bar", flow: "350 L/h" },
      { pressure: "6 bar", flow: "260 L/h" },
    ],
  },
  supply: {
    return: [{ piece: "hose", bore: "6.5 mm", length: "4 m" }, { piece: "straight", count: 2 }],
  },
};

Deno.test("a regulator as listed leaves the return at the aim, and holds the rail at full boost", () => {
  const { items } = listed(planOf(RETURNED));
  const wanted = item({ items }, "regulator");
  const [drop, flow] = ["least drop", "return flow"].map((name) => figure(wanted, name).value);
  const regulator = { leastDrop: `${drop} Pa`, dropFlow: `${(flow ?? 0) * 3.6e6} L/h` };
  const bought = planOf({ ...RETURNED, regulator });
  const back = evaluate(bought).checks.find(({ id }) => id === "return-back-pressure");
  assertAlmostEquals(back?.value ?? NaN, CRITERIA.returnBack.aim, 1e-3);
  assertAlmostEquals(
    figure(wanted, "pressure it holds").value,
    evaluate(bought).results.pressures?.railPeak_Pa ?? NaN,
    1,
  );
});

Deno.test("until a pump is chosen no fuse is named, only what it is at least", () => {
  const before = item(listed(planOf(SHOPPED)), "fuse");
  assertEquals(before.figures.map(({ sense }) => sense), ["at least"]);
  assertStringIncludes(before.missing.join(" "), "the pump you buy");
  const bought = asListed(SHOPPED);
  const { figures: [rating] } = item(listed(planOf(bought)), "fuse");
  assertEquals(rating?.sense, "exactly");
  const fused = listed(planOf({ ...bought, wiring: { fuse: `${rating?.value} A` } }));
  assertEquals(fused.checks.find(({ id }) => id === "fuse")?.verdict, "meets");
});

Deno.test("pumps share the flow side by side, and the pressure one behind the other", () => {
  const pump = (pump: object): ShoppingItem =>
    item(listed(planOf({ ...SHOPPED, pump: { ...pump } })), "pump");
  const one = pump({ count: 1 });
  const beside = pump({ count: 2, arrangement: "parallel" });
  const behind = pump({ count: 2, arrangement: "series" });
  const flows = [one, beside, behind].map((each) => figure(each, "flow").value);
  const rises = [one, beside, behind].map((each) => figure(each, "pressure rise").value);
  const [flow = NaN] = flows;
  const [rise = NaN] = rises;
  [1, 0.5, 1].forEach((share, i) => assertAlmostEquals(flows[i] ?? NaN, flow * share, 1e-9 * flow));
  [1, 1, 0.5].forEach((share, i) => assertAlmostEquals(rises[i] ?? NaN, rise * share, 1e-9 * rise));
});

/** Reads comma-separated values as RFC 4180 has them. */
function cellsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  let at = 0;
  while (at < text.length) {
    const row = rows.at(-1) as string[];
    let cell = "";
    if (text[at] === '"') {
      for (at++; !(text[at] === '"' && text[at + 1] !== '"'); at++) {
        assert(at < text.length, "a quote is not closed");
        if (text[at] === '"') at++;
        cell += text[at];
      }
      at++;
    } else {
      for (; at < text.length && text[at] !== "," && text[at] !== "\r"; at++) {
        assert(text[at] !== '"' && text[at] !== "\n", "what has to be quoted is not");
        cell += text[at];
      }
    }
    row.push(cell);
    if (text[at] === ",") at++;
    else {
      assertEquals(text.slice(at, at + 2), "\r\n");
      at += 2;
      if (at < text.length) rows.push([]);
    }
  }
  return rows;
}

for (const { name, plan } of demos) {
  Deno.test(`the file of ${name} reads back, its numbers in their units`, () => {
    const { items, values } = listed(planOf(plan));
    const text = shoppingCsv(items, values.sheet.units);
    assert(text.startsWith("\ufeffShelf,"));
    const [head, ...rows] = cellsOf(text.slice(1));
    assertEquals(head?.length, 9);
    const figures = items.flatMap(({ figures, facts, missing }) => [
      ...figures,
      ...facts.map(() => undefined),
      ...missing.map(() => undefined),
    ]);
    assertEquals(rows.length, figures.length);
    rows.forEach((row, i) => {
      assertEquals(row.length, 9);
      const wanted = figures[i];
      if (wanted === undefined) return;
      const [, , , , property, sense, number, unit] = row;
      assertEquals([property, sense], [wanted.name, wanted.sense]);
      const read = parseQuantity(`${number} ${unit}`, wanted.kind);
      assert(read.ok, `${number} ${unit}`);
      assertAlmostEquals(read.value, wanted.value, 6e-4 * Math.abs(wanted.value));
    });
  });
}

const HOSTILE = [
  `=HYPERLINK("http://x","y")`,
  "+1+1",
  "-2+3",
  "@sum(a1)",
  "＝1+1",
  `a "quoted", part`,
  "plain",
] as const;

for (const said of HOSTILE) {
  Deno.test(`a spreadsheet runs nothing that was typed: ${said}`, () => {
    const { items } = listed(planOf({
      ...LEAST,
      proof: { weakestPart: said, weakestRating: "10 bar" },
    }));
    // The item's text with what was typed at its very start.
    const bare = items.map((each) => each.id === "weakest-part" ? { ...each, what: said } : each);
    const rows = cellsOf(shoppingCsv(bare, "metric").slice(1));
    const isRun = /^[=+\-@＝＋－＠]/.test(said);
    assert(rows.some(([, what]) => what === (isRun ? `'${said}` : said)));
    for (const cell of rows.flat()) assert(!/^[=+@＝＋－＠]|^-(?![\d.]+$)/.test(cell), cell);
    assert(shoppingCsv(items, "metric").includes(said.replaceAll('"', '""')));
  });
}

Deno.test("fineness is in µm and copper in mm² on inch sheets too", () => {
  const { items } = listed(planOf({
    ...LEAST,
    supply: { feed: [{ piece: "filter", flow: "400 L/h", loss: "0.2 bar", fineness: "100 µm" }] },
    wiring: { wire: "AWG 12" },
    sheet: { units: "inch" },
  }));
  const text = shoppingCsv(items, "inch");
  assertStringIncludes(text, "fineness,at most,100,µm");
  assertStringIncludes(text, "copper,at least,3.309,mm²");
});
