/** What the threads and heads of hold-down screws bear. */
import type { Working } from "@/lib/method/mod.ts";
import {
  engagementInWeaker,
  engagementToBreak,
  headBearingLoad,
  headBearingStress,
  mostPreload,
  PRELOAD_SHARE,
  proofLoad,
  proofShare,
  SCREW_CLASSES,
  screwHead,
  screwShearArea,
  stressArea,
  stressAreaUnified,
  strippingLoad,
  tappedShearArea,
  threadOf,
  threadStrengthRatio,
} from "@/lib/thread/mod.ts";
import type { HoldDown, HoldDownSpec } from "./hold_down_spec.ts";

/**
 * Shear over tensile strength of screws [-], the least of what VDI 2230-1 prints by class
 * (0.60 for 12.9 to 0.65 for 8.8), from memory.
 */
const SCREW_SHEAR_SHARE = 0.6;

/** What the threads bear, and the one that strips first. */
export type HeldThread =
  & Pick<
    HoldDown,
    | "proofShare"
    | "strippingLoad_N"
    | "strips"
    | "engagementToBreak_m"
    | "underHead_Pa"
    | "mostPreload_N"
  >
  & {
    /** The thread that strips first, as the stripping methods take it. */
    readonly weaker: {
      readonly areaPerLength: number;
      readonly fullThread: number;
      readonly shearStrength: number;
    };
  };

/** Works out what threads and heads bear, and records it. */
export function heldThread(
  working: Working,
  section: string,
  spec: HoldDownSpec,
  preload: number,
): HeldThread {
  const { screw, tapped } = spec;
  const { hole, screw: limits, pitch_m: pitch, flank_rad: flank, nominal_m: nominal, family } =
    threadOf(screw.thread);
  const strength = SCREW_CLASSES[screw.class];
  const area = working.run(
    `${section}.stressArea_m2`,
    family === "unified" ? stressAreaUnified : stressArea,
    { nominal, pitch },
  );
  const inHole = {
    areaPerLength: working.run(`${section}.tappedThread.areaPerLength_m`, tappedShearArea, {
      screwMajorMin: limits.majorMin_m,
      holePitchMax: hole.pitchMax_m,
      pitch,
      flank,
    }),
    fullThread: tapped.engagement_m,
    shearStrength: tapped.shearStrength_Pa,
  };
  const onScrew = {
    areaPerLength: working.run(`${section}.screwThread.areaPerLength_m`, screwShearArea, {
      holeMinorMax: hole.minorMax_m,
      screwPitchMin: limits.pitchMin_m,
      pitch,
      flank,
    }),
    fullThread: tapped.engagement_m,
    shearStrength: SCREW_SHEAR_SHARE * strength.ultimate_Pa,
  };
  const tappedLoad = working.run(`${section}.tappedThread.load_N`, strippingLoad, inHole);
  const screwLoad = working.run(`${section}.screwThread.load_N`, strippingLoad, onScrew);
  const proof = working.run(`${section}.proofLoad_N`, proofLoad, {
    proofStress: strength.proof_Pa,
    stressArea: area,
  });
  const { outside_m, hole_m } = screwHead(nominal, screw.head);
  const face = { hole: hole_m, ring: (outside_m - hole_m) / 2 };
  const strippingLoad_N = Math.min(tappedLoad, screwLoad);
  return {
    proofShare: working.run(`${section}.proofShare`, proofShare, { preload, proofLoad: proof }),
    strippingLoad_N,
    strips: tappedLoad <= screwLoad ? "tapped thread" : "screw's thread",
    weaker: tappedLoad <= screwLoad ? inHole : onScrew,
    engagementToBreak_m: working.run(`${section}.engagementToBreak_m`, engagementInWeaker, {
      engagement: working.run(`${section}.engagement_m`, engagementToBreak, {
        stressArea: area,
        screwArea: onScrew.areaPerLength,
      }),
      ratio: working.run(`${section}.strengthRatio`, threadStrengthRatio, {
        screwArea: onScrew.areaPerLength,
        screwStrength: strength.ultimate_Pa,
        tappedArea: inHole.areaPerLength,
        tappedStrength: tapped.ultimate_Pa,
      }),
    }),
    underHead_Pa: working.run(`${section}.underHead_Pa`, headBearingStress, { ...face, preload }),
    mostPreload_N: working.run(`${section}.mostPreload_N`, mostPreload, {
      proofLoad: proof,
      share: PRELOAD_SHARE,
      strippingLoad: strippingLoad_N,
      factor: spec.factor,
      bearing: working.run(`${section}.bearing_N`, headBearingLoad, {
        ...face,
        yield: spec.underHead_Pa,
      }),
    }),
  };
}
