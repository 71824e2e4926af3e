/** Petrol and ethanol mixed: what follows the masses. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { MASS_SHARE } from "./limits.ts";

/** A method that mixes a quantity of petrol and ethanol by their masses. */
export type MixedByMass = Method<Record<"massShare" | "petrol" | "ethanol", MethodInput>>;

/** What sets one mixing by mass apart from the next. */
interface Quantity {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly what: string;
  readonly symbol: string;
}

function byMass({ id, title, unit, min, max, what, symbol }: Quantity): MixedByMass {
  const of = (whose: string, index: string): MethodInput => ({
    unit,
    min,
    max,
    says: `${what} of ${whose}`,
    symbol: `${symbol}_${index}`,
  });
  return method({
    id,
    title,
    inputs: {
      massShare: MASS_SHARE,
      petrol: of("the petrol alone", "p"),
      ethanol: of("ethanol", "e"),
    },
    output: { name: "blend", unit, min, max, says: `${what} of the blend`, symbol },
    formula: "massShare * ethanol + (1 - massShare) * petrol",
    source: "Balance of mass: what counts by the kilogram mixes by mass",
    compute: ({ massShare, petrol, ethanol }) => massShare * ethanol + (1 - massShare) * petrol,
  });
}

/**
 * Lower heating value [J/kg] of a blend.
 *
 * Source: balance of mass.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example E85
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const heat_J_kg = blendHeatingValue({ massShare: 0.858, petrol: 43e6, ethanol: 26.8e6 });
 *
 * assertAlmostEquals(heat_J_kg, 29.1e6, 1e4);
 * ```
 */
export const blendHeatingValue: MixedByMass = byMass({
  id: "blend-heating-value",
  title: "Heating value of a blend",
  unit: "J/kg",
  min: 1.5e7,
  max: 5e7,
  what: "Lower heating value",
  symbol: "H",
});

/**
 * Mass of air that a mass of a blend needs to burn completely [-].
 *
 * Source: balance of mass.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example E10
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(blendAirFuelRatio({ massShare: 0.106, petrol: 14.6, ethanol: 9 }), 14, 0.01);
 * ```
 */
export const blendAirFuelRatio: MixedByMass = byMass({
  id: "blend-air-fuel-ratio",
  title: "Air that a blend needs",
  unit: "-",
  min: 5,
  max: 16,
  what: "Air-fuel ratio by mass",
  symbol: "\\text{AFR}",
});

/**
 * Specific heat [J/(kg K)] of a blend; the true one of mid blends is a few percent higher.
 *
 * Source: ideal mixing by mass.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(blendSpecificHeat({ massShare: 0.5, petrol: 2100, ethanol: 2440 }), 2270);
 * ```
 */
export const blendSpecificHeat: MixedByMass = byMass({
  id: "blend-specific-heat",
  title: "Specific heat of a blend",
  unit: "J/(kg K)",
  min: 1500,
  max: 3000,
  what: "Specific heat",
  symbol: "c",
});

/**
 * Mean molar mass [kg/mol] of the vapour of a blend when all of it evaporates.
 *
 * Source: balance of amounts.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half and half by mass
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const mass_kg_mol = blendMolarMass({ massShare: 0.5, petrol: 0.1, ethanol: 0.046068 });
 *
 * assertAlmostEquals(mass_kg_mol, 0.06308, 1e-5);
 * ```
 */
export const blendMolarMass: MixedByMass = method({
  id: "blend-molar-mass",
  title: "Molar mass of a blend",
  inputs: {
    massShare: MASS_SHARE,
    petrol: {
      unit: "kg/mol",
      min: 0.06,
      max: 0.13,
      says: "Mean molar mass of the petrol alone",
      symbol: "M_p",
    },
    ethanol: {
      unit: "kg/mol",
      min: 0.03,
      max: 0.06,
      says: "Molar mass of ethanol",
      symbol: "M_e",
    },
  },
  output: {
    name: "molarMass",
    unit: "kg/mol",
    min: 0.03,
    max: 0.13,
    says: "Mean molar mass of the blend",
    symbol: "M",
  },
  formula: "1 / (massShare / ethanol + (1 - massShare) / petrol)",
  source: "Balance of amounts of substance",
  compute: ({ massShare, petrol, ethanol }) => 1 / (massShare / ethanol + (1 - massShare) / petrol),
});
