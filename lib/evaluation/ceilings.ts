/** The crank power at which each part of the system reaches its limit. */
import { flowAtVelocity } from "@/lib/flow/mod.ts";
import { fuelCarried } from "@/lib/injector/mod.ts";
import { flowAtSpread } from "@/lib/rail/mod.ts";
import type { Context } from "./context.ts";
import { CRITERIA } from "./criteria.ts";
import type { Ceiling } from "./evaluation.ts";
import type { Results } from "./results.ts";
import type { DemandResults } from "./subjects/demand.ts";
import { stagesOf } from "./subjects/injectors.ts";
import type { PressureResults } from "./subjects/pressures.ts";
import { railSpecOf } from "./subjects/rail.ts";

/** What limits a part: the fuel it carries, or why that can't be said. */
interface Carried {
  readonly fuel_kg_s: number | undefined;
  readonly because: string;
}

/** Spread at which the rail's ceiling is drawn, the aim of the check. */
const SPREAD = CRITERIA.railSpread.aim;

/** Finds the ceilings of injectors, pump, feed and rail; says which parts have none. */
export function ceilingsOf(context: Context, results: Results): Ceiling[] {
  const { demand, pressures } = results;
  if (!demand || !pressures) return [];
  const part = (id: string, title: string, { fuel_kg_s, because }: Carried): Ceiling => ({
    id,
    title,
    dependsOnPower: true,
    // Power goes with fuel at the same BSFC, whichever route sized it.
    power_W: fuel_kg_s === undefined
      ? undefined
      : demand.crankPower_W * fuel_kg_s / demand.fuel_kg_s,
    because,
  });
  return [
    part("injectors", "Injectors", ofInjectors(context, demand, pressures)),
    part("pump", "Pump", ofPump(demand, results)),
    part("feed", "Feed hose", ofFeed(context, demand)),
    part("rail", "Rail", ofRail(context, results, demand, pressures)),
    {
      id: "sensor",
      title: "Pressure sensor",
      dependsOnPower: false,
      power_W: undefined,
      because: "Its range does not depend on power, only on pressure.",
    },
  ];
}

function ofInjectors(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
): Carried {
  const stages = stagesOf(context);
  if (stages.length === 0) return { fuel_kg_s: undefined, because: "No injector is named yet." };
  const carried = (section: string, interval_s: number): number =>
    fuelCarried(context.working, `ceilings.${section}`, stages, {
      density_kg_m3: demand.fuel.density_kg_m3,
      differential_Pa: pressures.differentialPeak_Pa,
      interval_s,
      dutyLimit: CRITERIA.dutyPeak.limit,
    });
  // Power is taken to hold up to maximum speed, where the time for a shot is shortest.
  const peak = carried("injectorsPeak", demand.intervalPeak_s);
  const maximum = carried("injectorsMaximum", demand.intervalMaximum_s);
  const where = maximum < peak ? "at maximum speed" : "at the power peak's speed";
  const duty = context.say(CRITERIA.dutyPeak.limit, "ratio");
  return { fuel_kg_s: Math.min(peak, maximum), because: `Duty reaches ${duty} ${where}.` };
}

function ofPump(demand: DemandResults, { pump }: Results): Carried {
  if (pump?.available_m3_s === undefined) {
    return {
      fuel_kg_s: undefined,
      because: "The pump's flow at this pressure and the lowest voltage is not known.",
    };
  }
  return {
    fuel_kg_s: pump.available_m3_s * demand.fuel.density_kg_m3,
    because: "No margin is left at this pressure and the lowest voltage.",
  };
}

function ofFeed(context: Context, demand: DemandResults): Carried {
  const limit = CRITERIA.feedVelocity.limit;
  const flow_m3_s = context.working.run("ceilings.feed_m3_s", flowAtVelocity, {
    velocity: limit,
    bore: context.values.supply.feedBore,
  });
  return {
    fuel_kg_s: flow_m3_s * demand.fuel.density_kg_m3,
    because: `What the engine burns runs at ${context.say(limit, "velocity")}.`,
  };
}

function ofRail(
  context: Context,
  { rail, pump }: Results,
  demand: DemandResults,
  pressures: PressureResults,
): Carried {
  const { bore, count } = context.values.rail;
  if (!rail || bore === undefined) {
    return { fuel_kg_s: undefined, because: "The bore of the gallery is not known." };
  }
  const spec = railSpecOf(
    context,
    { demand, returned_m3_s: pump?.returned_m3_s ?? 0 },
    bore,
    rail.stations_m,
  );
  const flow_m3_s = flowAtSpread(
    { ...spec, injectorDifferential_Pa: pressures.differentialPeak_Pa },
    SPREAD,
  );
  return {
    fuel_kg_s: flow_m3_s && flow_m3_s * count * demand.fuel.density_kg_m3,
    because: flow_m3_s === undefined
      ? "No flow that runs in such a bore spreads so far."
      : `Steady flow differs by ${context.say(SPREAD, "ratio")} between injectors.`,
  };
}
