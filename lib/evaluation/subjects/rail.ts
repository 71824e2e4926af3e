/** Whether the gallery feeds all injectors alike. */
import {
  type RailSpec,
  type RailSteady,
  railSteady,
  type RailVolumes,
  railVolumes,
} from "@/lib/rail/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { DemandResults } from "./demand.ts";
import type { PressureResults } from "./pressures.ts";
import type { InjectorResults } from "./injectors.ts";

/** What was found for the gallery of one rail. */
export interface RailResults {
  /** Distances of the injectors from the feed end [m]. */
  readonly stations_m: readonly number[];
  /** Mean flow into one rail at the power peak [m^3/s]. */
  readonly flow_m3_s: number;
  /** Pressures and spread with steady flow. */
  readonly steady: RailSteady;
  /** Gallery against one shot; undefined without an injector. */
  readonly volumes: RailVolumes | undefined;
}

/** Roughness of a gallery by how it was finished [m]; assumed. */
const ROUGHNESS_M = { drilled: 20e-6, reamed: 6e-6 } as const;

/** Where the injectors sit: the pitches in the middle of the bar. */
function stationsOf({ values }: Context): number[] {
  const { rail, engine } = values;
  const perRail = engine.cylinders / rail.count;
  const first = (rail.length - rail.pitch * (perRail - 1)) / 2;
  return Array.from({ length: perRail }, (_, i) => first + i * rail.pitch);
}

/** Judges the spread of flow between the injectors of one rail. */
export function judgeRail(
  context: Context,
  flows: { readonly demand: DemandResults; readonly returned_m3_s: number },
  pressures: PressureResults,
  injectors: InjectorResults | undefined,
): RailResults | undefined {
  return context.subject([CRITERIA.railSpread], () => {
    const { rail } = context.values;
    if (rail.bore === undefined) {
      context.check(CRITERIA.railSpread, {
        value: undefined,
        because: "Enter the bore of the gallery.",
      });
      return undefined;
    }
    const stations_m = stationsOf(context);
    const spec = railSpecOf(context, flows, rail.bore, stations_m);
    const steady = railSteady(context.working, "rail", {
      ...spec,
      injectorDifferential_Pa: pressures.differentialPeak_Pa,
    });
    context.check(CRITERIA.railSpread, {
      value: steady.flowSpreadWorst,
      because: `${context.say(steady.inletVelocity_m_s, "velocity")} at the feed end; from ${
        formatShare(steady.flowSpreadNoRecovery)
      } to ${
        formatShare(steady.flowSpreadFullRecovery)
      }, as the flow gives back none or all of its speed. Waves come on top and are not in it.`,
      result: "rail.flowSpread",
    });
    return {
      stations_m,
      flow_m3_s: spec.flow_m3_s,
      steady,
      volumes: volumesOf(context, flows.demand, injectors, rail.bore),
    };
  });
}

/** The gallery as the rail room takes it; with a return, what the engine leaves runs on through it. */
export function railSpecOf(
  { values }: Context,
  flows: { readonly demand: DemandResults; readonly returned_m3_s: number },
  bore_m: number,
  takeOffs_m: readonly number[],
): RailSpec {
  const { demand, returned_m3_s } = flows;
  return {
    bore_m,
    roughness_m: ROUGHNESS_M[values.rail.finish],
    takeOffs_m,
    flow_m3_s: demand.fuelVolume_m3_s / values.rail.count,
    throughFlow_m3_s: returned_m3_s / values.rail.count,
    density_kg_m3: demand.fuel.density_kg_m3,
    viscosity_Pa_s: demand.fuel.dynamicViscosity_Pa_s,
  };
}

function volumesOf(
  { values, working }: Context,
  demand: DemandResults,
  injectors: InjectorResults | undefined,
  bore_m: number,
): RailVolumes | undefined {
  const [primary] = injectors?.stages ?? [];
  if (!primary) return undefined;
  return railVolumes(working, "rail", {
    bore_m,
    length_m: values.rail.length,
    fuelPerInjection_kg: (primary.pulsePeak_s - primary.deadTime_s) * primary.staticFlow_kg_s,
    density_kg_m3: demand.fuel.density_kg_m3,
  });
}
