/** Inputs that many methods of fuels share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Temperature of the fuel: shop in winter to the hottest rail. */
export const TEMPERATURE: MethodInput = {
  unit: "K",
  min: 263.15,
  max: 333.15,
  says: "Temperature of the liquid",
  symbol: "T",
};

/** Density of a liquid. */
export const DENSITY: MethodInput = {
  unit: "kg/m^3",
  min: 550,
  max: 1100,
  says: "Density of the liquid",
  symbol: "\\rho",
};

/** Density of petrol at 15 °C: pump petrol and what is raced. */
export const DENSITY_15: MethodInput = {
  unit: "kg/m^3",
  min: 653,
  max: 800,
  says: "Density of the petrol at 15 °C",
  symbol: "\\rho_{15}",
};

/** Dynamic viscosity. */
export const VISCOSITY: MethodInput = {
  unit: "Pa s",
  min: 5e-5,
  max: 0.02,
  says: "Dynamic viscosity of the liquid",
  symbol: "\\mu",
};

/** Kinematic viscosity. */
export const KINEMATIC: MethodInput = {
  unit: "m^2/s",
  min: 5e-8,
  max: 2e-5,
  says: "Kinematic viscosity of the liquid",
  symbol: "\\nu",
};

/** Speed of sound in a liquid. */
export const SOUND_SPEED: MethodInput = {
  unit: "m/s",
  min: 700,
  max: 1800,
  says: "Speed of sound in the liquid",
  symbol: "c",
};

/** Bulk modulus of a liquid. */
export const BULK_MODULUS: MethodInput = {
  unit: "Pa",
  min: 3e8,
  max: 3e9,
  says: "Bulk modulus of the liquid",
  symbol: "K",
};

/** Vapour pressure. */
export const VAPOUR_PRESSURE: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 4e5,
  says: "Vapour pressure, absolute",
  symbol: "p_v",
};

/** Share of ethanol by volume. */
export const VOLUME_SHARE: MethodInput = {
  unit: "-",
  min: 0,
  max: 1,
  says: "Share of ethanol by volume",
  symbol: "\\varphi",
};

/** Share of ethanol by mass. */
export const MASS_SHARE: MethodInput = {
  unit: "-",
  min: 0,
  max: 1,
  says: "Share of ethanol by mass",
  symbol: "w",
};
