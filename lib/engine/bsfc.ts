/** Fuel burnt for the work done. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BSFC, FUEL_FLOW, HEATING_VALUE, POWER } from "./limits.ts";

/**
 * Fuel flow [kg/s] from power and BSFC.
 *
 * Source: definition of brake specific fuel consumption, SAE J1349 and ISO 1585 terms.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 300 kW at 300 g/kWh
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(fuelByPower({ power: 300_000, bsfc: 0.3 / 3.6e6 }), 0.025, 1e-12);
 * ```
 */
export const fuelByPower: Method<Record<"power" | "bsfc", MethodInput>> = method({
  id: "fuel-by-power",
  title: "Fuel flow from power and BSFC",
  inputs: { power: POWER, bsfc: BSFC },
  output: {
    name: "fuelFlow",
    unit: "kg/s",
    min: 0,
    max: 2.5,
    says: "Fuel flow",
    symbol: "\\dot m_f",
  },
  formula: "power * bsfc",
  source: "Definition of brake specific fuel consumption",
  compute: ({ power, bsfc }) => power * bsfc,
});

/**
 * BSFC [kg/J] that a power and a fuel flow imply.
 *
 * Source: definition of brake specific fuel consumption.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(impliedBsfc({ fuelFlow: 0.025, power: 300_000 }) * 3.6e9, 300, 1e-9);
 * ```
 */
export const impliedBsfc: Method<Record<"fuelFlow" | "power", MethodInput>> = method({
  id: "implied-bsfc",
  title: "BSFC that power and fuel flow imply",
  inputs: { fuelFlow: FUEL_FLOW, power: POWER },
  output: { name: "bsfc", unit: "kg/J", min: 0, max: 4e-3, says: "BSFC", symbol: "b" },
  formula: "fuelFlow / power",
  source: "Definition of brake specific fuel consumption",
  compute: ({ fuelFlow, power }) => fuelFlow / power,
});

/**
 * Lowest BSFC [kg/J] that nature allows: all heat turned into work.
 *
 * Source: conservation of energy.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example Petrol
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(bsfcFloor({ lowerHeatingValue: 43e6 }) * 3.6e9, 83.7, 0.05); // g/kWh
 * ```
 */
export const bsfcFloor: Method<Record<"lowerHeatingValue", MethodInput>> = method({
  id: "bsfc-floor",
  title: "Lowest BSFC that the fuel's heat allows",
  inputs: { lowerHeatingValue: HEATING_VALUE },
  output: {
    name: "floor",
    unit: "kg/J",
    min: 0,
    max: 1e-7,
    says: "BSFC of an engine that wasted nothing",
    symbol: "b_0",
  },
  formula: "1 / lowerHeatingValue",
  source: "Conservation of energy",
  compute: ({ lowerHeatingValue }) => 1 / lowerHeatingValue,
});

/**
 * BSFC [kg/J] at an overall efficiency.
 *
 * Source: conservation of energy.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const bsfc_kg_J = bsfcAtEfficiency({ efficiency: 0.35, lowerHeatingValue: 43e6 });
 *
 * assertAlmostEquals(bsfc_kg_J * 3.6e9, 239.2, 0.01); // g/kWh
 * ```
 */
export const bsfcAtEfficiency: Method<Record<"efficiency" | "lowerHeatingValue", MethodInput>> =
  method({
    id: "bsfc-at-efficiency",
    title: "BSFC at an overall efficiency",
    inputs: {
      efficiency: {
        unit: "-",
        min: 0.05,
        max: 1,
        says: "Share of the fuel's heat that reaches the crankshaft",
        symbol: "\\eta",
      },
      lowerHeatingValue: HEATING_VALUE,
    },
    output: { name: "bsfc", unit: "kg/J", min: 0, max: 2e-6, says: "BSFC", symbol: "b" },
    formula: "1 / (efficiency * lowerHeatingValue)",
    source: "Conservation of energy",
    compute: ({ efficiency, lowerHeatingValue }) => 1 / (efficiency * lowerHeatingValue),
  });

/**
 * BSFC [kg/J] on another fuel at equal efficiency. Richer running on alcohol adds to it.
 *
 * Source: conservation of energy.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example From petrol to ethanol
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const bsfc_kg_J = bsfcAtEqualEfficiency({
 *   bsfc: 0.3 / 3.6e6,
 *   lowerHeatingValue: 43e6,
 *   newLowerHeatingValue: 26.8e6,
 * });
 *
 * assertAlmostEquals(bsfc_kg_J * 3.6e9, 481.3, 0.1); // g/kWh
 * ```
 */
export const bsfcAtEqualEfficiency: Method<
  Record<"bsfc" | "lowerHeatingValue" | "newLowerHeatingValue", MethodInput>
> = method({
  id: "bsfc-at-equal-efficiency",
  title: "BSFC on another fuel at equal efficiency",
  inputs: {
    bsfc: BSFC,
    lowerHeatingValue: { ...HEATING_VALUE, symbol: "H_1" },
    newLowerHeatingValue: {
      ...HEATING_VALUE,
      says: "Lower heating value of the other fuel",
      symbol: "H_2",
    },
  },
  output: { name: "newBsfc", unit: "kg/J", min: 0, max: 4e-6, says: "BSFC", symbol: "b_2" },
  formula: "bsfc * lowerHeatingValue / newLowerHeatingValue",
  source: "Conservation of energy",
  compute: ({ bsfc, lowerHeatingValue, newLowerHeatingValue }) =>
    bsfc * lowerHeatingValue / newLowerHeatingValue,
});
