import { assert, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import { operatingPoint, pumpAt, type PumpCurve, type PumpSpec } from "@/lib/supply/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const at135: PumpCurve = {
  voltage_V: 13.5,
  points: [
    { pressure_Pa: 6e5, flow_m3_s: 5e-5 },
    { pressure_Pa: 3e5, flow_m3_s: 9e-5 },
    { pressure_Pa: 4e5, flow_m3_s: 8e-5 },
  ],
};
const at12: PumpCurve = {
  voltage_V: 12,
  points: [
    { pressure_Pa: 3e5, flow_m3_s: 7e-5 },
    { pressure_Pa: 5e5, flow_m3_s: 4e-5 },
  ],
};

function ask(
  curves: PumpCurve[],
  pressure_Pa: number,
  voltage_V: number,
  more?: Partial<PumpSpec>,
) {
  const pump: PumpSpec = { curves, count: 1, arrangement: "parallel", ...more };
  return pumpAt(new Working(), "pump", pump, { pressure_Pa, voltage_V });
}

Deno.test("pumpAt(), points of the table come back, in whatever order they stand", () => {
  for (const { pressure_Pa, flow_m3_s } of at135.points) {
    assertClose(ask([at135], pressure_Pa, 13.5).available_m3_s ?? NaN, flow_m3_s, 1e-12);
  }
  assertEquals(ask([at135], 4e5, 13.5).scaled, false);
});

Deno.test("pumpAt(), beyond the table says why and gives a bound, never a flow", () => {
  const above = ask([at135], 6.1e5, 13.5);
  assertEquals([above.available_m3_s, above.untold], [undefined, "above-table"]);
  assertEquals([above.atLeast_m3_s, above.atMost_m3_s], [undefined, 5e-5]);

  const below = ask([at135], 2.9e5, 13.5);
  assertEquals([below.available_m3_s, below.untold], [undefined, "below-table"]);
  assertEquals([below.atLeast_m3_s, below.atMost_m3_s], [9e-5, undefined]);
});

Deno.test("pumpAt(), one table at another voltage is scaled by the affinity law and flagged", () => {
  const k = 12 / 13.5;
  const found = ask([at135], 4e5 * k * k, 12);
  assertClose(found.available_m3_s ?? NaN, 8e-5 * k, 1e-12);
  assertEquals(found.scaled, true);

  const above = ask([at135], 6e5, 12);
  assertEquals([above.untold, above.scaled], ["above-table", true]);
  assertClose(above.atMost_m3_s ?? NaN, 5e-5 * k, 1e-12);
});

Deno.test("pumpAt(), tables at two voltages interpolate and are not scaled", () => {
  const found = ask([at135, at12], 4e5, 12.75);
  assertClose(found.available_m3_s ?? NaN, (8e-5 + 5.5e-5) / 2, 1e-12);
  assertEquals(found.scaled, false);
  assertClose(ask([at12, at135], 4e5, 12).available_m3_s ?? NaN, 5.5e-5, 1e-12);
  assertClose(ask([at12, at135], 4e5, 13.5).available_m3_s ?? NaN, 8e-5, 1e-12);
});

Deno.test("pumpAt(), outside two voltages the nearer table is scaled", () => {
  const k = 11 / 12;
  const found = ask([at135, at12], 3e5 * k * k, 11);
  assertClose(found.available_m3_s ?? NaN, 7e-5 * k, 1e-12);
  assertEquals(found.scaled, true);
});

Deno.test("pumpAt(), where only one of two tables reaches, it bounds the answer", () => {
  const found = ask([at135, at12], 5.5e5, 13);
  assertEquals([found.available_m3_s, found.untold], [undefined, "above-table"]);
  assertClose(found.atMost_m3_s ?? NaN, 5.75e-5, 1e-12);
});

Deno.test("pumpAt(), a single point answers for its own pressure and for no other", () => {
  const point: PumpCurve = { voltage_V: 13.5, points: [{ pressure_Pa: 4e5, flow_m3_s: 9e-5 }] };
  assertEquals(ask([point], 4e5, 13.5).available_m3_s, 9e-5);
  assertEquals(ask([point], 4.03e5, 13.5).available_m3_s, 9e-5);

  const higher = ask([point], 4.5e5, 13.5);
  assertEquals([higher.available_m3_s, higher.untold], [undefined, "single-point"]);
  assertEquals([higher.atMost_m3_s, higher.atLeast_m3_s], [9e-5, undefined]);
  assertEquals(ask([point], 3.5e5, 13.5).atLeast_m3_s, 9e-5);
  assertEquals(ask([point], 4e5, 12).untold, "single-point");
});

Deno.test("pumpAt(), figures that can't be a pump's, or none, are said to be so", () => {
  const twice = {
    voltage_V: 13.5,
    points: [...at135.points, { pressure_Pa: 4e5, flow_m3_s: 7e-5 }],
  };
  const rising = {
    voltage_V: 13.5,
    points: [{ pressure_Pa: 3e5, flow_m3_s: 5e-5 }, { pressure_Pa: 5e5, flow_m3_s: 6e-5 }],
  };
  assertEquals(ask([twice], 4e5, 13.5).untold, "not-a-curve");
  assertEquals(ask([rising], 4e5, 13.5).untold, "not-a-curve");
  assertEquals(ask([], 4e5, 13.5).untold, "no-figures");
  assertEquals(ask([{ voltage_V: 12, points: [] }], 4e5, 13.5).untold, "no-figures");
});

Deno.test("pumpAt(), pumps side by side add flow, pumps in a row add pressure", () => {
  assertClose(ask([at135], 4e5, 13.5, { count: 2 }).available_m3_s ?? NaN, 16e-5, 1e-12);
  const row = ask([at135], 8e5, 13.5, { count: 2, arrangement: "series" });
  assertClose(row.available_m3_s ?? NaN, 8e-5, 1e-12);
  assertEquals(ask([at135], 7e5, 13.5, { count: 2 }).atMost_m3_s, 1e-4);
});

Deno.test("pumpAt(), what it gives is in the record", () => {
  const working = new Working();
  const found = pumpAt(working, "pump", { curves: [at135], count: 2, arrangement: "parallel" }, {
    pressure_Pa: 3e5,
    voltage_V: 12,
  });
  const last = working.uses.at(-1);
  assertEquals(last?.result, "pump.available_m3_s");
  assertEquals(last?.value, found.available_m3_s);
  assert(working.uses.every((use) => use.result.startsWith("pump.")));
});

Deno.test("operatingPoint(), a system that asks too little finds no point in the table either", () => {
  const points = [{ flow_m3_s: 5e-5, pressure_Pa: 5e5 }, { flow_m3_s: 9e-5, pressure_Pa: 3e5 }];
  const none = operatingPoint(points, { static_Pa: 1e5, coefficient: 1e10, exponent: 2 }, "linear");
  assertEquals(none, undefined);
});
