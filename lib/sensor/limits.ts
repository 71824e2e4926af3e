/** Inputs that the methods of this room share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Full scale of a pressure sensor. */
export const RANGE: MethodInput = {
  unit: "Pa",
  min: 1e5,
  max: 1e8,
  says: "Pressure at which the sensor's signal ends, gauge",
  symbol: "p_\\text{FS}",
};

/** Supply of the sensor. */
export const SUPPLY: MethodInput = {
  unit: "V",
  min: 1,
  max: 30,
  says: "Supply of the sensor",
  symbol: "V_s",
};

/** Where the signal starts. */
export const LOW_SHARE: MethodInput = {
  unit: "-",
  min: 0,
  max: 0.3,
  says: "Signal at no pressure over supply; 0.5 V of 5 V is 0.1",
  symbol: "s_0",
};

/** Where the signal ends. */
export const HIGH_SHARE: MethodInput = {
  unit: "-",
  min: 0.5,
  max: 1,
  says: "Signal at full scale over supply; 4.5 V of 5 V is 0.9",
  symbol: "s_1",
};

/** Bits of a converter. */
export const BITS: MethodInput = {
  unit: "-",
  min: 8,
  max: 24,
  says: "Bits of the converter that reads the signal",
  symbol: "n",
};

/** A resistance of a temperature sensor or its pull-up. */
export const RESISTANCE: MethodInput = {
  unit: "ohm",
  min: 1,
  max: 1e7,
  says: "Resistance of the sensor",
  symbol: "R",
};

/** How steeply an NTC falls. */
export const BETA: MethodInput = {
  unit: "K",
  min: 1000,
  max: 8000,
  says: "Beta of the sensor, from its data sheet or from two points",
  symbol: "\\beta",
};
