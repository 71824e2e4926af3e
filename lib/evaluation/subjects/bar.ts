/** Whether the bar has wall enough for its gallery. */
import { type BarStrength, barStrength, MATERIALS } from "@/lib/strength/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { ProofResults } from "./proof.ts";

/** What was found for the bar. */
export interface BarResults extends BarStrength {
  /** Size across the injectors' axis [m]. */
  readonly height_m: number;
  /** Size the other way [m]. */
  readonly width_m: number;
  /** Length [m]. */
  readonly length_m: number;
}

const OWED = [CRITERIA.wall, CRITERIA.yield] as const;

/** Cross hole assumed where the plan names none [m]: the pilots of the injector pockets. */
const PILOT_M = 0.008;

/** Finds wall, stress and loads at proof pressure, and judges wall and yield. */
export function judgeBar(
  context: Context,
  proof: ProofResults | undefined,
): BarResults | undefined {
  return context.subject(OWED, () => {
    const { rail } = context.values;
    const { bore, height, length } = rail;
    if (bore === undefined || height === undefined || length === undefined || !proof) {
      const because = "Enter the bore of the gallery and the size of the bar.";
      for (const criterion of OWED) context.check(criterion, { value: undefined, because });
      return undefined;
    }
    const width_m = rail.shape === "round" ? height : rail.width ?? height;
    const proof_Pa = proof.pressures.proofPressure_Pa;
    const found = barStrength(context.working, {
      shape: rail.shape,
      height_m: height,
      width_m,
      bore_m: bore,
      length_m: length,
      drilledFrom: rail.drilledFrom,
      pilot_m: Math.min(PILOT_M, bore),
      proof_Pa,
      working_Pa: proof.pressures.workingPressure_Pa,
      yield_Pa: MATERIALS[rail.material].yield_Pa,
      pocketBore_m: rail.pocketBore,
    });
    const ends = rail.drilledFrom === "one" ? "one end" : "both ends";
    context.check(CRITERIA.wall, {
      value: found.wallLeft_m,
      because: `A centred gallery leaves ${
        context.say(found.wallNominal_m, "length")
      }; drilled from ${ends} the drill may wander ${context.say(found.drift_m, "length")}.`,
      result: "bar.wallLeft_m",
    });
    context.check(CRITERIA.yield, {
      value: found.yieldFactor,
      because: found.peak_Pa === undefined
        ? "No wall is left to carry the pressure."
        : `Peak stress ${context.say(found.peak_Pa, "pressure")} at ${
          context.say(proof_Pa, "pressure")
        }, where a cross hole meets the gallery.`,
      result: "bar.yieldFactor",
    });
    return { ...found, height_m: height, width_m, length_m: length };
  });
}
