/** The same gap passing air in the test and fuel in service. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const AMBIENT: MethodInput = {
  unit: "Pa",
  min: 5e4,
  max: 1.1e5,
  says: "Pressure of the outside air, absolute",
  symbol: "p_a",
};
const AIR_GAUGE: MethodInput = {
  unit: "Pa",
  min: 1000,
  max: 3e6,
  says: "Pressure of the air in the test, gauge",
  symbol: "p_\\text{air}",
};
const AIR_VISCOSITY: MethodInput = {
  unit: "Pa s",
  min: 1e-5,
  max: 3e-5,
  says: "Viscosity of air",
  symbol: "\\mu_\\text{air}",
};
const AIR_LEAK: MethodInput = {
  unit: "Pa m^3/s",
  min: 0,
  max: 10,
  says: "Leak of air in the test",
  symbol: "q",
};
const FUEL_GAUGE: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 3e6,
  says: "Pressure of the fuel in service, gauge",
  symbol: "p_\\text{fuel}",
};
const HEAT_RATIO: MethodInput = {
  unit: "-",
  min: 1.05,
  max: 1.67,
  says: "Ratio of heat capacities of the gas; air 1.4",
  symbol: "k",
};
const PRESSURE_RATIO: MethodInput = {
  unit: "-",
  min: 0.45,
  max: 0.999,
  says: "Outside pressure over pressure inside, both absolute, but not below the critical ratio",
  symbol: "r",
};
const GAS_CONSTANT: MethodInput = {
  unit: "J/(kg K)",
  min: 100,
  max: 600,
  says: "Specific gas constant; air 287.055",
  symbol: "R_s",
};
const TEMPERATURE: MethodInput = {
  unit: "K",
  min: 200,
  max: 450,
  says: "Temperature of the air",
  symbol: "T",
};
const AIR_PRESSURE: MethodInput = {
  unit: "Pa",
  min: 5e4,
  max: 5e6,
  says: "Pressure of the air inside, absolute",
  symbol: "p_1",
};

/**
 * Leak of air [Pa m^3/s] through a fine round passage, flow laminar.
 *
 * Source: Poiseuille's law for an isothermal ideal gas.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A scratch like a 20 um tube, 5 mm long, at 4 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_Pa_m3_s = airThroughCapillary({
 *   diameter: 20e-6,
 *   length: 5e-3,
 *   gauge: 4e5,
 *   ambient: 101325,
 *   viscosity: 1.813e-5,
 * });
 *
 * assertAlmostEquals(leak_Pa_m3_s, 5.22e-3, 1e-5);
 * ```
 */
export const airThroughCapillary: Method<
  Record<"diameter" | "length" | "gauge" | "ambient" | "viscosity", MethodInput>
> = method({
  id: "air-through-capillary",
  title: "Leak of air through a fine passage",
  inputs: {
    diameter: { unit: "m", min: 1e-7, max: 2e-4, says: "Diameter of the passage", symbol: "d" },
    length: { unit: "m", min: 1e-4, max: 0.1, says: "Length of the passage", symbol: "L" },
    gauge: AIR_GAUGE,
    ambient: AMBIENT,
    viscosity: AIR_VISCOSITY,
  },
  output: { name: "leak", unit: "Pa m^3/s", min: 0, max: 1e6, says: "Leak of air", symbol: "q" },
  formula: "pi * diameter^4 * ((ambient + gauge)^2 - ambient^2) / (256 * viscosity * length)",
  source: "Poiseuille's law for an isothermal ideal gas",
  compute: ({ diameter, length, gauge, ambient, viscosity }) =>
    Math.PI * diameter ** 4 * gauge * (gauge + 2 * ambient) / (256 * viscosity * length),
});

/**
 * Leak of air [Pa m^3/s] at another pressure through the same fine passage.
 *
 * Source: Poiseuille's law for an isothermal ideal gas, twice.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example At 0.5 bar a joint passes far less than at 4 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_Pa_m3_s = leakAtPressure({ leak: 1e-5, at: 4e5, gauge: 5e4, ambient: 101325 });
 *
 * assertAlmostEquals(leak_Pa_m3_s, 5.24e-7, 1e-9);
 * ```
 */
export const leakAtPressure: Method<
  Record<"leak" | "at" | "gauge" | "ambient", MethodInput>
> = method({
  id: "leak-at-pressure",
  title: "Leak of air at another pressure",
  inputs: {
    leak: { ...AIR_LEAK, says: "Leak of air where it is known" },
    at: { ...AIR_GAUGE, says: "Pressure at which it is known, gauge", symbol: "p_1" },
    gauge: { ...AIR_GAUGE, says: "Pressure at which it is wanted, gauge", symbol: "p_2" },
    ambient: AMBIENT,
  },
  output: { name: "scaled", unit: "Pa m^3/s", min: 0, max: 1e9, says: "Leak there", symbol: "q_2" },
  formula: "leak * ((ambient + gauge)^2 - ambient^2) / ((ambient + at)^2 - ambient^2)",
  source: "Poiseuille's law for an isothermal ideal gas",
  compute: ({ leak, at, gauge, ambient }) =>
    leak * gauge * (gauge + 2 * ambient) / (at * (at + 2 * ambient)),
});

/**
 * Leak of fuel [m^3/s] at service pressure through a fine passage that leaked
 * air in the test. An upper estimate: surface tension closes the finest ways.
 *
 * Source: Poiseuille's law for an isothermal ideal gas and for a liquid.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1e-4 mbar L/s of air at 5 bar is some 0.09 mL of fuel a day
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_m3_s = fuelThroughCapillary({
 *   airLeak: 1e-5,
 *   airGauge: 5e5,
 *   fuelGauge: 5e5,
 *   ambient: 101325,
 *   airViscosity: 1.82e-5,
 *   fuelViscosity: 5e-4,
 * });
 *
 * assertAlmostEquals(leak_m3_s * 86_400e6, 0.09, 0.001);
 * ```
 */
export const fuelThroughCapillary: Method<
  Record<
    "airLeak" | "airGauge" | "fuelGauge" | "ambient" | "airViscosity" | "fuelViscosity",
    MethodInput
  >
> = method({
  id: "fuel-through-capillary",
  title: "Leak of fuel through the fine passage that leaked air",
  inputs: {
    airLeak: AIR_LEAK,
    airGauge: AIR_GAUGE,
    fuelGauge: FUEL_GAUGE,
    ambient: AMBIENT,
    airViscosity: AIR_VISCOSITY,
    fuelViscosity: {
      unit: "Pa s",
      min: 1e-4,
      max: 5e-3,
      says: "Viscosity of the fuel",
      symbol: "\\mu_\\text{fuel}",
    },
  },
  output: {
    name: "fuelLeak",
    unit: "m^3/s",
    min: 0,
    max: 1,
    says: "Leak of fuel",
    symbol: "Q",
  },
  formula: "airLeak * airViscosity / fuelViscosity" +
    " * 2 * fuelGauge / ((ambient + airGauge)^2 - ambient^2)",
  source: "Poiseuille's law for an isothermal ideal gas and for a liquid",
  compute: ({ airLeak, airGauge, fuelGauge, ambient, airViscosity, fuelViscosity }) =>
    airLeak * airViscosity / fuelViscosity * 2 * fuelGauge / (airGauge * (airGauge + 2 * ambient)),
});

/**
 * Pressure ratio [-] below which gas leaves a hole at the speed of sound.
 *
 * Source: isentropic flow of an ideal gas.
 *
 * @throws {InputError} When the ratio lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(criticalRatio({ heatRatio: 1.4 }), 0.5283, 1e-4);
 * ```
 */
export const criticalRatio: Method<Record<"heatRatio", MethodInput>> = method({
  id: "critical-ratio",
  title: "Critical pressure ratio of a gas",
  inputs: { heatRatio: HEAT_RATIO },
  output: {
    name: "ratio",
    unit: "-",
    min: 0.45,
    max: 0.65,
    says: "Critical pressure ratio",
    symbol: "r^*",
  },
  formula: "(2 / (heatRatio + 1))^(heatRatio / (heatRatio - 1))",
  source: "Isentropic flow of an ideal gas; NACA Report 1135 (1953)",
  compute: ({ heatRatio }) => (2 / (heatRatio + 1)) ** (heatRatio / (heatRatio - 1)),
});

/**
 * Mass flow of air [kg/s] out of a small hole. At the critical ratio it is choked.
 *
 * Source: isentropic flow of an ideal gas.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A 0.1 mm hole at 4 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_kg_s = airThroughHole({
 *   dischargeCoefficient: 0.7,
 *   diameter: 1e-4,
 *   pressure: 501_325,
 *   ratio: criticalRatio({ heatRatio: 1.4 }),
 *   heatRatio: 1.4,
 *   gasConstant: 287.055,
 *   temperature: 293.15,
 * });
 *
 * assertAlmostEquals(flow_kg_s, 6.5e-6, 1e-8);
 * ```
 */
export const airThroughHole: Method<
  Record<
    | "dischargeCoefficient"
    | "diameter"
    | "pressure"
    | "ratio"
    | "heatRatio"
    | "gasConstant"
    | "temperature",
    MethodInput
  >
> = method({
  id: "air-through-hole",
  title: "Mass flow of air through a small hole",
  inputs: {
    dischargeCoefficient: {
      unit: "-",
      min: 0.4,
      max: 1,
      says: "Discharge coefficient; sharp edge 0.61 below, 0.84 at the speed of sound",
      symbol: "C_d",
    },
    diameter: { unit: "m", min: 1e-6, max: 5e-3, says: "Diameter of the hole", symbol: "d" },
    pressure: AIR_PRESSURE,
    ratio: PRESSURE_RATIO,
    heatRatio: HEAT_RATIO,
    gasConstant: GAS_CONSTANT,
    temperature: TEMPERATURE,
  },
  output: {
    name: "flow",
    unit: "kg/s",
    min: 0,
    max: 1,
    says: "Mass flow of air",
    symbol: "\\dot m",
  },
  formula: "dischargeCoefficient * pi / 4 * diameter^2 * pressure" +
    " * sqrt(2 * heatRatio / ((heatRatio - 1) * gasConstant * temperature)" +
    " * (ratio^(2 / heatRatio) - ratio^((heatRatio + 1) / heatRatio)))",
  source: "Isentropic flow of an ideal gas; NACA Report 1135 (1953)",
  compute: (i) =>
    i.dischargeCoefficient * Math.PI / 4 * i.diameter ** 2 * i.pressure *
    velocityFactor(i.ratio, i.heatRatio, i.gasConstant, i.temperature),
});

/**
 * Leak of fuel [m^3/s] at service pressure through a small hole that leaked
 * air in the test, with the same discharge coefficient for both (within 25 %).
 *
 * Source: isentropic flow of an ideal gas; Torricelli.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_m3_s = fuelThroughHole({
 *   airFlow: 6.506e-6,
 *   pressure: 501_325,
 *   ratio: criticalRatio({ heatRatio: 1.4 }),
 *   heatRatio: 1.4,
 *   gasConstant: 287.055,
 *   temperature: 293.15,
 *   fuelGauge: 3e5,
 *   density: 745,
 * });
 *
 * assertAlmostEquals(leak_m3_s, 1.56e-7, 1e-9);
 * ```
 */
export const fuelThroughHole: Method<
  Record<
    | "airFlow"
    | "pressure"
    | "ratio"
    | "heatRatio"
    | "gasConstant"
    | "temperature"
    | "fuelGauge"
    | "density",
    MethodInput
  >
> = method({
  id: "fuel-through-hole",
  title: "Leak of fuel through the small hole that leaked air",
  inputs: {
    airFlow: {
      unit: "kg/s",
      min: 0,
      max: 1,
      says: "Mass flow of air in the test",
      symbol: "\\dot m",
    },
    pressure: AIR_PRESSURE,
    ratio: PRESSURE_RATIO,
    heatRatio: HEAT_RATIO,
    gasConstant: GAS_CONSTANT,
    temperature: TEMPERATURE,
    fuelGauge: FUEL_GAUGE,
    density: {
      unit: "kg/m^3",
      min: 600,
      max: 1100,
      says: "Density of the fuel",
      symbol: "\\rho",
    },
  },
  output: {
    name: "fuelLeak",
    unit: "m^3/s",
    min: 0,
    max: 10,
    says: "Leak of fuel",
    symbol: "Q",
  },
  formula: "airFlow * sqrt(2 * fuelGauge / density) / (pressure" +
    " * sqrt(2 * heatRatio / ((heatRatio - 1) * gasConstant * temperature)" +
    " * (ratio^(2 / heatRatio) - ratio^((heatRatio + 1) / heatRatio))))",
  source: "Isentropic flow of an ideal gas, NACA Report 1135 (1953); Torricelli",
  compute: (i) =>
    i.airFlow * Math.sqrt(2 * i.fuelGauge / i.density) /
    (i.pressure * velocityFactor(i.ratio, i.heatRatio, i.gasConstant, i.temperature)),
});

/** Mass flow per area and pressure [s/m] of isentropic flow. */
function velocityFactor(
  ratio: number,
  heatRatio: number,
  gasConstant: number,
  temperature: number,
): number {
  const falls = ratio ** (2 / heatRatio) - ratio ** ((heatRatio + 1) / heatRatio);
  return Math.sqrt(2 * heatRatio / ((heatRatio - 1) * gasConstant * temperature) * falls);
}
