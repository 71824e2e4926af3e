/** What a piping code asks of a test with air, used by analogy. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Highest setting of the relief valve in a test with air [Pa, gauge].
 *
 * Source: ASME B31.3 para. 345.5.2, by analogy: test pressure plus the lesser
 * of 10 % and 345 kPa.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(airTestRelief({ testPressure: 500_000 }), 550_000);
 * ```
 */
export const airTestRelief: Method<Record<"testPressure", MethodInput>> = method({
  id: "air-test-relief",
  title: "Highest relief setting in a test with air",
  inputs: {
    testPressure: {
      unit: "Pa",
      min: 0,
      max: 5e6,
      says: "Test pressure, gauge",
      symbol: "p_\\text{test}",
    },
  },
  output: {
    name: "relief",
    unit: "Pa",
    min: 0,
    max: 5.5e6,
    says: "Highest relief setting, gauge",
    symbol: "p_\\text{relief}",
  },
  formula: "testPressure + min(0.1 * testPressure, 345000)",
  fit: true,
  source: "ASME B31.3-2016 para. 345.5.2, by analogy",
  compute: ({ testPressure }) => testPressure + Math.min(0.1 * testPressure, 345_000),
});

/**
 * Pressure of the first halt on the way up [Pa, gauge], where joints are looked at before going on.
 *
 * Source: ASME B31.3 para. 345.8, by analogy: the lesser of half the test
 * pressure and 170 kPa.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(firstHalt({ testPressure: 300_000 }), 150_000);
 * ```
 */
export const firstHalt: Method<Record<"testPressure", MethodInput>> = method({
  id: "first-halt",
  title: "First halt on the way to test pressure",
  inputs: {
    testPressure: {
      unit: "Pa",
      min: 0,
      max: 1e9,
      says: "Test pressure, gauge",
      symbol: "p_\\text{test}",
    },
  },
  output: {
    name: "halt",
    unit: "Pa",
    min: 0,
    max: 170_000,
    says: "Pressure of the first halt, gauge",
    symbol: "p_\\text{halt}",
  },
  formula: "min(0.5 * testPressure, 170000)",
  fit: true,
  source: "ASME B31.3-2016 para. 345.8, by analogy",
  compute: ({ testPressure }) => Math.min(0.5 * testPressure, 170_000),
});
