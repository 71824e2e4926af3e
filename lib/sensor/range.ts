/** Which range a sensor should have and what it costs in accuracy. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { RANGE } from "./limits.ts";

/** Ranges that pressure sensors are commonly made with [Pa, gauge]. Common practice, no source. */
export const COMMON_RANGES_Pa: readonly number[] = [5e5, 6e5, 7e5, 1e6, 1.6e6, 2e6, 2.5e6];

/**
 * Range of a sensor over the highest working pressure [-].
 *
 * Source: definition. Proof pressure is another matter: a sensor that does not reach it
 * comes out, and its port is plugged.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sensorRange({ range: 1e6, workingPressure: 5e5 }), 2, 1e-12);
 * ```
 */
export const sensorRange: Method<Record<"range" | "workingPressure", MethodInput>> = method({
  id: "sensor-range",
  title: "Range of the sensor over the highest working pressure",
  inputs: {
    range: RANGE,
    workingPressure: {
      unit: "Pa",
      min: 1e4,
      max: 1e7,
      says: "Highest working pressure, gauge",
      symbol: "p_w",
    },
  },
  output: {
    name: "factor",
    unit: "-",
    min: 0,
    max: 1e4,
    says: "Range over working pressure",
    symbol: "r_s",
  },
  formula: "range / workingPressure",
  source: "Definition",
  compute: ({ range, workingPressure }) => range / workingPressure,
});

/**
 * Chooses the smallest range that holds a pressure, as an oversized one wastes accuracy.
 *
 * @param highest_Pa The highest pressure that the sensor will see, of the proof test if it stays in [Pa, gauge].
 * @param ranges_Pa The ranges on offer [Pa, gauge].
 * @returns The range [Pa, gauge], or undefined when none reaches.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(chooseRange(6.75e5), 7e5);
 * assertEquals(chooseRange(1e9), undefined);
 * ```
 */
export function chooseRange(
  highest_Pa: number,
  ranges_Pa: readonly number[] = COMMON_RANGES_Pa,
): number | undefined {
  // A pressure that a change of units moved by its last bit still fits.
  const wanted = highest_Pa * (1 - 1e-9);
  const reaching = ranges_Pa.filter((range) => range >= wanted);
  return reaching.length === 0 ? undefined : Math.min(...reaching);
}

/**
 * Error of a sensor [Pa] that is stated as a share of full scale.
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sensorError({ accuracy: 0.01, range: 1e6 }), 1e4, 1e-9);
 * ```
 */
export const sensorError: Method<Record<"accuracy" | "range", MethodInput>> = method({
  id: "sensor-error",
  title: "Error of a sensor",
  inputs: {
    accuracy: {
      unit: "-",
      min: 0,
      max: 0.2,
      says: "Accuracy as a share of full scale",
      symbol: "a",
    },
    range: RANGE,
  },
  output: {
    name: "error",
    unit: "Pa",
    min: 0,
    max: 2e7,
    says: "Error either way",
    symbol: "\\Delta p",
  },
  formula: "accuracy * range",
  source: "Definition",
  compute: ({ accuracy, range }) => accuracy * range,
});
