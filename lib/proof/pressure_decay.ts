/** What a gauge shows of a leak from a closed volume of gas. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const VOLUME: MethodInput = {
  unit: "m^3",
  min: 1e-7,
  max: 0.1,
  says: "Volume under test",
  symbol: "V",
};
const DURATION: MethodInput = {
  unit: "s",
  min: 1,
  max: 1e6,
  says: "How long it is left",
  symbol: "t",
};
const LEAK: MethodInput = {
  unit: "Pa m^3/s",
  min: 1e-14,
  max: 10,
  says: "Leak, as pressure times volume per time",
  symbol: "q",
};
const RESOLUTION: MethodInput = {
  unit: "Pa",
  min: 0.1,
  max: 2e5,
  says: "Smallest change that can be read from the gauge",
  symbol: "r",
};
const STEPS: MethodInput = {
  unit: "-",
  min: 1,
  max: 20,
  says: "Resolution steps from which a fall counts as seen: 3, not below 2",
  symbol: "n",
};
const START_TEMPERATURE: MethodInput = {
  unit: "K",
  min: 200,
  max: 450,
  says: "Temperature of the gas at the start",
  symbol: "T_1",
};
const END_TEMPERATURE: MethodInput = {
  unit: "K",
  min: 200,
  max: 450,
  says: "Temperature of the gas at the end",
  symbol: "T_2",
};
const END_PRESSURE: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 5e6,
  says: "Pressure at the end, absolute",
  symbol: "p_2",
};

/**
 * Leak [Pa m^3/s, at the reference temperature] from pressure and temperature
 * at start and end. Below nought: the temperature explains more than the fall.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half a litre loses 10 mbar in five minutes at one temperature
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_Pa_m3_s = leakFromDecay({
 *   volume: 5e-4,
 *   duration: 300,
 *   startPressure: 501_325,
 *   startTemperature: 293.15,
 *   endPressure: 500_325,
 *   endTemperature: 293.15,
 *   reference: 293.15,
 * });
 *
 * assertAlmostEquals(leak_Pa_m3_s, 1 / 600, 1e-9);
 * ```
 */
export const leakFromDecay: Method<
  Record<
    | "volume"
    | "duration"
    | "startPressure"
    | "startTemperature"
    | "endPressure"
    | "endTemperature"
    | "reference",
    MethodInput
  >
> = method({
  id: "leak-from-decay",
  title: "Leak from the fall of pressure, temperature corrected",
  inputs: {
    volume: VOLUME,
    duration: DURATION,
    startPressure: {
      unit: "Pa",
      min: 0,
      max: 5e6,
      says: "Pressure at the start, absolute",
      symbol: "p_1",
    },
    startTemperature: START_TEMPERATURE,
    endPressure: END_PRESSURE,
    endTemperature: END_TEMPERATURE,
    reference: {
      unit: "K",
      min: 200,
      max: 450,
      says: "Temperature the leak is stated at",
      symbol: "T_\\text{ref}",
    },
  },
  output: {
    name: "leak",
    unit: "Pa m^3/s",
    min: -2e6,
    max: 2e6,
    says: "Leak at the reference temperature",
    symbol: "q",
  },
  formula: "volume / duration" +
    " * (startPressure / startTemperature - endPressure / endTemperature) * reference",
  source: "Ideal gas law; pressure-decay tests as in ASTM E2930",
  compute: (i) =>
    i.volume / i.duration *
    (i.startPressure / i.startTemperature - i.endPressure / i.endTemperature) * i.reference,
});

/**
 * End pressure [Pa, absolute] as it would be had the gas kept its temperature.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const corrected_Pa = pressureAtStartTemperature({
 *   endPressure: 5e5,
 *   startTemperature: 300,
 *   endTemperature: 250,
 * });
 *
 * assertEquals(corrected_Pa, 6e5);
 * ```
 */
export const pressureAtStartTemperature: Method<
  Record<"endPressure" | "startTemperature" | "endTemperature", MethodInput>
> = method({
  id: "pressure-at-start-temperature",
  title: "End pressure brought back to the temperature of the start",
  inputs: {
    endPressure: END_PRESSURE,
    startTemperature: START_TEMPERATURE,
    endTemperature: END_TEMPERATURE,
  },
  output: {
    name: "corrected",
    unit: "Pa",
    min: 0,
    max: 2e7,
    says: "Corrected end pressure, absolute",
    symbol: "p_2'",
  },
  formula: "endPressure * startTemperature / endTemperature",
  source: "Ideal gas law",
  compute: ({ endPressure, startTemperature, endTemperature }) =>
    endPressure * startTemperature / endTemperature,
});

/**
 * Change of pressure [Pa] of closed-in gas by temperature alone: about a third
 * of a percent of the absolute pressure per kelvin.
 *
 * Source: ideal gas law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(thermalChange({ pressure: 6e5, temperature: 300, temperatureChange: 1 }), 2000);
 * ```
 */
export const thermalChange: Method<
  Record<"pressure" | "temperature" | "temperatureChange", MethodInput>
> = method({
  id: "thermal-change",
  title: "Change of gas pressure by temperature alone",
  inputs: {
    pressure: { unit: "Pa", min: 0, max: 5e6, says: "Pressure, absolute", symbol: "p" },
    temperature: {
      unit: "K",
      min: 200,
      max: 450,
      says: "Temperature of the gas at the start",
      symbol: "T",
    },
    temperatureChange: {
      unit: "K",
      min: -100,
      max: 100,
      says: "Change of temperature",
      symbol: "\\Delta T",
    },
  },
  output: {
    name: "change",
    unit: "Pa",
    min: -2.5e6,
    max: 2.5e6,
    says: "Apparent change of pressure",
    symbol: "\\Delta p",
  },
  formula: "pressure * temperatureChange / temperature",
  source: "Ideal gas law",
  compute: ({ pressure, temperature, temperatureChange }) =>
    pressure * temperatureChange / temperature,
});

/**
 * Fall of pressure [Pa] that a leak makes in a time, while it is small against
 * the pressure.
 *
 * Source: definition of the leak rate q = V dp/dt.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const fall_Pa = expectedFall({ leak: 1e-3, duration: 600, volume: 1e-3 });
 *
 * assertAlmostEquals(fall_Pa, 600, 1e-9);
 * ```
 */
export const expectedFall: Method<
  Record<"leak" | "duration" | "volume", MethodInput>
> = method({
  id: "expected-fall",
  title: "Fall of pressure that a leak makes",
  inputs: { leak: LEAK, duration: DURATION, volume: VOLUME },
  output: {
    name: "fall",
    unit: "Pa",
    min: 0,
    max: 1e14,
    says: "Fall of pressure",
    symbol: "\\Delta p",
  },
  formula: "leak * duration / volume",
  source: "Definition of the leak rate, q = V dp/dt",
  compute: ({ leak, duration, volume }) => leak * duration / volume,
});

/**
 * Smallest leak [Pa m^3/s] that a gauge can show in a time.
 *
 * Source: definition of the leak rate q = V dp/dt; the number of steps is ours.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_Pa_m3_s = smallestLeakSeen({
 *   steps: 3,
 *   resolution: 1000,
 *   volume: 1e-4,
 *   duration: 600,
 * });
 *
 * assertAlmostEquals(leak_Pa_m3_s, 5e-4, 1e-12);
 * ```
 */
export const smallestLeakSeen: Method<
  Record<"steps" | "resolution" | "volume" | "duration", MethodInput>
> = method({
  id: "smallest-leak-seen",
  title: "Smallest leak that the gauge can show",
  inputs: { steps: STEPS, resolution: RESOLUTION, volume: VOLUME, duration: DURATION },
  output: {
    name: "leak",
    unit: "Pa m^3/s",
    min: 0,
    max: 4e5,
    says: "Smallest leak seen",
    symbol: "q",
  },
  formula: "steps * resolution * volume / duration",
  source: "Definition of the leak rate, q = V dp/dt",
  compute: ({ steps, resolution, volume, duration }) => steps * resolution * volume / duration,
});

/**
 * Time [s] that a gauge needs to show a leak.
 *
 * Source: definition of the leak rate q = V dp/dt; the number of steps is ours.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const time_s = timeToSee({ steps: 3, resolution: 1000, volume: 1e-4, leak: 5e-4 });
 *
 * assertAlmostEquals(time_s, 600, 1e-9);
 * ```
 */
export const timeToSee: Method<
  Record<"steps" | "resolution" | "volume" | "leak", MethodInput>
> = method({
  id: "time-to-see",
  title: "Time that the gauge needs to show a leak",
  inputs: { steps: STEPS, resolution: RESOLUTION, volume: VOLUME, leak: LEAK },
  output: { name: "time", unit: "s", min: 0, max: 1e20, says: "Time needed", symbol: "t" },
  formula: "steps * resolution * volume / leak",
  source: "Definition of the leak rate, q = V dp/dt",
  compute: ({ steps, resolution, volume, leak }) => steps * resolution * volume / leak,
});
