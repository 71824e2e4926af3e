/** The numbers of an evaluation, in SI. */
import type { Demand } from "@/lib/engine/mod.ts";
import type { FuelState } from "@/lib/fuel/mod.ts";
import type { BarResults } from "./subjects/bar.ts";
import type { InjectorResults } from "./subjects/injectors.ts";
import type { LineResults } from "./subjects/lines.ts";
import type { PortResults } from "./subjects/port.ts";
import type { ProofResults } from "./subjects/proof.ts";
import type { PumpResults } from "./subjects/pump.ts";
import type { RailResults } from "./subjects/rail.ts";

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

/** Pressures that follow from regulator, boost and altitude. */
export interface PressureResults {
  /** Outside air [Pa, absolute]. */
  readonly ambient_Pa: number;
  /** Manifold at full power and at idle [Pa, absolute]. */
  readonly manifoldPeak_Pa: number;
  readonly manifoldIdle_Pa: number;
  /** Rail at full power and at idle [Pa, gauge]. */
  readonly railPeak_Pa: number;
  readonly railIdle_Pa: number;
  /** Across the injectors at full power and at idle [Pa]. */
  readonly differentialPeak_Pa: number;
  readonly differentialIdle_Pa: number;
}

/** All results; a subject that could not be computed is undefined and its checks say why. */
export interface Results {
  readonly demand: DemandResults | undefined;
  readonly pressures: PressureResults | undefined;
  readonly injectors: InjectorResults | undefined;
  readonly pump: PumpResults | undefined;
  readonly lines: LineResults | undefined;
  readonly rail: RailResults | undefined;
  readonly bar: BarResults | undefined;
  readonly port: PortResults | undefined;
  readonly proof: ProofResults | undefined;
}
