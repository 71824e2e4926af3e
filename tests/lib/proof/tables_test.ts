/** Words and readings of the proof room. */
import { assertEquals, assertThrows } from "@std/assert";
import { blendLowerLimit, convertLeak, tightnessOf } from "@/lib/proof/mod.ts";

Deno.test("tightnessOf() puts each class at its bound", () => {
  const cases = [[1e-3, "leaking"], [1e-4, "watertight"], [1e-5, "vapour-tight"], [
    1e-8,
    "gas-tight",
  ]] as const;
  for (const [leak, name] of cases) {
    assertEquals(tightnessOf(leak), name, `${leak}`);
    assertEquals(tightnessOf(leak * 1.01) === name, name === "leaking", `above ${leak}`);
  }
});

Deno.test("convertLeak() goes there and back", () => {
  const there = convertLeak(3, "torr L/s", "atm cm3/min");
  assertEquals(Math.abs(convertLeak(there, "atm cm3/min", "torr L/s") - 3) < 1e-12, true);
  assertThrows(() => convertLeak(NaN, "torr L/s", "Pa m3/s"), RangeError, "must be finite");
});

Deno.test("blendLowerLimit() takes the lower limit while there is petrol in it", () => {
  assertEquals([0, 0.1, 0.85, 1].map(blendLowerLimit), [0.014, 0.014, 0.014, 0.033]);
});
