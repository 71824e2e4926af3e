/** What the checks of the Drill sheet say of bars and ports that fit, and of those that can't. */
import { assert, assertAlmostEquals, assertEquals, assertStringIncludes } from "@std/assert";
import { type Check, CRITERIA, evaluate, type Evaluation, judge } from "@/lib/evaluation/mod.ts";
import { hoopAtBore, MATERIALS } from "@/lib/strength/mod.ts";
import { planOf } from "../../helpers/plan_of.ts";

type Answers = Readonly<Record<string, string | number>>;

/** A bar that a cone port fits: 15.5 mm of metal above the gallery. */
const RAIL: Answers = {
  bore: "14 mm",
  shape: "rectangular",
  height: "45 mm",
  width: "30 mm",
  length: "390 mm",
  material: "6082-T6",
};
const SENSOR: Answers = {
  port: "M10x1-cone",
  pilot: "4 mm",
  reach: "12 mm",
  nose: "6.5 mm",
  torque: "12 N m",
};

function evaluated(rail: Answers, sensor: Answers, sheet: Answers = {}): Evaluation {
  return evaluate(planOf({
    version: 1,
    engine: {
      cycle: "four-stroke",
      cylinders: 4,
      power: "300 hp",
      powerSpeed: "7000 rpm",
      aspiration: "natural",
    },
    fuel: { name: "petrol" },
    rail: { ...RAIL, ...rail },
    sensor,
    sheet,
  }));
}

function find({ checks }: Evaluation, id: string): Check {
  const check = checks.find((each) => each.id === id);
  assert(check, `no check ${id}`);
  return check;
}

const verdict = (evaluation: Evaluation, id: string): string => find(evaluation, id).verdict;

const THIN: Answers = { shape: "round", height: "20 mm", bore: "18 mm" };

Deno.test("a gallery that leaves no wall fails on wall and yield, and says that it breaks out", () => {
  const found = evaluated(THIN, SENSOR);
  assert((found.results.bar?.wallLeft_m ?? 1) < 0);
  assertEquals([verdict(found, "wall"), verdict(found, "yield")], ["fails", "fails"]);
  assertStringIncludes(find(found, "wall").because, "may break out");
});

Deno.test("a port without room fails on its thread and its seat, with or without a reach", () => {
  for (const sensor of [{ port: "M10x1-cone" }, SENSOR]) {
    const found = evaluated(THIN, sensor);
    assertEquals(verdict(found, "port-thread"), "fails");
    assertEquals(verdict(found, "seat-gallery"), "fails");
  }
});

Deno.test("the wall is held against what proof pressure asks for, 15 % spared", () => {
  const { results, checks } = evaluated({}, SENSOR);
  const { strengthWall_m = NaN } = results.bar ?? {};
  const hoop = hoopAtBore({
    pressure: results.proof?.pressures.proofPressure_Pa ?? NaN,
    bore: 0.014,
    wall: strengthWall_m / 1.15,
  });
  assertAlmostEquals(hoop / (MATERIALS["6082-T6"].yield_Pa / 2), 1, 1e-9);
  const wall = checks.find(({ id }) => id === "wall");
  assertEquals(wall?.limit, Math.max(0.002, strengthWall_m));
  assertStringIncludes(wall?.because ?? "", "Proof pressure alone takes");
});

Deno.test("a seat placed by its own aim is not judged by it: open until reach and nose are known", () => {
  const found = evaluated({}, { port: "M10x1-cone", torque: "12 N m" });
  assertAlmostEquals(found.results.port?.seatToGallery_m ?? 0, 0.002, 1e-9);
  assertEquals(verdict(found, "seat-gallery"), "open");
  assertEquals(verdict(found, "sensor-reach"), "open");
  // More thread than the torque asks for, but only as long as the reach allows it.
  assert((found.results.port?.strippingFactor ?? 0) > 3);
  assertEquals(verdict(found, "port-thread"), "marginal");
});

Deno.test("a sensor too short for any seat has no seat that meets", () => {
  const found = evaluated({}, { ...SENSOR, reach: "3 mm", nose: "3 mm", pilot: "2 mm" });
  assert((found.results.port?.seatDepth_m ?? 0) < 0);
  assertEquals(verdict(found, "seat-gallery"), "open");
  assertEquals(verdict(found, "sensor-reach"), "fails");
  assertStringIncludes(find(found, "sensor-reach").because, "too short");
});

Deno.test("the gap aimed at meets its aim at any reach: rounding is not a miss", () => {
  for (let reach = 5; reach <= 12; reach += 0.05) {
    const found = evaluated({}, { ...SENSOR, reach: `${reach.toFixed(2)} mm` });
    assertEquals(verdict(found, "sensor-reach"), "meets", `${reach}`);
  }
});

Deno.test("judge() forgives rounding only: a billionth passes, a millionth does not", () => {
  const { aim } = CRITERIA.sensorReach;
  const at = (value: number): string => judge(CRITERIA.sensorReach, { value, because: "" }).verdict;
  assertEquals([at(aim * (1 - 5e-10)), at(aim * (1 - 1e-6))], ["meets", "marginal"]);
});

Deno.test("where a cone does not fit, a port that seals at the face is what to look at first", () => {
  const found = evaluated({ height: "32 mm" }, { ...SENSOR, reach: "11 mm", torque: "10 N m" });
  const thread = find(found, "seat-gallery");
  assertEquals(thread.verdict, "fails");
  assertStringIncludes(thread.because, "First look at another port");
  assertStringIncludes(thread.because, "G 1/8");
  // The port offered is as good as it was said to be.
  const taken = evaluated({ height: "32 mm" }, { port: "G1/8-face", torque: "10 N m" });
  const factor = Number(/([\d.]+) times what the same torque/.exec(thread.because)?.[1]);
  assertAlmostEquals(taken.results.port?.strippingFactor ?? 0, factor, 0.1);
});

Deno.test("a flat spotted on a round bar takes its depth from the thread", () => {
  const port = (shape: string): number =>
    evaluated({ shape, height: "28 mm", bore: "12 mm", width: "28 mm" }, { port: "G1/8-face" })
      .results.port?.fullThreadAvailable_m ?? NaN;
  // 14 - sqrt(14^2 - 7.5^2) = 2.178 mm.
  assertAlmostEquals(port("rectangular") - port("round"), 2.178e-3, 1e-6);
});

Deno.test("a face too small for the seal's flat or the thread never meets", () => {
  const narrow = evaluated({ width: "14.5 mm", bore: "8 mm" }, {
    port: "G1/8-face",
    torque: "5 N m",
  });
  assertEquals(verdict(narrow, "port-thread"), "marginal");
  const none = evaluated({ width: "9.5 mm", bore: "4 mm" }, { port: "M10x1-cone" });
  assertEquals(verdict(none, "port-thread"), "fails");
});

Deno.test("an inch plan has no length in millimetres but the size that stands on a metric drill", () => {
  for (const port of ["1/8-NPT", "7/16-20-oring", "M10x1-cone", "G1/8-face"]) {
    const { results } = evaluated(RAIL, { ...SENSOR, port }, { units: "inch" });
    const { stack = [], says = [] } = results.port ?? {};
    assert(stack.length > 1);
    for (const text of [...stack.map(({ tool }) => tool), ...says]) {
      assert(!/\d mm\b/.test(text.replaceAll(/[\d.]+ mm \([\d.]+ in\)/g, "")), text);
    }
  }
});
