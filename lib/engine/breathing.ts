/** What the engine breathes and what it burns with it. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import {
  AIR_FLOW,
  AIR_PRESSURE,
  COMPRESSION_RATIO,
  DISPLACEMENT,
  HEAT_RATIO,
  POWER,
  SPEED,
  TURNS,
} from "./limits.ts";

/**
 * Air flow of an engine [kg/s].
 *
 * Source: definition of the filling (volumetric efficiency, referred to the manifold);
 * J. B. Heywood (1988), section 2.10. For a rotary the shaft turns once a filling.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A two-litre four-stroke at 6500 rpm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const air_kg_s = airFlow({
 *   filling: 0.95,
 *   density: 1.168423,
 *   displacement: 0.002,
 *   speed: 6500 / 60,
 *   turns: 2,
 * });
 *
 * assertAlmostEquals(air_kg_s, 0.12025, 1e-5);
 * ```
 */
export const airFlow: Method<
  Record<"filling" | "density" | "displacement" | "speed" | "turns", MethodInput>
> = method({
  id: "air-flow",
  title: "Air flow of the engine",
  inputs: {
    filling: {
      unit: "-",
      min: 0.05,
      max: 2,
      says: "Air taken in over what the swept volume holds at manifold pressure and temperature",
      symbol: "\\eta_v",
    },
    density: {
      unit: "kg/m^3",
      min: 0.02,
      max: 15,
      says: "Density of the air in the manifold",
      symbol: "\\rho",
    },
    displacement: DISPLACEMENT,
    speed: SPEED,
    turns: TURNS,
  },
  output: {
    name: "airFlow",
    unit: "kg/s",
    min: 0,
    max: 20,
    says: "Air flow",
    symbol: "\\dot m_a",
  },
  formula: "filling * density * displacement * speed / turns",
  source: "Definition of volumetric efficiency; J. B. Heywood (1988), 2.10",
  compute: ({ filling, density, displacement, speed, turns }) =>
    filling * density * displacement * speed / turns,
});

/**
 * Fuel flow [kg/s] that an air flow burns with.
 *
 * Source: definition of lambda.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const fuel_kg_s = fuelByAir({ airFlow: 0.12025, lambda: 0.88, stoichiometricRatio: 14.6 });
 *
 * assertAlmostEquals(fuel_kg_s, 0.00936, 1e-5);
 * ```
 */
export const fuelByAir: Method<
  Record<"airFlow" | "lambda" | "stoichiometricRatio", MethodInput>
> = method({
  id: "fuel-by-air",
  title: "Fuel flow from air flow",
  inputs: {
    airFlow: AIR_FLOW,
    lambda: {
      unit: "-",
      min: 0.5,
      max: 1.6,
      says: "Air over the air that burns all fuel; below 1 rich",
      symbol: "\\lambda",
    },
    stoichiometricRatio: {
      unit: "-",
      min: 5,
      max: 16,
      says: "Mass of air that burns one of fuel",
      symbol: "L_\\text{st}",
    },
  },
  output: {
    name: "fuelFlow",
    unit: "kg/s",
    min: 0,
    max: 8,
    says: "Fuel flow",
    symbol: "\\dot m_f",
  },
  formula: "airFlow / (lambda * stoichiometricRatio)",
  source: "Definition of lambda",
  compute: ({ airFlow, lambda, stoichiometricRatio }) => airFlow / (lambda * stoichiometricRatio),
});

/**
 * How far the air route lies above the power route [-]; negative when below.
 *
 * Source: definition of a relative difference.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(routeDifference({ byAir: 0.011, byPower: 0.01 }), 0.1, 1e-12);
 * ```
 */
export const routeDifference: Method<Record<"byAir" | "byPower", MethodInput>> = method({
  id: "route-difference",
  title: "Difference between the two routes to the fuel need",
  inputs: {
    byAir: {
      unit: "kg/s",
      min: 1e-7,
      max: 8,
      says: "Fuel flow from air flow",
      symbol: "\\dot m_{f,a}",
    },
    byPower: {
      unit: "kg/s",
      min: 1e-6,
      max: 2.5,
      says: "Fuel flow from power and BSFC",
      symbol: "\\dot m_{f,P}",
    },
  },
  output: {
    name: "difference",
    unit: "-",
    min: -1,
    max: 1e7,
    says: "How far the air route lies above the power route",
    symbol: "\\delta",
  },
  formula: "byAir / byPower - 1",
  source: "Definition of a relative difference",
  compute: ({ byAir, byPower }) => byAir / byPower - 1,
});

/**
 * Air for the work done [kg/J].
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const kg_J = airPerWork({ airFlow: 0.3173717, power: 330_000 });
 *
 * assertAlmostEquals(kg_J * 3.6e6, 3.462, 1e-3); // kg/kWh
 * ```
 */
export const airPerWork: Method<Record<"airFlow" | "power", MethodInput>> = method({
  id: "air-per-work",
  title: "Air for the work done",
  inputs: { airFlow: AIR_FLOW, power: POWER },
  output: {
    name: "airPerWork",
    unit: "kg/J",
    min: 0,
    max: 0.05,
    says: "Air for the work",
    symbol: "a",
  },
  formula: "airFlow / power",
  source: "Definition",
  compute: ({ airFlow, power }) => airFlow / power,
});

/**
 * Filling [-] of an ideal throttled engine: burnt gas left in the clearance takes up
 * room once it has expanded to manifold pressure.
 *
 * Source: J. B. Heywood (1988), section 6.2, the ideal cycle, from memory; it follows from
 * the energy balance of the intake stroke.
 *
 * @throws {InputError} When a number lies outside its range, or nothing would be taken in.
 *
 * @example Idle
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const filling = idealFilling({
 *   manifold: 35_000,
 *   exhaust: 101_325,
 *   compressionRatio: 10,
 *   heatRatio: 1.35,
 * });
 *
 * assertAlmostEquals(filling, 0.844, 1e-3);
 * ```
 */
export const idealFilling: Method<
  Record<"manifold" | "exhaust" | "compressionRatio" | "heatRatio", MethodInput>
> = method({
  id: "ideal-filling",
  title: "Filling of an ideal throttled engine",
  inputs: {
    manifold: {
      ...AIR_PRESSURE,
      says: "Pressure in the manifold, absolute",
      symbol: "p_m",
    },
    exhaust: {
      ...AIR_PRESSURE,
      min: 4e4,
      max: 5e5,
      says: "Pressure in the exhaust, absolute",
      symbol: "p_x",
    },
    compressionRatio: COMPRESSION_RATIO,
    heatRatio: HEAT_RATIO,
  },
  output: {
    name: "filling",
    unit: "-",
    min: 0,
    max: 2,
    open: true,
    says: "Air taken in over what the swept volume holds at manifold pressure and temperature",
    symbol: "\\eta_v",
  },
  formula:
    "compressionRatio / (compressionRatio - 1) - (exhaust / manifold + heatRatio - 1) / (heatRatio * (compressionRatio - 1))",
  source:
    "Ideal cycle, J. B. Heywood (1988), 6.2, from memory; energy balance of the intake stroke",
  compute: ({ manifold, exhaust, compressionRatio, heatRatio }) =>
    compressionRatio / (compressionRatio - 1) -
    (exhaust / manifold + heatRatio - 1) / (heatRatio * (compressionRatio - 1)),
});
