/** The numbers of an evaluation, in SI. */
import type { BarResults } from "./subjects/bar.ts";
import type { DemandResults } from "./subjects/demand.ts";
import type { InjectorResults } from "./subjects/injectors.ts";
import type { LineResults } from "./subjects/lines.ts";
import type { PortResults } from "./subjects/port.ts";
import type { PressureResults } from "./subjects/pressures.ts";
import type { ProofResults } from "./subjects/proof.ts";
import type { PumpResults } from "./subjects/pump.ts";
import type { RailResults } from "./subjects/rail.ts";

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
  /** Velocities in the hoses. */
  readonly lines: LineResults | undefined;
  /** Pressures and spread along the gallery. */
  readonly rail: RailResults | undefined;
  /** Wall and stress. */
  readonly bar: BarResults | undefined;
  /** Depths, thread and seat of the sensor port. */
  readonly port: PortResults | undefined;
  /** Pressures and numbers of the leak tests. */
  readonly proof: ProofResults | undefined;
}
