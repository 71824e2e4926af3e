/** What the leak tests are made at, and what the gauge can show. */
import {
  type Fault,
  faultPressure,
  type ProofNumbers,
  proofNumbers,
  type ProofPressures,
  proofPressures,
  type WeakestPart,
} from "@/lib/proof/mod.ts";
import type { FuelState } from "@/lib/fuel/mod.ts";
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
    const { regulator, engine, pump, proof } = context.values;
    const fault = faultPressure(context.working, { pumpShutOff_Pa: pump.shutOff });
    const weakest = proof.weakestRating === undefined
      ? undefined
      : { part: proof.weakestPart ?? "weakest part", rating_Pa: proof.weakestRating };
    const pressures = proofPressures(context.working, {
      setPressure_Pa: regulator.setPressure,
      boost_Pa: engine.boost ?? 0,
      reference: regulator.reference ?? "manifold",
      fault,
      weakest,
    });
    judgeRating(context, pressures, weakest);
    const numbers = numbersOf(context, pressures, shop);
    judgeNumbers(context, numbers);
    return { pressures, fault, weakest, numbers };
  });
}

function numbersOf(
  context: Context,
  pressures: ProofPressures,
  { fuel, ambient_Pa }: { readonly fuel: FuelState; readonly ambient_Pa: number },
): ProofNumbers | undefined {
  const { rail, proof } = context.values;
  if (rail.bore === undefined || rail.length === undefined) return undefined;
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
  pressures: ProofPressures,
  weakest: WeakestPart | undefined,
): void {
  const wanted = context.say(pressures.wantedPressure_Pa, "pressure");
  const by = pressures.governs === "fault"
    ? "the most that a fault can make"
    : "1.5 times the highest working pressure";
  context.check(CRITERIA.proofRating, {
    value: weakest && weakest.rating_Pa / pressures.wantedPressure_Pa,
    because: weakest === undefined
      ? `Proof wants ${wanted}, ${by}. Find the lowest rating of all parts that stay on.`
      : `Proof wants ${wanted}, ${by}; the ${weakest.part} may take ${
        context.say(weakest.rating_Pa, "pressure")
      }. ${pressures.conflict?.change ?? ""}`.trim(),
    result: "proof.wantedPressure_Pa",
  });
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
        ? " The gauge can't show it, so the bubbles under water decide."
        : ""
    }`,
    atWorst: "marginal", // the test itself is not lost: bubbles show far smaller leaks
    result: "proof.expectedFall_Pa",
  });
}
