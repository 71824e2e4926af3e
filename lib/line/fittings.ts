/** Fittings for fuel hose and what each takes, computed from the methods of flow. */
import {
  bendLoss,
  cornerLoss,
  equivalentLengthLoss,
  FITTING_LENGTHS,
  roughPipeFriction,
  STEEL_PIPE_ROUGHNESS_m,
  teeBranchLoss,
} from "@/lib/flow/mod.ts";
import { type FittingLoss, narrowPassage } from "./narrow_passage.ts";

/** A kind of fitting. */
export type FittingKind =
  | "straight"
  | "adapter"
  | "bulkhead"
  | "elbow-45-swept"
  | "elbow-90-swept"
  | "elbow-180-swept"
  | "elbow-45-forged"
  | "elbow-90-forged"
  | "elbow-180-forged"
  | "tee-run"
  | "tee-branch"
  | "reducer"
  | "barb";

/** What one fitting takes, on the velocity in the bore of the hose it belongs to. */
export interface Fitting extends FittingLoss {
  /** Loss coefficient at Re 1 [-]; see `fittingLossCoefficient`. */
  readonly laminar: number;
  /** Loss coefficient in turbulent flow [-]. */
  readonly turbulent: number;
  /** How it is reckoned and what is assumed, in one sentence. */
  readonly says: string;
  /** Where the numbers come from. */
  readonly source: string;
}

/**
 * Darcy friction factor of small bores in the elbows and nipples [-], assumed. Smooth bores
 * at Re 6000 to 20,000 have 0.036 to 0.026.
 */
const FRICTION = 0.03;

/** Radius of a swept elbow's tube over its bore [-], common practice, no source. */
const SWEPT_RADIUS = 1.5;

/** Narrow bore over the hose's bore [-]: common practice, no source. */
const NIPPLE_BORE = 0.85;
const BARB_BORE = 0.75;

/** Bore for which the steel pipe tee's friction factor is taken [m]: that of a -6 hose. */
const TEE_BORE_m = 9.5e-3;

const HOOPER = "laminar term W. B. Hooper, Chem. Eng. 88(17) (1981) 96-100 (from memory)";
const STEPS = "Sudden steps by Rennels and Hudson (2012) and Borda-Carnot; " +
  "laminar term Hagen-Poiseuille and Hooper (1988); " +
  "bore and length common practice, no source";

const RIGHT_ANGLE = Math.PI / 2;
const RIGHT_CORNER = cornerLoss({ turnAngle: RIGHT_ANGLE });

function narrow(what: string, boreRatio: number, lengthRatio: number): Fitting {
  return {
    ...narrowPassage({ boreRatio, lengthRatio, outletRatio: 1, frictionFactor: FRICTION }),
    says: `${what} of ${boreRatio} of the hose's bore, ${lengthRatio} hose bores long: ` +
      "contraction, friction and expansion.",
    source: STEPS,
  };
}

function swept(turnAngle: number, laminar: number): Fitting {
  return {
    laminar,
    turbulent: bendLoss({ turnAngle, radiusRatio: SWEPT_RADIUS, frictionFactor: FRICTION }),
    says: `The turn alone, of radius ${SWEPT_RADIUS} bores and as wide as the hose, friction ` +
      `factor ${FRICTION} assumed; the hose end's nipple counts as a straight.`,
    source: `Rennels and Hudson (2012), swept bend; ${HOOPER}, long radius`,
  };
}

function forged(corners: string, turbulent: number, laminar: number): Fitting {
  return {
    laminar,
    turbulent,
    says: `The turn alone, ${corners} as wide as the hose; ` +
      "the hose end's nipple counts as a straight.",
    source: `Rennels and Hudson (2012), mitre; ${HOOPER}, mitre of one weld`,
  };
}

/**
 * The fittings. Elbows are the turn alone: where one ends in a hose, its nipple is a straight
 * besides. A reducer is nought by itself, as whoever knows both bores reckons the step.
 *
 * @example A drilled corner takes more than three times what a swept one does
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(FITTINGS["elbow-90-forged"].turbulent > 3 * FITTINGS["elbow-90-swept"].turbulent);
 * ```
 */
export const FITTINGS: Readonly<Record<FittingKind, Fitting>> = {
  straight: narrow("Nipple", NIPPLE_BORE, 2),
  adapter: narrow("Passage", NIPPLE_BORE, 2),
  bulkhead: narrow("Passage", NIPPLE_BORE, 4),
  "elbow-45-swept": swept(RIGHT_ANGLE / 2, 500),
  "elbow-90-swept": swept(RIGHT_ANGLE, 800),
  "elbow-180-swept": swept(2 * RIGHT_ANGLE, 1000),
  "elbow-45-forged": forged(
    "one sharp drilled corner",
    cornerLoss({ turnAngle: RIGHT_ANGLE / 2 }),
    500,
  ),
  "elbow-90-forged": forged("one sharp drilled corner", RIGHT_CORNER, 1000),
  "elbow-180-forged": forged("two sharp drilled corners", 2 * RIGHT_CORNER, 2 * 1000),
  "tee-run": {
    laminar: 200,
    turbulent: equivalentLengthLoss({
      lengthRatio: FITTING_LENGTHS["tee-run"],
      frictionFactor: roughPipeFriction({ roughness: STEEL_PIPE_ROUGHNESS_m, bore: TEE_BORE_m }),
    }),
    says: "All of the flow runs straight through and none turns off: a standard threaded tee " +
      "as 20 bores of steel pipe of 9.5 mm.",
    source: `Crane TP-410 (2009) A-30 (from memory); ${HOOPER}, screwed tee, run`,
  },
  "tee-branch": {
    laminar: 1000,
    turbulent: teeBranchLoss({ flowShare: 1, areaRatio: 1 }),
    says: "All of the flow turns off into a branch as wide as the run (flow share 1).",
    source: `Crane TP-410 (2009), dividing tee of equal bores; ${HOOPER}, stub-in branch`,
  },
  reducer: {
    laminar: 0,
    turbulent: 0,
    says: "Nothing by itself: the step between the bores before and after it is reckoned apart.",
    source: "Definition",
  },
  barb: narrow("Barb", BARB_BORE, 2),
};
