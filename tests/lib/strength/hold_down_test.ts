import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import {
  blowOut,
  type BlowOutSpec,
  CLAMPED_STIFFNESS,
  holdDown,
  type HoldDownSpec,
  MATERIALS,
} from "@/lib/strength/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { notFinite } from "../../helpers/finite.ts";

const BOSS = MATERIALS["6061-T6"];

const RAIL: HoldDownSpec = {
  lifts: [0.02, 0.11, 0.2, 0.29].map((x_m) => ({ x_m, force_N: 92.4 })),
  screws: [0.065, 0.155, 0.245],
  bar: {
    shape: "rectangular",
    height_m: 0.025,
    width_m: 0.03,
    bore_m: 0.0127,
    elasticModulus_Pa: BOSS.elasticModulus_Pa,
  },
  screw: { thread: "M6x1", class: "8.8", head: "washer", torque_Nm: 9, nutFactor: 0.2 },
  tapped: {
    engagement_m: 0.012,
    shearStrength_Pa: BOSS.shear_Pa,
    ultimate_Pa: BOSS.ultimate_Pa,
  },
  underHead_Pa: BOSS.yield_Pa,
  stiffnessRatio: CLAMPED_STIFFNESS,
  factor: 3,
};

const run = (change: Partial<HoldDownSpec> = {}) =>
  holdDown(new Working(), "holdDown", { ...RAIL, ...change });

Deno.test("pulls of a stiff bar add up to the lift, and each screw is judged by no less", () => {
  const { screws, lift_N } = run();
  assertClose(screws.reduce((sum, s) => sum + s.stiffBar_N, 0), lift_N, 1e-12);
  for (const s of screws) {
    assert(s.pull_N >= s.stiffBar_N && s.pull_N >= s.bendingBar_N);
    assertClose(s.preloadFactor ?? NaN, 7500 / s.pull_N, 1e-12);
    assertClose(s.separationFactor ?? NaN, 7500 / (0.75 * s.pull_N), 1e-12);
    assertClose(s.screwLoad_N + 0.75 * s.pull_N, 7500 + s.pull_N, 1e-12);
    assertClose(s.preloadNeeded_N, 3 * s.pull_N, 1e-12);
  }
});

Deno.test("every number is recorded under its own name", () => {
  const working = new Working();
  const held = holdDown(working, "holdDown", RAIL);
  const recorded = (key: string) => working.uses.find((u) => u.result === `holdDown.${key}`)?.value;
  for (
    const key of [
      "preload_N",
      "proofShare",
      "engagementToBreak_m",
      "underHead_Pa",
      "mostPreload_N",
      "bendingStress_Pa",
    ] as const
  ) assertEquals(recorded(key), held[key], key);
  assertEquals(recorded("atMost.torque_Nm"), held.mostTorque_Nm);
  assertEquals(recorded("atLeast.torque_Nm"), held.leastTorque_Nm);
  assertEquals(recorded("tappedThread.load_N"), held.strippingLoad_N);
  held.screws.forEach((screw, i) => {
    for (
      const key of [
        "stiffBar_N",
        "pull_N",
        "preloadNeeded_N",
        "preloadFactor",
        "screwLoad_N",
        "clampLeft_N",
        "separationFactor",
        "strippingFactor",
      ] as const
    ) assertEquals(recorded(`screws.${i}.${key}`), screw[key], key);
  });
  held.gaps.forEach(({ deflection_m }, i) => {
    assertEquals(recorded(`gaps.${i}.deflection_m`), deflection_m);
  });
  const names = working.uses.map(({ result }) => result);
  assertEquals(new Set(names).size, names.length, "no name stands for two numbers");
});

Deno.test("tightened to the most that is allowed, nothing is asked too much", () => {
  for (const head of ["socket", "washer"] as const) {
    const screw = { ...RAIL.screw, head };
    const { mostTorque_Nm, mostPreload_N } = run({ screw });
    const tight = run({ screw: { ...screw, torque_Nm: mostTorque_Nm } });
    assertClose(tight.preload_N, mostPreload_N, 1e-9);
    assert(tight.proofShare <= 0.75 + 1e-9);
    assert(tight.strippingLoad_N / tight.preload_N >= 3 - 1e-9);
    assert(tight.underHead_Pa <= BOSS.yield_Pa * (1 + 1e-9));
    const bounds = [
      tight.proofShare / 0.75,
      3 * tight.preload_N / tight.strippingLoad_N,
      tight.underHead_Pa / BOSS.yield_Pa,
    ];
    assertAlmostEquals(Math.max(...bounds), 1, 1e-9, "one of the three rules");
  }
});

Deno.test("tightened to the least torque, the worst screw has just the factor asked for", () => {
  const { leastTorque_Nm } = run();
  const { screws } = run({ screw: { ...RAIL.screw, torque_Nm: leastTorque_Nm } });
  assertAlmostEquals(Math.min(...screws.map((s) => s.preloadFactor ?? Infinity)), 3, 1e-9);
});

Deno.test("an injector that overhangs unloads the far screw, which is said", () => {
  const { screws } = run({ screws: [0.1, 0.2], lifts: [{ x_m: 0.02, force_N: 100 }] });
  const [near, far] = screws;
  assertClose(near?.pull_N ?? NaN, 180, 1e-9);
  assertClose(far?.pull_N ?? NaN, -80, 1e-9);
  assertEquals([near?.unloads, far?.unloads], [false, true]);
  assertEquals([far?.preloadFactor, far?.separationFactor], [undefined, undefined]);
  assertEquals(far?.preloadNeeded_N, 0);
  assert((far?.clampLeft_N ?? 0) > 7500); // the bar presses down there
});

Deno.test("a joint that opens has a factor below 1 and no clamp left", () => {
  const { screws } = run({ screw: { ...RAIL.screw, torque_Nm: 0.05 } });
  const open = screws.filter((s) => s.clampLeft_N < 0);
  assert(open.length > 0);
  for (const s of open) assert((s.separationFactor ?? NaN) < 1);
});

Deno.test("no pressure, no pull: factors are left out, not infinite", () => {
  const held = run({ lifts: RAIL.lifts.map(({ x_m }) => ({ x_m, force_N: 0 })) });
  for (const s of held.screws) assertEquals([s.preloadFactor, s.unloads], [undefined, false]);
  assertEquals(notFinite(held), []);
  assertEquals(held.deflection_m, 0);
});

Deno.test("two screws at one place share; all at one place hold nothing that rocks", () => {
  const { screws } = run({ screws: [0.06, 0.06, 0.25] });
  assertClose(screws[0]?.bendingBar_N ?? NaN, screws[1]?.bendingBar_N ?? 0, 1e-12);
  assertThrows(() => run({ screws: [0.1, 0.1] }), InputError, "two places or more");
});

Deno.test("the order of the screws changes nothing", () => {
  const pulls = (screws: number[]) =>
    run({ screws }).screws.map(({ x_m, pull_N }) => [x_m, pull_N]);
  const sorted = (rows: number[][]) => rows.toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  const there = sorted(pulls([0.065, 0.155, 0.245]));
  const back = sorted(pulls([0.245, 0.065, 0.155]));
  there.forEach(([, pull], i) => assertClose(back[i]?.[1] ?? NaN, pull ?? NaN, 1e-9));
});

Deno.test("a hard boss: the screw's own thread strips first", () => {
  const steel = MATERIALS["304"];
  const { strips, strippingLoad_N } = run({
    screw: { ...RAIL.screw, class: "4.8" },
    tapped: {
      engagement_m: 0.012,
      shearStrength_Pa: steel.shear_Pa,
      ultimate_Pa: steel.ultimate_Pa,
    },
  });
  assertEquals(strips, "screw's thread");
  assertClose(strippingLoad_N, 8.645757e-3 * 0.012 * 0.6 * 420e6, 1e-3);
  assertEquals(run().strips, "tapped thread");
});

Deno.test("an inch screw takes the stress area of its own standard", () => {
  const working = new Working();
  holdDown(working, "holdDown", { ...RAIL, screw: { ...RAIL.screw, thread: "1/4-20" } });
  const area = working.uses.find((u) => u.result === "holdDown.stressArea_m2")?.value ?? NaN;
  assertClose(area / 0.0254 ** 2, 0.0318, 0.002);
});

Deno.test("a gallery as wide as the bar is refused", () => {
  for (const shape of ["rectangular", "round"] as const) {
    const bar = { ...RAIL.bar, shape, bore_m: 0.0255 };
    assertThrows(() => run({ bar }), InputError, "bore_m");
  }
});

Deno.test("a round bar bends by its own section", () => {
  const round = run({ bar: { ...RAIL.bar, shape: "round" } });
  const square = run({ bar: { ...RAIL.bar, width_m: 0.025 } });
  const ratio = (Math.PI / 64 * (25 ** 4 - 12.7 ** 4)) / (25 ** 4 / 12 - Math.PI / 64 * 12.7 ** 4);
  assertClose(square.deflection_m / round.deflection_m, ratio, 1e-9);
});

const PLUG: BlowOutSpec = {
  pressure_Pa: 6e5,
  sealDiameter_m: 0.0158,
  thread: "M14x1.5",
  fullThread_m: 0.01,
  shearStrength_Pa: BOSS.shear_Pa,
};

Deno.test("a plug: pressure against stripping, and its tightening", () => {
  const working = new Working();
  const loose = blowOut(working, "plug", PLUG);
  assertEquals([loose.preload_N, loose.tightenedFactor], [undefined, undefined]);
  assertClose(loose.factor ?? NaN, loose.strippingLoad_N / loose.force_N, 1e-12);
  const tightened = { torque_Nm: 30, nutFactor: 0.2 };
  const tight = blowOut(new Working(), "plug", { ...PLUG, tightened });
  assertClose(tight.preload_N ?? NaN, 30 / (0.2 * 0.014), 1e-12);
  assertClose(tight.tightenedFactor ?? NaN, tight.strippingLoad_N / (30 / (0.2 * 0.014)), 1e-12);
  assertEquals(working.uses.find((u) => u.result === "plug.force_N")?.value, loose.force_N);
});

Deno.test("a plug: a hand-tight one is judged by the pressure; without either there is no factor", () => {
  const tightened = { torque_Nm: 0.1, nutFactor: 0.2 };
  const hand = blowOut(new Working(), "plug", { ...PLUG, tightened });
  assertEquals(hand.tightenedFactor, hand.factor);
  assertEquals(blowOut(new Working(), "plug", { ...PLUG, pressure_Pa: 0 }).factor, undefined);
});

Deno.test("a plug: no full thread holds nothing, an unknown thread is refused", () => {
  assertEquals(blowOut(new Working(), "plug", { ...PLUG, fullThread_m: 0 }).factor, 0);
  assertThrows(
    () => blowOut(new Working(), "plug", { ...PLUG, thread: "1/8 NPT" }),
    RangeError,
    "no table",
  );
});
