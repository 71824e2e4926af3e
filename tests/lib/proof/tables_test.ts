/** Words and readings of the proof room. */
import { assertEquals, assertThrows } from "@std/assert";
import {
  blendLowerLimit,
  convertLeak,
  readFeeler,
  tightnessOf,
  torqueWindow,
} from "@/lib/proof/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

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

Deno.test("readFeeler() leaves a thicker blade that stays out undecided", () => {
  assertEquals(readFeeler(6e-5, false, 5e-5).verdict, "open");
  assertThrows(() => readFeeler(0, true, 5e-5), RangeError, "blade_m");
});

Deno.test("torqueWindow() widens at and below 10 N m", () => {
  assertClose(torqueWindow(10).least_Nm, 9.4, 1e-12);
  assertClose(torqueWindow(10.1).least_Nm, 10.1 * 0.96, 1e-12);
  assertThrows(() => torqueWindow(-1), RangeError, "torque_Nm");
});
