import { assert, assertEquals } from "@std/assert";
import {
  boxesOf,
  closedUp,
  planFromBoxes,
  planReady,
  readPlan,
  resolvePlan,
  settle,
} from "@/lib/plan/mod.ts";
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

const LEAST = new Map([
  ["engine.cycle", "four-stroke"],
  ["engine.cylinders", "4"],
  ["engine.power", "200 hp"],
  ["engine.powerSpeed", "6500 rpm"],
  ["engine.aspiration", "natural"],
  ["fuel.name", "petrol"],
]);

Deno.test("a run that is confirmed is listed piece by piece and no longer assumed", () => {
  const reading = readPlan(planFromBoxes(LEAST));
  assert(reading.ok);
  const feed = resolvePlan(reading.plan).assumed.find(({ path }) => path === "supply.feed");
  assert(feed);
  const settled = settle(LEAST, feed);
  assertEquals(settled.get("supply.feed.0.length"), "3.5 m");
  assertEquals(settled.get("supply.feed.1.count"), "2");
  const again = readPlan(planFromBoxes(settled));
  assert(again.ok, JSON.stringify(again));
  assertEquals(resolvePlan(again.plan).assumed.some(({ path }) => path === "supply.feed"), false);
});

Deno.test("a fault in a row below a blank one stands at the box it was typed into", () => {
  const boxes = closedUp(
    new Map([
      ...LEAST,
      ["supply.feed.0.piece", " "],
      ["supply.feed.1.piece", "barb"],
      ["supply.feed.4.piece", "hose"],
    ]),
  );
  const reading = readPlan(planFromBoxes(boxes));
  assert(!reading.ok);
  assertEquals(reading.faults.map(({ path }) => path), ["supply.feed.1.length"]);
  assertEquals(boxes.get("supply.feed.1.piece"), "hose");
  assertEquals(boxes.has("supply.feed.4.piece"), false);
});
