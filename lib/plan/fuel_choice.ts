/** From the fuel chosen in a plan to what the fuel room takes. */
import type { FuelSpec } from "@/lib/fuel/mod.ts";

/** Ethanol by volume in the named blends. */
const ETHANOL_SHARE: Readonly<Record<string, number>> = {
  petrol: 0,
  E10: 0.1,
  E20: 0.2,
  E85: 0.85,
  E100: 1,
  methanol: 0,
};

/** What a plan says of its fuel. */
export interface FuelValues {
  /** The word of the choice. */
  readonly name: string;
  /** Ethanol by volume, of another blend. */
  readonly ethanolShare: number | undefined;
  /** Density of the petrol alone at 15 °C [kg/m^3]. */
  readonly petrolDensity: number | undefined;
  /** Reid pressure of the petrol alone [Pa, absolute]. */
  readonly vapourPressure: number | undefined;
}

/** Stands for the petrol in a fuel that has none, where a number is asked all the same. */
const NO_PETROL = { density_kg_m3: 745, vapourPressure_Pa: 6e4 } as const;

/**
 * Gives the fuel of a plan as the fuel room takes it.
 *
 * @param fuel The fuel section, resolved.
 * @returns Base, ethanol share and the petrol's own data.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const fuel = { ethanolShare: undefined, petrolDensity: 745, vapourPressure: 6e4 };
 *
 * assertEquals(fuelSpecOf({ name: "E85", ...fuel }).ethanolShare, 0.85);
 * assertEquals(fuelSpecOf({ name: "methanol", ...fuel }).base, "methanol");
 * ```
 */
export function fuelSpecOf(fuel: FuelValues): FuelSpec {
  return {
    base: fuel.name === "methanol" ? "methanol" : "petrol",
    ethanolShare: ETHANOL_SHARE[fuel.name] ?? fuel.ethanolShare ?? 0,
    petrolDensity15_kg_m3: fuel.petrolDensity ?? NO_PETROL.density_kg_m3,
    reidPressure_Pa: fuel.vapourPressure ?? NO_PETROL.vapourPressure_Pa,
  };
}
