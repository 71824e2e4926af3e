/** Where the injectors sit in a gallery, and how rough it is. */
import type { PlanValues } from "@/lib/plan/mod.ts";

/** Roughness of a gallery by how it was finished [m]; assumed. */
export const ROUGHNESS_M = { drilled: 20e-6, reamed: 6e-6 } as const;

/** Where the injectors sit along one rail: the pitches in the middle of the bar [m]. */
export function stationsOf({ rail, engine }: Pick<PlanValues, "rail" | "engine">): number[] {
  const perRail = engine.cylinders / rail.count;
  const first = (rail.length - rail.pitch * (perRail - 1)) / 2;
  return Array.from({ length: perRail }, (_, i) => first + i * rail.pitch);
}
