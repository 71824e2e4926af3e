/** What the Drill step says of whole rails: holes, rings, bosses, screws, plugs, and what would fit. */
import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import {
  type Check,
  evaluate,
  type Evaluation,
  galleryRange,
  troublesOf,
} from "@/lib/evaluation/mod.ts";
import { resolvePlan } from "@/lib/plan/mod.ts";
import { MATERIALS_AGAINST_FUEL } from "@/lib/seal/mod.ts";
import { G_THREADS } from "@/lib/thread/mod.ts";
import dragster from "@/seeds/dragster-vee-methanol.json" with { type: "json" };
import hillclimb from "@/seeds/hillclimb-four-e85.json" with { type: "json" };
import tourer from "@/seeds/tourer-six-e10.json" with { type: "json" };
import twin from "@/seeds/twin-rotor-staged.json" with { type: "json" };
import { planOf } from "../../helpers/plan_of.ts";

type Sections = Readonly<Record<string, object>>;

/** The hill climb with some sections answered otherwise. */
function changed(sections: Sections, base: Sections = hillclimb as unknown as Sections): object {
  const merged = Object.entries(sections).map(([name, section]) => [
    name,
    { ...base[name], ...section },
  ]);
  return { ...base, ...Object.fromEntries(merged) };
}

const evaluated = (document: object): Evaluation => evaluate(planOf(document));

function find({ checks }: Evaluation, id: string): Check {
  const check = checks.find((each) => each.id === id);
  assert(check, `no check ${id}`);
  return check;
}

const fails = ({ checks }: Evaluation): string[] =>
  checks.filter(({ step, verdict }) => step === "drill" && verdict === "fails").map(({ id }) => id);

Deno.test("three of the demos can be drilled; the round bar of the fourth can't, and says what fails", () => {
  for (const demo of [hillclimb, dragster, tourer]) assertEquals(fails(evaluated(demo)), []);
  const found = evaluated(twin);
  assertEquals(fails(found), ["port-thread", "seat-gallery", "ring-entered", "ring-below"]);
  assertEquals(troublesOf(found, "metric").map(({ hole }) => hole), [
    "pocket-1",
    "pocket-2",
    "port-sensor",
  ]);
});

Deno.test("a hole that runs into another fails, and its nearest place does away with that", () => {
  const port = (at: string) =>
    changed({
      ports: { holes: [{ use: "gauge", thread: "M10x1-oring", face: "injectors", at }] },
    });
  const clash = evaluated(port("62 mm"));
  const gap = find(clash, "hole-gap");
  assertEquals(gap.verdict, "fails");
  assertStringIncludes(gap.because, "run into each other");
  assert(troublesOf(clash, "metric").some(({ says }) => says === "runs into Gauge port"));
  const [, place = ""] = /nearest place for gauge port is ([\d.]+ mm)/.exec(gap.because) ?? [];
  const mended = find(evaluated(port(place)), "hole-gap");
  assertEquals(mended.verdict, "meets", `${place}: ${mended.because}`);
  // A millimetre nearer it would not do: the place is the nearest, not any.
  const nearer = find(evaluated(port(`${Number.parseFloat(place) - 1} mm`)), "hole-gap");
  assertEquals(nearer.verdict, "marginal", nearer.because);
});

Deno.test("an injector beside the gallery's line leaves a lip; one too far misses it", () => {
  const off = (across: string) =>
    evaluated(changed({
      rail: { width: "60 mm" },
      stations: {
        places: [57, 149, 241, 333].map((at) => ({ at: `${at} mm`, across })),
        readings: [],
      },
    }));
  // Gallery 14 mm, pilot 8 mm, drift 0.65 mm at most: 3 mm less the drift at the place are left.
  assertEquals(find(off("1 mm"), "gallery-opening").verdict, "meets");
  assertEquals(find(off("4 mm"), "gallery-opening").verdict, "fails");
  assertStringIncludes(find(off("4 mm"), "gallery-opening").because, "lip");
});

Deno.test("spacers make up for the seats, and the rings stand half way in the whole bore", () => {
  const { stack, seal } = evaluated(hillclimb).results.drill;
  assert(stack && seal);
  assertEquals(
    stack.injectors.map(({ spacer_m }) => Number((spacer_m * 1000).toFixed(6))),
    [0.8, 0, 0.8, 0.4],
  );
  // Highest seat 0.8 mm, injector 60.5 mm, ring half way between lead-in and 13 mm.
  const middle = (seal.leadLength_m + 0.013) / 2;
  assertAlmostEquals(stack.standHeight_m ?? 0, 0.0008 + 0.0605 - middle, 1e-12);
  for (const [i, { insertion }] of stack.injectors.entries()) {
    assertAlmostEquals(insertion.worst_m, stack.below_m[i] ?? 0, 1e-12);
  }
});

Deno.test("a gallery that cuts into the pockets' bore takes the ring's room, by its own wall alone", () => {
  const { stack, drift_m = 0 } = evaluated(twin).results.drill;
  assert(stack?.isCut);
  // Round bar of 28 mm, gallery of 12 mm in its middle: 8 mm less what it wanders at the far side
  // of the last pocket.
  assertAlmostEquals(stack.wholeTo_m, 0.008 - drift_m * 207 / 260, 1e-6);
});

Deno.test("bosses as measured: what the rail can't follow comes off the play, injector by injector", () => {
  const { float } = evaluated(hillclimb).results.drill;
  assert(float?.float && float.bosses);
  const centres = float.bosses.bosses.map(({ centre_m }) => Number((centre_m * 1000).toFixed(3)));
  assertEquals(centres, [50.05, 142, 234.05, 326.1]);
  // 57, 149, 241, 333 less those: 6.95, 7, 6.95, 6.9; the middle of the extremes is 6.95.
  const apart = float.apart_m.map((off_m) => Math.round(off_m * 1e6));
  assertEquals(apart, [0, 50, 0, -50]);
  const play = (0.014 - 0.0139) / 2 + 0.0003;
  assertAlmostEquals(float.float.left_m[1] ?? 0, play - 50e-6 - Math.SQRT2 * 1e-4, 1e-9);
});

Deno.test("without readings the play stands open, and says what to measure", () => {
  const check = find(evaluated(changed({ stations: { readings: [] } })), "float");
  assertEquals(check.verdict, "open");
  assertStringIncludes(check.because, "Measure every boss from one datum");
});

Deno.test("a gallery wider than the plug's drill fails, and so does a bar that it leaves no wall", () => {
  const wide = evaluated(changed({ rail: { bore: "15 mm", plugThread: "M16x1.5-oring" } }));
  assertEquals(find(wide, "plug-thread").verdict, "fails");
  assertStringIncludes(find(wide, "plug-thread").because, "wider than the tapping drill");
  assert(!wide.results.drill.layout?.holes.some(({ feature }) => feature === "plug"));
  const thin = evaluated(changed({ rail: { bore: "28 mm" } }));
  assertEquals(find(thin, "wall").verdict, "fails");
  assert(troublesOf(thin, "metric").some(({ hole }) => hole === "gallery"));
});

Deno.test("the biggest gallery keeps every aim, and a little bigger does not", () => {
  const document = changed({
    rail: { ends: "welded", plugThread: undefined },
    ports: { holes: [] },
  });
  const plan = planOf(document);
  const range = galleryRange(evaluate(plan), resolvePlan(plan).values);
  const { biggest_m = 0, least_m = 0 } = range ?? {};
  assert(biggest_m > least_m);
  const limits = ["wall", "hole-gap", "ring-entered"] as const;
  const at = (bore_m: number): boolean => {
    const found = evaluated(
      changed({ rail: { bore: `${bore_m * 1000} mm` } }, document as Sections),
    );
    const { stack } = found.results.drill;
    return limits.every((id) => find(found, id).verdict === "meets") && !stack?.isCut;
  };
  assert(at(biggest_m - 2e-6), `${biggest_m} by ${range?.heldBy}`);
  assert(!at(biggest_m + 20e-6), `${biggest_m} by ${range?.heldBy}`);
});

Deno.test("a blind gallery has one plug, welded caps none", () => {
  const plugs = (rail: object): string[] =>
    evaluated(changed({ rail: { drilledFrom: "one", ...rail }, ports: { holes: [] } })).results
      .drill
      .layout?.holes.filter(({ feature }) => feature === "plug").map(({ id }) => id) ?? [];
  assertEquals(plugs({}), ["plug-datum", "plug-far"]);
  assertEquals(plugs({ ends: "blind" }), ["plug-datum"]);
  assertEquals(plugs({ ends: "welded" }), []);
});

Deno.test("an own section counts by its least wall", () => {
  const own = (ownWall: string) => evaluated(changed({ rail: { shape: "own", ownWall } }));
  assertAlmostEquals(own("6 mm").results.bar?.wallNominal_m ?? 0, 0.006, 1e-12);
  assertEquals(find(own("2.5 mm"), "wall").verdict, "fails");
});

Deno.test("a drill that was measured wanders as measured", () => {
  const { bar, drill } = evaluated(changed({ rail: { drift: "0.2 mm" } })).results;
  assertEquals([bar?.drift_m, drill.drift_m], [0.0002, 0.0002]);
});

Deno.test("a sensor whose place is blank goes where it clears the screws", () => {
  const at = (sections: Sections): number => {
    const { layout } = evaluated(changed(sections)).results.drill;
    return layout?.holes.find(({ id }) => id === "port-sensor")?.entry[0] ?? NaN;
  };
  assertAlmostEquals(at({}), (0.057 + 0.149) / 2, 1e-9);
  const beside = {
    ports: { holes: [{ use: "gauge", thread: "M10x1-oring", face: "opposite", at: "100 mm" }] },
  };
  const moved = at(beside);
  assert(Math.abs(moved - 0.1) > 0.01 + 0.003, `${moved}`);
});

Deno.test("hold-down: what class, torque and thread bear is by the standards' numbers", () => {
  const { held } = evaluated(hillclimb).results.drill;
  assert(held);
  // 9 N m on M6 with a nut factor of 0.2, and 14 mm pockets at 9 bar: methods of lib/strength and lib/thread.
  assertAlmostEquals(held.preload_N, 9 / (0.2 * 0.006), 1e-6);
  assertAlmostEquals(held.lift_N, 4 * 9e5 * Math.PI * 0.014 ** 2 / 4, 1);
  // ISO 898-1: proof stress 580 MPa on a stress area of 20.1 mm2.
  assertAlmostEquals(held.proofShare, 7500 / (580 * 20.1), 0.002);
});

Deno.test("methanol fails general fluorocarbon, and is not worse said of the bar than in the table", () => {
  const found = evaluated(
    changed({ pockets: { elastomer: "FKM" } }, dragster as unknown as Sections),
  );
  assertEquals(find(found, "fuel-rubber").verdict, "fails");
  assertEquals(
    find(found, "fuel-bar").verdict,
    MATERIALS_AGAINST_FUEL.bars["304"].fuels.methanol.verdict,
  );
  assertEquals(find(evaluated(dragster), "fuel-rubber").verdict, "meets");
});

Deno.test("millimetres or inches: the same rail, the same numbers", () => {
  const metric = evaluated(hillclimb);
  const inch = evaluated(changed({ sheet: { units: "inch" } }));
  const numbers = ({ checks }: Evaluation) =>
    checks.filter(({ step }) => step === "drill").map(({ id, value }) => [id, value]);
  assertEquals(numbers(inch), numbers(metric));
  assertEquals(inch.results.drill.layout, metric.results.drill.layout);
});

Deno.test("a port's thread that the gallery cuts short is at best marginal, and none at all fails", () => {
  const port = (face: string, bore: string) =>
    evaluated(changed({
      rail: { bore, plugThread: "M22x1.5-oring" },
      ports: { holes: [{ use: "gauge", thread: "G1/8-face", face, at: "195 mm" }] },
    }));
  const side = find(port("front", "14 mm"), "ports-thread");
  assertEquals(side.verdict, "marginal");
  // The gallery is 15 - 7 = 8 mm below the front; it opens where the thread's outside first meets it.
  const half = G_THREADS["1/8"].nominal_m / 2;
  assert(half < 0.007);
  const plug = port("front", "14 mm").results.drill.plugs.find(({ hole }) => hole === "port-1");
  assertAlmostEquals(plug?.fullThread_m ?? 0, 0.008 - 0.65e-3, 1e-5);
});
