/** Vapour pressure of a pure liquid. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { TEMPERATURE, VAPOUR_PRESSURE } from "./limits.ts";

/**
 * Vapour pressure [Pa, absolute] of a pure liquid by Antoine's equation, with the
 * coefficients of {@linkcode PURE_FLUIDS}, which give the decimal logarithm in Pa.
 *
 * Source: C. Antoine, C. R. Acad. Sci. 107 (1888) 681; least squares on CoolProp 8.0.0, 0 to 60 °C.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Methanol at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { PURE_FLUIDS } from "./fluids.ts";
 *
 * const pressure_Pa = liquidVapourPressure({
 *   temperature: 293.15,
 *   ...PURE_FLUIDS.methanol.vapourPressure,
 * });
 *
 * assertAlmostEquals(pressure_Pa, 13_030, 10);
 * ```
 */
export const liquidVapourPressure: Method<Record<"temperature" | "a" | "b" | "c", MethodInput>> =
  method({
    id: "liquid-vapour-pressure",
    title: "Vapour pressure of a pure liquid",
    inputs: {
      temperature: TEMPERATURE,
      a: { unit: "-", min: 8.9, max: 10.5, says: "First coefficient", symbol: "A" },
      b: { unit: "K", min: 1250, max: 1800, says: "Second coefficient", symbol: "B" },
      c: { unit: "K", min: -55, max: -25, says: "Third coefficient", symbol: "C" },
    },
    output: { ...VAPOUR_PRESSURE, name: "vapourPressure" },
    formula: "10^(a - b / (temperature + c))",
    fit: true,
    source: "C. Antoine, C. R. Acad. Sci. 107 (1888) 681; least squares on CoolProp 8.0.0, " +
      "isooctane on Perry's handbook",
    compute: ({ temperature, a, b, c }) => 10 ** (a - b / (temperature + c)),
  });
