import { assert, assertEquals, assertThrows } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  ASSUMED_DEAD_TIMES,
  deadTimeAt,
  fuelCarried,
  type InjectionPoint,
  injectorPressures,
  type Stage,
  stageDuty,
} from "@/lib/injector/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const primary: Stage = {
  count: 4,
  ratedFlow_m3_s: 550e-6 / 60,
  ratedPressure_Pa: 3e5,
  ratingDensity_kg_m3: 684,
  deadTime_s: 1.0e-3,
};
const secondary: Stage = { ...primary, ratedFlow_m3_s: 1650e-6 / 60, deadTime_s: 1.4e-3 };
const point: InjectionPoint = {
  fuel_kg_s: 0.04,
  density_kg_m3: 745,
  differential_Pa: 3.5e5,
  interval_s: 120 / 7000,
  dutyAim: 0.8,
  changeoverDuty: 0.6,
};

function dutiesAt(fuel_kg_s: number, stages: readonly Stage[] = [primary, secondary]) {
  const duties = stageDuty(new Working(), "injectors", stages, { ...point, fuel_kg_s });
  assert(duties);
  return duties;
}

function only<Item>(items: readonly Item[]): Item {
  const [item] = items;
  assert(item !== undefined);
  return item;
}

Deno.test("stageDuty(), what the stages inject adds up to the fuel wanted", () => {
  for (const fuel of [0.004, 0.012, 0.03, 0.09]) {
    const { stages } = dutiesAt(fuel);
    const injected = stages.reduce(
      (sum, stage) =>
        sum + 4 * stage.openTime_s * stage.staticFlow_m3_s * point.density_kg_m3 / point.interval_s,
      0,
    );
    assertClose(injected, fuel, 1e-12);
  }
});

Deno.test("stageDuty(), the primary is alone up to the changeover and meets its duty there", () => {
  const changeover = dutiesAt(0.01).changeoverFuel_kg_s ?? 0;
  const below = dutiesAt(changeover * 0.999);
  const above = dutiesAt(changeover * 1.001);

  assertEquals(below.stages.map((stage) => stage.injects), [true, false]);
  assertClose(below.duty, 0.6, 2e-3);
  assertEquals(above.stages.map((stage) => stage.injects), [true, true]);
  assertEquals(below.stages[1]?.pulse_s, 0);
});

Deno.test("stageDuty(), above the changeover all stages open for the same time", () => {
  const [one, two] = dutiesAt(0.06).stages;
  assert(one && two);
  assertClose(one.openTime_s, two.openTime_s, 1e-12);
  assertClose(two.pulse_s - one.pulse_s, 0.4e-3, 1e-9);
  assertClose(one.share, 0.25, 1e-12);
});

Deno.test("stageDuty(), the flow needed at rating gives the aim when it is fitted", () => {
  const needed = only(dutiesAt(0.04, [primary]).stages).flowNeededAtRating_m3_s ?? 0;
  assertClose(dutiesAt(0.04, [{ ...primary, ratedFlow_m3_s: needed }]).duty, 0.8, 1e-12);
});

Deno.test("stageDuty(), no flow is needed that no injector could have", () => {
  const slow = dutiesAt(0.04, [{ ...primary, deadTime_s: 0.018 }]);
  assertEquals(only(slow.stages).flowNeededAtRating_m3_s, undefined);
});

Deno.test("stageDuty(), nothing is said when the manifold outdoes the rail", () => {
  const pressures = injectorPressures(new Working(), "x", {
    setPressure_Pa: 1e5,
    reference: "atmosphere",
    manifold_Pa: 2.2e5,
    ambient_Pa: 1e5,
  });
  const none = stageDuty(new Working(), "x", [primary], { ...point, ...pressures });

  assertEquals(pressures.differential_Pa, -2e4);
  assertEquals(none, undefined);
  assertEquals(
    fuelCarried(new Working(), "x", [primary], { ...point, ...pressures, dutyLimit: 0.9 }),
    0,
  );
});

Deno.test("fuelCarried(), the highest duty at that fuel is the limit", () => {
  for (const stages of [[primary], [primary, secondary]]) {
    const fuel = fuelCarried(new Working(), "x", stages, { ...point, dutyLimit: 0.9 });
    assertClose(dutiesAt(fuel, stages).duty, 0.9, 1e-12);
  }
});

Deno.test("stageDuty(), every number it gives is in the record under the section asked for", () => {
  const working = new Working();
  stageDuty(working, "injectors.peak", [primary], point);
  const results = working.uses.map((use) => use.result);

  assert(results.every((result) => result.startsWith("injectors.peak.0.")));
  for (const key of ["pulse_s", "duty", "flowNeededAtRating_m3_s", "staticFlow_m3_s"]) {
    assert(results.includes(`injectors.peak.0.${key}`), key);
  }
});

Deno.test("stageDuty(), a fuel flow that can't be is refused by name", () => {
  assertThrows(() => dutiesAt(-1), RangeError, "fuelFlow must be >= 0");
});

Deno.test("deadTimeAt(), points are met, the way between is straight, nothing lies outside", () => {
  const table = [
    { differential_Pa: 3e5, points: [[10, 2e-3], [14, 1e-3]] },
    { differential_Pa: 5e5, points: [[10, 3e-3], [14, 1.4e-3]] },
  ] as const;
  const cases: [voltage: number, differential: number, expected: number | undefined][] = [
    [10, 3e5, 2e-3],
    [14, 5e5, 1.4e-3],
    [12, 3e5, 1.5e-3],
    [12, 4e5, 1.85e-3],
    [9.9, 4e5, undefined],
    [14.1, 4e5, undefined],
    [12, 2.9e5, undefined],
    [12, 5.1e5, undefined],
  ];
  for (const [voltage_V, differential_Pa, expected] of cases) {
    const found = deadTimeAt(new Working(), "x", table, { voltage_V, differential_Pa });
    if (expected === undefined) assertEquals(found, undefined);
    else assertClose(found ?? NaN, expected, 1e-12, `${voltage_V} V, ${differential_Pa} Pa`);
  }
});

Deno.test("ASSUMED_DEAD_TIMES, voltage shortens them and a single row serves all pressures", () => {
  const { points } = only(ASSUMED_DEAD_TIMES);
  points.forEach(([voltage, time], i) => {
    const before = points[i - 1];
    assert(!before || (before[0] < voltage && before[1] > time));
  });
  assertEquals(
    deadTimeAt(new Working(), "x", ASSUMED_DEAD_TIMES, { voltage_V: 12, differential_Pa: 6e5 }),
    1.3e-3,
  );
});
