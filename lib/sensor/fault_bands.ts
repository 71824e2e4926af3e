/** Signals that no pressure makes. */

/** Shares of the supply between which a signal counts. */
export interface FaultBand {
  /** Below it the wire is open or touches ground [-]. */
  readonly low: number;
  /** Above it the wire touches the supply, or the sensor is beyond its range [-]. */
  readonly high: number;
}

/** The usual band: 0.25 to 4.75 V of 5 V. Common practice, from memory. */
export const USUAL_BAND: FaultBand = { low: 0.05, high: 0.95 };

/** What a signal says of the wiring. */
export type SignalState = "valid" | "too low" | "too high";

/**
 * Tells a signal that may be a pressure from one that is a fault of the wiring.
 *
 * @param voltage_V The signal [V].
 * @param supply_V The supply [V], above 0.
 * @param band The shares of the supply between which it counts.
 * @returns "valid", or on which side it lies outside.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(signalState(2.5, 5), "valid");
 * assertEquals(signalState(0.2, 5), "too low");
 * ```
 */
export function signalState(
  voltage_V: number,
  supply_V: number,
  band: FaultBand = USUAL_BAND,
): SignalState {
  const share = voltage_V / supply_V;
  if (share < band.low) return "too low";
  return share > band.high ? "too high" : "valid";
}
