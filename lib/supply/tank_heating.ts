/** How fast the fuel in a tank warms when it goes round and round. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { POWER } from "./limits.ts";

const TANK_MASS: MethodInput = {
  unit: "kg",
  min: 0.1,
  max: 1000,
  says: "Mass of the fuel in the tank",
  symbol: "m",
};

const HEATING: MethodInput & { readonly name: string } = {
  name: "heating",
  unit: "K/s",
  min: 0,
  max: 1e6,
  says: "Warming of the tank over time",
  symbol: "\\dot T",
};

/**
 * Warming [K/s] of a tank by the pump, all of whose electrical power ends in the fuel: an upper
 * bound, as the tank gives off heat and the engine takes fuel away.
 *
 * Source: conservation of energy.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 150 W into 20 kg of petrol: 13 K an hour
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const heating_K_s = tankHeatingByPump({ power: 150, mass: 20, heatCapacity: 2100 });
 *
 * assertAlmostEquals(heating_K_s * 3600, 12.86, 0.01);
 * ```
 */
export const tankHeatingByPump: Method<Record<"power" | "mass" | "heatCapacity", MethodInput>> =
  method({
    id: "tank-heating-by-pump",
    title: "Warming of the tank by the pump",
    inputs: {
      power: { ...POWER, says: "Power that goes into the fuel" },
      mass: TANK_MASS,
      heatCapacity: {
        unit: "J/(kg K)",
        min: 1500,
        max: 4500,
        says: "Heat capacity of the fuel",
        symbol: "c_p",
      },
    },
    output: { ...HEATING, says: "Warming of the tank by the pump over time" },
    formula: "power / (mass * heatCapacity)",
    source: "Conservation of energy, all of the power into the fuel",
    compute: ({ power, mass, heatCapacity }) => power / (mass * heatCapacity),
  });

/**
 * Warming [K/s] of a tank by fuel that comes back warmer than it went out. Source: conservation
 * of energy, the fuel in the tank mixed.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.04 kg/s come back 5 K warmer to 20 kg: 36 K an hour
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const heating_K_s = tankHeatingByReturn({ returned: 0.04, rise: 5, mass: 20 });
 *
 * assertAlmostEquals(heating_K_s * 3600, 36, 1e-9);
 * ```
 */
export const tankHeatingByReturn: Method<Record<"returned" | "rise" | "mass", MethodInput>> =
  method({
    id: "tank-heating-by-return",
    title: "Warming of the tank by what returns",
    inputs: {
      returned: {
        unit: "kg/s",
        min: 0,
        max: 10,
        says: "Fuel that comes back to the tank",
        symbol: "\\dot m_r",
      },
      rise: {
        unit: "K",
        min: 0,
        max: 100,
        says: "How much warmer it comes back than it is in the tank",
        symbol: "\\Delta T",
      },
      mass: TANK_MASS,
    },
    output: { ...HEATING, says: "Warming of the tank by what returns over time" },
    formula: "returned * rise / mass",
    source: "Conservation of energy, the fuel in the tank mixed",
    compute: ({ returned, rise, mass }) => returned * rise / mass,
  });
