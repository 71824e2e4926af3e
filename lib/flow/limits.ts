/** Inputs that many methods of flow share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Density of a liquid: fuels and, for checks against textbooks, water. */
export const DENSITY: MethodInput = {
  unit: "kg/m^3",
  min: 500,
  max: 1100,
  says: "Density of the liquid",
  symbol: "\\rho",
};

/** Dynamic viscosity, from hot petrol to thin oil. */
export const VISCOSITY: MethodInput = {
  unit: "Pa s",
  min: 1e-5,
  max: 0.1,
  says: "Dynamic viscosity of the liquid",
  symbol: "\\mu",
};

/** Bore of a pipe, hose or gallery. */
export const BORE: MethodInput = {
  unit: "m",
  min: 5e-4,
  max: 0.3,
  says: "Inner diameter of the pipe",
  symbol: "d",
};

/** Mean velocity in a pipe. */
export const VELOCITY: MethodInput = {
  unit: "m/s",
  min: 0,
  max: 1000,
  says: "Mean velocity in the pipe",
  symbol: "V",
};

/** Volume flow. */
export const FLOW: MethodInput = {
  unit: "m^3/s",
  min: 0,
  max: 0.1,
  says: "Volume flow",
  symbol: "Q",
};

/** Mass flow. */
export const MASS_FLOW: MethodInput = {
  unit: "kg/s",
  min: 0,
  max: 100,
  says: "Mass flow",
  symbol: "\\dot m",
};

/** Pressure difference across an opening. */
export const DIFFERENTIAL: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 5e6,
  says: "Pressure before the opening less pressure after it",
  symbol: "\\Delta p",
};

/** Darcy friction factor. */
export const FRICTION_FACTOR: MethodInput = {
  unit: "-",
  min: 0.004,
  max: 1e5,
  says: "Darcy friction factor, four times the Fanning one",
  symbol: "f",
};

/** Reynolds number in a pipe. */
export const REYNOLDS: MethodInput = {
  unit: "-",
  min: 0,
  max: 1e9,
  says: "Reynolds number on the inner diameter",
  symbol: "Re",
};

/** Relative roughness of a pipe: the range of the Moody chart. */
export const RELATIVE_ROUGHNESS: MethodInput = {
  unit: "-",
  min: 0,
  max: 0.05,
  says: "Roughness of the wall over inner diameter",
  symbol: "\\varepsilon / d",
};
