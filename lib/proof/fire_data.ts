/** How the fuels burn, as the fire tables give it. */

/** A fuel the fire tables name. */
export type BurningFuel = "petrol" | "ethanol" | "methanol";

/** What the fire tables say of one fuel. */
export interface FireData {
  /** Lowest temperature at which its vapour takes fire over the liquid [K]. */
  readonly flashPoint_K: number;
  /** Lower flammable limit [-, by volume]. */
  readonly lowerLimit: number;
  /** Upper flammable limit [-, by volume]. */
  readonly upperLimit: number;
  /** Temperature at which it takes fire without a spark [K]; published values scatter by 100 K. */
  readonly autoignition_K: number;
  /** Mean molar mass of the vapour of a spill [kg/mol]. */
  readonly molarMass_kg_mol: number;
  /** Class of flammable liquid in NFPA 30: flash point below 22.8 °C, boiling point from 37.8 °C. */
  readonly nfpaClass: "IB";
  /** Category in 29 CFR 1910.106, by flash and boiling point. */
  readonly oshaCategory: "1 or 2" | "2";
  /** Where the numbers are published. */
  readonly source: string;
}

const TABLES = "NFPA 497 (2008) and IEC 60079-20-1 (2010) tables; class by NFPA 30";

/** Fire data by fuel. */
const FIRE_DATA: Readonly<Record<BurningFuel, FireData>> = {
  petrol: {
    flashPoint_K: 227.15,
    lowerLimit: 0.014,
    upperLimit: 0.076,
    autoignition_K: 553.15,
    molarMass_kg_mol: 0.1,
    nfpaClass: "IB",
    oshaCategory: "1 or 2",
    source: TABLES,
  },
  ethanol: {
    flashPoint_K: 286.15,
    lowerLimit: 0.033,
    upperLimit: 0.19,
    autoignition_K: 636.15,
    molarMass_kg_mol: 0.046069,
    nfpaClass: "IB",
    oshaCategory: "2",
    source: TABLES,
  },
  methanol: {
    flashPoint_K: 285.15,
    lowerLimit: 0.06,
    upperLimit: 0.36,
    autoignition_K: 658.15,
    molarMass_kg_mol: 0.032042,
    nfpaClass: "IB",
    oshaCategory: "2",
    source: TABLES,
  },
};

/**
 * Gives the fire data of a pure fuel.
 *
 * Sources: NFPA 497 (2008), IEC 60079-20-1 (2010), NFPA 30.
 *
 * @param fuel The fuel.
 * @returns Its flash point, limits, ignition and class.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(fireData("petrol").lowerLimit, 0.014);
 * ```
 */
export function fireData(fuel: BurningFuel): FireData {
  return FIRE_DATA[fuel];
}

/**
 * Lower flammable limit to reckon with for a blend of petrol and ethanol: the
 * lower of the two, which is the cautious choice.
 *
 * @param ethanolShare Ethanol by volume [-], 0 to 1.
 * @returns The limit by volume [-].
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(blendLowerLimit(0.85), 0.014);
 * assertEquals(blendLowerLimit(1), 0.033);
 * ```
 */
export function blendLowerLimit(ethanolShare: number): number {
  return FIRE_DATA[ethanolShare < 1 ? "petrol" : "ethanol"].lowerLimit;
}

/** What the closed space above fuel is. */
export type Headspace = "too lean to burn" | "explosive" | "too rich to burn";

/**
 * Tells what the closed space above a fuel is. Too rich inside is still
 * explosive where it leaks out and thins.
 *
 * @param share Share of vapour by volume [-].
 * @param fuel The fuel.
 * @returns On which side of its limits it lies.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(judgeHeadspace(0.13, "methanol"), "explosive");
 * assertEquals(judgeHeadspace(0.39, "petrol"), "too rich to burn");
 * ```
 */
export function judgeHeadspace(share: number, fuel: BurningFuel): Headspace {
  const { lowerLimit, upperLimit } = FIRE_DATA[fuel];
  if (share < lowerLimit) return "too lean to burn";
  return share > upperLimit ? "too rich to burn" : "explosive";
}
