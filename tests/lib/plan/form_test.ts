import { assert, assertEquals } from "@std/assert";
import { boxesOf, planFromBoxes, planReady, readPlan } from "@/lib/plan/mod.ts";
import golden from "./golden/version-1.json" with { type: "json" };

await planReady();

Deno.test("a plan survives its form", () => {
  const reading = readPlan(golden);
  assert(reading.ok);
  assertEquals(planFromBoxes(boxesOf(reading.plan)), golden);
});

Deno.test("a form loses nothing that was typed wrongly", () => {
  const typed = new Map([["engine.power", "lots"], ["engine.cylinders", "four"], [
    "rail.bore",
    "1/2",
  ]]);
  assertEquals(planFromBoxes(typed), {
    version: 1,
    engine: { cylinders: "four", power: "lots" },
    fuel: {},
    rail: { bore: "1/2" },
  });
});

Deno.test("boxes of no field are ignored", () => {
  const typed = new Map([["engine.__proto__", "x"], ["constructor.name", "x"], ["confirm", "x"]]);
  assertEquals(planFromBoxes(typed), { version: 1, engine: {}, fuel: {} });
});
