/** The evaluation: a plan in, all that is found for it out. */
import { ambientPressure } from "@/lib/engine/mod.ts";
import { type FuelState, fuelState } from "@/lib/fuel/mod.ts";
import { fuelSpecOf, type Plan, resolvePlan } from "@/lib/plan/mod.ts";
import { ceilingsOf } from "./ceilings.ts";
import { Context } from "./context.ts";
import { CRITERIA } from "./criteria.ts";
import type { Evaluation } from "./evaluation.ts";
import type { Results } from "./results.ts";
import { judgeDrill } from "./drill/drill.ts";
import { judgeBar } from "./subjects/bar.ts";
import { judgeDemand } from "./subjects/demand.ts";
import { judgeInjectors } from "./subjects/injectors.ts";
import { judgeLines } from "./subjects/lines.ts";
import { judgePort } from "./subjects/port.ts";
import { findPressures } from "./subjects/pressures.ts";
import { judgeProof } from "./subjects/proof.ts";
import { judgePump } from "./subjects/pump.ts";
import { judgeRail } from "./subjects/rail.ts";
import { heldPressures, judgeRegulator } from "./subjects/regulator.ts";
import { judgeSensor } from "./subjects/sensor.ts";
import { supplyResults } from "./subjects/supply.ts";
import { judgeSurge } from "./subjects/surge.ts";
import { findHeat } from "./subjects/heat.ts";
import { judgeVapour } from "./subjects/vapour.ts";
import { judgeWiring } from "./subjects/wiring.ts";
import { acrossAt, type SolvedSupply, solveSupply } from "./supply/solved.ts";

/** Checks that stand open when the fuel need itself can't be found. */
const ON_DEMAND = [
  CRITERIA.dutyPeak,
  CRITERIA.dutyMaximum,
  CRITERIA.idlePulse,
  CRITERIA.pumpMargin,
  CRITERIA.pressureHeld,
  CRITERIA.railSpread,
  CRITERIA.feedVelocity,
  CRITERIA.filterLoss,
  CRITERIA.inletVapour,
  CRITERIA.soakVapour,
] as const;

/**
 * Evaluates a plan. Pure: the same plan gives the same evaluation.
 *
 * @param plan A plan that `readPlan` accepted; `planReady()` must have been awaited once.
 * @returns Results, checks, ceilings and the working.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 * import { planReady, readPlan } from "@/lib/plan/mod.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "440 cc/min" }] },
 * });
 * assert(reading.ok);
 * const { checks } = evaluate(reading.plan);
 *
 * assert(checks.some((check) => check.id === "duty-peak" && check.verdict !== "open"));
 * ```
 */
export function evaluate(plan: Plan): Evaluation {
  const { values, assumed, missing, notes } = resolvePlan(plan);
  const context = new Context(values);
  const { results, solved } = resultsOf(context);
  return {
    results,
    checks: context.checks,
    ceilings: context.subject([], () => ceilingsOf(context, results, solved)) ?? [],
    working: context.working.uses,
    assumed,
    missing,
    notes,
  };
}

function resultsOf(
  context: Context,
): { readonly results: Results; readonly solved: SolvedSupply | undefined } {
  const { working, values } = context;
  const ambient_Pa = working.run("pressures.ambient_Pa", ambientPressure, {
    altitude: values.engine.altitude,
  });
  const fuelAt = (prefix: string, temperature_K: number): FuelState | undefined =>
    context.subject([], () => fuelState(working, prefix, fuelSpecOf(values.fuel), temperature_K));
  const fuel = fuelAt("fuel", values.fuel.temperature);
  const shopFuel = fuelAt("shopFuel", values.proof.temperature);
  const demand = fuel && judgeDemand(context, { fuel, ambient_Pa });
  const pressures = findPressures(context, ambient_Pa);
  const solved = demand && pressures &&
    context.subject(ON_DEMAND, () => solveSupply(context, demand, pressures));
  const fed = demand && pressures
    ? solved ? feed(context, demand, pressures, solved) : NOTHING
    : withoutDemand(context);
  const proof = shopFuel && judgeProof(context, { fuel: shopFuel, ambient_Pa });
  judgeSensor(context, proof);
  const bar = judgeBar(context, proof);
  const port = judgePort(context);
  const drill = judgeDrill(context, {
    bar,
    port,
    proof_Pa: proof?.pressures.proofPressure_Pa,
  });
  return { results: { demand, pressures, ...fed, bar, port, drill, proof }, solved };
}

type Fed = Pick<
  Results,
  | "injectors"
  | "pump"
  | "lines"
  | "rail"
  | "supply"
  | "wiring"
  | "vapour"
  | "surge"
  | "heat"
>;

const NOTHING: Fed = {
  injectors: undefined,
  pump: undefined,
  lines: undefined,
  rail: undefined,
  supply: undefined,
  wiring: undefined,
  vapour: undefined,
  surge: undefined,
  heat: undefined,
};

function feed(
  context: Context,
  demand: NonNullable<Results["demand"]>,
  pressures: NonNullable<Results["pressures"]>,
  solved: SolvedSupply,
): Fed {
  // What the injectors give follows from the pressure that they really see.
  const held = heldPressures(context, pressures, solved);
  const enough_Pa = acrossAt(context, solved, demand.fuelVolume_m3_s);
  const injectors = judgeInjectors(context, demand, held, enough_Pa);
  const wiring = judgeWiring(context, solved);
  const pump = judgePump(context, demand, solved, wiring);
  judgeRegulator(context, solved);
  const lines = judgeLines(context, demand, solved);
  const rail = judgeRail(context, { demand, solved, pump }, held, injectors);
  const vapour = judgeVapour(context, pressures.ambient_Pa, solved);
  const surge = judgeSurge(context, demand, solved);
  const heat = findHeat(context, demand, solved);
  const supply = supplyResults(context, solved);
  return { injectors, wiring, pump, lines, rail, vapour, surge, heat, supply };
}

function withoutDemand(context: Context): Fed {
  for (const criterion of ON_DEMAND) {
    context.check(criterion, { value: undefined, because: "The fuel need could not be found." });
  }
  return NOTHING;
}
