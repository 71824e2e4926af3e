/** Pressure and voltage of a ratiometric sensor. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { HIGH_SHARE, LOW_SHARE, RANGE, SUPPLY } from "./limits.ts";

/**
 * Signal of the usual sensor as shares of its supply: 0.5 to 4.5 V of 5 V.
 * Common practice, no source; the data sheet rules.
 */
export const USUAL_SIGNAL = { lowShare: 0.1, highShare: 0.9 } as const;

const LINE = "Straight line through the two points of the data sheet";

/**
 * Pressure that a ratiometric sensor tells [Pa, gauge]. With the rail open to the air it is
 * the sensor's error at zero.
 *
 * Source: straight line through the two points of the data sheet.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const sensor = { supply: 5, range: 1e6, ...USUAL_SIGNAL };
 *
 * assertAlmostEquals(sensorPressure({ voltage: 1.7, ...sensor }), 3e5, 1e-6);
 * assertAlmostEquals(sensorPressure({ voltage: 0.52, ...sensor }), 5e3, 1e-6); // vented: 50 mbar off
 * ```
 */
export const sensorPressure: Method<
  Record<"voltage" | "supply" | "lowShare" | "highShare" | "range", MethodInput>
> = method({
  id: "sensor-pressure",
  title: "Pressure that a sensor tells",
  inputs: {
    voltage: { unit: "V", min: 0, max: 30, says: "Signal of the sensor", symbol: "V" },
    supply: SUPPLY,
    lowShare: LOW_SHARE,
    highShare: HIGH_SHARE,
    range: RANGE,
  },
  output: {
    name: "pressure",
    unit: "Pa",
    min: -2e8,
    max: 2e10,
    says: "Pressure, gauge",
    symbol: "p",
  },
  formula: "(voltage / supply - lowShare) / (highShare - lowShare) * range",
  source: LINE,
  compute: ({ voltage, supply, lowShare, highShare, range }) =>
    (voltage / supply - lowShare) / (highShare - lowShare) * range,
});

/**
 * Signal of a ratiometric sensor [V] at a pressure.
 *
 * Source: straight line through the two points of the data sheet.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const voltage_V = sensorVoltage({ pressure: 3e5, supply: 5, range: 1e6, ...USUAL_SIGNAL });
 *
 * assertAlmostEquals(voltage_V, 1.7, 1e-12);
 * ```
 */
export const sensorVoltage: Method<
  Record<"pressure" | "supply" | "lowShare" | "highShare" | "range", MethodInput>
> = method({
  id: "sensor-voltage",
  title: "Signal of a sensor at a pressure",
  inputs: {
    pressure: { unit: "Pa", min: -1e5, max: 1e8, says: "Pressure, gauge", symbol: "p" },
    supply: SUPPLY,
    lowShare: LOW_SHARE,
    highShare: HIGH_SHARE,
    range: RANGE,
  },
  output: {
    name: "voltage",
    unit: "V",
    min: -30,
    max: 3e4,
    says: "Signal; above full scale it stays near the supply",
    symbol: "V",
  },
  formula: "supply * (lowShare + (highShare - lowShare) * pressure / range)",
  source: LINE,
  compute: ({ pressure, supply, lowShare, highShare, range }) =>
    supply * (lowShare + (highShare - lowShare) * pressure / range),
});
