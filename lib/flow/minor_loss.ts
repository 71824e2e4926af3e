/** Pressure that a fitting takes, and pressure that height takes. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, VELOCITY } from "./limits.ts";
import { LOSS_COEFFICIENT } from "./loss_limits.ts";

const STEP_BORE: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.1,
  says: "Bore that the coefficient is stated for",
  symbol: "d",
};

/**
 * Pressure [Pa] lost in a fitting: its coefficient in dynamic pressures. Of total pressure:
 * where the bore changes, static pressure changes besides. Negative for a negative coefficient.
 *
 * Source: definition; F. M. White, Fluid Mechanics, 7th ed. (2011), eq. 6.78.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Fittings of 2.5 in all, petrol at 1.33 m/s
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss_Pa = minorLoss({ lossCoefficient: 2.5, density: 745, velocity: 1.326291192 });
 *
 * assertAlmostEquals(loss_Pa, 1638.11, 0.01);
 * ```
 */
export const minorLoss: Method<Record<"lossCoefficient" | "density" | "velocity", MethodInput>> =
  method({
    id: "minor-loss",
    title: "Pressure lost in a fitting",
    inputs: { lossCoefficient: LOSS_COEFFICIENT, density: DENSITY, velocity: VELOCITY },
    output: {
      name: "loss",
      unit: "Pa",
      min: -1e9,
      max: 1e13,
      says: "Pressure lost in the fitting",
      symbol: "\\Delta p_m",
    },
    formula: "lossCoefficient * density * velocity^2 / 2",
    source: "Definition; F. M. White, Fluid Mechanics, 7th ed. (2011), eq. 6.78",
    compute: ({ lossCoefficient, density, velocity }) =>
      lossCoefficient * density * velocity * velocity / 2,
  });

/**
 * Pressure [Pa] that it takes to lift liquid; negative where the line falls.
 *
 * Source: hydrostatics (Stevin, Pascal).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Petrol, 0.4 m down
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pressure_Pa = hydrostaticPressure({ density: 745, gravity: 9.80665, rise: -0.4 });
 *
 * assertAlmostEquals(pressure_Pa, -2922.38, 0.01);
 * ```
 */
export const hydrostaticPressure: Method<Record<"density" | "gravity" | "rise", MethodInput>> =
  method({
    id: "hydrostatic-pressure",
    title: "Pressure that height takes",
    inputs: {
      density: DENSITY,
      gravity: {
        unit: "m/s^2",
        min: 9.7,
        max: 9.9,
        says: "Acceleration of free fall; standard 9.80665",
        symbol: "g",
      },
      rise: {
        unit: "m",
        min: -100,
        max: 100,
        says: "Height of the outlet above the inlet",
        symbol: "h",
      },
    },
    output: {
      name: "pressure",
      unit: "Pa",
      min: -2e6,
      max: 2e6,
      says: "Pressure that height takes",
      symbol: "\\Delta p_h",
    },
    formula: "density * gravity * rise",
    source: "Hydrostatics: S. Stevin (1586), B. Pascal (1663)",
    compute: ({ density, gravity, rise }) => density * gravity * rise,
  });

/**
 * Loss coefficient [-] that gives the same pressure loss with the velocity in another bore.
 *
 * Source: continuity, with the loss as the square of velocity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.5 on a 7.5 mm barb, on its 10 mm hose
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const onHose = lossReferredTo({ lossCoefficient: 0.5, bore: 7.5e-3, referenceBore: 10e-3 });
 *
 * assertAlmostEquals(onHose, 1.5802, 1e-4);
 * ```
 */
export const lossReferredTo: Method<
  Record<"lossCoefficient" | "bore" | "referenceBore", MethodInput>
> = method({
  id: "loss-referred-to",
  title: "Loss coefficient referred to another bore",
  inputs: {
    lossCoefficient: LOSS_COEFFICIENT,
    bore: STEP_BORE,
    referenceBore: { ...STEP_BORE, says: "Bore that it is wanted for", symbol: "D" },
  },
  output: {
    ...LOSS_COEFFICIENT,
    name: "lossCoefficient",
    min: -1e7,
    max: 1e12,
    says: "Loss coefficient on the other bore",
    symbol: "K_D",
  },
  formula: "lossCoefficient * (referenceBore / bore)^4",
  source: "Continuity: velocities go inversely as the squares of the bores",
  compute: ({ lossCoefficient, bore, referenceBore }) =>
    lossCoefficient * (referenceBore / bore) ** 4,
});
