/** How fast pump and return warm the tank, and how long priming takes. */
import { isDuct, type Run } from "@/lib/line/mod.ts";
import {
  hydraulicPower,
  primeTime,
  tankHeatingByPump,
  tankHeatingByReturn,
} from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import { pointOf, type SolvedPoint, type SolvedSupply } from "../supply/solved.ts";
import { branchesOf, crossoversOf } from "../supply/ways.ts";
import type { DemandResults } from "./demand.ts";

/** What was found. */
export interface HeatResults {
  /** Warming of the tank by the pump at cruise [K/s]. */
  readonly byPump_K_s: number;
  /** Warming by what comes back from under the bonnet [K/s]. */
  readonly byReturn_K_s: number;
  /** Time to fill feed and rails when they are empty [s]; undefined where nothing is delivered. */
  readonly prime_s: number | undefined;
}

/** Finds both; they owe no check. */
export function findHeat(
  context: Context,
  demand: DemandResults,
  solved: SolvedSupply,
): HeatResults | undefined {
  return context.subject([], () => {
    const cruise = pointOf(solved, "cruise");
    const state = cruise?.state;
    if (state?.pump === undefined) return undefined;
    const { values, working } = context;
    const mass = values.supply.tankFuel * demand.fuel.density_kg_m3;
    const byPump_K_s = working.run("heat.byPump_K_s", tankHeatingByPump, {
      power: powerOf(context, cruise),
      mass,
      heatCapacity: demand.fuel.specificHeat_J_kgK,
    });
    const byReturn_K_s = working.run("heat.byReturn_K_s", tankHeatingByReturn, {
      returned: isUnderBonnet(context) ? state.returned_m3_s * demand.fuel.density_kg_m3 : 0,
      rise: values.supply.returnWarming ?? 0,
      mass,
    });
    return { byPump_K_s, byReturn_K_s, prime_s: primeOf(context, solved) };
  });
}

/** What returns at the tank itself has not been under the bonnet. */
function isUnderBonnet({ values: { regulator } }: Context): boolean {
  return regulator.layout === "return" || regulator.place === "feed";
}

/** All electrical power ends as heat in the fuel; of a driven pump, what it does to the fuel. */
function powerOf({ values, working }: Context, cruise: SolvedPoint | undefined): number {
  const reading = cruise?.state?.pump;
  if (reading === undefined) return 0;
  const { count, drive } = values.pump;
  return drive === "engine"
    ? working.run("heat.power_W", hydraulicPower, {
      flow: reading.flow_m3_s,
      pressureRise: Math.max(0, reading.pressure_Pa),
    })
    : reading.current_A * reading.at * count;
}

function primeOf(
  { values, working }: Context,
  { supply, points }: SolvedSupply,
): number | undefined {
  const state = points.find(({ point }) => point.id === "prime")?.state;
  const { feed, branch, crossover } = supply.system;
  const { rail } = values;
  if (!state || state.pumped_m3_s <= 0 || rail.bore === undefined) return undefined;
  const volume = volumeOf(feed) + branchesOf(values) * volumeOf(branch) +
    crossoversOf(values) * volumeOf(crossover) +
    rail.count * Math.PI / 4 * rail.bore ** 2 * rail.length;
  return working.run("heat.prime_s", primeTime, { volume, flow: state.pumped_m3_s });
}

/** What the hoses of a run hold [m^3]. */
function volumeOf(run: Run | undefined): number {
  const ducts = run?.pieces.filter(({ kind }) => isDuct(kind)) ?? [];
  return ducts.reduce(
    (sum, { bore_m, length_m }) => sum + Math.PI / 4 * bore_m ** 2 * length_m,
    0,
  );
}
