/** Stages of injectors at one running point: who injects, for how long, and what is needed. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";
import { massFlow, scaledFlow } from "@/lib/flow/mod.ts";
import { LEAST_DIFFERENTIAL_Pa } from "./differential.ts";
import { FUEL_FLOW } from "./limits.ts";
import {
  carriedFuel,
  fuelPerInjection,
  injectorDuty,
  neededStaticFlow,
  openTime,
  pulseWidth,
} from "./pulse.ts";

/** One stage of like injectors; the first of several is the primary. */
export interface Stage {
  /** Number of injectors in the whole engine. */
  readonly count: number;
  /** Flow of one, held open, at its rating [m^3/s]. */
  readonly ratedFlow_m3_s: number;
  /** Differential pressure of the rating [Pa]. */
  readonly ratedPressure_Pa: number;
  /** Density of the rating fluid [kg/m^3]. */
  readonly ratingDensity_kg_m3: number;
  /** Dead time at the voltage and pressure of the running point [s]. */
  readonly deadTime_s: number;
}

/** A running point of the engine as the injectors see it. */
export interface InjectionPoint {
  /** Fuel that the engine burns [kg/s]. */
  readonly fuel_kg_s: number;
  /** Density of the fuel as injected [kg/m^3]. */
  readonly density_kg_m3: number;
  /** Differential pressure across the injectors [Pa]. */
  readonly differential_Pa: number;
  /** Time between two injections of one injector [s]. */
  readonly interval_s: number;
  /** Duty that the needed flow is sized for [-]. */
  readonly dutyAim: number;
  /** Duty of the primary stage up to which it injects alone [-]. */
  readonly changeoverDuty: number;
}

/** What one stage does at a running point. */
export interface StageDuty {
  /** False when the primary stage injects alone and this is not it. */
  readonly injects: boolean;
  /** Static flow of one injector at this point [m^3/s]. */
  readonly staticFlow_m3_s: number;
  /** Share of the engine's fuel [-]. */
  readonly share: number;
  /** Fuel of one injection [kg]. */
  readonly fuelPerInjection_kg: number;
  /** Time open, dead time not counted [s]. */
  readonly openTime_s: number;
  /** Whole pulse, dead time included; 0 for a stage that does not inject [s]. */
  readonly pulse_s: number;
  /** Whole pulse over interval; above 1 the fuel can't be given [-]. */
  readonly duty: number;
  /** Rated flow with which the pulse meets the aim; none when dead time alone exceeds it [m^3/s]. */
  readonly flowNeededAtRating_m3_s: number | undefined;
}

/** What all stages do at a running point. */
export interface StageDuties {
  /** Each stage, in the order given. */
  readonly stages: readonly StageDuty[];
  /** The highest duty of any stage [-]. */
  readonly duty: number;
  /** Fuel above which the secondary joins; none with a single stage [kg/s]. */
  readonly changeoverFuel_kg_s: number | undefined;
}

/**
 * Share [-] of the fuel that a stage gives while stages share it by their static flows.
 *
 * Source: equal open time for all stages.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(stageShare({ stageFlow: 0.02, allFlow: 0.08 }), 0.25);
 * ```
 */
export const stageShare: Method<Record<"stageFlow" | "allFlow", MethodInput>> = method({
  id: "stage-share",
  title: "Share of the fuel that a stage gives",
  inputs: {
    stageFlow: {
      ...FUEL_FLOW,
      says: "Mass flow of the stage with all its injectors held open",
      symbol: "\\dot m_i",
    },
    allFlow: {
      ...FUEL_FLOW,
      min: 1e-9,
      max: 200,
      says: "The same of all stages together",
      symbol: "\\sum \\dot m",
    },
  },
  output: { name: "share", unit: "-", min: 0, max: 1, says: "Share of the fuel", symbol: "s" },
  formula: "stageFlow / allFlow",
  source: "Equal open time for all stages, so that each gives in proportion to its static flow",
  compute: ({ stageFlow, allFlow }) => stageFlow / allFlow,
});

/**
 * Finds what each stage does at a running point, and records how: the primary alone up to
 * the changeover duty, above it all stages in proportion to their static flows.
 *
 * @param working The record.
 * @param section Where the results belong, like `injectors.peak`; the stage's index follows.
 * @param stages The stages, primary first; at least one.
 * @param point The running point.
 * @returns The stages' duties, or `undefined` when the differential pressure is below
 * {@linkcode LEAST_DIFFERENTIAL_Pa} and nothing can be said.
 * @throws {InputError} When a number lies outside the range of the method it goes into.
 *
 * @example Four injectors of 1000 cm3/min on petrol, 7000 rev/min
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const duties = stageDuty(new Working(), "injectors.peak", [{
 *   count: 4,
 *   ratedFlow_m3_s: 1000e-6 / 60,
 *   ratedPressure_Pa: 3e5,
 *   ratingDensity_kg_m3: 684,
 *   deadTime_s: 1.2e-3,
 * }], {
 *   fuel_kg_s: 0.03,
 *   density_kg_m3: 745,
 *   differential_Pa: 3e5,
 *   interval_s: 120 / 7000,
 *   dutyAim: 0.8,
 *   changeoverDuty: 0.6,
 * });
 *
 * assertAlmostEquals(duties?.duty ?? 0, 0.70, 0.01);
 * ```
 */
export function stageDuty(
  working: Working,
  section: string,
  stages: readonly Stage[],
  point: InjectionPoint,
): StageDuties | undefined {
  if (!(point.differential_Pa >= LEAST_DIFFERENTIAL_Pa)) return undefined;
  const flows = staticFlows(working, section, stages, point);
  const changeoverFuel_kg_s = changeoverFuel(working, section, stages, flows, point);
  const primaryAlone = changeoverFuel_kg_s !== undefined && point.fuel_kg_s <= changeoverFuel_kg_s;
  const fuels = primaryAlone
    ? stages.map((_, i) => i === 0 ? point.fuel_kg_s : 0)
    : sharedFuel(working, section, stages, flows, point);
  const duties = stages.map((stage, i) => {
    const staticFlow_m3_s = flows[i] as number;
    if (primaryAlone && i > 0) return idle(staticFlow_m3_s);
    const fuel_kg_s = fuels[i] as number;
    return oneStage(working, `${section}.${i}`, stage, point, { staticFlow_m3_s, fuel_kg_s });
  });
  const duty = duties.reduce((most, each) => Math.max(most, each.duty), 0);
  return { stages: duties, duty, changeoverFuel_kg_s };
}

/** Where the stages' fuel ends: a duty, at a running point. */
export type CeilingPoint =
  & Pick<InjectionPoint, "density_kg_m3" | "differential_Pa" | "interval_s">
  & {
    /** Duty that no stage may pass [-]. */
    readonly dutyLimit: number;
  };

/**
 * Fuel [kg/s] that all stages together carry at a duty limit, sharing in proportion to
 * their static flows: they open for the same time, so the longest dead time rules.
 *
 * @param working The record.
 * @param section Where the results belong, like `injectors.ceiling`.
 * @param stages The stages.
 * @param point The duty limit and the running point.
 * @returns The fuel; 0 when the differential pressure is below
 * {@linkcode LEAST_DIFFERENTIAL_Pa} or dead time takes all.
 * @throws {InputError} When a number lies outside the range of the method it goes into.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const fuel_kg_s = fuelCarried(new Working(), "injectors.ceiling", [{
 *   count: 4,
 *   ratedFlow_m3_s: 1000e-6 / 60,
 *   ratedPressure_Pa: 3e5,
 *   ratingDensity_kg_m3: 684,
 *   deadTime_s: 1.2e-3,
 * }], { density_kg_m3: 745, differential_Pa: 3e5, interval_s: 120 / 7000, dutyLimit: 0.9 });
 *
 * assertAlmostEquals(fuel_kg_s, 0.0395, 1e-4);
 * ```
 */
export function fuelCarried(
  working: Working,
  section: string,
  stages: readonly Stage[],
  point: CeilingPoint,
): number {
  if (!(point.differential_Pa >= LEAST_DIFFERENTIAL_Pa)) return 0;
  const flows = staticFlows(working, section, stages, point);
  const deadTime = stages.reduce((longest, stage) => Math.max(longest, stage.deadTime_s), 0);
  return stages.reduce(
    (sum, stage, i) =>
      sum + working.run(`${section}.${i}.carried_kg_s`, carriedFuel, {
        count: stage.count,
        staticFlow: flows[i] as number,
        density: point.density_kg_m3,
        duty: point.dutyLimit,
        deadTime,
        interval: point.interval_s,
      }),
    0,
  );
}

function staticFlows(
  working: Working,
  section: string,
  stages: readonly Stage[],
  point: Pick<InjectionPoint, "density_kg_m3" | "differential_Pa">,
): number[] {
  return stages.map((stage, i) =>
    working.run(`${section}.${i}.staticFlow_m3_s`, scaledFlow, {
      flow: stage.ratedFlow_m3_s,
      differential: stage.ratedPressure_Pa,
      newDifferential: point.differential_Pa,
      density: stage.ratingDensity_kg_m3,
      newDensity: point.density_kg_m3,
    })
  );
}

function changeoverFuel(
  working: Working,
  section: string,
  stages: readonly Stage[],
  flows: readonly number[],
  point: InjectionPoint,
): number | undefined {
  const [primary] = stages;
  const [staticFlow] = flows;
  if (stages.length < 2 || primary === undefined || staticFlow === undefined) return undefined;
  return working.run(`${section}.changeoverFuel_kg_s`, carriedFuel, {
    count: primary.count,
    staticFlow,
    density: point.density_kg_m3,
    duty: point.changeoverDuty,
    deadTime: primary.deadTime_s,
    interval: point.interval_s,
  });
}

function sharedFuel(
  working: Working,
  section: string,
  stages: readonly Stage[],
  flows: readonly number[],
  point: InjectionPoint,
): number[] {
  if (stages.length === 1) return [point.fuel_kg_s];
  const open = stages.map((stage, i) =>
    working.run(`${section}.${i}.openFlow_kg_s`, massFlow, {
      flow: stage.count * (flows[i] as number),
      density: point.density_kg_m3,
    })
  );
  const allFlow = open.reduce((sum, flow) => sum + flow, 0);
  return open.map((stageFlow, i) =>
    point.fuel_kg_s * working.run(`${section}.${i}.share`, stageShare, { stageFlow, allFlow })
  );
}

function oneStage(
  working: Working,
  section: string,
  stage: Stage,
  point: InjectionPoint,
  own: { readonly staticFlow_m3_s: number; readonly fuel_kg_s: number },
): StageDuty {
  const { density_kg_m3: density, interval_s: interval } = point;
  const { staticFlow_m3_s, fuel_kg_s } = own;
  const fuelPerInjection_kg = working.run(`${section}.fuelPerInjection_kg`, fuelPerInjection, {
    fuelFlow: fuel_kg_s,
    count: stage.count,
    interval,
  });
  const openTime_s = working.run(`${section}.openTime_s`, openTime, {
    fuelPerInjection: fuelPerInjection_kg,
    density,
    staticFlow: staticFlow_m3_s,
  });
  const pulse_s = working.run(`${section}.pulse_s`, pulseWidth, {
    openTime: openTime_s,
    deadTime: stage.deadTime_s,
  });
  const duty = working.run(`${section}.duty`, injectorDuty, { pulse: pulse_s, interval });
  return {
    injects: true,
    staticFlow_m3_s,
    share: point.fuel_kg_s > 0 ? fuel_kg_s / point.fuel_kg_s : 0,
    fuelPerInjection_kg,
    openTime_s,
    pulse_s,
    duty,
    flowNeededAtRating_m3_s: neededAtRating(working, section, stage, point, fuelPerInjection_kg),
  };
}

function neededAtRating(
  working: Working,
  section: string,
  stage: Stage,
  point: InjectionPoint,
  fuel_kg: number,
): number | undefined {
  const { density_kg_m3: density, interval_s: interval, dutyAim } = point;
  if (dutyAim * interval <= stage.deadTime_s) return undefined;
  const flow = working.run(`${section}.neededFlow_m3_s`, neededStaticFlow, {
    fuelPerInjection: fuel_kg,
    density,
    interval,
    dutyAim,
    deadTime: stage.deadTime_s,
  });
  return working.run(`${section}.flowNeededAtRating_m3_s`, scaledFlow, {
    flow,
    differential: point.differential_Pa,
    newDifferential: stage.ratedPressure_Pa,
    density,
    newDensity: stage.ratingDensity_kg_m3,
  });
}

function idle(staticFlow_m3_s: number): StageDuty {
  return {
    injects: false,
    staticFlow_m3_s,
    share: 0,
    fuelPerInjection_kg: 0,
    openTime_s: 0,
    pulse_s: 0,
    duty: 0,
    flowNeededAtRating_m3_s: undefined,
  };
}
