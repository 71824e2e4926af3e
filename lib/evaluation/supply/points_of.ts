/** The operating points that a plan is looked at. */
import { known } from "../context.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { DemandResults } from "../subjects/demand.ts";
import type { PressureResults } from "../subjects/pressures.ts";
import type { PumpDrive } from "./pumps_of.ts";

/** Which operating point. */
export type PointId = "prime" | "cranking" | "idle" | "cruise" | "peak" | "maximum";

/** One operating point as the engine asks for it. */
export interface OperatingPoint extends PumpDrive {
  /** Which. */
  readonly id: PointId;
  /** What it is called. */
  readonly name: string;
  /** Fuel that the engine burns [m^3/s]. */
  readonly burnt_m3_s: number;
  /** Manifold over the outside air [Pa]. */
  readonly manifold_Pa: number;
}

/** The points, in the order in which a driver meets them. */
export function pointsOf(
  values: PlanValues,
  demand: DemandResults,
  pressures: PressureResults,
): OperatingPoint[] {
  const { operating, engine, pump, injectors } = values;
  const density = demand.fuel.density_kg_m3;
  const full_m3_s = demand.fuelVolume_m3_s;
  // Without the swept volume idle is not known; nothing burnt is the harder case for the return.
  const idle_m3_s = (demand.fuelIdle_kg_s ?? 0) / density;
  const share = (reduced: number | undefined): number =>
    pump.control === "reduced" ? reduced ?? 1 : 1;
  const maximum_rev_s = known(engine.maximumSpeed, "engine.maximumSpeed");
  const idleManifold_Pa = pressures.manifoldIdle_Pa - pressures.ambient_Pa;
  const boost_Pa = pressures.manifoldPeak_Pa - pressures.ambient_Pa;
  return [
    {
      id: "prime",
      name: "Key on, engine standing",
      battery_V: operating.primeVoltage,
      engine_rev_s: 0,
      burnt_m3_s: 0,
      manifold_Pa: 0,
    },
    {
      id: "cranking",
      name: "Cranking",
      battery_V: operating.crankVoltage,
      engine_rev_s: CRANKING_rev_s,
      burnt_m3_s: idle_m3_s,
      manifold_Pa: 0,
    },
    {
      id: "idle",
      name: "Idle",
      battery_V: operating.idleVoltage * share(pump.idleShare),
      engine_rev_s: engine.idleSpeed ?? CRANKING_rev_s,
      burnt_m3_s: idle_m3_s,
      manifold_Pa: idleManifold_Pa,
    },
    {
      id: "cruise",
      name: "Cruise",
      battery_V: operating.cruiseVoltage * share(pump.cruiseShare),
      engine_rev_s: operating.cruiseSpeed ?? engine.powerSpeed / 2,
      burnt_m3_s: full_m3_s * operating.cruiseShare,
      manifold_Pa: operating.cruisePressure - pressures.ambient_Pa,
    },
    {
      id: "peak",
      name: "Power peak",
      battery_V: injectors.lowestVoltage,
      engine_rev_s: engine.powerSpeed,
      burnt_m3_s: full_m3_s,
      manifold_Pa: boost_Pa,
    },
    {
      id: "maximum",
      name: "Maximum speed",
      battery_V: injectors.lowestVoltage,
      engine_rev_s: maximum_rev_s,
      burnt_m3_s: full_m3_s,
      manifold_Pa: boost_Pa,
    },
  ];
}

/** Speed at which a starter turns an engine [rev/s]: 200 rpm; common practice, no source. */
const CRANKING_rev_s = 200 / 60;
