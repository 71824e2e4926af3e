/** Air that a fuel needs to burn. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/** Share of oxygen in dry air, by volume [-]. Source: ISO 2533 (1975). */
export const AIR_OXYGEN_SHARE = 0.20946;

/**
 * Mass of dry air that a mass of fuel needs to burn completely [-], from its formula CxHyOz.
 *
 * Source: balance of elements, IUPAC atomic masses; dry air 20.946 % oxygen, 0.0289647 kg/mol.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Methanol, CH4O
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const ratio = stoichiometricAirFuelRatio({
 *   carbon: 1,
 *   hydrogen: 4,
 *   oxygen: 1,
 *   oxygenShare: AIR_OXYGEN_SHARE,
 *   airMolarMass: 0.0289647,
 * });
 *
 * assertAlmostEquals(ratio, 6.47, 0.01);
 * ```
 */
export const stoichiometricAirFuelRatio: Method<
  Record<"carbon" | "hydrogen" | "oxygen" | "oxygenShare" | "airMolarMass", MethodInput>
> = method({
  id: "stoichiometric-air-fuel-ratio",
  title: "Air that a fuel needs, from its formula",
  inputs: {
    carbon: { unit: "-", min: 1, max: 12, says: "Atoms of carbon in the formula", symbol: "x" },
    hydrogen: { unit: "-", min: 1, max: 26, says: "Atoms of hydrogen", symbol: "y" },
    oxygen: { unit: "-", min: 0, max: 2, says: "Atoms of oxygen", symbol: "z" },
    oxygenShare: {
      unit: "-",
      min: 0.2,
      max: 0.22,
      says: "Share of oxygen in air, by volume; dry 0.20946",
      symbol: "x_{\\text{O}_2}",
    },
    airMolarMass: {
      unit: "kg/mol",
      min: 0.028,
      max: 0.03,
      says: "Molar mass of air; dry 0.0289647",
      symbol: "M_\\text{air}",
    },
  },
  output: {
    name: "ratio",
    unit: "-",
    min: 0.1,
    max: 35,
    says: "Mass of air to mass of fuel",
    symbol: "\\text{AFR}",
  },
  formula: "(carbon + hydrogen / 4 - oxygen / 2) * airMolarMass / oxygenShare" +
    " / (0.012011 * carbon + 0.001008 * hydrogen + 0.015999 * oxygen)",
  fit: true,
  source: "Balance of elements with IUPAC atomic masses",
  compute: ({ carbon, hydrogen, oxygen, oxygenShare, airMolarMass }) =>
    (carbon + hydrogen / 4 - oxygen / 2) * airMolarMass / oxygenShare /
    (0.012011 * carbon + 0.001008 * hydrogen + 0.015999 * oxygen),
});
