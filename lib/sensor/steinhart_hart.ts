/** Temperature from an NTC by three points of its data sheet. */
import { InputError } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { RESISTANCE } from "./limits.ts";

/** A point of a data sheet. */
export interface NtcPoint {
  /** Temperature [K]. */
  readonly temperature_K: number;
  /** Resistance [ohm]. */
  readonly resistance_ohm: number;
}

/** The coefficients of Steinhart and Hart, for resistance in ohm. */
export interface NtcCoefficients {
  /** Constant [1/K]. */
  readonly a: number;
  /** Of the logarithm [1/K]. */
  readonly b: number;
  /** Of its cube [1/K]. */
  readonly c: number;
}

/**
 * Finds the coefficients that meet three points.
 *
 * Source: J. S. Steinhart and S. R. Hart (1968).
 *
 * @param points Three points of different resistance, in any order.
 * @returns The coefficients.
 * @throws {InputError} When a number is below 1 or two resistances are equal.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const ntc = ntcCoefficients([
 *   { temperature_K: 273.15, resistance_ohm: 5896 },
 *   { temperature_K: 293.15, resistance_ohm: 2500 },
 *   { temperature_K: 353.15, resistance_ohm: 323 },
 * ]);
 *
 * assertAlmostEquals(temperatureBySteinhartHart({ resistance: 2500, ...ntc }), 293.15, 1e-9);
 * ```
 */
export function ntcCoefficients(
  points: readonly [NtcPoint, NtcPoint, NtcPoint],
): NtcCoefficients {
  for (const { temperature_K, resistance_ohm } of points) {
    requireAtLeast("temperature", temperature_K, 1, "K");
    requireAtLeast("resistance", resistance_ohm, 1, "ohm");
  }
  const [p, q, r] = points;
  const [x, y, z] = [p, q, r].map((point) => Math.log(point.resistance_ohm)) as [
    number,
    number,
    number,
  ];
  if (x === y || y === z || x === z) {
    const what = "coefficients of the sensor";
    throw new InputError(what, "resistance", "must differ in each point", p.resistance_ohm);
  }
  // Divided differences of 1/T over ln R; the missing square term fixes the rest.
  const first = (1 / q.temperature_K - 1 / p.temperature_K) / (y - x);
  const second = (1 / r.temperature_K - 1 / p.temperature_K) / (z - x);
  const c = (second - first) / ((z - y) * (x + y + z));
  const b = first - c * (x * x + x * y + y * y);
  return { a: 1 / p.temperature_K - b * x - c * x ** 3, b, c };
}

function requireAtLeast(field: string, value: number, least: number, unit: string): void {
  if (value >= least && Number.isFinite(value)) return;
  throw new InputError("coefficients of the sensor", field, `must be >= ${least} ${unit}`, value);
}

/**
 * Temperature [K] of a sensor by Steinhart and Hart: within a tenth of a kelvin between the
 * points of the data sheet.
 *
 * Source: J. S. Steinhart and S. R. Hart, Calibration curves for thermistors (1968).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const temperature_K = temperatureBySteinhartHart({
 *   resistance: 2057,
 *   a: 1.270396e-3,
 *   b: 2.661502e-4,
 *   c: 1.220493e-7,
 * });
 *
 * assertAlmostEquals(temperature_K, 298.06, 0.01);
 * ```
 */
export const temperatureBySteinhartHart: Method<
  Record<"resistance" | "a" | "b" | "c", MethodInput>
> = method({
  id: "temperature-by-steinhart-hart",
  title: "Temperature of a sensor by three points",
  inputs: {
    resistance: RESISTANCE,
    a: { unit: "1/K", min: 0, max: 3e-3, says: "Constant of the sensor", symbol: "A" },
    b: { unit: "1/K", min: 0, max: 6e-4, says: "Coefficient of the logarithm", symbol: "B" },
    c: { unit: "1/K", min: -1e-6, max: 1e-6, says: "Coefficient of its cube", symbol: "C" },
  },
  output: {
    name: "temperature",
    unit: "K",
    min: 150,
    max: 1000,
    says: "Temperature of the sensor",
    symbol: "T",
  },
  formula: "1 / (a + b * log(resistance) + c * log(resistance)^3)",
  fit: true,
  source: "J. S. Steinhart and S. R. Hart (1968)",
  compute: ({ resistance, a, b, c }) => {
    const x = Math.log(resistance);
    return 1 / (a + b * x + c * x ** 3);
  },
});
