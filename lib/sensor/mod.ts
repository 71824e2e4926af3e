/**
 * Sensors of pressure and temperature: signal, counts, range, faults.
 *
 * @module
 */
export { countAtShare, countsUsed, pressureFromCount, pressurePerCount } from "./counts.ts";
export { dividerResistance, dividerShare } from "./divider.ts";
export { type FaultBand, type SignalState, signalState, USUAL_BAND } from "./fault_bands.ts";
export { betaFromPoints, EXAMPLE_NTC, resistanceByBeta, temperatureByBeta } from "./ntc.ts";
export { chooseRange, COMMON_RANGES_Pa, sensorError, sensorRange } from "./range.ts";
export { sensorPressure, sensorVoltage, USUAL_SIGNAL } from "./signal.ts";
export {
  type NtcCoefficients,
  ntcCoefficients,
  type NtcPoint,
  temperatureBySteinhartHart,
} from "./steinhart_hart.ts";
