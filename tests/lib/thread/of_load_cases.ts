/** Answers to the reference cases of threads under load. */
import { MATERIALS, pressureForce } from "@/lib/strength/mod.ts";
import {
  engagementInWeaker,
  engagementToBreak,
  PRELOAD_SHARE,
  preloadFromTorque,
  proofLoad,
  proofShare,
  SCREW_CLASSES,
  type ScrewClass,
  screwShearArea,
  stressArea,
  strippingFactor,
  strippingLoad,
  tappedShearArea,
  threadStrengthRatio,
  torqueBySplit,
  torqueForPreload,
} from "@/lib/thread/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Answers } from "../../helpers/checks.ts";
import { find, INCH, MM } from "./shorthand.ts";

const MPA = 1e6;

/** Shear area of a tapped thread to a length of it [m]. */
const areaOf = (thread: string): number => {
  const { screw, hole, pitch_m: pitch, flank_rad: flank } = find(thread);
  return tappedShearArea({
    screwMajorMin: screw.majorMin_m,
    holePitchMax: hole.pitchMax_m,
    pitch,
    flank,
  });
};

/** Shear area of a screw's thread to a length of it [m]. */
const screwAreaOf = (thread: string): number => {
  const { screw, hole, pitch_m: pitch, flank_rad: flank } = find(thread);
  return screwShearArea({
    holeMinorMax: hole.minorMax_m,
    screwPitchMin: screw.pitchMin_m,
    pitch,
    flank,
  });
};

/** Stress area of a metric screw [m^2]. */
const stressAreaOf = (thread: string): number => {
  const { nominal_m: nominal, pitch_m: pitch } = find(thread);
  return stressArea({ nominal, pitch });
};

/** Engagement at which a screw breaks before its own thread strips [m]. */
const equalOf = (thread: string): number =>
  engagementToBreak({ stressArea: stressAreaOf(thread), screwArea: screwAreaOf(thread) });

/** How much engagement a weaker hole takes. */
const weakerOf = (thread: string, screwStrength: number, tappedStrength: number) => {
  const ratio = threadStrengthRatio({
    screwArea: screwAreaOf(thread),
    screwStrength,
    tappedArea: areaOf(thread),
    tappedStrength,
  });
  const engagement = engagementInWeaker({ engagement: equalOf(thread), ratio });
  return {
    J: ratio,
    Le_required_mm: engagement / MM,
    Le_over_d: engagement / find(thread).nominal_m,
  };
};

interface Screw {
  readonly thread: string;
  readonly cls: ScrewClass;
}

interface Strip {
  readonly thread: string;
  readonly body_shear_MPa: number;
  readonly engagement_mm: number;
}

const strip = ({ thread, body_shear_MPa, engagement_mm }: Strip, preload: number) => {
  const areaPerLength = areaOf(thread);
  const fullThread = engagement_mm * MM;
  const shearStrength = body_shear_MPa * MPA;
  const tapped = { areaPerLength, fullThread, shearStrength };
  return {
    area_mm2: areaPerLength * fullThread / MM ** 2,
    strip_load_N: strippingLoad(tapped),
    factor: strippingFactor({ ...tapped, preload }),
  };
};

export const loadCases: Answers = {
  "shear area per mm of engagement, external and internal thread (minimum-material limits)": {
    methods: [tappedShearArea, screwShearArea, stressArea],
    run: ({ thread }: Strip) => ({
      ext_mm2_per_mm: screwAreaOf(thread) / MM,
      int_mm2_per_mm: areaOf(thread) / MM,
      At_mm2: stressAreaOf(thread) / MM ** 2,
    }),
  },
  "shear area per inch of engagement": {
    methods: [tappedShearArea, screwShearArea],
    run: ({ thread }: Strip) => ({
      ext_in2_per_in: screwAreaOf(thread) / INCH,
      int_in2_per_in: areaOf(thread) / INCH,
    }),
  },
  "stripping load of the tapped thread and safety factor": {
    methods: [tappedShearArea, strippingLoad, strippingFactor],
    run: (i: Strip & { readonly load_N: number }) => strip(i, i.load_N),
  },
  "end plug: blow-out force on the O-ring seat diameter against stripping in 6061-T6": {
    methods: [tappedShearArea, strippingLoad, strippingFactor, pressureForce],
    run: (i: Strip & { readonly pressure_MPa: number; readonly seal_dia_mm: number }) => {
      const force_N = pressureForce({
        pressure: i.pressure_MPa * MPA,
        diameter: i.seal_dia_mm * MM,
      });
      return { force_N, ...strip(i, force_N) };
    },
  },
  "tightening torque": {
    methods: [torqueForPreload],
    run: (
      { thread, preload_N, K }: {
        readonly thread: string;
        readonly preload_N: number;
        readonly K: number;
      },
    ) => {
      const { nominal_m: nominal } = find(thread);
      return { torque_Nm: torqueForPreload({ preload: preload_N, nutFactor: K, nominal }) };
    },
  },
  "engagement so that the screw breaks before its own thread strips (equal materials)": {
    methods: [engagementToBreak, screwShearArea],
    run: ({ thread }: Strip) => ({
      Le_mm: equalOf(thread) / MM,
      Le_over_d: equalOf(thread) / find(thread).nominal_m,
    }),
  },
  "required engagement in a weaker tapped material": {
    methods: [engagementToBreak, threadStrengthRatio, engagementInWeaker],
    run: (
      { thread, screw_UTS_MPa, body_UTS_MPa }: {
        readonly thread: string;
        readonly screw_UTS_MPa: number;
        readonly body_UTS_MPa: number;
      },
    ) => weakerOf(thread, screw_UTS_MPa * MPA, body_UTS_MPa * MPA),
  },
  "rule of thumb for tapped aluminium": {
    methods: [engagementInWeaker],
    // What the method finds for an 8.8 screw in 6061-T6 at its least strength.
    run: () => ({
      value: weakerOf("M8x1.25", SCREW_CLASSES["8.8"].ultimate_Pa, MATERIALS["6061-T6"].ultimate_Pa)
        .Le_over_d,
    }),
  },
  "property class strengths": {
    methods: [],
    run: ({ cls }: Screw) => ({
      Rm_min_MPa: SCREW_CLASSES[cls].ultimate_Pa / MPA,
      yield_min_MPa: SCREW_CLASSES[cls].yield_Pa / MPA,
      proof_MPa: SCREW_CLASSES[cls].proof_Pa / MPA,
    }),
  },
  "proof load and 75 % preload": {
    methods: [proofLoad, proofShare],
    run: ({ thread, cls }: Screw) => {
      const load = proofLoad({
        proofStress: SCREW_CLASSES[cls].proof_Pa,
        stressArea: stressAreaOf(thread),
      });
      const preload = PRELOAD_SHARE * load;
      return {
        proof_N: load,
        preload75_N: preload,
        preload_over_proof: proofShare({ preload, proofLoad: load }),
      };
    },
  },
  "tightening torque by the pitch/thread/head split": {
    methods: [torqueBySplit, preloadFromTorque],
    run: (
      { thread, preload_N, mu_thread, mu_head, head_bearing_od_mm, hole_mm }:
        & Record<
          "preload_N" | "mu_thread" | "mu_head" | "head_bearing_od_mm" | "hole_mm",
          number
        >
        & { readonly thread: string },
    ) => {
      const { nominal_m: nominal, pitch_m: pitch, hole } = find(thread);
      const torque = torqueBySplit({
        preload: preload_N,
        pitch,
        pitchDiameter: hole.pitchMin_m,
        threadFriction: mu_thread,
        head: head_bearing_od_mm * MM,
        hole: hole_mm * MM,
        headFriction: mu_head,
      });
      const nutFactor = torque / (preload_N * nominal);
      // That nut factor has to give the pull back.
      assertClose(preloadFromTorque({ torque, nutFactor, nominal }), preload_N, 1e-12);
      return { torque_Nm: torque, K_equiv: nutFactor };
    },
  },
};
