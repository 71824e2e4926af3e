/** What a pump does to the fuel, what it draws, and how it warms the fuel. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";
import { FLOW, POWER, PRESSURE_RISE, VOLTAGE } from "./limits.ts";

/** Power into the fuel over electrical power, where a pump's own is not known [-]. Assumed. */
export const ASSUMED_PUMP_EFFICIENCY = 0.3;

/**
 * Power [W] that a pump gives to the fuel. Source: work of a flow against a pressure.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 200 L/h at 4 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(hydraulicPower({ flow: 0.2 / 3600, pressureRise: 4e5 }), 22.22, 0.01);
 * ```
 */
export const hydraulicPower: Method<Record<"flow" | "pressureRise", MethodInput>> = method({
  id: "hydraulic-power",
  title: "Power that a pump gives to the fuel",
  inputs: { flow: FLOW, pressureRise: PRESSURE_RISE },
  output: { ...POWER, name: "hydraulicPower", symbol: "P_h" },
  formula: "flow * pressureRise",
  source: "Work of a flow against a pressure",
  compute: ({ flow, pressureRise }) => flow * pressureRise,
});

/**
 * Electrical power [W] that a pump draws. Source: definition of overall efficiency.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(electricalPower({ hydraulicPower: 21, efficiency: 0.3 }), 70, 1e-9);
 * ```
 */
export const electricalPower: Method<Record<"hydraulicPower" | "efficiency", MethodInput>> = method(
  {
    id: "electrical-power",
    title: "Electrical power of a pump",
    inputs: {
      hydraulicPower: { ...POWER, says: "Power given to the fuel", symbol: "P_h" },
      efficiency: {
        unit: "-",
        min: 0.05,
        max: 1,
        says: "Overall efficiency of motor and pump",
        symbol: "\\eta",
      },
    },
    output: { ...POWER, name: "electricalPower", max: 2e7, symbol: "P_e" },
    formula: "hydraulicPower / efficiency",
    source: "Definition of overall efficiency",
    compute: ({ hydraulicPower, efficiency }) => hydraulicPower / efficiency,
  },
);

/**
 * Current [A] that a pump draws. Source: definition of electrical power.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pumpCurrent({ electricalPower: 130, voltage: 13 }), 10, 1e-9);
 * ```
 */
export const pumpCurrent: Method<Record<"electricalPower" | "voltage", MethodInput>> = method({
  id: "pump-current",
  title: "Current of a pump",
  inputs: {
    electricalPower: { ...POWER, says: "Electrical power of the pump", symbol: "P_e" },
    voltage: VOLTAGE,
  },
  output: { name: "current", unit: "A", min: 0, max: 1e6, says: "Current", symbol: "I" },
  formula: "electricalPower / voltage",
  source: "Definition of electrical power",
  compute: ({ electricalPower, voltage }) => electricalPower / voltage,
});

/**
 * Warming [K] of the fuel at each pass through an immersed pump, all of whose electrical
 * power ends in the fuel: an upper bound.
 *
 * Source: conservation of energy.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const rise_K = pumpWarming({
 *   electricalPower: 63.5,
 *   flow: 0.2 / 3600,
 *   density: 745,
 *   heatCapacity: 2100,
 * });
 *
 * assertAlmostEquals(rise_K, 0.73, 0.01);
 * ```
 */
export const pumpWarming: Method<
  Record<"electricalPower" | "flow" | "density" | "heatCapacity", MethodInput>
> = method({
  id: "pump-warming",
  title: "Warming of the fuel by a pump",
  inputs: {
    electricalPower: { ...POWER, says: "Electrical power of the pump", symbol: "P_e" },
    flow: { ...FLOW, min: 1e-8, says: "Flow through the pump" },
    density: {
      unit: "kg/m^3",
      min: 500,
      max: 1100,
      says: "Density of the fuel",
      symbol: "\\rho",
    },
    heatCapacity: {
      unit: "J/(kg K)",
      min: 1500,
      max: 4500,
      says: "Heat capacity of the fuel",
      symbol: "c_p",
    },
  },
  output: { name: "warming", unit: "K", min: 0, max: 1e9, says: "Warming at each pass" },
  formula: "electricalPower / (flow * density * heatCapacity)",
  source: "Conservation of energy, all electrical power into the fuel",
  compute: ({ electricalPower, flow, density, heatCapacity }) =>
    electricalPower / (flow * density * heatCapacity),
});

/** A pump at work. */
export interface PumpWorkSpec {
  /** Flow through it [m^3/s]. */
  readonly flow_m3_s: number;
  /** Pressure that it adds [Pa]. */
  readonly pressure_Pa: number;
  /** Voltage at it [V]. */
  readonly voltage_V: number;
  /** Overall efficiency [-]. */
  readonly efficiency: number;
  /** Density of the fuel [kg/m^3]. */
  readonly density_kg_m3: number;
  /** Heat capacity of the fuel [J/(kg K)]. */
  readonly heatCapacity_J_kg_K: number;
}

/** What {@linkcode pumpWork} finds. */
export interface PumpWork {
  /** Power given to the fuel [W]. */
  readonly hydraulicPower_W: number;
  /** Electrical power [W]. */
  readonly electricalPower_W: number;
  /** Current [A]. */
  readonly current_A: number;
  /** Warming of the fuel at each pass, at the most [K]. */
  readonly warming_K: number;
}

/**
 * Finds power, current and warming of a pump at work and records how.
 *
 * @param working The record.
 * @param section Where the results belong, like `pump`.
 * @param spec The pump at work.
 * @returns The results.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const work = pumpWork(new Working(), "pump", {
 *   flow_m3_s: 0.2 / 3600,
 *   pressure_Pa: 4e5,
 *   voltage_V: 13,
 *   efficiency: ASSUMED_PUMP_EFFICIENCY,
 *   density_kg_m3: 745,
 *   heatCapacity_J_kg_K: 2100,
 * });
 *
 * assertAlmostEquals(work.current_A, 5.70, 0.01);
 * ```
 */
export function pumpWork(working: Working, section: string, spec: PumpWorkSpec): PumpWork {
  const hydraulicPower_W = working.run(`${section}.hydraulicPower_W`, hydraulicPower, {
    flow: spec.flow_m3_s,
    pressureRise: spec.pressure_Pa,
  });
  const electricalPower_W = working.run(`${section}.electricalPower_W`, electricalPower, {
    hydraulicPower: hydraulicPower_W,
    efficiency: spec.efficiency,
  });
  const current_A = working.run(`${section}.current_A`, pumpCurrent, {
    electricalPower: electricalPower_W,
    voltage: spec.voltage_V,
  });
  const warming_K = working.run(`${section}.warming_K`, pumpWarming, {
    electricalPower: electricalPower_W,
    flow: spec.flow_m3_s,
    density: spec.density_kg_m3,
    heatCapacity: spec.heatCapacity_J_kg_K,
  });
  return { hydraulicPower_W, electricalPower_W, current_A, warming_K };
}
