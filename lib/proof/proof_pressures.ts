/** The pressures a rail is judged and proved by. */
import type { Working } from "@/lib/method/mod.ts";
import { SWING_SHARE } from "./constants.ts";
import { proofPressure } from "./proof_pressure.ts";
import { trappedLiquidRise } from "./trapped_fuel.ts";
import { highestWorkingPressure } from "./working_pressure.ts";

/** Fuel shut in behind a check valve and warmed. */
export interface TrappedFuel {
  /** Pressure when it is shut in [Pa, gauge]. */
  readonly start_Pa: number;
  /** Volume expansion of the fuel [1/K]. */
  readonly expansion_1_K: number;
  /** Length expansion of the rail's metal [1/K]. */
  readonly wallExpansion_1_K: number;
  /** How far it warms [K]. */
  readonly temperatureRise_K: number;
  /** Bulk modulus of the fuel [Pa]. */
  readonly bulkModulus_Pa: number;
  /** Share by which hose and walls grow per pressure [1/Pa]. */
  readonly compliance_1_Pa: number;
}

/** What may push the pressure beyond working when something fails; what is not known is left out. */
export interface FaultInput {
  /** The pump at shut-off, or its relief valve [Pa, gauge]. */
  readonly pumpShutOff_Pa?: number | undefined;
  /** The highest pressure that the pump is known to pump at [Pa, gauge]; counts until shut-off is known. */
  readonly pumpReaches_Pa?: number | undefined;
  /** Fuel that is shut in and warmed; kept for the supply step, as no plan says yet how much the hose yields. */
  readonly trapped?: TrappedFuel | undefined;
}

/** The highest pressure when something fails. */
export interface Fault {
  /** Fault pressure [Pa, gauge]. */
  readonly pressure_Pa: number;
  /** What makes it. */
  readonly cause: "pump" | "trapped fuel";
  /** True while the pump's shut-off is not known: the pressure may become higher. */
  readonly isLeast: boolean;
}

/**
 * Finds the fault pressure: the largest of the pump at shut-off (or its relief
 * valve) and of fuel that is shut in and warmed. Until shut-off is known, the
 * pressure that the pump reaches by its curve stands for it, and the fault is
 * the least that it can be.
 *
 * @param working Takes the record under `proof.trapped_Pa`.
 * @param input What may push the pressure up, as far as known.
 * @returns The fault, or nothing when none of its causes is known.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const fault = faultPressure(new Working(), { pumpShutOff_Pa: 8e5 });
 *
 * assertEquals(fault, { pressure_Pa: 8e5, cause: "pump", isLeast: false });
 * assertEquals(faultPressure(new Working(), { pumpReaches_Pa: 6e5 })?.isLeast, true);
 * assertEquals(faultPressure(new Working(), {}), undefined);
 * ```
 */
export function faultPressure(working: Working, input: FaultInput): Fault | undefined {
  const { pumpShutOff_Pa, pumpReaches_Pa, trapped } = input;
  const isLeast = pumpShutOff_Pa === undefined;
  const pump_Pa = pumpShutOff_Pa ?? pumpReaches_Pa;
  const byPump: Fault | undefined = pump_Pa === undefined
    ? undefined
    : { pressure_Pa: pump_Pa, cause: "pump", isLeast };
  if (trapped === undefined) return byPump;
  const rise_Pa = working.run("proof.trapped_Pa", trappedLiquidRise, {
    expansion: trapped.expansion_1_K,
    wallExpansion: trapped.wallExpansion_1_K,
    temperatureRise: trapped.temperatureRise_K,
    bulkModulus: trapped.bulkModulus_Pa,
    compliance: trapped.compliance_1_Pa,
  });
  const pressure_Pa = trapped.start_Pa + Math.max(0, rise_Pa);
  if (byPump !== undefined && byPump.pressure_Pa >= pressure_Pa) return byPump;
  return { pressure_Pa, cause: "trapped fuel", isLeast };
}

/** A part under test and the most its maker allows. */
export interface WeakestPart {
  /** What it is called. */
  readonly part: string;
  /** The most it may be given [Pa, gauge]. */
  readonly rating_Pa: number;
}

/** What {@linkcode proofPressures} needs. */
export interface ProofPressuresInput {
  /** Set pressure of the regulator [Pa, gauge]. */
  readonly setPressure_Pa: number;
  /** Highest boost [Pa, gauge], nought without. */
  readonly boost_Pa: number;
  /** What the regulator's spring side sees: boost lifts rail pressure only where it is the manifold. */
  readonly reference: "manifold" | "atmosphere";
  /** Rise above the mean by injection [Pa]; without it, a tenth of the set pressure is allowed for. */
  readonly swing_Pa?: number | undefined;
  /** The fault pressure, where known. */
  readonly fault?: Fault | undefined;
  /** The weakest part that stays on during the proof, where known. */
  readonly weakest?: WeakestPart | undefined;
}

/** A part that may not be given the proof pressure that is wanted. */
export interface Conflict extends WeakestPart {
  /** True when it may not even be given the working pressure. */
  readonly belowWorking: boolean;
  /** What to change, in words without numbers. */
  readonly change: string;
}

/** The pressures of the proof, all gauge. */
export interface ProofPressures {
  /** Rise above the mean by injection [Pa]. */
  readonly swing_Pa: number;
  /** Highest working pressure [Pa, gauge]. */
  readonly workingPressure_Pa: number;
  /** Proof pressure wanted [Pa, gauge]. */
  readonly wantedPressure_Pa: number;
  /** Proof pressure to be given: as wanted, but never above the weakest part's rating [Pa, gauge]. */
  readonly proofPressure_Pa: number;
  /** Which of the two sets the wanted pressure. */
  readonly governs: "working" | "fault";
  /** Present when the weakest part forbids the wanted pressure. */
  readonly conflict?: Conflict;
}

/**
 * Finds the working and the proof pressure, and says what stands in the way.
 *
 * @param working Takes the record under `proof.workingPressure_Pa` and `proof.wantedPressure_Pa`.
 * @param input Regulator, boost, fault and weakest part.
 * @returns The pressures, and the conflict where there is one.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A hose that is too weak for a proof at the pump's shut-off pressure
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const pressures = proofPressures(new Working(), {
 *   setPressure_Pa: 3e5,
 *   boost_Pa: 1e5,
 *   reference: "manifold",
 *   fault: { pressure_Pa: 8e5, cause: "pump", isLeast: false },
 *   weakest: { part: "feed hose", rating_Pa: 7e5 },
 * });
 *
 * assertEquals(pressures.workingPressure_Pa, 4.3e5);
 * assertEquals(pressures.wantedPressure_Pa, 8e5);
 * assertEquals(pressures.proofPressure_Pa, 7e5);
 * assertEquals(pressures.conflict?.part, "feed hose");
 * ```
 */
export function proofPressures(working: Working, input: ProofPressuresInput): ProofPressures {
  const { setPressure_Pa, fault, weakest } = input;
  const swing_Pa = input.swing_Pa ?? SWING_SHARE * setPressure_Pa;
  const workingPressure_Pa = working.run("proof.workingPressure_Pa", highestWorkingPressure, {
    setPressure: setPressure_Pa,
    boost: input.reference === "manifold" ? input.boost_Pa : 0,
    swing: swing_Pa,
  });
  const fault_Pa = fault?.pressure_Pa ?? 0;
  const wantedPressure_Pa = working.run("proof.wantedPressure_Pa", proofPressure, {
    workingPressure: workingPressure_Pa,
    faultPressure: fault_Pa,
  });
  const governs = wantedPressure_Pa === fault_Pa ? "fault" : "working";
  const found = { swing_Pa, workingPressure_Pa, wantedPressure_Pa, governs } as const;
  if (weakest === undefined || weakest.rating_Pa >= wantedPressure_Pa) {
    return { ...found, proofPressure_Pa: wantedPressure_Pa };
  }
  const belowWorking = weakest.rating_Pa < workingPressure_Pa;
  const change = belowWorking
    ? `Change the ${weakest.part} before anything else: it may not be given the working pressure.`
    : CHANGES[fault !== undefined && governs === "fault" ? fault.cause : "working"](weakest.part);
  return {
    ...found,
    proofPressure_Pa: weakest.rating_Pa,
    conflict: { ...weakest, belowWorking, change },
  };
}

/** What to change, by what sets the wanted pressure. */
const CHANGES: Readonly<Record<Fault["cause"] | "working", (part: string) => string>> = {
  pump: (part) =>
    `Fit a stronger ${part}, or a relief valve that keeps the pump below what the ${part} may take.`,
  "trapped fuel": (part) =>
    `Give trapped fuel a way out (a relief or a bleed past the check valve), or fit a stronger ${part}.`,
  working: (part) => `Fit a stronger ${part}, or lower the set pressure.`,
};
