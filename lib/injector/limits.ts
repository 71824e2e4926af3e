/** Inputs that several methods of injection share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Static flow of one injector. */
export const STATIC_FLOW: MethodInput = {
  unit: "m^3/s",
  min: 1e-9,
  max: 1e-2,
  says: "Flow of one injector held open, at working pressure with the fuel in use",
  symbol: "q",
};

/** Density of the fuel. */
export const FUEL_DENSITY: MethodInput = {
  unit: "kg/m^3",
  min: 500,
  max: 1100,
  says: "Density of the fuel as it is injected",
  symbol: "\\rho",
};

/** Time between two injections of one injector. */
export const INTERVAL: MethodInput = {
  unit: "s",
  min: 1e-3,
  max: 3,
  says: "Time between two injections of one injector: one engine cycle",
  symbol: "T",
};

/** Dead time of an injector. */
export const DEAD_TIME: MethodInput = {
  unit: "s",
  min: 0,
  max: 0.02,
  says: "Part of a pulse in which nothing flows: opening later than closing",
  symbol: "t_d",
};

/** Number of injectors. */
export const COUNT: MethodInput = {
  unit: "-",
  min: 1,
  max: 100,
  says: "Number of injectors in the stage",
  symbol: "N",
};

/** Fuel of one injection. */
export const FUEL_PER_INJECTION: MethodInput = {
  unit: "kg",
  min: 0,
  max: 10,
  says: "Fuel that one injector gives each time",
  symbol: "m",
};

/** Fuel of a stage or the engine. */
export const FUEL_FLOW: MethodInput = {
  unit: "kg/s",
  min: 0,
  max: 50,
  says: "Fuel that the engine burns",
  symbol: "\\dot m",
};

/** Duty, as a wish or limit. */
export const DUTY: MethodInput = {
  unit: "-",
  min: 0.05,
  max: 1,
  says: "Share of the interval that a whole pulse, dead time included, may take",
  symbol: "D",
};
