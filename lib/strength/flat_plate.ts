/** Flat plugs and covers under pressure. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { PRESSURE } from "./limits.ts";

const DIAMETER: MethodInput = {
  unit: "m",
  min: 0.001,
  max: 0.2,
  says: "Diameter under pressure",
  symbol: "D",
};
const THICKNESS: MethodInput = {
  unit: "m",
  min: 2e-4,
  max: 0.05,
  says: "Thickness of the plate",
  symbol: "t",
};
const ROARK = "W. C. Young, Roark's Formulas for Stress and Strain, circular plates";

/**
 * Highest stress of a round plate that lies loose on its edge [Pa], at its middle. Thin
 * plates: thickness up to a quarter of the diameter.
 *
 * Source: Roark's Formulas, circular plates.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const stress_Pa = supportedPlateStress({
 *   pressure: 1e6,
 *   diameter: 0.016,
 *   thickness: 0.004,
 *   poisson: 0.33,
 * });
 *
 * assertAlmostEquals(stress_Pa, 4.995e6, 1);
 * ```
 */
export const supportedPlateStress: Method<
  Record<"pressure" | "diameter" | "thickness" | "poisson", MethodInput>
> = method({
  id: "supported-plate-stress",
  title: "Stress of a round plate that lies on its edge",
  inputs: {
    pressure: PRESSURE,
    diameter: DIAMETER,
    thickness: THICKNESS,
    poisson: {
      unit: "-",
      min: 0,
      max: 0.5,
      says: "Poisson's ratio of the material",
      symbol: "\\nu",
    },
  },
  output: {
    name: "stress",
    unit: "Pa",
    min: 0,
    max: 1e13,
    says: "Highest stress, at the middle",
    symbol: "\\sigma",
  },
  formula: "3 * (3 + poisson) / 8 * pressure * (diameter / 2)^2 / thickness^2",
  source: ROARK,
  compute: ({ pressure, diameter, thickness, poisson }) =>
    3 * (3 + poisson) / 8 * pressure * (diameter / 2) ** 2 / thickness ** 2,
});

/**
 * Highest stress of a round plate held fast at its edge [Pa], at the edge.
 *
 * Source: Roark's Formulas, circular plates.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const plate = { pressure: 1e6, diameter: 0.016, thickness: 0.004 };
 *
 * assertAlmostEquals(clampedPlateStress(plate), 3e6, 1);
 * ```
 */
export const clampedPlateStress: Method<
  Record<"pressure" | "diameter" | "thickness", MethodInput>
> = method({
  id: "clamped-plate-stress",
  title: "Stress of a round plate held fast at its edge",
  inputs: { pressure: PRESSURE, diameter: DIAMETER, thickness: THICKNESS },
  output: {
    name: "stress",
    unit: "Pa",
    min: 0,
    max: 1e13,
    says: "Highest stress, at the edge",
    symbol: "\\sigma",
  },
  formula: "0.75 * pressure * (diameter / 2)^2 / thickness^2",
  source: ROARK,
  compute: ({ pressure, diameter, thickness }) =>
    0.75 * pressure * (diameter / 2) ** 2 / thickness ** 2,
});
