/** The units leaks are stated in, and what "standard" costs in them. */
import { InputError } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { ATMOSPHERE_Pa } from "./constants.ts";

/** A unit of leak rate. */
export type LeakUnit =
  | "Pa m3/s"
  | "mbar L/s"
  | "torr L/s"
  | "atm cm3/s"
  | "atm cm3/min";

/**
 * What one of each unit is in Pa m^3/s, at one and the same temperature.
 * Source: SI; the torr is 1/760 of the standard atmosphere.
 */
const LEAK_UNITS: Readonly<Record<LeakUnit, number>> = {
  "Pa m3/s": 1,
  "mbar L/s": 100 * 1e-3,
  "torr L/s": ATMOSPHERE_Pa / 760 * 1e-3,
  "atm cm3/s": ATMOSPHERE_Pa * 1e-6,
  "atm cm3/min": ATMOSPHERE_Pa * 1e-6 / 60,
};

/**
 * Converts a leak rate between units, at one and the same temperature.
 *
 * @param value The leak.
 * @param from Its unit.
 * @param to The unit wanted.
 * @returns The leak in that unit.
 * @throws {InputError} When the value is not finite.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(convertLeak(1, "mbar L/s", "Pa m3/s"), 0.1, 1e-15);
 * ```
 */
export function convertLeak(value: number, from: LeakUnit, to: LeakUnit): number {
  if (!Number.isFinite(value)) throw new InputError("leak rate", "value", "must be finite", value);
  return value * LEAK_UNITS[from] / LEAK_UNITS[to];
}

/**
 * Leak [Pa m^3/s] at a temperature, from a flow stated at standard conditions.
 * 0, 20 and 25 °C are all in use as standard, up to 9 % apart: it must be said.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example One standard cubic centimetre a minute, at 0 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_Pa_m3_s = leakFromStandardFlow({
 *   flow: 1e-6 / 60,
 *   standardPressure: 101325,
 *   standardTemperature: 273.15,
 *   temperature: 273.15,
 * });
 *
 * assertAlmostEquals(leak_Pa_m3_s, 1.68875e-3, 1e-9);
 * ```
 */
export const leakFromStandardFlow: Method<
  Record<"flow" | "standardPressure" | "standardTemperature" | "temperature", MethodInput>
> = method({
  id: "leak-from-standard-flow",
  title: "Leak from a flow at standard conditions",
  inputs: {
    flow: {
      unit: "m^3/s",
      min: 0,
      max: 1e-3,
      says: "Flow of gas at standard conditions",
      symbol: "Q_0",
    },
    standardPressure: {
      unit: "Pa",
      min: 9e4,
      max: 1.1e5,
      says: "Standard pressure, absolute",
      symbol: "p_0",
    },
    standardTemperature: {
      unit: "K",
      min: 270,
      max: 300,
      says: "Standard temperature",
      symbol: "T_0",
    },
    temperature: {
      unit: "K",
      min: 200,
      max: 450,
      says: "Temperature the leak is wanted at",
      symbol: "T",
    },
  },
  output: { name: "leak", unit: "Pa m^3/s", min: 0, max: 200, says: "Leak", symbol: "q" },
  formula: "flow * standardPressure * temperature / standardTemperature",
  source: "Ideal gas law",
  compute: ({ flow, standardPressure, standardTemperature, temperature }) =>
    flow * standardPressure * temperature / standardTemperature,
});

/**
 * Leak as amount of gas [mol/s], which no temperature moves.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const amount_mol_s = leakAmount({ leak: 1e-3, gasConstant: 8.314462618, temperature: 293.15 });
 *
 * assertAlmostEquals(amount_mol_s, 4.1e-7, 1e-9);
 * ```
 */
export const leakAmount: Method<
  Record<"leak" | "gasConstant" | "temperature", MethodInput>
> = method({
  id: "leak-amount",
  title: "Leak as amount of gas",
  inputs: {
    leak: { unit: "Pa m^3/s", min: 0, max: 10, says: "Leak", symbol: "q" },
    gasConstant: {
      unit: "J/(mol K)",
      min: 8.31,
      max: 8.32,
      says: "Molar gas constant",
      symbol: "R",
    },
    temperature: {
      unit: "K",
      min: 200,
      max: 450,
      says: "Temperature the leak is stated at",
      symbol: "T",
    },
  },
  output: {
    name: "amount",
    unit: "mol/s",
    min: 0,
    max: 1,
    says: "Amount of gas per time",
    symbol: "\\dot n",
  },
  formula: "leak / (gasConstant * temperature)",
  source: "Ideal gas law",
  compute: ({ leak, gasConstant, temperature }) => leak / (gasConstant * temperature),
});
