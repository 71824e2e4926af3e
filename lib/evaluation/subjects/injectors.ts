/** Whether the injectors carry the power, and idle well. */
import { overSmallestPulse, type Stage, type StageDuties, stageDuty } from "@/lib/injector/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { DemandResults } from "./demand.ts";
import type { PressureResults } from "./pressures.ts";
import { stagesOf, standInStage } from "./stages.ts";

/** What one stage was found to be. */
export interface StageResults {
  /** Injectors of the stage in the whole engine. */
  readonly count: number;
  /** Rated flow of one [m^3/s]. */
  readonly ratedFlow_m3_s: number;
  /** Differential pressure of the rating [Pa]. */
  readonly ratedPressure_Pa: number;
  /** Static flow of one at full power with the fuel in use [m^3/s]. */
  readonly staticFlow_m3_s: number;
  /** The same by mass [kg/s]. */
  readonly staticFlow_kg_s: number;
  /** Dead time at the lowest voltage [s]. */
  readonly deadTime_s: number;
  /** Whole pulse at the power peak [s]. */
  readonly pulsePeak_s: number;
  /** Its share of the interval. */
  readonly dutyPeak: number;
  /** Share of the interval at maximum speed. */
  readonly dutyMaximum: number;
  /** Rated flow that would meet the aim at both speeds [m^3/s]; none when dead time leaves no room. */
  readonly neededFlow_m3_s: number | undefined;
}

/** What was found for the injectors. */
export interface InjectorResults {
  /** The stages, primary first; none when the plan names no injector. */
  readonly stages: readonly StageResults[];
  /** Fuel above which the secondary joins [kg/s]. */
  readonly changeoverFuel_kg_s: number | undefined;
  /** Open time of a primary injector at idle [s]. */
  readonly idleOpenTime_s: number | undefined;
  /** The same over its smallest repeatable pulse. */
  readonly overSmallest: number | undefined;
  /** Rated flow to shop for when the plan names no injector [m^3/s]. */
  readonly shopFlow_m3_s: number | undefined;
  /** Differential pressure of that rating [Pa]. */
  readonly shopPressure_Pa: number | undefined;
}

const OWED = [CRITERIA.dutyPeak, CRITERIA.dutyMaximum, CRITERIA.idlePulse] as const;

/**
 * Judges the stages at the power peak and at maximum speed, and the primary at idle.
 *
 * @param context The evaluation under way.
 * @param demand The fuel need.
 * @param pressures Pressures as the injectors see them.
 * @param enough_Pa Pressure across them at full power with pumps that suffice: what to shop for goes by it.
 */
export function judgeInjectors(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
  enough_Pa: number = pressures.differentialPeak_Pa,
): InjectorResults | undefined {
  return context.subject(OWED, () => {
    const named = stagesOf(context);
    const given = named.length > 0;
    const sought = standInStage(context);
    const stages = given ? named : [sought];
    const at = (section: string, interval_s: number, differential_Pa: number) =>
      stageDuty(context.working, section, stages, {
        fuel_kg_s: demand.fuel_kg_s,
        density_kg_m3: demand.fuel.density_kg_m3,
        differential_Pa,
        interval_s,
        dutyAim: CRITERIA.dutyPeak.aim,
        changeoverDuty: context.values.injectors.changeover,
      });
    const both = (section: string, differential_Pa: number): Both => [
      at(`${section}.peak`, demand.intervalPeak_s, differential_Pa),
      at(`${section}.maximum`, demand.intervalMaximum_s, differential_Pa),
    ];
    const held = both("injectors", pressures.differentialPeak_Pa);
    const [peak, maximum] = held;
    if (!peak || !maximum) return withoutPressure(context);
    // Nobody should buy injectors for the pressure that a pump too weak for the engine leaves.
    const isShort = enough_Pa > pressures.differentialPeak_Pa * (1 + SHORT);
    const enough = isShort ? both("injectors.pumpSuffices", enough_Pa) : held;
    const needed = stages.map((_, i) => {
      const [atPeak, atMaximum] = enough.map((each) => each?.stages[i]?.flowNeededAtRating_m3_s);
      return most(atPeak, atMaximum);
    });
    if (!given) return withoutInjectors(context, sought, needed[0]);
    const wanted = needed.map((flow) => wantOf(context, flow, isShort));
    judgeDuty(context, "dutyPeak", peak, wanted);
    judgeDuty(context, "dutyMaximum", maximum, wanted);
    return {
      stages: stages.map((stage, i) => stageResults(stage, demand, [peak, maximum], i, needed[i])),
      changeoverFuel_kg_s: peak.changeoverFuel_kg_s,
      ...judgeIdle(context, demand, pressures, stages),
      shopFlow_m3_s: undefined,
      shopPressure_Pa: undefined,
    };
  });
}

/** Duties at the power peak and at maximum speed. */
type Both = readonly [peak: StageDuties | undefined, maximum: StageDuties | undefined];

/** Share of the pressure across the injectors that may be missing before the pump counts as too weak [-]. */
const SHORT = 1e-3;

function wantOf(context: Context, flow: number | undefined, isShort: boolean): string {
  if (flow === undefined) {
    return "Dead time alone takes the time there is: use injectors that open faster.";
  }
  return isShort
    ? `The pump does not hold the pressure; once it does, the aim needs ${
      context.say(flow, "flow")
    } at the rating.`
    : `The aim needs ${context.say(flow, "flow")} at the rating.`;
}

function most(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? undefined : Math.max(a, b);
}

function judgeDuty(
  context: Context,
  which: "dutyPeak" | "dutyMaximum",
  duties: StageDuties,
  wanted: readonly string[],
): void {
  const several = duties.stages.length > 1;
  const section = which === "dutyPeak" ? "peak" : "maximum";
  duties.stages.forEach((stage, i) => {
    context.check(CRITERIA[which], {
      value: stage.duty,
      because: stage.injects
        ? `Pulses of ${context.say(stage.pulse_s, "duration")} take ${
          context.say(stage.duty, "ratio")
        } of the time between injections. ${wanted[i]}`
        : "The primary stage injects alone here.",
      ...(several && { part: i + 1 }),
      ...(stage.injects && { result: `injectors.${section}.${i}.duty` }),
    });
  });
}

function stageResults(
  stage: Stage,
  demand: DemandResults,
  [peak, maximum]: readonly [StageDuties, StageDuties],
  i: number,
  needed: number | undefined,
): StageResults {
  const at = peak.stages[i];
  const staticFlow_m3_s = at?.staticFlow_m3_s ?? 0;
  return {
    count: stage.count,
    ratedFlow_m3_s: stage.ratedFlow_m3_s,
    ratedPressure_Pa: stage.ratedPressure_Pa,
    staticFlow_m3_s,
    staticFlow_kg_s: staticFlow_m3_s * demand.fuel.density_kg_m3,
    deadTime_s: stage.deadTime_s,
    pulsePeak_s: at?.pulse_s ?? 0,
    dutyPeak: at?.duty ?? 0,
    dutyMaximum: maximum.stages[i]?.duty ?? 0,
    neededFlow_m3_s: needed,
  };
}

/** The primary alone feeds the idle; its open time must stay above what it repeats. */
function judgeIdle(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
  stages: readonly Stage[],
): Pick<InjectorResults, "idleOpenTime_s" | "overSmallest"> {
  const [primary] = stages;
  const smallest = context.values.injectors.stages[0]?.smallestPulse;
  if (demand.fuelIdle_kg_s === undefined || !primary || smallest === undefined) {
    context.check(CRITERIA.idlePulse, {
      value: undefined,
      because: "Enter the swept volume: fuel at idle is found by the air route.",
    });
    return { idleOpenTime_s: undefined, overSmallest: undefined };
  }
  const idle = stageDuty(context.working, "injectors.idle", stages.slice(0, 1), {
    fuel_kg_s: demand.fuelIdle_kg_s,
    density_kg_m3: demand.fuel.density_kg_m3,
    differential_Pa: pressures.differentialIdle_Pa,
    interval_s: demand.intervalIdle_s,
    dutyAim: CRITERIA.dutyPeak.aim,
    changeoverDuty: context.values.injectors.changeover,
  });
  const open_s = idle?.stages[0]?.openTime_s;
  if (open_s === undefined) {
    context.check(CRITERIA.idlePulse, { value: undefined, because: "No pressure at idle." });
    return { idleOpenTime_s: undefined, overSmallest: undefined };
  }
  const overSmallest = context.working.run("injectors.overSmallest", overSmallestPulse, {
    openTime: open_s,
    smallest,
  });
  context.check(CRITERIA.idlePulse, {
    value: overSmallest,
    because: `At idle the injector is open ${context.say(open_s, "duration")}, and repeats from ${
      context.say(smallest, "duration")
    }.`,
    result: "injectors.overSmallest",
  });
  return { idleOpenTime_s: open_s, overSmallest };
}

function withoutPressure(context: Context): undefined {
  for (const criterion of OWED) {
    context.check(criterion, {
      value: undefined,
      because:
        "The pressure across the injectors is too low to say anything: raise the set pressure.",
    });
  }
  return undefined;
}

function withoutInjectors(
  context: Context,
  { count, ratedPressure_Pa }: Stage,
  needed: number | undefined,
): InjectorResults {
  const shop = needed === undefined
    ? "No flow is enough with this dead time."
    : `Each of ${count} injectors needs ${context.say(needed, "flow")} at ${
      context.say(ratedPressure_Pa, "pressure")
    } to meet the aim.`;
  for (const criterion of [CRITERIA.dutyPeak, CRITERIA.dutyMaximum]) {
    context.check(criterion, { value: undefined, because: `No injector is named yet. ${shop}` });
  }
  context.check(CRITERIA.idlePulse, {
    value: undefined,
    because:
      "No injector is named yet. Its smallest repeatable pulse decides, and a larger injector idles worse.",
  });
  return {
    stages: [],
    changeoverFuel_kg_s: undefined,
    idleOpenTime_s: undefined,
    overSmallest: undefined,
    shopFlow_m3_s: needed,
    shopPressure_Pa: ratedPressure_Pa,
  };
}
