/** A pump's table: between its points, at another voltage, with more pumps. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { COUNT, FLOW, PRESSURE_RISE, VOLTAGE } from "./limits.ts";

/**
 * Flow [m^3/s] of a pump between two points of its table, on the straight line between
 * them. On a curve that bulges, as pump curves do, it is the cautious side.
 *
 * Source: linear interpolation.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 340 L/h at 3 bar and 280 L/h at 5 bar, at 4 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = pumpFlowBetween({
 *   lowerPressure: 3e5,
 *   lowerFlow: 0.34 / 3600,
 *   upperPressure: 5e5,
 *   upperFlow: 0.28 / 3600,
 *   pressure: 4e5,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 3600, 0.31, 1e-9);
 * ```
 */
export const pumpFlowBetween: Method<
  Record<"pressure" | "lowerPressure" | "lowerFlow" | "upperPressure" | "upperFlow", MethodInput>
> = method({
  id: "pump-flow-between",
  title: "Flow of a pump between two points of its table",
  inputs: {
    pressure: PRESSURE_RISE,
    lowerPressure: { ...PRESSURE_RISE, says: "Pressure of the point below", symbol: "p_1" },
    lowerFlow: { ...FLOW, says: "Flow of the point below", symbol: "Q_1" },
    upperPressure: { ...PRESSURE_RISE, says: "Pressure of the point above", symbol: "p_2" },
    upperFlow: { ...FLOW, says: "Flow of the point above", symbol: "Q_2" },
  },
  output: { ...FLOW, name: "flow" },
  formula: "lowerFlow + (upperFlow - lowerFlow) * (pressure - lowerPressure) / " +
    "(upperPressure - lowerPressure)",
  source: "Linear interpolation",
  compute: ({ pressure, lowerPressure, lowerFlow, upperPressure, upperFlow }) =>
    lowerFlow +
    (upperFlow - lowerFlow) * (pressure - lowerPressure) / (upperPressure - lowerPressure),
});

/**
 * Pressure [Pa] at which a table made at one voltage is read for another: affinity law,
 * pressure with the square of speed and speed with voltage.
 *
 * An estimate: speed follows voltage only roughly, most of all at high pressure.
 * Source: affinity laws of pumps; speed taken as proportional to voltage.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3 bar at 12 V out of a table at 13.5 V
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pressure_Pa = affinityPressure({ pressure: 3e5, voltage: 12, statedVoltage: 13.5 });
 *
 * assertAlmostEquals(pressure_Pa, 3.797e5, 100);
 * ```
 */
export const affinityPressure: Method<
  Record<"pressure" | "voltage" | "statedVoltage", MethodInput>
> = method({
  id: "affinity-pressure",
  title: "Pressure at which to read a table made at another voltage",
  inputs: {
    pressure: { ...PRESSURE_RISE, says: "Pressure that the pump has to add" },
    voltage: VOLTAGE,
    statedVoltage: { ...VOLTAGE, says: "Voltage of the table", symbol: "U_0" },
  },
  output: { ...PRESSURE_RISE, name: "tablePressure", max: 6e8, symbol: "p_0" },
  formula: "pressure * (statedVoltage / voltage)^2",
  source: "Affinity laws of pumps, speed taken as proportional to voltage (an estimate); " +
    "Y. A. Cengel, J. M. Cimbala, Fluid Mechanics, section 14-3",
  compute: ({ pressure, voltage, statedVoltage }) => pressure * (statedVoltage / voltage) ** 2,
});

/**
 * Flow [m^3/s] of a pump at another voltage than its table's: affinity law.
 *
 * Source: affinity laws of pumps; speed taken as proportional to voltage.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = affinityFlow({ flow: 9e-5, voltage: 12, statedVoltage: 13.5 });
 *
 * assertAlmostEquals(flow_m3_s, 8e-5, 1e-12);
 * ```
 */
export const affinityFlow: Method<Record<"flow" | "voltage" | "statedVoltage", MethodInput>> =
  method({
    id: "affinity-flow",
    title: "Flow of a pump at another voltage",
    inputs: {
      flow: { ...FLOW, says: "Flow read from the table", symbol: "Q_0" },
      voltage: VOLTAGE,
      statedVoltage: { ...VOLTAGE, says: "Voltage of the table", symbol: "U_0" },
    },
    output: { ...FLOW, name: "flow", max: 1 },
    formula: "flow * voltage / statedVoltage",
    source: "Affinity laws of pumps, speed taken as proportional to voltage (an estimate); " +
      "Y. A. Cengel, J. M. Cimbala, Fluid Mechanics, section 14-3",
    compute: ({ flow, voltage, statedVoltage }) => flow * voltage / statedVoltage,
  });

/**
 * Flow [m^3/s] of a pump between two voltages for which it is known, at one pressure.
 *
 * Source: linear interpolation.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = pumpFlowBetweenVoltages({
 *   voltage: 13,
 *   lowerVoltage: 12,
 *   lowerFlow: 7e-5,
 *   upperVoltage: 14,
 *   upperFlow: 9e-5,
 * });
 *
 * assertAlmostEquals(flow_m3_s, 8e-5, 1e-12);
 * ```
 */
export const pumpFlowBetweenVoltages: Method<
  Record<"voltage" | "lowerVoltage" | "lowerFlow" | "upperVoltage" | "upperFlow", MethodInput>
> = method({
  id: "pump-flow-between-voltages",
  title: "Flow of a pump between two voltages",
  inputs: {
    voltage: VOLTAGE,
    lowerVoltage: { ...VOLTAGE, says: "Voltage of the lower table", symbol: "U_1" },
    lowerFlow: { ...FLOW, says: "Flow by the lower table", symbol: "Q_1" },
    upperVoltage: { ...VOLTAGE, says: "Voltage of the upper table", symbol: "U_2" },
    upperFlow: { ...FLOW, says: "Flow by the upper table", symbol: "Q_2" },
  },
  output: { ...FLOW, name: "flow" },
  formula: "lowerFlow + (upperFlow - lowerFlow) * (voltage - lowerVoltage) / " +
    "(upperVoltage - lowerVoltage)",
  source: "Linear interpolation",
  compute: ({ voltage, lowerVoltage, lowerFlow, upperVoltage, upperFlow }) =>
    lowerFlow +
    (upperFlow - lowerFlow) * (voltage - lowerVoltage) / (upperVoltage - lowerVoltage),
});

/**
 * Flow [m^3/s] of like pumps side by side: flows add at equal pressure. Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(parallelFlow({ flow: 8e-5, count: 2 }), 1.6e-4);
 * ```
 */
export const parallelFlow: Method<Record<"flow" | "count", MethodInput>> = method({
  id: "parallel-flow",
  title: "Flow of pumps side by side",
  inputs: { flow: { ...FLOW, says: "Flow of one pump" }, count: COUNT },
  output: { ...FLOW, name: "flow", max: 1, says: "Flow of all pumps" },
  formula: "flow * count",
  source: "Continuity: flows add at equal pressure",
  compute: ({ flow, count }) => flow * count,
});

/**
 * Pressure [Pa] that each of several like pumps in a row has to add: pressures add at
 * equal flow. Source: addition of pressures.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(seriesPressure({ pressure: 4e5, count: 2 }), 2e5);
 * ```
 */
export const seriesPressure: Method<Record<"pressure" | "count", MethodInput>> = method({
  id: "series-pressure",
  title: "Pressure of each of several pumps in a row",
  inputs: { pressure: { ...PRESSURE_RISE, says: "Pressure that all add" }, count: COUNT },
  output: { ...PRESSURE_RISE, name: "pressure", says: "Pressure that one adds" },
  formula: "pressure / count",
  source: "Pressures add at equal flow",
  compute: ({ pressure, count }) => pressure / count,
});
