/** How many branches and crossovers the rails take: all alike, so that a plan lists one of each. */
import type { PlanValues } from "@/lib/plan/mod.ts";

/** Rails that fuel comes into at two places, each by a branch. */
function inletsOf({ rail }: PlanValues): number {
  const isJoined = rail.count > 1 && (rail.connection ?? "parallel") !== "parallel";
  return rail.feed === "both-ends" && !isJoined ? 2 : 1;
}

/** Branches that leave the end of the feed. */
export function branchesOf(values: PlanValues): number {
  const { rail } = values;
  const isInSeries = rail.count > 1 && rail.connection === "series";
  return (isInSeries ? 1 : rail.count) * inletsOf(values);
}

/** Runs from one rail to another, or from each rail's far end to where they meet. */
export function crossoversOf({ rail }: PlanValues): number {
  if (rail.count < 2) return 0;
  return rail.connection === "series" ? rail.count - 1 : rail.count;
}
