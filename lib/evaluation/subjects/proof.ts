/** What the leak tests are made at, and what the gauge can show. */
import {
  comesOff,
  type Fault,
  type FaultInput,
  faultPressure,
  type ProofNumbers,
  proofNumbers,
  type ProofPressures,
  proofPressures,
  type WeakestPart,
} from "@/lib/proof/mod.ts";
import type { FuelState } from "@/lib/fuel/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";

/** What was found for the leak tests. */
export interface ProofResults {
  /** Working and proof pressure, and what stands in the way. */
  readonly pressures: ProofPressures;
  /** The fault pressure, where its cause is known. */
  readonly fault: Fault | undefined;
  /** The part that governs, where known. */
  readonly weakest: WeakestPart | undefined;
  /** The numbers of the tests; undefined until the bore is known. */
  readonly numbers: ProofNumbers | undefined;
}

const OWED = [CRITERIA.airEnergy, CRITERIA.proofRating, CRITERIA.gaugeSteps] as const;

/** Finds the pressures of the proof and judges energy, rating and gauge. */
export function judgeProof(
  context: Context,
  shop: { readonly fuel: FuelState; readonly ambient_Pa: number },
): ProofResults | undefined {
  return context.subject(OWED, () => {
    const { regulator, engine, proof } = context.values;
    const fault = faultPressure(context.working, pumpLimits(context.values));
    const weakest = proof.weakestRating === undefined
      ? undefined
      : { part: proof.weakestPart ?? "weakest part", rating_Pa: proof.weakestRating };
    const pressures = proofPressures(context.working, {
      setPressure_Pa: regulator.setPressure,
      boost_Pa: engine.boost ?? 0,
      reference: regulator.reference,
      fault,
      weakest,
    });
    judgeRating(context, { pressures, fault, weakest });
    const numbers = numbersOf(context, pressures, shop);
    judgeNumbers(context, numbers);
    return { pressures, fault, weakest, numbers };
  });
}

/**
 * What the plan tells of how high the pump goes. The highest point of its
 * curve is its shut-off when nothing flows there; otherwise the pump goes at
 * least so high.
 */
function pumpLimits({ pump }: PlanValues): FaultInput {
  const limit = pump.drive === "engine" ? pump.relief : pump.shutOff;
  if (limit !== undefined) return { pumpShutOff_Pa: limit };
  let highest: { readonly pressure: number; readonly flow: number } | undefined;
  for (const { pressure, flow } of pump.points) {
    if (pressure === undefined || flow === undefined) continue;
    if (highest === undefined || pressure > highest.pressure) highest = { pressure, flow };
  }
  if (highest === undefined) return {};
  const { pressure, flow } = highest;
  return flow === 0 ? { pumpShutOff_Pa: pressure } : { pumpReaches_Pa: pressure };
}

function numbersOf(
  context: Context,
  pressures: ProofPressures,
  { fuel, ambient_Pa }: { readonly fuel: FuelState; readonly ambient_Pa: number },
): ProofNumbers | undefined {
  const { rail, proof } = context.values;
  if (rail.bore === undefined) return undefined;
  return proofNumbers(context.working, {
    pressures,
    bore_m: rail.bore,
    length_m: rail.length,
    hose_m3: proof.pressurisedHose,
    airPressure_Pa: proof.airPressure,
    gaugeResolution_Pa: proof.gaugeResolution,
    temperature_K: proof.temperature,
    ambient_Pa,
    fuel: {
      density_kg_m3: fuel.density_kg_m3,
      viscosity_Pa_s: fuel.dynamicViscosity_Pa_s,
      molarMass_kg_mol: fuel.molarMass_kg_mol,
      lowerLimit: fuel.lowerFlammableLimit,
    },
  });
}

function judgeRating(
  context: Context,
  { pressures, fault, weakest }: Pick<ProofResults, "pressures" | "fault" | "weakest">,
): void {
  const isPumpOpen = fault === undefined || fault.isLeast;
  // Trapped fuel is not computed: where it can be, the pump's limit is only a lower bound.
  const isTrapping = canTrap(context.values);
  const isLeast = isPumpOpen || isTrapping;
  const by = [
    pressures.governs === "working"
      ? "1.5 times the highest working pressure"
      : isPumpOpen
      ? "what a fault can make"
      : `the most that ${isTrapping ? "the pump" : "a fault"} can make`,
    isTrapping && "fuel shut in and warmed may make more",
  ].filter(Boolean).join("; ");
  const wanted = `Proof wants ${isLeast ? "at least " : ""}${
    context.say(pressures.wantedPressure_Pa, "pressure")
  }, ${by}`;
  const open = "Until the pump's shut-off or relief pressure is known, this is at best marginal: " +
    "a fault may ask for more.";
  context.check(CRITERIA.proofRating, {
    value: weakest && weakest.rating_Pa / pressures.wantedPressure_Pa,
    because: weakest === undefined
      ? `${wanted}. Find the lowest rating of all parts that stay on.`
      : [
        `${wanted}; the ${weakest.part} may take ${context.say(weakest.rating_Pa, "pressure")}.`,
        pressures.conflict?.change,
        comesOff(weakest.part) &&
        `The ${weakest.part} comes off for the proof: enter the lowest rating of what stays on.`,
        isPumpOpen && open,
        !isPumpOpen && isTrapping &&
        "At best marginal: how far shut-in fuel rises is not computed.",
      ].filter(Boolean).join(" "),
    ...(isLeast && { atBest: "marginal" as const }), // a bound can't show that it meets
    result: "proof.wantedPressure_Pa",
  });
}

/** Fuel is shut in where a check valve stands between the regulator, which lets it by, and the rail. */
function canTrap({ regulator, supply }: PlanValues): boolean {
  if (regulator.layout === "return") return false;
  const between = regulator.place === "feed" ? supply.branch : [...supply.feed, ...supply.branch];
  return between.some(({ piece }) => piece === "check-valve");
}

function judgeNumbers(context: Context, numbers: ProofNumbers | undefined): void {
  if (!numbers) {
    const because = "Enter the bore of the gallery: the volume under test follows from it.";
    context.check(CRITERIA.airEnergy, { value: undefined, because });
    context.check(CRITERIA.gaugeSteps, { value: undefined, because });
    return;
  }
  context.check(CRITERIA.airEnergy, {
    value: numbers.airEnergy_J,
    because: `${context.say(numbers.volume_m3, "volume")} of air at ${
      context.say(numbers.airPressure_Pa, "pressure")
    } stores this; behind a shield all the same.`,
    result: "proof.airEnergy_J",
  });
  const steps = numbers.expectedFall_Pa / context.values.proof.gaugeResolution;
  context.check(CRITERIA.gaugeSteps, {
    value: steps,
    because: `The allowed leak lowers the air test by ${
      context.say(numbers.expectedFall_Pa, "pressure")
    } in ${context.say(numbers.airHold_s, "duration")}.${
      steps < CRITERIA.gaugeSteps.limit
        ? ` Past the limit, but the bubbles under water decide: to show that leak, the gauge would need ${
          context.say(numbers.timeToSee_s, "duration")
        }.`
        : ""
    }`,
    atWorst: "marginal", // the test itself is not lost: bubbles show far smaller leaks
    result: "proof.expectedFall_Pa",
  });
}
