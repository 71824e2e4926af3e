/** Whether the gallery feeds all injectors alike. */
import { meanVelocity, regimeOf, reynoldsNumber } from "@/lib/flow/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import {
  flowSpread,
  type RailSpec,
  type RailSteady,
  railSteady,
  type RailVolumes,
  railVolumes,
} from "@/lib/rail/mod.ts";
import type { SupplyState } from "@/lib/supply/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { DemandResults } from "./demand.ts";
import { ROUGHNESS_M, stationsOf } from "./gallery.ts";
import type { PressureResults } from "./pressures.ts";
import { pointOf, type SolvedSupply } from "../supply/solved.ts";
import type { InjectorResults } from "./injectors.ts";
import type { PumpResults } from "./pump.ts";

/** What was found for the gallery of one rail. */
export interface RailResults {
  /** Distances of the injectors from the feed end [m]. */
  readonly stations_m: readonly number[];
  /** Mean flow into one rail at the power peak [m^3/s]. */
  readonly flow_m3_s: number;
  /** Pressure across the injectors that the spread is taken of [Pa]. */
  readonly differential_Pa: number;
  /** Pressures and spread with steady flow. */
  readonly steady: RailSteady;
  /** Gallery against one shot; undefined without an injector. */
  readonly volumes: RailVolumes | undefined;
}

/** What feeds the rail. */
interface Fed {
  readonly demand: DemandResults;
  readonly solved: SolvedSupply;
  readonly pump: PumpResults | undefined;
}

/** Judges the spread of flow between the injectors of one rail. */
export function judgeRail(
  context: Context,
  { demand, solved, pump }: Fed,
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
    const stations_m = stationsOf(context.values);
    const flows = { demand, returned_m3_s: pump?.returned_m3_s ?? 0 };
    const spec = railSpecOf(context, flows, rail.bore, stations_m);
    const differential_Pa = pressures.differentialPeak_Pa;
    const state = pointOf(solved, "peak")?.state;
    const steady = isOneEnd(context.values) || state === undefined
      ? railSteady(context.working, "rail", { ...spec, injectorDifferential_Pa: differential_Pa })
      : fromNetwork(context, state, spec, differential_Pa);
    context.check(CRITERIA.railSpread, {
      value: steady.flowSpreadWorst,
      because: `${context.say(steady.inletVelocity_m_s, "velocity")} where it runs fastest; from ${
        formatShare(steady.flowSpreadNoRecovery)
      } to ${
        formatShare(steady.flowSpreadFullRecovery)
      }, as the flow gives back none or all of its speed. Waves come on top and are not in it.`,
      result: "rail.flowSpread",
    });
    return {
      stations_m,
      flow_m3_s: spec.flow_m3_s,
      differential_Pa,
      steady,
      volumes: volumesOf(context, demand, injectors, rail.bore),
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

/** Rails fed at one end, each for itself: the march along the gallery tells all. */
export function isOneEnd({ rail }: PlanValues): boolean {
  const isAlone = rail.count === 1 || rail.connection === "parallel";
  return rail.feed === "one-end" && isAlone;
}

/** The same numbers for rails that are fed in any other way, from the solved network. */
function fromNetwork(
  { working }: Context,
  state: SupplyState,
  spec: RailSpec,
  differential_Pa: number,
): RailSteady {
  const { bore_m: bore, density_kg_m3: density, viscosity_Pa_s: viscosity } = spec;
  const over = (pressure_Pa: number): number => pressure_Pa - state.junction_Pa;
  const noRecovery_Pa = state.injectors.map(({ pressure_Pa }) => over(pressure_Pa));
  const fullRecovery_Pa = state.injectors.map(({ recovered_Pa }) => over(recovered_Pa));
  const estimate_Pa = noRecovery_Pa.map((low, i) => (low + (fullRecovery_Pa[i] as number)) / 2);
  const spreadBy = (result: string, pressures_Pa: readonly number[]): number =>
    working.run(`rail.${result}`, flowSpread, {
      pressureSpread: Math.max(...pressures_Pa) - Math.min(...pressures_Pa),
      differential: differential_Pa,
    });
  const velocity = working.run("rail.velocity_m_s", meanVelocity, {
    flow: state.gallery_m3_s,
    bore,
  });
  const inletReynolds = velocity === 0
    ? 0
    : working.run("rail.reynolds", reynoldsNumber, { density, velocity, bore, viscosity });
  const flowSpreadNoRecovery = spreadBy("flowSpreadNoRecovery", noRecovery_Pa);
  const flowSpreadFullRecovery = spreadBy("flowSpreadFullRecovery", fullRecovery_Pa);
  return {
    inletVelocity_m_s: velocity,
    inletReynolds,
    inletRegime: regimeOf(inletReynolds),
    noRecovery_Pa,
    fullRecovery_Pa,
    estimate_Pa,
    flowSpread: spreadBy("flowSpread", estimate_Pa),
    flowSpreadNoRecovery,
    flowSpreadFullRecovery,
    flowSpreadWorst: Math.max(flowSpreadNoRecovery, flowSpreadFullRecovery),
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
