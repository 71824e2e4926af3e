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
