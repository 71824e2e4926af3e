import { assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { chooseRange, ntcCoefficients, signalState } from "@/lib/sensor/mod.ts";

const POINT = { temperature_K: 273.15, resistance_ohm: 5896 };

Deno.test("range, at, just above and beyond what is made", () => {
  for (
    const [highest, expected] of [
      [5e5, 5e5],
      [5e5 * (1 + 1e-12), 5e5],
      [5.01e5, 6e5],
      [25.1e5, undefined],
    ] as const
  ) assertEquals(chooseRange(highest), expected, `${highest}`);
});

Deno.test("signal, at and beside the ends of the band", () => {
  for (
    const [volts, expected] of [
      [0.24, "too low"],
      [0.25, "valid"],
      [4.75, "valid"],
      [4.76, "too high"],
    ] as const
  ) assertEquals(signalState(volts, 5), expected, `${volts} V`);
});

Deno.test("coefficients, two equal resistances or none at all", () => {
  const other = { temperature_K: 293.15, resistance_ohm: 2500 };
  assertThrows(() => ntcCoefficients([POINT, other, POINT]), InputError, "must differ");
  for (const resistance_ohm of [0, -1, NaN, Infinity]) {
    assertThrows(
      () => ntcCoefficients([POINT, other, { temperature_K: 353.15, resistance_ohm }]),
      InputError,
      "must be >= 1 ohm",
    );
  }
});
