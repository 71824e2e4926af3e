/** The crank power at which each part of the system reaches its limit. */
import { findRoot } from "@/lib/basics/mod.ts";
import { flowAtVelocity } from "@/lib/flow/mod.ts";
import { fuelCarried } from "@/lib/injector/mod.ts";
import { isDuct, type Run } from "@/lib/line/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { flowAtSpread } from "@/lib/rail/mod.ts";
import type { Context } from "./context.ts";
import { CRITERIA } from "./criteria.ts";
import type { Ceiling } from "./evaluation.ts";
import type { Results } from "./results.ts";
import type { DemandResults } from "./subjects/demand.ts";
import { stagesOf } from "./subjects/stages.ts";
import type { PressureResults } from "./subjects/pressures.ts";
import { isOneEnd, railSpecOf } from "./subjects/rail.ts";
import { acrossAt, pointOf, type SolvedSupply } from "./supply/solved.ts";
import { branchesOf } from "./supply/ways.ts";

/** What limits a part: the fuel it carries, or why that can't be said. */
interface Carried {
  readonly fuel_kg_s: number | undefined;
  readonly because: string;
}

/** Spread at which the rail's ceiling is drawn, the aim of the check. */
const SPREAD = CRITERIA.railSpread.aim;

/** Finds the ceiling of each part with everything else as planned; says which parts have none. */
export function ceilingsOf(
  context: Context,
  results: Results,
  solved: SolvedSupply | undefined,
): Ceiling[] {
  const { demand, pressures } = results;
  if (!demand || !pressures || !solved) return [];
  const { values } = context;
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
  const without = (id: string, title: string, because: string): Ceiling => ({
    id,
    title,
    dependsOnPower: false,
    power_W: undefined,
    because,
  });
  const { suction, back } = solved.supply.system;
  return [
    part("injectors", "Injectors", ofInjectors(context, demand, pressures, solved)),
    part("pump", values.pump.count > 1 ? "Pumps" : "Pump", ofPump(demand, results)),
    suction
      ? part("suction", "Suction", ofSuction(context, results, demand, solved, suction))
      : without(
        "suction",
        "Suction",
        "The pump stands in the fuel and has no run to draw through.",
      ),
    part("feed", "Feed", ofFeed(context, demand, solved)),
    part("filter", "Filter", ofFilter(context, demand, solved.supply.system.feed)),
    part("rail", "Rail", ofRail(context, results, demand, solved)),
    ...(back
      ? [
        without(
          "return",
          "Return",
          "It is hardest at idle, when nearly all of the flow goes back.",
        ),
      ]
      : []),
    without("sensor", "Pressure sensor", "Its range does not depend on power, only on pressure."),
  ];
}

function ofInjectors(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
  solved: SolvedSupply,
): Carried {
  const stages = stagesOf(context);
  if (stages.length === 0) return { fuel_kg_s: undefined, because: "No injector is named yet." };
  const density_kg_m3 = demand.fuel.density_kg_m3;
  const carried = (
    working: Working,
    differential_Pa: number,
  ): Record<"peak" | "maximum", number> => {
    const at = (section: string, interval_s: number): number =>
      fuelCarried(working, `ceilings.${section}`, stages, {
        density_kg_m3,
        differential_Pa,
        interval_s,
        dutyLimit: CRITERIA.dutyPeak.limit,
      });
    return {
      peak: at("injectorsPeak", demand.intervalPeak_s),
      // Power is taken to hold up to maximum speed, where the time for a shot is shortest.
      maximum: at("injectorsMaximum", demand.intervalMaximum_s),
    };
  };
  const across = (fuel_kg_s: number): number =>
    acrossAt(context, solved, fuel_kg_s / density_kg_m3) ?? pressures.differentialPeak_Pa;
  const most = (differential_Pa: number): number => {
    const { peak, maximum } = carried(new Working(), differential_Pa);
    return Math.min(peak, maximum);
  };
  // The more is burnt, the less pressure is left across the injectors, and the less they carry.
  const fuel_kg_s = meeting((fuel_kg_s) => most(across(fuel_kg_s)), demand.fuel_kg_s);
  const differential_Pa = across(fuel_kg_s);
  const { peak, maximum } = carried(context.working, differential_Pa);
  const where = maximum < peak ? "at maximum speed" : "at the power peak's speed";
  return {
    fuel_kg_s: Math.min(peak, maximum),
    because: `Duty reaches ${context.say(CRITERIA.dutyPeak.limit, "ratio")} ${where}, with ${
      context.say(differential_Pa, "pressure")
    } across the injectors.`,
  };
}

/** Where a falling function of a number gives the number itself, by secants. */
function meeting(of: (x: number) => number, start: number): number {
  let [x, value] = [start, of(start)];
  let next = value;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const found = of(next);
    if (Math.abs(found - next) <= CLOSENESS * found) return found;
    const slope = Math.min(0, (found - value) / (next - x));
    [x, value] = [next, found];
    next = (found - slope * next) / (1 - slope);
  }
  return value;
}

/** How closely the injectors' ceiling is placed [-]; three rounds reach it as a rule. */
const CLOSENESS = 1e-5;
const MOST_ROUNDS = 12;

function ofPump(demand: DemandResults, { pump }: Results): Carried {
  if (pump?.available_m3_s === undefined) {
    return {
      fuel_kg_s: undefined,
      because: "The most that it delivers with the pressure held is not known.",
    };
  }
  return {
    fuel_kg_s: pump.available_m3_s * demand.fuel.density_kg_m3,
    because: "No margin is left, the battery at its lowest.",
  };
}

/** What is burnt, at the limit of velocity in the narrowest hose. */
function ofVelocity(
  context: Context,
  id: "feed" | "suction" | "branch",
  run: Run,
  otherwise_m?: number,
): number | undefined {
  const { limit } = CRITERIA[id === "suction" ? "suctionVelocity" : "feedVelocity"];
  const ducts = run.pieces.filter(({ kind }) => isDuct(kind)).map(({ bore_m }) => bore_m);
  const bore = ducts.length > 0 ? Math.min(...ducts) : otherwise_m;
  return bore === undefined
    ? undefined
    : context.working.run(`ceilings.${id}_m3_s`, flowAtVelocity, {
      velocity: limit,
      bore,
    });
}

function ofFeed(context: Context, demand: DemandResults, { supply }: SolvedSupply): Carried {
  const { feed, branch } = supply.system;
  const { values } = context;
  const density = demand.fuel.density_kg_m3;
  const inFeed_m3_s = ofVelocity(context, "feed", feed, values.supply.feedBore);
  const inBranch_m3_s = branch && ofVelocity(context, "branch", branch);
  const inAll_m3_s = inBranch_m3_s && inBranch_m3_s * branchesOf(values);
  const speed = context.say(CRITERIA.feedVelocity.limit, "velocity");
  if (inAll_m3_s !== undefined && inAll_m3_s < (inFeed_m3_s ?? Infinity)) {
    return {
      fuel_kg_s: inAll_m3_s * density,
      because: `What the engine burns runs at ${speed} in its branches.`,
    };
  }
  return {
    fuel_kg_s: inFeed_m3_s && inFeed_m3_s * density,
    because: inFeed_m3_s === undefined
      ? "No hose of it is listed."
      : `What the engine burns runs at ${speed}.`,
  };
}

/** Velocity or vapour, whichever comes first. */
function ofSuction(
  context: Context,
  { vapour, pressures }: Results,
  demand: DemandResults,
  { supply }: SolvedSupply,
  suction: Run,
): Carried {
  const fast_m3_s = ofVelocity(context, "suction", suction, context.values.supply.suctionBore);
  const { limit: velocity } = CRITERIA.suctionVelocity;
  const byVelocity = `What the engine burns runs at ${context.say(velocity, "velocity")}.`;
  const { tank_Pa, head_Pa } = supply.system;
  const ambient_Pa = pressures?.ambient_Pa;
  if (fast_m3_s === undefined || vapour === undefined || ambient_Pa === undefined) {
    return {
      fuel_kg_s: undefined,
      because: "Its hose or the fuel's vapour pressure is not known.",
    };
  }
  const spare = (flow_m3_s: number): number =>
    ambient_Pa + tank_Pa + head_Pa - suction.drop_Pa(flow_m3_s) - vapour.tankVapour_Pa -
    CRITERIA.inletVapour.limit;
  const density = demand.fuel.density_kg_m3;
  if (spare(fast_m3_s) >= 0) return { fuel_kg_s: fast_m3_s * density, because: byVelocity };
  const limit = context.say(CRITERIA.inletVapour.limit, "pressure");
  if (spare(0) <= 0) {
    const because = `Even while nothing flows, less than ${limit} is left at the pump's inlet ` +
      "before the hottest fuel boils.";
    return { fuel_kg_s: 0, because };
  }
  const because = `Only ${limit} is left at the pump's inlet before the hottest fuel boils.`;
  const flow_m3_s = findRoot(spare, { from: 0, to: fast_m3_s, tolerance: 1e-6 * fast_m3_s });
  return { fuel_kg_s: flow_m3_s * density, because };
}

function ofFilter(context: Context, demand: DemandResults, feed: Run): Carried {
  const rated = feed.pieces.filter(({ kind }) => kind === "filter")
    .map(({ stated }) => stated[0]?.flow_m3_s);
  const least = rated.reduce<number | undefined>(
    (a, b) => a === undefined || b === undefined ? undefined : Math.min(a, b),
    rated[0],
  );
  return {
    fuel_kg_s: least && least * demand.fuel.density_kg_m3,
    because: least === undefined
      ? "No filter with a rated flow is listed in the feed."
      : `What the engine burns is its rated flow, ${context.say(least, "pumpFlow")}.`,
  };
}

function ofRail(
  context: Context,
  { rail, pump }: Results,
  demand: DemandResults,
  solved: SolvedSupply,
): Carried {
  const { bore, count } = context.values.rail;
  const peak = pointOf(solved, "peak");
  if (!rail || bore === undefined || peak?.state === undefined) {
    return { fuel_kg_s: undefined, because: "The bore of the gallery is not known." };
  }
  const differential_Pa = rail.differential_Pa;
  const spec = railSpecOf(
    context,
    { demand, returned_m3_s: pump?.returned_m3_s ?? 0 },
    bore,
    rail.stations_m,
  );
  const flow_m3_s = isOneEnd(context.values)
    ? flowAtSpread({ ...spec, injectorDifferential_Pa: differential_Pa }, SPREAD)
    : undefined;
  // Fed in another way, pressure differs between injectors with the square of the flow, nearly.
  const all_m3_s = isOneEnd(context.values)
    ? flow_m3_s && flow_m3_s * count
    : rail.steady.flowSpreadWorst > 0
    ? demand.fuelVolume_m3_s * Math.sqrt(SPREAD / rail.steady.flowSpreadWorst)
    : undefined;
  return {
    fuel_kg_s: all_m3_s && all_m3_s * demand.fuel.density_kg_m3,
    because: all_m3_s === undefined
      ? "No flow that runs in such a bore spreads so far."
      : `Steady flow differs by ${context.say(SPREAD, "ratio")} between injectors.`,
  };
}
