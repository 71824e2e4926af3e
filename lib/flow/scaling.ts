/** The same opening at another pressure difference with another liquid; mass and volume. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DENSITY, DIFFERENTIAL, FLOW, MASS_FLOW } from "./limits.ts";

/**
 * Flow [m^3/s] of the same opening at another pressure difference and density: as the
 * root of pressure difference over density. Mass flow goes with the root of their product.
 *
 * Within about 2 % for a metering opening while Re is above 5000 and nothing boils.
 * Source: Torricelli's law, taken twice.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 440 cm3/min at 3 bar, at 4 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = scaledFlow({
 *   flow: 440e-6 / 60,
 *   differential: 3e5,
 *   newDifferential: 4e5,
 *   density: 684,
 *   newDensity: 684,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 60e6, 508.1, 0.1);
 * ```
 */
export const scaledFlow: Method<
  Record<"flow" | "differential" | "newDifferential" | "density" | "newDensity", MethodInput>
> = method({
  id: "scaled-flow",
  title: "Flow at another pressure difference and density",
  inputs: {
    flow: { ...FLOW, says: "Flow where it is known", symbol: "Q_1" },
    differential: {
      ...DIFFERENTIAL,
      min: 1e3,
      says: "Pressure difference where it is known",
      symbol: "\\Delta p_1",
    },
    newDifferential: {
      ...DIFFERENTIAL,
      says: "Pressure difference where it is wanted",
      symbol: "\\Delta p_2",
    },
    density: { ...DENSITY, says: "Density of the liquid it is known for", symbol: "\\rho_1" },
    newDensity: { ...DENSITY, says: "Density of the liquid it is wanted for", symbol: "\\rho_2" },
  },
  output: { ...FLOW, name: "flow", max: 10, says: "Flow where it is wanted", symbol: "Q_2" },
  formula: "flow * sqrt(newDifferential / differential) * sqrt(density / newDensity)",
  source: "E. Torricelli (1644): flow through an opening goes with the root of head",
  compute: ({ flow, differential, newDifferential, density, newDensity }) =>
    flow * Math.sqrt(newDifferential / differential) * Math.sqrt(density / newDensity),
});

/**
 * Mass flow [kg/s] of a volume flow. Source: definition of density.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(massFlow({ flow: 1e-5, density: 745 }), 7.45e-3, 1e-12);
 * ```
 */
export const massFlow: Method<Record<"flow" | "density", MethodInput>> = method({
  id: "mass-flow",
  title: "Mass flow of a volume flow",
  inputs: { flow: FLOW, density: DENSITY },
  output: { ...MASS_FLOW, name: "massFlow", max: 200 },
  formula: "flow * density",
  source: "Definition of density",
  compute: ({ flow, density }) => flow * density,
});

/**
 * Volume flow [m^3/s] of a mass flow. Source: definition of density.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(volumeFlow({ massFlow: 7.45e-3, density: 745 }), 1e-5, 1e-15);
 * ```
 */
export const volumeFlow: Method<Record<"massFlow" | "density", MethodInput>> = method({
  id: "volume-flow",
  title: "Volume flow of a mass flow",
  inputs: { massFlow: MASS_FLOW, density: DENSITY },
  output: { ...FLOW, name: "flow", max: 1 },
  formula: "massFlow / density",
  source: "Definition of density",
  compute: ({ massFlow, density }) => massFlow / density,
});
