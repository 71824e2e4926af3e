/** Whether the bar has wall enough for its gallery. */
import { type BarStrength, barStrength, MATERIALS, minimumWall } from "@/lib/strength/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
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
  /** Wall that proof pressure asks for at the limit of yield, with what is spared on top [m]. */
  readonly strengthWall_m: number;
}

const OWED = [CRITERIA.wall, CRITERIA.yield] as const;

/** What the wall left must be over the wall that strength alone asks for; ours. */
const WALL_SPARE = 1.15;

/** Finds wall, stress and loads at proof pressure, and judges wall and yield. */
export function judgeBar(
  context: Context,
  proof: ProofResults | undefined,
): BarResults | undefined {
  return context.subject(OWED, () => {
    const { rail } = context.values;
    const { bore, height, length } = rail;
    const isOwn = rail.shape === "own";
    if (
      bore === undefined || height === undefined || !proof || (isOwn && rail.ownWall === undefined)
    ) {
      const because = isOwn
        ? "Enter the bore of the gallery, the outside sizes and the least wall of your section."
        : "Enter the bore of the gallery and the size of the bar.";
      for (const criterion of OWED) context.check(criterion, { value: undefined, because });
      return undefined;
    }
    const width_m = rail.shape === "round" ? height : rail.width ?? height;
    const wall_m = rail.ownWall ?? wallAround(rail, { bore, height, width: width_m });
    // Only the least wall counts: a square or round bar that leaves as much all round.
    const across_m = bore + 2 * wall_m;
    const proof_Pa = proof.pressures.proofPressure_Pa;
    const found = barStrength(context.working, {
      shape: rail.shape === "round" ? "round" : "rectangular",
      height_m: across_m,
      width_m: across_m,
      bore_m: bore,
      length_m: Math.min(rail.galleryDepth ?? length, length),
      drilledFrom: rail.drilledFrom,
      drift_m: rail.drift,
      pilot_m: Math.min(crossHole(context.values, bore), bore),
      proof_Pa,
      working_Pa: proof.pressures.workingPressure_Pa,
      yield_Pa: MATERIALS[rail.material].yield_Pa,
      pocketBore_m: rail.pocketBore,
    });
    const strengthWall_m = WALL_SPARE * context.working.run("bar.minimumWall_m", minimumWall, {
      pressure: proof_Pa,
      allowable: MATERIALS[rail.material].yield_Pa / CRITERIA.yield.limit,
      bore,
    });
    judgeWall(context, found, strengthWall_m);
    judgeYield(context, found, proof_Pa);
    return { ...found, height_m: height, width_m, length_m: length, strengthWall_m };
  });
}

interface Sizes {
  readonly bore: number;
  readonly height: number;
  readonly width: number;
}

/** The least wall around a gallery that need not lie in the middle [m]. */
function wallAround(
  { shape, galleryUp, galleryAcross }: PlanValues["rail"],
  { bore, height, width }: Sizes,
): number {
  const up = galleryUp ?? height / 2;
  if (shape === "round") {
    return height / 2 - Math.hypot(up - height / 2, galleryAcross) - bore / 2;
  }
  return Math.min(up, height - up, width / 2 - Math.abs(galleryAcross)) - bore / 2;
}

/** What crosses the gallery: the pockets' pilots, or their bores where those reach it [m]. */
function crossHole({ rail, pockets }: PlanValues, bore: number): number {
  const up = rail.galleryUp ?? (rail.height ?? 0) / 2;
  return pockets.depth > up - bore / 2 ? rail.pocketBore : pockets.pilot;
}

function judgeWall(context: Context, found: BarStrength, strengthWall_m: number): void {
  const { wallLeft_m, wallNominal_m, drift_m } = found;
  const { limit, aim } = CRITERIA.wall;
  const say = (length_m: number): string => context.say(length_m, "length");
  const ends = context.values.rail.drilledFrom === "one" ? "one end" : "both ends";
  const breaksOut = wallLeft_m > 0 ? "" : "The drill may break out of the bar. ";
  context.check(CRITERIA.wall, {
    value: wallLeft_m,
    limit: Math.max(limit, strengthWall_m),
    aim: Math.max(aim, strengthWall_m),
    because: `${breaksOut}As drawn the gallery leaves ${
      say(wallNominal_m)
    }; drilled from ${ends} the drill may wander ${say(drift_m)}. Proof pressure alone takes ${
      say(strengthWall_m)
    }, with 15 % spared.`,
    result: "bar.wallLeft_m",
  });
}

function judgeYield(
  context: Context,
  { yieldFactor, peak_Pa }: BarStrength,
  proof_Pa: number,
): void {
  if (yieldFactor === undefined || peak_Pa === undefined) {
    context.check(CRITERIA.yield, {
      value: 0,
      because: "No wall is left to carry the pressure: take a smaller bore or a larger bar.",
    });
    return;
  }
  context.check(CRITERIA.yield, {
    value: yieldFactor,
    because: `Peak stress ${context.say(peak_Pa, "pressure")} at ${
      context.say(proof_Pa, "pressure")
    }, where a cross hole meets the gallery.`,
    result: "bar.yieldFactor",
  });
}
