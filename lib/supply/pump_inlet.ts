/** How near the fuel is to boiling, at the pump's inlet or wherever it is hot. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Pressure of fuel against a vacuum. Below nought it is only reckoned: a liquid boils before.
 */
const ABSOLUTE: MethodInput = {
  unit: "Pa",
  min: -2.5e6,
  max: 2.5e7,
  says: "Pressure of the fuel, absolute",
  symbol: "p",
};

const DENSITY: MethodInput = {
  unit: "kg/m^3",
  min: 500,
  max: 1100,
  says: "Density of the fuel",
  symbol: "\\rho",
};

const GRAVITY: MethodInput = {
  unit: "m/s^2",
  min: 9.7,
  max: 9.9,
  says: "Acceleration of free fall; standard 9.80665",
  symbol: "g",
};

/**
 * Pressure [Pa, absolute] of what a gauge shows. Source: definition of gauge pressure.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3 bar on the gauge at sea level
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(absoluteFromGauge({ gauge: 300_000, ambient: 101_325 }), 401_325);
 * ```
 */
export const absoluteFromGauge: Method<Record<"gauge" | "ambient", MethodInput>> = method({
  id: "absolute-from-gauge",
  title: "Absolute pressure from gauge pressure",
  inputs: {
    gauge: { ...ABSOLUTE, min: -2e6, max: 2e7, says: "Pressure, gauge", symbol: "p_g" },
    ambient: {
      unit: "Pa",
      min: 4e4,
      max: 1.2e5,
      says: "Pressure of the outside air, absolute",
      symbol: "p_a",
    },
  },
  output: { ...ABSOLUTE, name: "pressure" },
  formula: "gauge + ambient",
  source: "Definition of gauge pressure",
  compute: ({ gauge, ambient }) => gauge + ambient,
});

/**
 * Pressure [Pa, absolute] of the fuel at the pump's inlet. A result below nought says that the
 * pump can't draw so much: the fuel boils before.
 *
 * With losses of total pressure it is the total pressure, from which suction head is counted; the
 * inlet's own wall sees a velocity head less, 0.8 kPa at 1.5 m/s.
 *
 * Source: energy equation between the fuel's surface in the tank and the inlet.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A vented tank with 0.2 m of fuel above the inlet, 3 kPa lost in sock and hose
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { STANDARD_GRAVITY_m_s2 } from "./pump_margin.ts";
 *
 * const pressure_Pa = inletPressure({
 *   tankPressure: 101_325,
 *   density: 745,
 *   gravity: STANDARD_GRAVITY_m_s2,
 *   head: 0.2,
 *   losses: 3000,
 * });
 *
 * assertAlmostEquals(pressure_Pa, 99_786, 1);
 * ```
 */
export const inletPressure: Method<
  Record<"tankPressure" | "density" | "gravity" | "head" | "losses", MethodInput>
> = method({
  id: "inlet-pressure",
  title: "Pressure at the pump's inlet",
  inputs: {
    tankPressure: {
      unit: "Pa",
      min: 4e4,
      max: 2e5,
      says: "Pressure on the fuel in the tank, absolute",
      symbol: "p_t",
    },
    density: DENSITY,
    gravity: GRAVITY,
    head: {
      unit: "m",
      min: -10,
      max: 10,
      says: "Height of the fuel in the tank above the inlet; negative below it",
      symbol: "h",
    },
    losses: {
      unit: "Pa",
      min: 0,
      max: 2e6,
      says: "Pressure lost on the suction side",
      symbol: "\\Delta p",
    },
  },
  output: { ...ABSOLUTE, name: "pressure", says: "Pressure at the pump's inlet, absolute" },
  formula: "tankPressure + density * gravity * head - losses",
  source: "Energy equation between the fuel's surface in the tank and the inlet",
  compute: ({ tankPressure, density, gravity, head, losses }) =>
    tankPressure + density * gravity * head - losses,
});

/**
 * Margin [Pa] against boiling: the fuel's absolute pressure less its vapour pressure. Negative
 * when it boils. Holds at the pump's inlet as in a rail at hot soak.
 *
 * Source: a liquid boils where its vapour pressure reaches the pressure on it.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(vapourMargin({ pressure: 99_800, vapourPressure: 79_800 }), 20_000);
 * ```
 */
export const vapourMargin: Method<Record<"pressure" | "vapourPressure", MethodInput>> = method({
  id: "vapour-margin",
  title: "Margin against boiling",
  inputs: {
    pressure: ABSOLUTE,
    vapourPressure: {
      unit: "Pa",
      min: 0,
      max: 2e7,
      says: "Vapour pressure of the fuel, absolute",
      symbol: "p_v",
    },
  },
  output: {
    name: "margin",
    unit: "Pa",
    min: -2.5e7,
    max: 2.5e7,
    says: "Margin against boiling",
    symbol: "M_v",
  },
  formula: "pressure - vapourPressure",
  source: "A liquid boils where its vapour pressure reaches the pressure on it",
  compute: ({ pressure, vapourPressure }) => pressure - vapourPressure,
});

/**
 * Net positive suction head [m] that a pump is offered: the margin against boiling, as a height
 * of fuel.
 *
 * Source: definition, as in ISO 17769-1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(suctionHead({ margin: 20_000, density: 745, gravity: 9.80665 }), 2.74, 0.01);
 * ```
 */
export const suctionHead: Method<Record<"margin" | "density" | "gravity", MethodInput>> = method({
  id: "suction-head",
  title: "Net positive suction head",
  inputs: {
    margin: {
      unit: "Pa",
      min: -2.5e7,
      max: 2.5e7,
      says: "Margin against boiling at the inlet",
      symbol: "M_v",
    },
    density: DENSITY,
    gravity: GRAVITY,
  },
  output: {
    name: "suctionHead",
    unit: "m",
    min: -6e3,
    max: 6e3,
    says: "Net positive suction head",
    symbol: "\\text{NPSH}",
  },
  formula: "margin / (density * gravity)",
  source: "Definition, as in ISO 17769-1",
  compute: ({ margin, density, gravity }) => margin / (density * gravity),
});
