/** The supply with its filters due for change. */
import { Supply } from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import type { DemandResults } from "../subjects/demand.ts";
import { systemOf } from "./system_of.ts";

/** The plan's supply, its filters dirty. */
export function withDirtyFilters(
  { values }: Context,
  { fuel, fuelVolume_m3_s }: DemandResults,
): Supply {
  const liquid = {
    density_kg_m3: fuel.density_kg_m3,
    viscosity_Pa_s: fuel.dynamicViscosity_Pa_s,
  };
  return new Supply(systemOf(values, liquid, fuelVolume_m3_s, "dirty"));
}
