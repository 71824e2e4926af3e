/** Inputs that the methods of this room share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Current in the wire. */
export const CURRENT: MethodInput = {
  unit: "A",
  min: 0,
  max: 200,
  says: "Current",
  symbol: "I",
};

/** A length of wire, one way. */
export const LENGTH: MethodInput = {
  unit: "m",
  min: 0,
  max: 50,
  says: "Length of the wire to the pump",
  symbol: "L_o",
};

/** A length of wire, back. */
export const RETURN_LENGTH: MethodInput = {
  ...LENGTH,
  says: "Length of the wire back; through the body, the length of the same wire it is worth",
  symbol: "L_r",
};

/** What a metre of wire resists. */
export const RESISTANCE_PER_LENGTH: MethodInput = {
  unit: "ohm/m",
  min: 1e-4,
  max: 10,
  says: "Resistance of a metre of the wire at 20 °C",
  symbol: "R'_{20}",
};

/** How much more a warm wire resists. */
export const RATIO: MethodInput = {
  unit: "-",
  min: 0.5,
  max: 2,
  says: "Resistance of the warm wire over that at 20 °C",
  symbol: "k",
};

/** What a metre of a metal of one square metre resists. */
export const RESISTIVITY: MethodInput = {
  unit: "ohm m",
  min: 1.5e-8,
  max: 3e-8,
  says: "Resistivity of the conductor at 20 °C",
  symbol: "\\rho_{20}",
};

/** Section of the copper. */
export const AREA: MethodInput = {
  unit: "m^2",
  min: 1e-8,
  max: 5e-4,
  says: "Area of the copper",
  symbol: "A",
};

/** Resistance of out and return. */
export const LOOP: MethodInput = {
  unit: "ohm",
  min: 0,
  max: 2000,
  says: "Resistance of the wires, out and back, warm",
  symbol: "R",
};

/** Voltage lost. */
export const DROP: MethodInput = {
  unit: "V",
  min: 0,
  max: 4e5,
  says: "Voltage lost in the wires",
  symbol: "U_w",
};

/** Voltage lost at what is not wire. */
export const CONTACTS: MethodInput = {
  unit: "V",
  min: 0,
  max: 10,
  says: "Voltage lost in relay, fuse and connectors at that current",
  symbol: "U_c",
};

/** Heat of a metre of wire. */
export const HEAT_PER_LENGTH: MethodInput = {
  unit: "W/m",
  min: 0,
  max: 8e5,
  says: "Heat that a metre of the wire makes",
  symbol: "q'",
};

/** Outside of the wire. */
export const OUTSIDE: MethodInput = {
  unit: "m",
  min: 5e-4,
  max: 0.05,
  says: "Diameter over the insulation",
  symbol: "D",
};

/** How well air takes heat off. */
export const FILM: MethodInput = {
  unit: "W/(m^2 K)",
  min: 2,
  max: 100,
  says: "Heat that a square metre of the wire's outside gives off for each kelvin of warming",
  symbol: "h",
};
