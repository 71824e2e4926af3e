/** Losses that a maker states: a flow at a loss, a loss at a flow, a flow coefficient. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, DIFFERENTIAL, FLOW } from "./limits.ts";
import { LOSS, LOSS_COEFFICIENT } from "./loss_limits.ts";

const PART_BORE: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.05,
  says: "Bore that the coefficient is stated for",
  symbol: "d",
};
const STATED: MethodInput = {
  ...FLOW,
  min: 1e-6,
  max: 0.01,
  says: "Flow that the loss is stated for",
  symbol: "Q_0",
};

/**
 * Pressure [Pa] lost in a part whose loss is stated at one flow, at another flow.
 *
 * The exponent is 1 for filter media (as laminar flow through any fine passage) and 2 for
 * anything like an orifice; parts lie between. Holds for the liquid it is stated for: with
 * exponent 1 the loss goes with viscosity, with 2 with density.
 *
 * Source: Darcy's law of filtration (exponent 1), Torricelli's law (exponent 2).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A filter of 20 kPa at 300 L/h, at 150 L/h
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss_Pa = statedLoss({
 *   loss: 20e3,
 *   flow: 0.3 / 3600,
 *   newFlow: 0.15 / 3600,
 *   exponent: 1,
 * });
 *
 * assertAlmostEquals(loss_Pa, 10e3, 1e-6);
 * ```
 */
export const statedLoss: Method<
  Record<"loss" | "flow" | "newFlow" | "exponent", MethodInput>
> = method({
  id: "stated-loss",
  title: "Loss stated at one flow, at another",
  inputs: {
    loss: {
      ...DIFFERENTIAL,
      max: 1e6,
      says: "Pressure lost at the stated flow",
      symbol: "\\Delta p_0",
    },
    flow: STATED,
    newFlow: { ...FLOW, max: 0.01, says: "Flow that the loss is wanted for" },
    exponent: {
      unit: "-",
      min: 1,
      max: 2,
      says: "1 for filter media, 2 for anything like an orifice",
      symbol: "n",
    },
  },
  output: {
    name: "loss",
    unit: "Pa",
    min: 0,
    max: 1e15,
    says: "Pressure lost at the other flow",
    symbol: "\\Delta p",
  },
  formula: "loss * (newFlow / flow)^exponent",
  source: "H. Darcy (1856) for media, E. Torricelli (1644) for openings",
  compute: ({ loss, flow, newFlow, exponent }) => loss * (newFlow / flow) ** exponent,
});

/**
 * Flow [m^3/s] that a part passes at a pressure loss. With water at 1 bar it is the flow
 * coefficient Kv (in m3/h), at 1 psi Cv (in US gal/min).
 *
 * Source: definition of the loss coefficient; IEC 60534-1 for Kv and Cv.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Kv of K 2 in a 10 mm bore
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = flowAtLoss({
 *   lossCoefficient: 2,
 *   bore: 0.01,
 *   differential: 1e5,
 *   density: 1000,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 3600, 2.827, 1e-3);
 * ```
 */
export const flowAtLoss: Method<
  Record<"lossCoefficient" | "bore" | "differential" | "density", MethodInput>
> = method({
  id: "flow-at-loss",
  title: "Flow that a part passes at a loss",
  inputs: {
    lossCoefficient: { ...LOSS_COEFFICIENT, min: 0.01 },
    bore: PART_BORE,
    differential: { ...DIFFERENTIAL, says: "Pressure lost in the part" },
    density: DENSITY,
  },
  output: { ...FLOW, name: "flow", max: 10 },
  formula: "pi / 4 * bore^2 * sqrt(2 * differential / (lossCoefficient * density))",
  source: "Definition of the loss coefficient; IEC 60534-1",
  compute: ({ lossCoefficient, bore, differential, density }) =>
    Math.PI / 4 * bore * bore * Math.sqrt(2 * differential / (lossCoefficient * density)),
});

/**
 * Loss coefficient [-] of a part that passes a stated flow at a stated loss.
 *
 * Source: definition of the loss coefficient.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A quick connector of 8 mm: 200 L/h of petrol at 4 kPa
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = lossCoefficientOf({
 *   flow: 0.2 / 3600,
 *   bore: 8e-3,
 *   differential: 4e3,
 *   density: 745,
 * });
 *
 * assertAlmostEquals(loss, 8.791, 1e-3);
 * ```
 */
export const lossCoefficientOf: Method<
  Record<"flow" | "bore" | "differential" | "density", MethodInput>
> = method({
  id: "loss-coefficient-of",
  title: "Loss coefficient of a stated flow and loss",
  inputs: {
    flow: STATED,
    bore: PART_BORE,
    differential: { ...DIFFERENTIAL, says: "Pressure lost at the stated flow" },
    density: DENSITY,
  },
  output: { ...LOSS, max: 1e12 },
  formula: "2 * differential / (density * (4 * flow / (pi * bore^2))^2)",
  source: "Definition of the loss coefficient",
  compute: ({ flow, bore, differential, density }) =>
    2 * differential / (density * (4 * flow / (Math.PI * bore * bore)) ** 2),
});
