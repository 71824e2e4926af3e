/** Vapour pressure of petrol from what its certificate says. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { TEMPERATURE, VAPOUR_PRESSURE } from "./limits.ts";

/** Pascals in a pound-force per square inch. */
const PSI_Pa = 6894.757293168;
/** Square root of the slope of the distillation curve, 3 °F a percent at 10 % for petrol. */
const ROOT_SLOPE = Math.sqrt(3);

/**
 * True vapour pressure [Pa, absolute] of petrol without alcohol, from its Reid vapour pressure.
 * DVPE stands for Reid pressure within 5 %.
 *
 * Source: U.S. EPA AP-42 section 7.1, refined petroleum stocks, slope 3; held against
 * its table (from memory) and its form for programs. Scatter 10 %. Below 0 °C the curve runs on.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Winter petrol of 10 psi on a warm day
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(
 *   petrolVapourPressure({ reidPressure: 68_947.57, temperature: 293.15 }),
 *   41_660,
 *   10,
 * );
 * ```
 */
export const petrolVapourPressure: Method<Record<"reidPressure" | "temperature", MethodInput>> =
  method({
    id: "petrol-vapour-pressure",
    title: "Vapour pressure of petrol at a temperature",
    inputs: {
      reidPressure: {
        unit: "Pa",
        min: 3e4,
        max: 1.05e5,
        says: "Reid vapour pressure (37.8 °C), absolute",
        symbol: "p_R",
      },
      temperature: TEMPERATURE,
    },
    output: { ...VAPOUR_PRESSURE, name: "vapourPressure" },
    formula: "6894.757293168 * exp(" +
      "(0.7553 - 413 / (1.8 * temperature - 0.07)) * sqrt(3) * log10(reidPressure / 6894.757293168)" +
      " - (1.854 - 1042 / (1.8 * temperature - 0.07)) * sqrt(3)" +
      " + (2416 / (1.8 * temperature - 0.07) - 2.013) * log10(reidPressure / 6894.757293168)" +
      " - 8742 / (1.8 * temperature - 0.07) + 15.64)",
    words: "The temperature counts in degrees Fahrenheit plus 459.6, the pressures in psi.",
    fit: true,
    source: "U.S. EPA AP-42 section 7.1, refined petroleum stocks",
    compute: ({ reidPressure, temperature }) => {
      const fromZero = 1.8 * temperature - 0.07;
      const reid = Math.log10(reidPressure / PSI_Pa);
      return PSI_Pa * Math.exp(
        (0.7553 - 413 / fromZero) * ROOT_SLOPE * reid - (1.854 - 1042 / fromZero) * ROOT_SLOPE +
          (2416 / fromZero - 2.013) * reid - 8742 / fromZero + 15.64,
      );
    },
  });
