/** Where tables end, and what is refused. */
import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import {
  angleTolerance,
  bladeFor,
  FEELER_BLADES,
  generalTolerance,
  INSPECTION_POINTS,
  lastPlaceError,
  readFeeler,
  torqueWindow,
  wrenchError,
} from "@/lib/inspect/mod.ts";

Deno.test("what lies outside a table is refused by the name of its field", () => {
  const refused: [() => unknown, string][] = [
    [() => generalTolerance(0.0004), "length_m"],
    [() => generalTolerance(4.001), "length_m"],
    [() => generalTolerance(NaN), "length_m"],
    [() => angleTolerance(0), "shortSide_m"],
    [() => angleTolerance(5), "shortSide_m"],
    [() => lastPlaceError("chain", 1, 0.1), "holes"],
    [() => lastPlaceError("datum", 2.5, 0.1), "holes"],
    [() => readFeeler(0, true, 5e-5), "blade_m"],
    [() => readFeeler(5e-5, true, 0), "limit_m"],
    [() => torqueWindow(0), "torque_Nm"],
    [() => torqueWindow(10, 0.6), "error"],
  ];
  for (const [run, field] of refused) assertThrows(run, RangeError, field);
});

Deno.test("a thicker blade that stays out, and a thinner one that goes in, decide nothing", () => {
  assertEquals(readFeeler(6e-5, false, 5e-5).verdict, "open");
  assertEquals(readFeeler(4e-5, true, 5e-5).verdict, "open");
});

Deno.test("the blade to try decides: out it meets; no thicker blade of the set would", () => {
  for (const blades of Object.values(FEELER_BLADES)) {
    for (let limit = 4e-5; limit < 3e-4; limit += 7e-6) {
      const blade = bladeFor(blades, limit);
      assert(blade);
      assertEquals(readFeeler(blade.thickness_m, false, limit * (1 + 1e-9)).verdict, "meets");
      const next = blades[blades.indexOf(blade) + 1];
      assert(next && next.thickness_m > limit);
    }
    assertEquals(bladeFor(blades, 1e-5), undefined);
  }
});

Deno.test("blades are named by their thickness, thinnest first", () => {
  for (const [set, unit] of [["metric", 1e-3], ["inch", 0.0254]] as const) {
    let before = 0;
    for (const { name, thickness_m } of FEELER_BLADES[set]) {
      assertAlmostEquals(Number.parseFloat(name) * unit, thickness_m, 1e-12, name);
      assert(thickness_m > before, name);
      before = thickness_m;
    }
  }
});

Deno.test("a wrench may be 6 % off up to 10 N m, 4 % above", () => {
  assertEquals([wrenchError(10), wrenchError(10.1)], [0.06, 0.04]);
  assertAlmostEquals(torqueWindow(10).least_Nm, 9.4, 1e-12);
  assertAlmostEquals(torqueWindow(10.1).most_Nm, 10.1 * 1.04, 1e-12);
});

Deno.test("from one datum the last hole is never worse placed than in a chain", () => {
  for (let holes = 2; holes <= 8; holes++) {
    for (const pitch of [0.06, 0.095, 0.13]) {
      const [chain, datum] = [
        lastPlaceError("chain", holes, pitch),
        lastPlaceError("datum", holes, pitch),
      ];
      assert(datum <= chain + 1e-12, `${holes} at ${pitch}`);
    }
  }
});

Deno.test("every point names its instrument, its reason and its source", () => {
  for (const [id, point] of Object.entries(INSPECTION_POINTS)) {
    for (const text of Object.values(point)) assert(text.trim().length > 5, `${id}: ${text}`);
  }
});
