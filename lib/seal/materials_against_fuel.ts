/** All that touches fuel, against the fuel. */
import type { AgainstFuel } from "./against_fuel.ts";
import { type Elastomer, ELASTOMERS } from "./elastomers.ts";
import { type Liner, LINERS } from "./liners.ts";
import { type FuelMetal, METALS } from "./metals.ts";

/** A bar as the plan names its material; bare unless the plan says more. */
export type BarAlloy =
  | "6061-T6"
  | "6082-T6"
  | "AlSi10Mg"
  | "AlSi10Mg-as-built"
  | "304"
  | "brass"
  | "steel";

/**
 * Elastomers, liners, metals of fittings and bar alloys against petrol, E10, E85 and
 * methanol, each with verdict, reason, what to do and source.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const { bars, elastomers } = MATERIALS_AGAINST_FUEL;
 *
 * assertEquals(bars["6061-T6"].fuels.methanol.verdict, "marginal");
 * assertEquals(elastomers.FKM.fuels.methanol.verdict, "fails");
 * ```
 */
export const MATERIALS_AGAINST_FUEL: {
  readonly elastomers: Readonly<Record<Elastomer, AgainstFuel>>;
  readonly liners: Readonly<Record<Liner, AgainstFuel>>;
  readonly metals: Readonly<Record<FuelMetal, AgainstFuel>>;
  readonly bars: Readonly<Record<BarAlloy, AgainstFuel>>;
} = {
  elastomers: ELASTOMERS,
  liners: LINERS,
  metals: METALS,
  bars: {
    "6061-T6": METALS.aluminium,
    "6082-T6": METALS.aluminium,
    AlSi10Mg: METALS["aluminium-printed"],
    "AlSi10Mg-as-built": METALS["aluminium-printed"],
    "304": METALS.stainless,
    brass: METALS.brass,
    steel: METALS.steel,
  },
};
