/** Flow through an opening: jets, orifices, pinholes. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, DENSITY, DIFFERENTIAL, FLOW, VELOCITY } from "./limits.ts";

const HOLE: MethodInput = {
  unit: "m",
  min: 1e-6,
  max: 0.05,
  says: "Diameter of the hole",
  symbol: "d",
};
const DISCHARGE: MethodInput = {
  unit: "-",
  min: 0.4,
  max: 1,
  says:
    "Discharge coefficient: sharp edge 0.60 to 0.62, short tube about 0.8, rounded 0.95 to 0.98",
  symbol: "C_d",
};

/** Discharge coefficient of a sharp-edged pinhole [-]; a hole like a short tube may reach 0.85. */
export const PINHOLE_DISCHARGE = 0.61;

/**
 * Velocity [m/s] of the jet that a pressure difference makes, without loss.
 *
 * Source: E. Torricelli (1644); D. Bernoulli, Hydrodynamica (1738).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Petrol at 3 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(jetVelocity({ differential: 3e5, density: 745 }), 28.38, 0.01);
 * ```
 */
export const jetVelocity: Method<Record<"differential" | "density", MethodInput>> = method({
  id: "jet-velocity",
  title: "Velocity of a jet",
  inputs: { differential: DIFFERENTIAL, density: DENSITY },
  output: { ...VELOCITY, name: "velocity", says: "Velocity of the jet" },
  formula: "sqrt(2 * differential / density)",
  source: "E. Torricelli (1644); D. Bernoulli, Hydrodynamica (1738)",
  compute: ({ differential, density }) => Math.sqrt(2 * differential / density),
});

/**
 * Flow [m^3/s] through a hole out of a large space: an orifice, a nozzle, a pinhole.
 *
 * Source: F. M. White, Fluid Mechanics, 7th ed. (2011), section 6.12.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A 0.2 mm pinhole at 3 bar spills 33 mL of petrol a minute
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = orificeFlow({
 *   dischargeCoefficient: PINHOLE_DISCHARGE,
 *   hole: 0.2e-3,
 *   differential: 3e5,
 *   density: 745,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 60e6, 32.6, 0.1);
 * ```
 */
export const orificeFlow: Method<
  Record<"dischargeCoefficient" | "hole" | "differential" | "density", MethodInput>
> = method({
  id: "orifice-flow",
  title: "Flow through a hole",
  inputs: {
    dischargeCoefficient: DISCHARGE,
    hole: HOLE,
    differential: DIFFERENTIAL,
    density: DENSITY,
  },
  output: { ...FLOW, name: "flow", max: 1 },
  formula: "dischargeCoefficient * pi / 4 * hole^2 * sqrt(2 * differential / density)",
  source: "F. M. White, Fluid Mechanics, 7th ed. (2011), section 6.12",
  compute: ({ dischargeCoefficient, hole, differential, density }) =>
    dischargeCoefficient * Math.PI / 4 * hole * hole * Math.sqrt(2 * differential / density),
});

/**
 * Flow [m^3/s] through an orifice in a pipe, where the liquid arrives with speed.
 *
 * Source: F. M. White, Fluid Mechanics, 7th ed. (2011), section 6.12.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 4 mm in 8 mm, 0.2 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = orificeFlowInPipe({
 *   dischargeCoefficient: 0.61,
 *   bore: 8e-3,
 *   diameterRatio: 0.5,
 *   differential: 2e4,
 *   density: 745,
 * });
 *
 * assertAlmostEquals(flow_m3_s, 5.801e-5, 1e-8);
 * ```
 */
export const orificeFlowInPipe: Method<
  Record<
    "dischargeCoefficient" | "bore" | "diameterRatio" | "differential" | "density",
    MethodInput
  >
> = method({
  id: "orifice-flow-in-pipe",
  title: "Flow through an orifice in a pipe",
  inputs: {
    dischargeCoefficient: DISCHARGE,
    bore: { ...BORE, symbol: "D" },
    diameterRatio: {
      unit: "-",
      min: 0.01,
      max: 0.85,
      says: "Diameter of the hole over inner diameter of the pipe",
      symbol: "\\beta",
    },
    differential: DIFFERENTIAL,
    density: DENSITY,
  },
  output: { ...FLOW, name: "flow", max: 100 },
  formula: "dischargeCoefficient * pi / 4 * (diameterRatio * bore)^2 * " +
    "sqrt(2 * differential / (density * (1 - diameterRatio^4)))",
  source: "F. M. White, Fluid Mechanics, 7th ed. (2011), section 6.12",
  compute: ({ dischargeCoefficient, bore, diameterRatio, differential, density }) =>
    dischargeCoefficient * Math.PI / 4 * (diameterRatio * bore) ** 2 *
    Math.sqrt(2 * differential / (density * (1 - diameterRatio ** 4))),
});
