/** How much of the fuel's heat becomes work. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { COMPRESSION_RATIO, FUEL_FLOW, HEAT_RATIO, HEATING_VALUE, POWER } from "./limits.ts";

/**
 * Overall efficiency [-]: share of the fuel's heat that reaches the crankshaft.
 * Above 1 an input is wrong.
 *
 * Source: conservation of energy.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const share = overallEfficiency({ power: 3e5, fuelFlow: 0.025, lowerHeatingValue: 43e6 });
 *
 * assertAlmostEquals(share, 0.279, 1e-3);
 * ```
 */
export const overallEfficiency: Method<
  Record<"power" | "fuelFlow" | "lowerHeatingValue", MethodInput>
> = method({
  id: "overall-efficiency",
  title: "Overall efficiency of the engine",
  inputs: { power: POWER, fuelFlow: FUEL_FLOW, lowerHeatingValue: HEATING_VALUE },
  output: {
    name: "efficiency",
    unit: "-",
    min: 0,
    max: 10,
    says: "Share of the fuel's heat that reaches the crankshaft; above 1 an input is wrong",
    symbol: "\\eta",
  },
  formula: "power / (fuelFlow * lowerHeatingValue)",
  source: "Conservation of energy",
  compute: ({ power, fuelFlow, lowerHeatingValue }) => power / (fuelFlow * lowerHeatingValue),
});

/**
 * Efficiency [-] of the ideal Otto cycle, which no engine reaches: at the crankshaft
 * there are 0.55 to 0.75 of it.
 *
 * Source: air-standard Otto cycle, any thermodynamics textbook.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(ottoEfficiency({ compressionRatio: 8, heatRatio: 1.4 }), 0.565, 1e-3);
 * ```
 */
export const ottoEfficiency: Method<Record<"compressionRatio" | "heatRatio", MethodInput>> = method(
  {
    id: "otto-efficiency",
    title: "Efficiency of the ideal Otto cycle",
    inputs: { compressionRatio: COMPRESSION_RATIO, heatRatio: HEAT_RATIO },
    output: {
      name: "efficiency",
      unit: "-",
      min: 0,
      max: 1,
      says: "Share of the heat that the ideal cycle turns into work",
      symbol: "\\eta_\\text{Otto}",
    },
    formula: "1 - compressionRatio^(1 - heatRatio)",
    source: "Air-standard Otto cycle",
    compute: ({ compressionRatio, heatRatio }) => 1 - compressionRatio ** (1 - heatRatio),
  },
);
