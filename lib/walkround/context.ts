/** What the ladder and the lists need to know of an evaluated plan. */
import type { Fault, ProofNumbers, ProofPressures, WeakestPart } from "@/lib/proof/mod.ts";

/** The fuel as far as the cautions depend on it. */
export interface ProofFuel {
  /** Petrol and any blend of it with ethanol, pure ethanol included; or methanol. */
  readonly base: "petrol" | "methanol";
  /** Ethanol by volume [-], 0 to 1; nought for methanol. */
  readonly ethanolShare: number;
}

/** Facts of an evaluated plan. All pressures are gauge. */
export interface ProofContext {
  /** What it will run on. */
  readonly fuel: ProofFuel;
  /** Rails, all alike and tested one by one. */
  readonly rails: number;
  /** Injectors on each rail, all stages together. */
  readonly injectorsPerRail: number;
  /** Whether fuel flows through the rail and back, or ends there. */
  readonly layout: "return" | "dead-ended";
  /** What the regulator's spring side sees. */
  readonly reference: "manifold" | "atmosphere";
  /** Whether the engine is boosted. */
  readonly boosted: boolean;
  /** Set pressure of the regulator [Pa]. */
  readonly setPressure_Pa: number;
  /** Rail pressure at idle, the regulator's hose on [Pa]. */
  readonly railIdle_Pa: number;
  /** Working and proof pressure, and the conflict where there is one. */
  readonly pressures: ProofPressures;
  /** The fault pressure, where known. */
  readonly fault?: Fault | undefined;
  /** The weakest part under test, where known. */
  readonly weakest?: WeakestPart | undefined;
  /** What the tests are computed to be. */
  readonly numbers: ProofNumbers;
  /** Smallest change that the gauge of the air test shows [Pa]. */
  readonly gaugeResolution_Pa: number;
  /** Temperature in the shop [K]. */
  readonly temperature_K: number;
  /** Range of the pressure sensor [Pa], where known. */
  readonly sensorRange_Pa?: number | undefined;
  /** Where the pump sits. */
  readonly pumpPlace?: "tank" | "outside" | undefined;
}

/** Ethanol share from which a blend is treated as an alcohol in a fire; ours. */
const ALCOHOL_RICH = 0.7;

/** Ethanol share above which foam made for petrol fails; common practice, no source. */
const FOAM_BREAKING = 0.1;

/** Whether the fuel is methanol. */
export function isMethanol({ base }: ProofFuel): boolean {
  return base === "methanol";
}

/** Whether the fuel is mostly alcohol. */
export function isAlcoholRich(fuel: ProofFuel): boolean {
  return isMethanol(fuel) || fuel.ethanolShare >= ALCOHOL_RICH;
}

/** Whether the fuel breaks foam that is made for petrol. */
export function breaksFoam(fuel: ProofFuel): boolean {
  return isMethanol(fuel) || fuel.ethanolShare > FOAM_BREAKING;
}
