/** Inputs that the methods of this room share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Power at the crankshaft. */
export const POWER: MethodInput = {
  unit: "W",
  min: 500,
  max: 2.5e6,
  says: "Power at the crankshaft",
  symbol: "P",
};

/** Brake specific fuel consumption. */
export const BSFC: MethodInput = {
  unit: "kg/J",
  min: 1e-8,
  max: 1e-6,
  says: "Fuel burnt for the work at the crankshaft",
  symbol: "b",
};

/** Lower heating value of a fuel. */
export const HEATING_VALUE: MethodInput = {
  unit: "J/kg",
  min: 1.5e7,
  max: 5e7,
  says: "Lower heating value of the fuel",
  symbol: "H",
};

/** Fuel flow of the whole engine. */
export const FUEL_FLOW: MethodInput = {
  unit: "kg/s",
  min: 1e-6,
  max: 2,
  says: "Fuel flow of the engine",
  symbol: "\\dot m_f",
};

/** Air flow of the whole engine. */
export const AIR_FLOW: MethodInput = {
  unit: "kg/s",
  min: 1e-6,
  max: 20,
  says: "Air flow of the engine",
  symbol: "\\dot m_a",
};

/** Speed of the crankshaft, of a rotary the eccentric shaft. */
export const SPEED: MethodInput = {
  unit: "1/s",
  min: 2,
  max: 500,
  says: "Speed of the crankshaft, of a rotary the eccentric shaft",
  symbol: "n",
};

/** What the engine displaces. */
export const DISPLACEMENT: MethodInput = {
  unit: "m^3",
  min: 1e-5,
  max: 0.05,
  says: "Swept volume of all cylinders; of a rotary one chamber times the rotors",
  symbol: "V_d",
};

/** Shaft turns from one filling to the next. */
export const TURNS: MethodInput = {
  unit: "-",
  min: 1,
  max: 2,
  says: "Shaft turns for one filling: four-stroke 2, two-stroke and rotary 1",
  symbol: "n_R",
};

/** Pressure of air, absolute. */
export const AIR_PRESSURE: MethodInput = {
  unit: "Pa",
  min: 5e3,
  max: 1e6,
  says: "Pressure of the air, absolute",
  symbol: "p",
};

/** Temperature of air. */
export const AIR_TEMPERATURE: MethodInput = {
  unit: "K",
  min: 220,
  max: 450,
  says: "Temperature of the air",
  symbol: "T",
};

/** Specific gas constant of air. */
export const GAS_CONSTANT: MethodInput = {
  unit: "J/(kg K)",
  min: 280,
  max: 300,
  says: "Specific gas constant; dry air 287.055",
  symbol: "R_s",
};

/** Ratio of heat capacities of the charge. */
export const HEAT_RATIO: MethodInput = {
  unit: "-",
  min: 1.1,
  max: 1.67,
  says: "Ratio of heat capacities of the gas; cold air 1.4, a burnt charge about 1.3",
  symbol: "\\gamma",
};

/** Compression ratio. */
export const COMPRESSION_RATIO: MethodInput = {
  unit: "-",
  min: 2,
  max: 25,
  says: "Compression ratio",
  symbol: "r",
};
