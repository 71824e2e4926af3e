import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  drivenPump,
  drivenPumpFlow,
  electricPump,
  pumpAt,
  pumpDisplacement,
  type PumpFeed,
  type PumpFigure,
  type PumpFigures,
  pumpsTogether,
  readPump,
  type RunningPump,
  slipOf,
  withRelief,
} from "@/lib/supply/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { Seeded } from "../../helpers/seeded.ts";
import { anyPump } from "./any_supply.ts";

const direct: PumpFeed = { battery_V: 13.5, wires_ohm: 0, contacts_V: 0, efficiency: 0.3 };

const at135: PumpFigures = {
  at: 13.5,
  points: [
    { pressure_Pa: 2e5, flow_m3_s: 9.8e-5, current_A: 7 },
    { pressure_Pa: 4e5, flow_m3_s: 8e-5, current_A: 11 },
    { pressure_Pa: 6e5, flow_m3_s: 5e-5, current_A: 16 },
  ],
};
const at12: PumpFigures = {
  at: 12,
  points: [
    { pressure_Pa: 2e5, flow_m3_s: 8.3e-5, current_A: 6.5 },
    { pressure_Pa: 5e5, flow_m3_s: 4.4e-5, current_A: 13 },
  ],
};

function withoutCurrent({ at, points }: PumpFigures): PumpFigures {
  return { at, points: points.map(({ pressure_Pa, flow_m3_s }) => ({ pressure_Pa, flow_m3_s })) };
}

/** Figures of one pump at one to three voltages, more voltage giving more. */
function anyFigures(by: Seeded): PumpFigures[] {
  const isMetered = by.chance(0.5);
  const most_m3_s = by.decades(3e-5, 2e-4);
  const highest_Pa = by.between(4e5, 9e5);
  const rise = by.between(0.05, 0.2);
  return [10, 12, 13.5].slice(0, by.whole(1, 3)).map((at, k) => ({
    at,
    points: Array.from({ length: by.whole(2, 5) }, (_, i, of = 4): PumpFigure => {
      const pressure_Pa = highest_Pa * (0.1 + 0.9 * i / of);
      const flow_m3_s = most_m3_s * (1 - 0.6 * (i / of) ** 2) * (1 + rise * k);
      return isMetered
        ? { pressure_Pa, flow_m3_s, current_A: 5 + 9 * i / of + k }
        : { pressure_Pa, flow_m3_s };
    }),
  }));
}

Deno.test("electricPump(), at every point the voltage is what the current leaves", () => {
  const by = new Seeded(11);
  for (let i = 0; i < 500; i++) {
    const figures = anyFigures(by);
    const feed = {
      battery_V: by.between(9, 15),
      wires_ohm: by.chance(0.2) ? 0 : by.decades(0.003, 0.1),
      contacts_V: by.between(0, 0.6),
      efficiency: by.between(0.2, 0.5),
    };
    const { points } = electricPump(figures, feed);
    assert(points.length >= 2);
    for (const { at, current_A, pressure_Pa, flow_m3_s } of points) {
      const left_V = feed.battery_V - feed.contacts_V - feed.wires_ohm * current_A;
      assertAlmostEquals(at, left_V, 1e-9, `pump ${i}`);
      if (figures[0]?.points[0]?.current_A !== undefined) continue;
      assertClose(at * current_A * feed.efficiency, pressure_Pa * flow_m3_s, 1e-9, `pump ${i}`);
    }
    points.slice(1).forEach((point, k) => {
      assert(point.flow_m3_s > (points[k]?.flow_m3_s ?? NaN));
      assert(point.pressure_Pa <= (points[k]?.pressure_Pa ?? NaN));
    });
  }
});

Deno.test("electricPump(), without resistance it is what the figures say at that voltage", () => {
  const cases: [what: string, figures: PumpFigures[], voltage_V: number, isScaled: boolean][] = [
    ["at the table's own", [at135], 13.5, false],
    ["below it", [at135], 12.3, true],
    ["above it", [at135], 14.4, true],
    ["between two", [at135, at12], 12.6, false],
    ["between two, no current stated", [withoutCurrent(at135), withoutCurrent(at12)], 12.6, false],
    ["at the lower of two", [at12, at135], 12, false],
    ["at the upper of two", [at12, at135], 13.5, false],
  ];
  for (const [what, figures, voltage_V, isScaled] of cases) {
    const pump = electricPump(figures, { ...direct, battery_V: voltage_V });
    assertEquals(pump.isScaled, isScaled, what);
    let compared = 0;
    for (let pressure_Pa = 1.7e5; pressure_Pa <= 6.5e5; pressure_Pa += 1e4) {
      const spec = {
        curves: figures.map(({ at, points }) => ({ voltage_V: at, points })),
        count: 1,
        arrangement: "parallel",
      } as const;
      const { available_m3_s } = pumpAt(new Working(), "pump", spec, { pressure_Pa, voltage_V });
      if (available_m3_s === undefined) continue;
      const read = readPump(pump, available_m3_s);
      assertClose(read.pressure_Pa, pressure_Pa, 1e-9, `${what}, ${pressure_Pa}`);
      // Of two tables only pressures that both reach make the curve.
      const isShared = figures.length === 1 || pressure_Pa <= 5e5;
      if (isShared) assertEquals(read.within, "within", `${what}, ${pressure_Pa}`);
      compared++;
    }
    assert(compared >= 30, `${what}: ${compared} compared`);
  }
});

const TERMINAL_CASES: [what: string, battery_V: number, isScaled: boolean][] = [
  ["the battery above both tables, the terminals between them", 14, false],
  ["battery and terminals between them", 13.3, false],
  ["the battery between them, the terminals below both", 12.3, true],
  ["battery and terminals above both", 16, true],
];
for (const [what, battery_V, isScaled] of TERMINAL_CASES) {
  Deno.test(`electricPump(), which tables count goes by the terminals: ${what}`, () => {
    const pump = electricPump([at12, at135], { ...direct, battery_V, wires_ohm: 0.08 });
    assertEquals(pump.isScaled, isScaled);
    if (isScaled) return;
    // At each point it is what the straight line between the tables says at the voltage there.
    const spec = { count: 1, arrangement: "parallel" } as const;
    const curves = [at12, at135].map(({ at, points }) => ({ voltage_V: at, points }));
    for (const { pressure_Pa, flow_m3_s, at: voltage_V } of pump.points) {
      const duty = { pressure_Pa, voltage_V };
      const { available_m3_s, scaled } = pumpAt(new Working(), "pump", { ...spec, curves }, duty);
      if (scaled) continue;
      assertClose(available_m3_s ?? NaN, flow_m3_s, 1e-9, `${pressure_Pa}`);
    }
  });
}

Deno.test("electricPump(), wires that lose as much as contacts do at a point leave the same there", () => {
  const wired = electricPump([at135], { ...direct, wires_ohm: 0.08 });
  for (const { flow_m3_s, pressure_Pa, at } of wired.points) {
    const same = electricPump([at135], { ...direct, contacts_V: 13.5 - at });
    assertClose(readPump(same, flow_m3_s).pressure_Pa, pressure_Pa, 1e-9);
  }
});

Deno.test("electricPump(), between its points its flow is within 0.1 % of many more points", () => {
  const many = (figures: PumpFigures): PumpFigures => {
    const points = figures.points.toSorted((a, b) => a.pressure_Pa - b.pressure_Pa);
    return {
      at: figures.at,
      points: points.flatMap((a, i) => {
        const b = points[i + 1];
        if (b === undefined) return [a];
        return Array.from({ length: 50 }, (_, k) => ({
          pressure_Pa: a.pressure_Pa + (b.pressure_Pa - a.pressure_Pa) * k / 50,
          flow_m3_s: a.flow_m3_s + (b.flow_m3_s - a.flow_m3_s) * k / 50,
          current_A: (a.current_A ?? NaN) + ((b.current_A ?? NaN) - (a.current_A ?? NaN)) * k / 50,
        }));
      }),
    };
  };
  for (const figures of [[at135], [at12, at135]]) {
    const feed = { ...direct, wires_ohm: 0.06 };
    const fine = electricPump(figures.map(many), feed);
    const ours = electricPump(figures, feed);
    for (const { flow_m3_s, pressure_Pa } of fine.points) {
      const near = readPump(ours, flow_m3_s);
      if (near.within !== "within") continue;
      // What the pressure is off, as flow along the curve.
      const steepness = (readPump(ours, flow_m3_s * 1.001).pressure_Pa - near.pressure_Pa) /
        (0.001 * flow_m3_s);
      const off_m3_s = (near.pressure_Pa - pressure_Pa) / steepness;
      assert(Math.abs(off_m3_s) < 1e-3 * flow_m3_s, `${off_m3_s} of ${flow_m3_s}`);
    }
  }
});

Deno.test("electricPump(), a table with one point is no curve, and next to no voltage is refused", () => {
  const [point] = at135.points as [PumpFigure];
  const single = { at: 13.5, points: [point] };
  assertThrows(() => electricPump([single], direct), RangeError, "at least two points");
  assertThrows(() => electricPump([], direct), RangeError, "at least two points");
  assertThrows(
    () => electricPump([at135], { ...direct, contacts_V: 10 }),
    RangeError,
    "voltage",
  );
  assertEquals(electricPump([single, at135], direct), electricPump([at135], direct));
});

Deno.test("readPump(), on its points, between them and beyond either end", () => {
  const pump = electricPump([at135], direct);
  for (const { pressure_Pa, flow_m3_s, current_A = NaN } of at135.points) {
    const read = readPump(pump, flow_m3_s);
    assertClose(read.pressure_Pa, pressure_Pa, 1e-12);
    assertClose(read.current_A, current_A, 1e-12);
    assertEquals(read.within, "within");
  }
  assertClose(readPump(pump, 6.5e-5).pressure_Pa, 5e5, 1e-12, "half way");
  assertClose(readPump(pump, 6.5e-5).current_A, 13.5, 1e-12, "half way");
  assertEquals([readPump(pump, 4e-5).within, readPump(pump, 1e-4).within], ["below", "above"]);
  assertClose(readPump(pump, 3.5e-5).pressure_Pa, 7e5, 1e-9, "the last stretch runs on");
  assertThrows(() => readPump({ points: [], isScaled: false }, 1e-5), RangeError, "at least two");
});

Deno.test("pumpsTogether(), flows add side by side, pressures in a row, each with its own current", () => {
  const by = new Seeded(12);
  for (let i = 0; i < 50; i++) {
    const pump = anyPump(by);
    const count = by.whole(1, 4);
    const [first, last] = [pump.points[0], pump.points.at(-1)];
    const flow_m3_s = by.between(first?.flow_m3_s ?? NaN, last?.flow_m3_s ?? NaN);
    const one = readPump(pump, flow_m3_s);
    const beside = readPump(
      pumpsTogether(pump, { count, arrangement: "parallel" }),
      count * flow_m3_s,
    );
    const row = readPump(pumpsTogether(pump, { count, arrangement: "series" }), flow_m3_s);
    assertAlmostEquals(beside.pressure_Pa, one.pressure_Pa, 1e-3);
    assertAlmostEquals(row.pressure_Pa, count * one.pressure_Pa, 1e-3);
    assertAlmostEquals(beside.current_A, one.current_A, 1e-9);
    assertAlmostEquals(row.current_A, one.current_A, 1e-9);
  }
});

Deno.test("withRelief(), never above its pressure, and the bare pump below it", () => {
  const pump = electricPump([at135], direct);
  for (const relief_Pa of [2.5e5, 3.3e5, 4e5, 5.9e5]) {
    const relieved = withRelief(pump, relief_Pa);
    for (let flow_m3_s = 0; flow_m3_s <= 9.8e-5; flow_m3_s += 1e-6) {
      const bare_Pa = readPump(pump, flow_m3_s).pressure_Pa;
      const { pressure_Pa } = readPump(relieved, flow_m3_s);
      assertClose(pressure_Pa, Math.min(bare_Pa, relief_Pa), 1e-9, `${relief_Pa}, ${flow_m3_s}`);
    }
  }
});

Deno.test("drivenPump(), what slips past depends on pressure alone, as the methods say", () => {
  const points = [
    { pressure_Pa: 0, flow_m3_s: 10e-5 },
    { pressure_Pa: 3e5, flow_m3_s: 9.6e-5 },
    { pressure_Pa: 6e5, flow_m3_s: 8.8e-5 },
  ];
  const displacement = pumpDisplacement({ freeFlow: 10e-5, pumpSpeed: 50 });
  for (const speed_rev_s of [10, 25, 50, 70]) {
    const pump = drivenPump({ figures: { at: 50, points }, speed_rev_s }) as RunningPump;
    assertEquals(pump.isScaled, false);
    for (const { pressure_Pa, flow_m3_s } of points) {
      // Nothing slips at no pressure, but for the last digit.
      const slip = pressure_Pa === 0
        ? 0
        : slipOf({ displacement, pumpSpeed: 50, statedFlow: flow_m3_s });
      const flow = drivenPumpFlow({ displacement, pumpSpeed: speed_rev_s, slip });
      assertAlmostEquals(readPump(pump, flow).pressure_Pa, pressure_Pa, 1e-3, `${speed_rev_s}`);
      assertEquals([readPump(pump, flow).current_A, readPump(pump, flow).at], [0, speed_rev_s]);
    }
  }
});

Deno.test("drivenPump(), turned too slowly it delivers nothing and has no curve", () => {
  const points = [{ pressure_Pa: 2e5, flow_m3_s: 5e-5 }, { pressure_Pa: 6e5, flow_m3_s: 4e-5 }];
  // 5.5e-5 a revolution in a fiftieth: at 4 turns 4.4e-6 is displaced, and 5e-6 slips at 2 bar.
  assertEquals(drivenPump({ figures: { at: 50, points }, speed_rev_s: 4 }), undefined);
  assert(drivenPump({ figures: { at: 50, points }, speed_rev_s: 20 }) !== undefined);
  assertThrows(
    () => drivenPump({ figures: { at: 50, points: points.slice(1) }, speed_rev_s: 50 }),
    RangeError,
    "at least two points",
  );
});

const LINE: RunningPump = {
  isScaled: false,
  points: [
    { flow_m3_s: 5e-5, pressure_Pa: 6e5, current_A: 0, at: 25 },
    { flow_m3_s: 9e-5, pressure_Pa: 2e5, current_A: 0, at: 25 },
  ],
};

Deno.test("withRelief(), a valve below every figure is all that the pump makes", () => {
  const relieved = withRelief(LINE, 1e5);
  assertEquals(relieved.points[0]?.pressure_Pa, 1e5);
  // The line itself goes on to 10e-5 m3/s at 1 bar and to 11e-5 at none.
  assertAlmostEquals(readPump(relieved, 9.9e-5).pressure_Pa, 1e5, 1);
  assertAlmostEquals(readPump(relieved, 11e-5).pressure_Pa, 0, 1);
});

Deno.test("withRelief(), a valve above what the pump can make changes nothing", () => {
  // The line reaches 11 bar at no flow.
  assertEquals(withRelief(LINE, 20e5), LINE);
  assertAlmostEquals(readPump(withRelief(LINE, 10e5), 0).pressure_Pa, 10e5, 1);
});
