import { assert, assertAlmostEquals, assertEquals, assertMatch } from "@std/assert";
import fc from "fast-check";
import {
  evaluate,
  type Evaluation,
  type Inspection,
  type Operation,
  type OperationId,
  type Workshop,
  WORKSHOP_CAUTIONS,
  workshopOf,
  type WorkshopTool,
} from "@/lib/evaluation/mod.ts";
import { tools } from "@/lib/layout/mod.ts";
import { type Plan, type PlanValues, resolvePlan } from "@/lib/plan/mod.ts";
import { SHOP_PRACTICE } from "@/lib/thread/mod.ts";
import { demos } from "@/routes/demos.ts";
import hillclimb from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import tourer from "@/seeds/tourer-six-e10.json" with { type: "json" };
import { arbitraryPlan, mended } from "../../helpers/arbitrary_plan.ts";
import { notFinite, UNFIT_TEXT } from "../../helpers/finite.ts";
import { planOf } from "../../helpers/plan_of.ts";

/** Random plans tried. */
const RUNS = 400;

interface Made {
  readonly sheet: Workshop;
  readonly values: PlanValues;
  readonly evaluation: Evaluation;
}

function made(plan: Plan): Made {
  const evaluation = evaluate(plan);
  const { values } = resolvePlan(plan);
  return { sheet: workshopOf(evaluation, values), values, evaluation };
}

/** The hill climb's plan with other answers. */
function hillclimbWith(other: Readonly<Record<string, object>>): Made {
  const document: Record<string, object | number> = { ...hillclimb };
  for (const [section, answers] of Object.entries(other)) {
    document[section] = { ...document[section] as object | undefined, ...answers };
  }
  return made(planOf(document));
}

function operation({ sheet }: Made, id: OperationId): Operation {
  const found = sheet.operations.find((each) => each.id === id);
  assert(found, `no ${id} among ${sheet.operations.map(({ id }) => id).join(", ")}`);
  return found;
}

function tool({ sheet }: Made, id: string): WorkshopTool {
  const found = sheet.tools.find((each) => each.id === id);
  assert(found, `no ${id} among ${sheet.tools.map(({ id }) => id).join(", ")}`);
  return found;
}

function point({ sheet }: Made, id: Inspection["id"]): Inspection {
  const found = sheet.inspection.find((each) => each.id === id);
  assert(found, `no ${id} among ${sheet.inspection.map(({ id }) => id).join(", ")}`);
  return found;
}

/** Operations that cut metal away; spotting a place is not yet making the hole. */
const CUTTING: ReadonlySet<OperationId> = new Set([
  "gallery",
  "plug-threads",
  "pocket-pilots",
  "pocket-bores",
  "sensor-port",
  "other-ports",
  "screw-holes",
]);

/** What comes before what, wherever both are there. */
const BEFORE: readonly (readonly [OperationId, OperationId])[] = [
  ["measure-bosses", "cut-bar"],
  ["cut-bar", "mark-out"],
  ["mark-out", "trial"],
  ["trial", "gallery"],
  ["gallery", "measure-gallery"],
  ["measure-gallery", "plug-threads"],
  ["plug-threads", "pocket-pilots"],
  ["plug-threads", "pocket-bores"],
  ["measure-gallery", "spot"],
  ["spot", "pocket-pilots"],
  ["pocket-pilots", "weld-caps"],
  ["brush-gallery", "weld-caps"],
  ["weld-caps", "measure-welded"],
  ["measure-welded", "pocket-bores"],
  ["weld-caps", "pocket-hones"],
  ["weld-caps", "sensor-port"],
  ["pocket-pilots", "pocket-bores"],
  ["pocket-bores", "pocket-hones"],
  ["pocket-hones", "sensor-port"],
  ["deburr", "wash"],
  ["wash", "inspect"],
  ["inspect", "prove"],
];

/** All texts below a value. */
function texts(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(texts) : [];
}

function checkOrder({ sheet }: Made): void {
  const order = sheet.operations.map(({ id }) => id);
  assertEquals(new Set(order).size, order.length, "each once");
  for (const [first, second] of BEFORE) {
    if (!order.includes(first) || !order.includes(second)) continue;
    assert(order.indexOf(first) < order.indexOf(second), `${first} before ${second}`);
  }
  const cutting = order.filter((id) => CUTTING.has(id));
  assertEquals(cutting[0], "gallery");
  assert(order.indexOf("trial") < order.indexOf("gallery"), "a trial before the bar");
  for (const id of cutting) {
    assert(order.indexOf(id) < order.indexOf("deburr"), `${id} before the burrs`);
  }
  assertEquals(order.at(-1), "prove");
}

/** Tools of the layout that another does the work of: a pointed drill, a taper reamer, a reamer. */
function isReplaced({ sheet }: Made, diameter_m: number): boolean {
  return sheet.tools.some(({ kind, diameter_m: other_m }) =>
    ["spotting drill", "taper reamer", "reamer"].includes(kind) &&
    Math.abs(other_m - diameter_m) < 1e-6
  );
}

function checkSheet(one: Made): void {
  const { sheet, values, evaluation } = one;
  assertEquals(notFinite(sheet), []);
  const said = texts(sheet).join("\n");
  assert(!UNFIT_TEXT.test(said), UNFIT_TEXT.exec(said)?.[0]);
  assert(!/\bsafe/i.test(said), "says safe");
  const { layout } = evaluation.results.drill;
  if (layout === undefined) {
    assert(sheet.missing, "says why there is none");
    assertEquals([sheet.operations.length, sheet.tools.length, sheet.inspection.length], [0, 0, 0]);
    return;
  }
  checkOrder(one);
  for (const { id, title, does, source } of sheet.operations) {
    assert(title !== "" && does.length > 0 && does.every(Boolean) && source !== "", id);
  }
  const cut = sheet.operations.filter(({ id }) => CUTTING.has(id));
  for (const { id } of layout.holes) {
    assert(cut.some(({ holes }) => holes.includes(id)), `nothing cuts ${id}`);
  }
  const ids = sheet.tools.map(({ id }) => id);
  assertEquals(new Set(ids).size, ids.length, `unique: ${ids.join(", ")}`);
  for (const each of sheet.tools) checkTool(one, each);
  for (const { kind, diameter_m } of tools(layout)) {
    const isThere = sheet.tools.some((each) => Math.abs(each.diameter_m - diameter_m) < 1e-6);
    assert(isThere || isReplaced(one, diameter_m), `${kind} of ${diameter_m} m is lost`);
  }
  for (const { id, figures, source, with: instrument } of sheet.inspection) {
    assert(source !== "" && instrument !== "", id);
    for (const { name, least, most } of figures) {
      assert(least !== undefined || most !== undefined, `${name} has no limit`);
      assert((least ?? -Infinity) <= (most ?? Infinity), `${name}: ${least} to ${most}`);
    }
  }
  assert(values.shop.leastSpeed <= values.shop.mostSpeed);
}

function checkTool({ sheet, values, evaluation }: Made, each: WorkshopTool): void {
  const { id, kind, setting, holes, serves, equivalents, limits, depthRatio, clearing } = each;
  assert(sheet.operations.some(({ tools }) => tools.includes(id)), `nothing takes ${id}`);
  assert(holes.length > 0 && serves !== "", `${id} serves nothing`);
  if (setting !== undefined) {
    const { leastSpeed, mostSpeed } = values.shop;
    assert(setting.speed_rev_s >= leastSpeed * (1 - 1e-12), `${id} ${setting.speed_rev_s}`);
    assert(setting.speed_rev_s <= mostSpeed * (1 + 1e-12), `${id} ${setting.speed_rev_s}`);
  }
  if (kind === "drill") {
    const asked = depthRatio > 10 ? "deep" : depthRatio > 3 ? "peck" : "straight";
    assertEquals(clearing, asked, id);
  }
  if (kind === "bore") {
    const bore = evaluation.results.drill.seal?.bore;
    for (const { diameter_m, name } of equivalents) {
      assert(bore && diameter_m >= bore.least_m - 1e-7 && diameter_m <= bore.most_m + 1e-7, name);
    }
  }
  for (const { name, diameter_m, error_m, inside } of equivalents) {
    assertAlmostEquals(error_m, diameter_m - each.diameter_m, 1e-9, name);
    const isMetric = name.endsWith(" mm");
    assert(values.shop.drills === "both" || isMetric === (values.shop.drills === "metric"), name);
    if (limits !== undefined && inside !== undefined) {
      const really = diameter_m >= limits.least_m - 1e-7 && diameter_m <= limits.most_m + 1e-7;
      assertEquals(inside, really, `${name} for ${id}`);
    }
  }
}

/** By chance alone hardly any plan has a bar and a gallery in it, and so a rail to lay out. */
function withBar(document: unknown): unknown {
  const { rail, ...rest } = document as { readonly rail?: object };
  return { ...rest, rail: { ...rail, bore: "12 mm", height: "40 mm", width: "36 mm" } };
}

Deno.test("on any plan the order holds, each hole is cut, each tool is taken up, speeds stay on the press", () => {
  const seen = { sheets: 0, welded: 0, limited: 0, round: 0, plugged: 0 };
  fc.assert(
    fc.property(arbitraryPlan, (document) => {
      const plan = mended(withBar(document));
      if (plan === undefined) return;
      const one = made(plan);
      checkSheet(one);
      if (one.sheet.missing !== undefined) return;
      seen.sheets++;
      if (one.values.rail.ends === "welded") seen.welded++;
      if (one.values.rail.shape === "round") seen.round++;
      if (one.sheet.operations.some(({ id }) => id === "plug-threads")) seen.plugged++;
      if (one.sheet.tools.some(({ setting }) => setting?.spindle.limitedBy !== undefined)) {
        seen.limited++;
      }
    }),
    { numRuns: RUNS, seed: 7 },
  );
  for (const [what, times] of Object.entries(seen)) {
    assert(times > 20, `${what}: only ${times} of ${RUNS}`);
  }
});

for (const { name, plan } of demos) {
  Deno.test(`the workshop sheet of ${name} holds together`, () => {
    const one = made(planOf(plan));
    checkSheet(one);
    assertEquals(one.sheet.missing, undefined);
  });
}

Deno.test("without bore and bar there is no sheet, and it says what to enter", () => {
  const { sheet } = made(planOf({
    version: 1,
    engine: hillclimb.engine,
    fuel: { name: "petrol" },
  }));
  assertMatch(sheet.missing ?? "", /bore of the gallery/);
});

Deno.test("caps are welded on after the pilots and before any bore that seals; there are no plugs then", () => {
  const one = hillclimbWith({
    rail: { ends: "welded", plugThread: undefined, plugEngagement: undefined },
  });
  checkSheet(one);
  const order = one.sheet.operations.map(({ id }) => id);
  const weld = order.indexOf("weld-caps");
  assert(order.indexOf("pocket-pilots") < weld && weld < order.indexOf("pocket-bores"));
  assert(weld < order.indexOf("pocket-hones") && weld < order.indexOf("sensor-port"));
  assert(!order.includes("plug-threads"));
  assertMatch(operation(one, "weld-caps").why ?? "", /heat moves the bar/);
  // No end is open any more to flush through.
  assertMatch(operation(one, "wash").does[0] ?? "", /in at one port/);
  // The bar of the demo has plugs and is not welded.
  const plain = made(planOf(hillclimb)).sheet.operations.map(({ id }) => id);
  assert(!plain.includes("weld-caps") && plain.includes("plug-threads"));
});

Deno.test("a printed bar is honed to bare metal, and its leak test decides", () => {
  const said = (one: Made): string => texts(one.sheet.operations).join(" ");
  const printed = hillclimbWith({ rail: { material: "AlSi10Mg" } });
  assertMatch(said(printed), /no printed skin is left/);
  assertMatch(said(printed), /the leak test decides/);
  assert(!/printed skin/.test(said(made(planOf(hillclimb)))));
});

Deno.test("the gallery goes half as deep from both ends, the small drill first, a long one beyond ten diameters", () => {
  const both = made(planOf(hillclimb));
  assertAlmostEquals(tool(both, "gallery-drill").deepest_m, 0.195, 1e-12);
  assertAlmostEquals(tool(both, "gallery-drill").depthRatio, 195 / 14, 1e-9);
  assertEquals(tool(both, "gallery-drill").clearing, "deep");
  assertAlmostEquals(tool(both, "gallery-leader").diameter_m, 0.007, 1e-12);
  assertEquals(operation(both, "gallery").tools, ["gallery-leader", "gallery-drill"]);
  const one = hillclimbWith({ rail: { drilledFrom: "one" } });
  assertAlmostEquals(tool(one, "gallery-drill").deepest_m, 0.39, 1e-12);
  assertMatch(operation(one, "gallery").does.join(" "), /From both ends each drill goes half/);
});

Deno.test("the pointed drill of 9 mm makes seat and tapping size of the sensor's port, so no 9 mm drill does", () => {
  const one = made(planOf(hillclimb));
  const spotting = one.sheet.tools.find(({ kind }) => kind === "spotting drill");
  assertAlmostEquals(spotting?.diameter_m ?? 0, 0.009, 1e-9);
  assertAlmostEquals(spotting?.included_rad ?? 0, Math.PI / 2, 1e-9);
  assertEquals(spotting?.holes, ["port-sensor"]);
  assert(spotting?.notes.includes(SHOP_PRACTICE["one-drill-two-jobs"].says(() => "9.00 mm")));
  const plain = one.sheet.tools.filter(({ kind, diameter_m }) =>
    kind === "drill" && Math.abs(diameter_m - 0.009) < 1e-9
  );
  assertEquals(plain.flatMap(({ holes }) => holes), ["port-3"]);
  // Pilot, pointed drill to 12 - 0.5 - (9 - 6.5) / 2 and half its width more, bottoming tap.
  const [pilot, seat, tap] = operation(one, "sensor-port").does;
  assertMatch(pilot ?? "", /^4\.00 mm pilot/);
  assertMatch(seat ?? "", /begins at 10\.25 mm.*stops at 14\.75 mm/);
  assertMatch(tap ?? "", /M10x1 with a bottoming tap/);
});

Deno.test("drills of the shop: signed error, thread height on both bases, inside or outside", () => {
  const inch = hillclimbWith({ shop: { drills: "inch" } });
  const found = tool(inch, "drill-9000").equivalents;
  assertEquals(found.map(({ name, inside }) => [name, inside]), [["23/64 in", true], ["T", true]]);
  const [fraction] = found;
  // 23/64 in is 9.128 mm; the heights over 5/8 and 3/4 of 0.866 mm.
  assertAlmostEquals(fraction?.error_m ?? 0, 23 / 64 * 0.0254 - 0.009, 1e-9);
  const height = (10 - 23 / 64 * 25.4) / 2 / (Math.sqrt(3) / 2);
  assertAlmostEquals(fraction?.heightIso ?? 0, height / 0.625, 1e-6);
  assertAlmostEquals(fraction?.heightUs ?? 0, height / 0.75, 1e-6);
  const metric = made(planOf(hillclimb));
  assertEquals(tool(metric, "drill-9000").equivalents.map(({ name }) => name), ["9.0 mm"]);
});

Deno.test("no drill stands in for the bore that a ring seals in, unless it is inside its tolerance", () => {
  const metric = made(planOf(hillclimb));
  const bore = metric.sheet.tools.find(({ kind }) => kind === "bore");
  assertEquals(bore?.equivalents.map(({ name, inside }) => [name, inside]), [["14.0 mm", true]]);
  // 35/64 in is 13.89 mm, near but no H8.
  const inch = hillclimbWith({ shop: { drills: "inch" } });
  const wanted = inch.sheet.tools.find(({ kind }) => kind === "bore");
  assertEquals(wanted?.equivalents, []);
  assertMatch(wanted?.noEquivalent ?? "", /H8/);
  // The reamer's allowance of 0.010 to 0.016 in is left by a drill of 13.6 to 13.74 mm.
  assertEquals(bore?.before.map(({ name }) => name), ["13.7 mm"]);
});

Deno.test("where the usual drill of a thread is itself outside the limits, the sheet says so", () => {
  const one = made(planOf(tourer));
  const drill = one.sheet.tools.find(({ kind, thread }) =>
    kind === "drill" && thread === "9/16-18"
  );
  assertEquals(drill?.equivalents.map(({ inside }) => inside), [false]);
  assertMatch(drill?.noEquivalent ?? "", /outside the limits; 13\.0 mm keeps to them/);
});

Deno.test("speeds are those of the cutting speed, limited by the press", () => {
  const one = made(planOf(hillclimb));
  // 60 m/min at 14.5 mm.
  const free = tool(one, "drill-14500");
  assertAlmostEquals((free.setting?.speed_rev_s ?? 0) * 60, 60_000 / (Math.PI * 14.5), 0.01);
  // 45 m/min in a deep hole.
  const deep = tool(one, "gallery-drill");
  assertAlmostEquals((deep.setting?.speed_rev_s ?? 0) * 60, 45_000 / (Math.PI * 14), 0.01);
  assertEquals(deep.setting?.slowedForDepth, true);
  const slow = hillclimbWith({ shop: { mostSpeed: "900 rpm", leastSpeed: "700 rpm" } });
  for (const { setting, kind } of slow.sheet.tools) {
    const rpm = (setting?.speed_rev_s ?? 0) * 60;
    assert(rpm > 699.999 && rpm < 900.001, `${kind} at ${rpm}`);
  }
  assertEquals(tool(slow, "drill-4000").setting?.spindle.limitedBy, "fastest");
  const tap = slow.sheet.tools.find(({ kind }) => kind === "tap");
  assertEquals(tap?.setting?.spindle.limitedBy, "slowest");
});

Deno.test("inspection has the plan's numbers", () => {
  const one = made(planOf(hillclimb));
  const of = (id: Inspection["id"]): (number | undefined)[][] =>
    point(one, id).figures.map(({ nominal, least, most }) =>
      [nominal, least, most].map((value) =>
        value === undefined ? undefined : Math.round(value * 1e6) / 1e3
      )
    );
  // ISO 286: H8 on 14 mm is 0.027 mm wide.
  assertEquals(of("pocket-bore")[0], [undefined, 14, 14.027]);
  assertEquals(of("place").map(([nominal]) => nominal), [57, 149, 241, 333]);
  assertEquals(of("place")[0]?.slice(1), [56.9, 57.1]);
  // ISO 2768-m: 0.3 mm to 120 mm, 0.5 mm beyond.
  assertEquals(of("place-others"), [[103, 102.7, 103.3], [287, 286.5, 287.5]]);
  assertEquals(of("flat"), [[undefined, undefined, 0.1]]);
  assertEquals(of("break-out").length, 4);
  // (45 - 14) / 2 mm, and the drift that the verdicts allow: 195 mm over 300, 1 mm.
  assertEquals(of("break-out")[0], [15.5, 14.85, 16.15]);
  const torque = point(one, "two-steps").figures;
  // ISO 6789: 6 % up to 10 N m, 4 % above.
  assertEquals(torque.map(({ least, most }) => [least, most].map((t) => +(t ?? 0).toFixed(3))), [
    [8.46, 9.54],
    [11.52, 12.48],
  ]);
});

Deno.test("the feeler blade is one of the sheet's own system, and 0.002 in is said to be 0.051 mm", () => {
  const notes = (one: Made): string => point(one, "flat").notes.join(" ");
  assertMatch(notes(made(planOf(hillclimb))), /blade to try is 0\.10 mm/);
  const inch = notes(hillclimbWith({ sheet: { units: "inch" } }));
  assertMatch(inch, /blade to try is 0\.003 in/);
  assertMatch(inch, /0\.002 in blade is 0\.051 mm/);
  assertMatch(inch, /maker prevails/);
});

Deno.test("a port that does not fit is not to be drilled, and the sheet says what to change", () => {
  const one = hillclimbWith({ sensor: { reach: "30 mm" } });
  const { blocked, does } = operation(one, "sensor-port");
  assertEquals(does, ["Leave it until it fits."]);
  assert(blocked !== undefined && blocked.length > 20, blocked);
  assertEquals(operation(made(planOf(hillclimb)), "sensor-port").blocked, undefined);
});

Deno.test("ways of the trade are called common practice without a source", () => {
  const { sheet } = made(planOf(hillclimb));
  for (const { id, source } of sheet.operations) {
    assertMatch(source, /common practice, no source$/, id);
  }
  for (const [id, { source }] of Object.entries(WORKSHOP_CAUTIONS)) {
    assertMatch(source, /common practice, no source$/, id);
  }
  for (const id of ["pocket-hones", "trial", "measure-gallery"] as const) {
    assertEquals(operation({ sheet } as Made, id).source, "common practice, no source");
  }
});

Deno.test("each danger has its caution at its step", () => {
  const one = hillclimbWith({
    rail: { ends: "welded", plugThread: undefined, plugEngagement: undefined },
  });
  const wanted = [
    ["gallery", ["drill-press", "long-drill"]],
    ["weld-caps", ["welding"]],
    ["pocket-hones", ["hones"]],
    ["sensor-port", ["taps"]],
    ["wash", ["solvents", "compressed-air"]],
  ] as const;
  for (const [id, cautions] of wanted) assertEquals(operation(one, id).cautions, cautions);
});
