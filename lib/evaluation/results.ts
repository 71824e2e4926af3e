/** The numbers of an evaluation, in SI. */
import type { DrillResults } from "./drill/drill.ts";
import type { BarResults } from "./subjects/bar.ts";
import type { HeatResults } from "./subjects/heat.ts";
import type { DemandResults } from "./subjects/demand.ts";
import type { InjectorResults } from "./subjects/injectors.ts";
import type { LineResults } from "./subjects/lines.ts";
import type { PortResults } from "./subjects/port.ts";
import type { PressureResults } from "./subjects/pressures.ts";
import type { ProofResults } from "./subjects/proof.ts";
import type { PumpResults } from "./subjects/pump.ts";
import type { RailResults } from "./subjects/rail.ts";
import type { SupplyResults } from "./subjects/supply.ts";
import type { SurgeResults } from "./subjects/surge.ts";
import type { VapourResults } from "./subjects/vapour.ts";
import type { WiringResults } from "./subjects/wiring.ts";

/** All results; a subject that could not be computed is undefined and its checks say why. */
export interface Results {
  /** Fuel and time for it. */
  readonly demand: DemandResults | undefined;
  /** Air, manifold, rail, and across the injectors. */
  readonly pressures: PressureResults | undefined;
  /** Stage by stage. */
  readonly injectors: InjectorResults | undefined;
  /** Need, delivery and margin. */
  readonly pump: PumpResults | undefined;
  /** The supply at each operating point, and the pressures on the way. */
  readonly supply: SupplyResults | undefined;
  /** Voltage, current and fuse; undefined for a pump that the engine drives. */
  readonly wiring: WiringResults | undefined;
  /** Velocities and filters. */
  readonly lines: LineResults | undefined;
  /** Where the fuel might boil. */
  readonly vapour: VapourResults | undefined;
  /** Lift pump and surge tank; undefined without them. */
  readonly surge: SurgeResults | undefined;
  /** Warming of the tank, and priming. */
  readonly heat: HeatResults | undefined;
  /** Pressures and spread along the gallery. */
  readonly rail: RailResults | undefined;
  /** Wall and stress. */
  readonly bar: BarResults | undefined;
  /** Depths, thread and seat of the sensor port. */
  readonly port: PortResults | undefined;
  /** The rail laid out, its holes, seals, screws and plugs. */
  readonly drill: DrillResults;
  /** Pressures and numbers of the leak tests. */
  readonly proof: ProofResults | undefined;
}
