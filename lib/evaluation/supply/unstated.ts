/** Parts whose loss is not stated: a number that they bear on is at best marginal, and says so. */
import type { Run } from "@/lib/line/mod.ts";
import type { SupplySystem } from "@/lib/supply/mod.ts";

/** Parts without a stated loss in some runs, by name. */
export interface Unstated {
  /** Their names. */
  readonly names: readonly string[];
  /** What is said of them, to stand behind other sentences; empty where there is none. */
  readonly says: string;
  /** What caps a verdict. */
  readonly cap: { readonly atBest?: "marginal" };
}

/** The parts that the pressure asked of the pumps lacks: up to where the regulator holds it. */
export function unstatedBeforeRegulator(
  { suction, feed, branch, crossover, regulator }: SupplySystem,
): Unstated {
  const { place } = regulator;
  return unstatedIn([
    suction,
    ...(place === "tank" ? [] : [feed]),
    ...(place === "rail" ? [branch, crossover] : []),
  ]);
}

/** The parts that the pressure before the injectors lacks: between them and the regulator. */
export function unstatedAtRails({ feed, branch, crossover, regulator }: SupplySystem): Unstated {
  const { place } = regulator;
  return unstatedIn([
    ...(place === "tank" ? [feed] : []),
    ...(place === "rail" ? [] : [branch]),
    crossover,
  ]);
}

/** The parts of some runs. */
export function unstatedIn(runs: readonly (Run | undefined)[]): Unstated {
  const names = runs.flatMap((run) => run?.unstated ?? []).map(({ name }) => name);
  if (names.length === 0) return { names, says: "", cap: {} };
  return {
    names,
    says: `Not in it is what is lost in: ${names.join(", ")}.`,
    cap: { atBest: "marginal" },
  };
}
