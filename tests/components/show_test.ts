import { assertEquals } from "@std/assert";
import { earlierOfBoxes } from "@/components/earlier.ts";
import { echoOf } from "@/components/echo.ts";
import { showBound, showShare, showValue } from "@/components/show.ts";
import { inPlanUnits, showRange, showSi, unitText } from "@/components/si.ts";
import { type Field, fieldAt, planReady } from "@/lib/plan/mod.ts";

await planReady();

const ECHOES: [path: string, typed: string, system: "metric" | "inch", echo: string | undefined][] =
  [
    ["engine.power", "420 hp", "metric", "= 313 kW"],
    ["engine.power", "420 hp", "inch", "= 313 kW"],
    ["engine.power", "425 PS", "metric", "= 313 kW"],
    ["engine.power", "313 kW", "metric", "= 420 hp"],
    ["regulator.setPressure", "3bar", "metric", "= 43.5 psi"],
    ["rail.bore", "1/2 in", "inch", "= 12.70 mm"],
    ["engine.powerSpeed", "7000 rpm", "metric", undefined],
    ["engine.power", "lots", "metric", undefined],
    ["engine.cylinders", "4", "metric", undefined],
  ];
for (const [path, typed, system, echo] of ECHOES) {
  Deno.test(`echoOf() answers "${typed}" in ${system} with ${echo}`, () => {
    assertEquals(echoOf(fieldAt(path) as Field, typed, system), echo);
  });
}

Deno.test("echoOf() takes a mass flow for a volume flow at the rating fluid's density", () => {
  // 95 lb/h at 684 kg/m³: 95 · 453.592 g / 60 min / 0.684 g/cc = 1050 cc/min
  const flow = fieldAt("injectors.stages.0.flow") as Field;
  assertEquals(echoOf(flow, "95 lb/h", "metric"), "= 1050 cc/min");
});

Deno.test("values and bounds are written in the plan's units", () => {
  assertEquals(showValue(3e5, "pressure", "inch"), "43.5 psi");
  assertEquals(showValue(1.25, "factor", "metric"), "1.25");
  assertEquals(showBound(0.9, "at-most", "ratio", "metric"), "at most 90.0 %");
  assertEquals(showBound([0.2, 0.38], "within", "ratio", "metric"), "20.0 % to 38.0 %");
  assertEquals([-0.6, 0.034, 0.0996, 1.3].map(showShare), ["−60 %", "3.4 %", "10 %", "130 %"]);
  assertEquals([2.3, -3].map(showShare), ["over 200 %", "beyond −100 %"]);
});

Deno.test("SI numbers are written as print has them", () => {
  assertEquals(["kg/m^3", "-", "m^2/s", "ohm", "s^-1"].map(unitText), [
    "kg/m³",
    "",
    "m²/s",
    "Ω",
    "s⁻¹",
  ]);
  assertEquals(showSi(745.25, "kg/m^3"), "745.3 kg/m³");
  assertEquals(inPlanUnits(3e5, "Pa", "metric"), "= 3.00 bar");
  assertEquals(inPlanUnits(3e5, "K", "metric"), undefined);
  assertEquals(inPlanUnits(1.5, "W", "metric"), undefined);
});

Deno.test("ranges without an end are not said to be infinite", () => {
  assertEquals(showRange({ min: 600, max: 1100, unit: "kg/m^3" }), "from 600 to 1100 kg/m³");
  assertEquals(showRange({ min: 0, max: Infinity, open: true, unit: "-" }), "above 0");
});

Deno.test("earlierOfBoxes() gives what was chosen, else what would be assumed", () => {
  const earlier = earlierOfBoxes(new Map([["rail.shape", "round"], ["pump.place", "  "]]));
  assertEquals(earlier.word("rail.shape"), "round");
  assertEquals(earlier.word("pump.place"), "tank");
  assertEquals(earlier.word("fuel.name"), undefined);
});
