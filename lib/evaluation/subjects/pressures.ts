/** Pressures in the air, the manifold, the rail, and across the injectors. */
import { injectorPressures } from "@/lib/injector/mod.ts";
import type { Context } from "../context.ts";

/** Pressures that follow from regulator, boost and altitude. */
export interface PressureResults {
  /** Outside air [Pa, absolute]. */
  readonly ambient_Pa: number;
  /** Manifold at full power [Pa, absolute]. */
  readonly manifoldPeak_Pa: number;
  /** Manifold at idle [Pa, absolute]. */
  readonly manifoldIdle_Pa: number;
  /** Rail at full power [Pa, gauge]. */
  readonly railPeak_Pa: number;
  /** Rail at idle [Pa, gauge]. */
  readonly railIdle_Pa: number;
  /** Across the injectors at full power [Pa]. */
  readonly differentialPeak_Pa: number;
  /** Across the injectors at idle [Pa]. */
  readonly differentialIdle_Pa: number;
}

/** Finds the pressures at full power and at idle; it owes no check. */
export function findPressures(context: Context, ambient_Pa: number): PressureResults | undefined {
  return context.subject([], () => {
    const { regulator, engine, demand } = context.values;
    const manifoldPeak_Pa = ambient_Pa + (engine.boost ?? 0);
    const manifoldIdle_Pa = demand.idlePressure;
    const regulated = {
      setPressure_Pa: regulator.setPressure,
      reference: regulator.reference,
      ambient_Pa,
    } as const;
    const peak = injectorPressures(context.working, "pressures.peak", {
      ...regulated,
      manifold_Pa: manifoldPeak_Pa,
    });
    const idle = injectorPressures(context.working, "pressures.idle", {
      ...regulated,
      manifold_Pa: manifoldIdle_Pa,
    });
    return {
      ambient_Pa,
      manifoldPeak_Pa,
      manifoldIdle_Pa,
      railPeak_Pa: peak.railPressure_Pa,
      railIdle_Pa: idle.railPressure_Pa,
      differentialPeak_Pa: peak.differential_Pa,
      differentialIdle_Pa: idle.differential_Pa,
    };
  });
}
