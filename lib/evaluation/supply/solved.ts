/** The supply solved at every operating point, for the subjects that judge it. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Liquid } from "@/lib/line/mod.ts";
import { RATING_DENSITY_KG_M3 } from "@/lib/plan/mod.ts";
import { pumpFlowToAskFor, type RunningPump, Supply, type SupplyState } from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { DemandResults } from "../subjects/demand.ts";
import { stagesOf } from "../subjects/stages.ts";
import type { PressureResults } from "../subjects/pressures.ts";
import { type OperatingPoint, type PointId, pointsOf } from "./points_of.ts";
import { figuresOf, pumpsOf } from "./pumps_of.ts";
import { systemOf } from "./system_of.ts";

/** One operating point, solved. */
export interface SolvedPoint {
  /** What the engine asks for. */
  readonly point: OperatingPoint;
  /** What the regulator's spring side sees, gauge [Pa]. */
  readonly reference_Pa: number;
  /** The pumps as they run; undefined where their figures are no curve, or they stand still. */
  readonly pump: RunningPump | undefined;
  /** The supply at work; undefined where it can't be said. */
  readonly state: SupplyState | undefined;
  /** Why not. */
  readonly problem: string | undefined;
  /** True when it is that the pump delivers nothing there. */
  readonly isStill: boolean;
}

/** The supply, solved. */
export interface SolvedSupply {
  /** The system, filters clean. */
  readonly supply: Supply;
  /** The system with its filters due for change, laid out when it is first asked for. */
  readonly dirty: () => Supply;
  /** The liquid. */
  readonly liquid: Liquid;
  /** True when the pumps' figures make a curve; else one that gives what to shop for stands in. */
  readonly isPumpKnown: boolean;
  /** Flow to shop for [m^3/s]. */
  readonly shopFlow_m3_s: number;
  /** Flow of all injectors held open over the root of pressure [m^3/s per Pa^0.5]. */
  readonly injectors: number;
  /** The points, in the order in which a driver meets them. */
  readonly points: readonly SolvedPoint[];
}

/** Duty of an injector that stands in where none is named [-]: the aim. */
const STAND_IN_DUTY = CRITERIA.dutyPeak.aim;

/** What is said of an engine-driven pump that slips as much as it displaces. */
const STILL =
  "The pump turns too slowly to deliver: the engine starts only with another pump or a hand primer.";

/** Solves the supply at every operating point of the plan. */
export function solveSupply(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
): SolvedSupply {
  const { values, working } = context;
  const { fuel, fuelVolume_m3_s: full_m3_s } = demand;
  const liquid = {
    density_kg_m3: fuel.density_kg_m3,
    viscosity_Pa_s: fuel.dynamicViscosity_Pa_s,
  };
  const shopFlow_m3_s = working.run("pump.shopFlow_m3_s", pumpFlowToAskFor, {
    required: full_m3_s,
    margin: CRITERIA.pumpMargin.aim,
  });
  const supply = new Supply(systemOf(values, liquid, full_m3_s));
  let dirty: Supply | undefined;
  const injectors = injectorsOf(context, demand, pressures);
  const isPumpKnown = figuresOf(values).some(({ points }) => points.length >= 2);
  const solve = (point: OperatingPoint, near: SupplyState | undefined): SolvedPoint => {
    const reference_Pa = values.regulator.reference === "manifold" ? point.manifold_Pa : 0;
    let running: RunningPump | undefined;
    const ended = (state: SupplyState | undefined, problem?: string): SolvedPoint => ({
      point,
      reference_Pa,
      pump: running,
      state,
      problem,
      isStill: problem === STILL,
    });
    try {
      running = isPumpKnown ? pumpsOf(values, point) : undefined;
      const pump = isPumpKnown ? running : shopFlow_m3_s;
      if (pump === undefined) {
        return ended(undefined, STILL);
      }
      const found = supply.solve({
        pump,
        demand_m3_s: point.burnt_m3_s,
        injectors,
        manifold_Pa: point.manifold_Pa,
        reference_Pa,
      }, near);
      return found.ok
        ? ended(found.state)
        : ended(undefined, `No state was found that the ${found.part} obeys.`);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return ended(undefined, `${error.message}.`);
    }
  };
  const points: SolvedPoint[] = [];
  let near: SupplyState | undefined;
  for (const point of pointsOf(values, demand, pressures)) {
    const before = points.at(-1);
    // An electric pump does not see the engine's speed: nothing differs from the power peak.
    const isSame = point.id === "maximum" && values.pump.drive === "electric" && before;
    const solved = isSame ? { ...before, point } : solve(point, near);
    near = solved.state ?? near;
    points.push(solved);
  }
  return {
    supply,
    dirty: () => dirty ??= new Supply(systemOf(values, liquid, full_m3_s, "dirty")),
    liquid,
    isPumpKnown,
    shopFlow_m3_s,
    injectors,
    points,
  };
}

/** The injectors of all stages held open; without one, what would carry the power at the aim of duty. */
function injectorsOf(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
): number {
  const stages = stagesOf(context);
  if (stages.length === 0) {
    return demand.fuelVolume_m3_s /
      (STAND_IN_DUTY * Math.sqrt(Math.max(LEAST_Pa, pressures.differentialPeak_Pa)));
  }
  const lighter = Math.sqrt(RATING_DENSITY_KG_M3 / demand.fuel.density_kg_m3);
  return stages.reduce(
    (sum, { count, ratedFlow_m3_s, ratedPressure_Pa }) =>
      sum + count * ratedFlow_m3_s * lighter / Math.sqrt(ratedPressure_Pa),
    0,
  );
}

/** The least pressure across the injectors that anything is reckoned with [Pa]. */
const LEAST_Pa = 1e4;

/** One of the points. */
export function pointOf(solved: SolvedSupply, id: PointId): SolvedPoint | undefined {
  return solved.points.find(({ point }) => point.id === id);
}

/** Pressure before the injectors, in the mean [Pa, gauge]. */
export function railOf({ injectors }: SupplyState): number {
  return injectors.reduce((sum, { pressure_Pa }) => sum + pressure_Pa, 0) / injectors.length;
}

/**
 * Pressure that the pumps have to add for a flow at the power peak, of which a part is burnt
 * [Pa]; undefined where no state was found there.
 */
export function askedAtPeak(
  solved: SolvedSupply,
  flow_m3_s: number,
  burnt_m3_s: number,
): number | undefined {
  const peak = pointOf(solved, "peak");
  return peak?.state &&
    solved.supply.asked_Pa(flow_m3_s, burnt_m3_s, peak.reference_Pa, peak.state);
}

/**
 * Pressure across the injectors at full power while so much is burnt, at the speed where it is
 * lowest [Pa]; undefined where the supply does not tell. Past what the plan's pumps hold, ones that
 * suffice stand in: how far the pumps reach is a question of its own.
 */
export function acrossAt(
  { values }: Context,
  solved: SolvedSupply,
  burnt_m3_s: number,
): number | undefined {
  if (values.rail.bore === undefined && !solved.isPumpKnown) return undefined;
  const lowest = [pointOf(solved, "peak"), pointOf(solved, "maximum")]
    .flatMap((each) => each?.state ? [{ each, across_Pa: acrossOf(each.point, each.state) }] : [])
    .toSorted((a, b) => a.across_Pa - b.across_Pa)[0]?.each;
  const state = lowest && burning(solved, lowest, burnt_m3_s);
  return state && acrossOf(lowest.point, state);
}

function acrossOf({ manifold_Pa }: OperatingPoint, state: SupplyState): number {
  return railOf(state) - manifold_Pa;
}

/** The supply at a point while so much is burnt, by its own pumps if they hold the pressure then. */
function burning(
  { supply, injectors }: SolvedSupply,
  { point, reference_Pa, pump, state: near }: SolvedPoint,
  burnt_m3_s: number,
): SupplyState | undefined {
  if (near === undefined) return undefined;
  const by = (moved: RunningPump | number): SupplyState | undefined => {
    const found = supply.solve({
      pump: moved,
      demand_m3_s: burnt_m3_s,
      injectors,
      manifold_Pa: point.manifold_Pa,
      reference_Pa,
    }, near);
    return found.ok ? found.state : undefined;
  };
  const own = burnt_m3_s === point.burnt_m3_s ? near : pump && by(pump);
  if (own !== undefined && own.state !== "shut") return own;
  return by((1 + CRITERIA.pumpMargin.aim) * Math.max(burnt_m3_s, point.burnt_m3_s));
}
