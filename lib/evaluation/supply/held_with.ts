/** What pumps hold with the filters in another state. */
import { type HeldFlow, heldFlow, type RunningPump, Supply } from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import type { DemandResults } from "../subjects/demand.ts";
import type { FilterState } from "./pieces_of.ts";
import { systemOf } from "./system_of.ts";

/** The most that the pumps deliver with the set pressure held. */
export function heldWith(
  { values }: Context,
  { fuel, fuelVolume_m3_s }: DemandResults,
  pump: RunningPump,
  filters: FilterState,
  reference_Pa: number,
): HeldFlow {
  const liquid = {
    density_kg_m3: fuel.density_kg_m3,
    viscosity_Pa_s: fuel.dynamicViscosity_Pa_s,
  };
  return heldFlow(
    new Supply(systemOf(values, liquid, fuelVolume_m3_s, filters)),
    pump,
    reference_Pa,
  );
}
