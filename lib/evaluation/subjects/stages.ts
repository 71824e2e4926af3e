/** The injector stages that a plan names. */
import type { Stage } from "@/lib/injector/mod.ts";
import { RATING_DENSITY_KG_M3 } from "@/lib/plan/mod.ts";
import type { Context } from "../context.ts";

/** An injector to size with where the plan names none; the needed flow does not depend on its flow. */
const STAND_IN = { flow: 1e-5, pressure: 3e5, deadTime: 1.3e-3, perCylinder: 1 } as const;

/** The stages as the injector room takes them. */
export function stagesOf({ values }: Context): Stage[] {
  return values.injectors.stages.flatMap((stage): Stage[] =>
    stage.flow === undefined ? [] : [stageOf(values, { ...stage, flow: stage.flow })]
  );
}

/** The injector to shop for: with what is known of the primary stage but its flow. */
export function standInStage({ values }: Context): Stage {
  return stageOf(values, { ...STAND_IN, ...values.injectors.stages[0], flow: STAND_IN.flow });
}

function stageOf(
  { engine }: Context["values"],
  injector: { readonly [Name in keyof typeof STAND_IN]: number },
): Stage {
  return {
    count: injector.perCylinder * engine.cylinders,
    ratedFlow_m3_s: injector.flow,
    ratedPressure_Pa: injector.pressure,
    ratingDensity_kg_m3: RATING_DENSITY_KG_M3,
    deadTime_s: injector.deadTime,
  };
}
