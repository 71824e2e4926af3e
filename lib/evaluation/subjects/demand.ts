/** How much fuel the engine needs, by power and by air. */
import { crankPower, type Demand, EFFICIENCY_BANDS, engineDemand } from "@/lib/engine/mod.ts";
import type { FuelState } from "@/lib/fuel/mod.ts";
import { type Context, known } from "../context.ts";
import { CRITERIA } from "../criteria.ts";

/** Fuel and time for it. */
export interface DemandResults extends Demand {
  /** Power at the crankshaft [W]. */
  readonly crankPower_W: number;
  /** Fuel that the plan is sized for [kg/s]. */
  readonly fuel_kg_s: number;
  /** The same as a volume, at rail temperature [m^3/s]. */
  readonly fuelVolume_m3_s: number;
  /** The fuel at rail temperature. */
  readonly fuel: FuelState;
}

const OWED = [CRITERIA.routes, CRITERIA.efficiency] as const;

/** Finds the fuel need and judges whether the two routes agree. */
export function judgeDemand(
  context: Context,
  surroundings: { readonly fuel: FuelState; readonly ambient_Pa: number },
): DemandResults | undefined {
  return context.subject(OWED, () => {
    const { engine, demand } = context.values;
    const { fuel, ambient_Pa } = surroundings;
    const crankPower_W = engine.powerAt === "crank"
      ? engine.power
      : context.working.run("demand.crankPower_W", crankPower, {
        wheelPower: engine.power,
        lossShare: engine.drivetrainLoss ?? 0,
      });
    const found = engineDemand(context.working, {
      cycle: engine.cycle,
      cylinders: engine.cylinders,
      displacement_m3: engine.displacement,
      power_W: crankPower_W,
      powerSpeed_rev_s: engine.powerSpeed,
      maximumSpeed_rev_s: known(engine.maximumSpeed, "engine.maximumSpeed"),
      idleSpeed_rev_s: engine.idleSpeed,
      bsfc_kg_J: known(demand.bsfc, "demand.bsfc"),
      fuel,
      fillingRatio: demand.filling,
      manifoldPressure_Pa: ambient_Pa + (engine.boost ?? 0),
      chargeTemperature_K: demand.chargeTemperature,
      lambda: demand.lambda,
      idleManifoldPressure_Pa: demand.idlePressure,
      idleLambda: 1,
    });
    const byAir = demand.route === "air" ? found.fuelByAir_kg_s : undefined;
    const fuel_kg_s = byAir ?? found.fuelByPower_kg_s;
    judgeRoutes(context, found.fuelByPower_kg_s, found.fuelByAir_kg_s, found.routeDifference);
    judgeEfficiency(context, found.overallEfficiency);
    return {
      ...found,
      crankPower_W,
      fuel_kg_s,
      fuelVolume_m3_s: fuel_kg_s / fuel.density_kg_m3,
      fuel,
    };
  });
}

function judgeRoutes(
  context: Context,
  byPower_kg_s: number,
  byAir_kg_s: number | undefined,
  difference: number | undefined,
): void {
  context.check(CRITERIA.routes, {
    value: difference === undefined ? undefined : Math.abs(difference),
    because: byAir_kg_s === undefined
      ? "Enter the swept volume, so that the air route can check the fuel need."
      : `Power and BSFC ask for ${context.say(byPower_kg_s, "massFlow")}, air for ${
        context.say(byAir_kg_s, "massFlow")
      }.`,
    result: "demand.routeDifference",
  });
}

function judgeEfficiency(context: Context, efficiency: number): void {
  const { cycle } = context.values.engine;
  const band = EFFICIENCY_BANDS[cycle];
  context.check(CRITERIA.efficiency, {
    value: efficiency,
    aim: [band.min, band.max],
    because:
      `Of the fuel's heat, this share would reach the crankshaft; ${cycle} engines at full power turn ${
        context.say(band.min, "ratio")
      } to ${context.say(band.max, "ratio")} of it into work.`,
    result: "demand.overallEfficiency",
  });
}
