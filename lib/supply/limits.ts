/** Inputs that several methods of supply share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Flow of a pump or a need. */
export const FLOW: MethodInput = {
  unit: "m^3/s",
  min: 0,
  max: 0.1,
  says: "Flow",
  symbol: "Q",
};

/** Pressure that a pump adds. */
export const PRESSURE_RISE: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 1e7,
  says: "Pressure that the pump adds",
  symbol: "p",
};

/** Voltage at the pump. */
export const VOLTAGE: MethodInput = {
  unit: "V",
  min: 4,
  max: 30,
  says: "Voltage at the pump",
  symbol: "U",
};

/** Number of pumps. */
export const COUNT: MethodInput = {
  unit: "-",
  min: 1,
  max: 10,
  says: "Number of pumps, alike",
  symbol: "N",
};

/** Power. */
export const POWER: MethodInput = {
  unit: "W",
  min: 0,
  max: 1e6,
  says: "Power",
  symbol: "P",
};
