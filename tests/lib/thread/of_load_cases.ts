/** Answers to the reference cases of threads under load, as far as a sensor port needs them. */
import { pressureForce } from "@/lib/strength/mod.ts";
import {
  preloadFromTorque,
  stressArea,
  strippingFactor,
  tappedShearArea,
} from "@/lib/thread/mod.ts";
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

const SCREW_SIDE = "Drill: hold-down screws; in a port the bar strips, not the sensor's thread";

interface Strip {
  readonly thread: string;
  readonly body_shear_MPa: number;
  readonly engagement_mm: number;
}

const strip = ({ thread, body_shear_MPa, engagement_mm }: Strip, preload: number) => {
  const areaPerLength = areaOf(thread);
  const fullThread = engagement_mm * MM;
  const shearStrength = body_shear_MPa * MPA;
  const factor = strippingFactor({ areaPerLength, fullThread, shearStrength, preload });
  return {
    area_mm2: areaPerLength * fullThread / MM ** 2,
    strip_load_N: factor * preload,
    factor,
  };
};

export const loadCases: Answers = {
  "shear area per mm of engagement, external and internal thread (minimum-material limits)": {
    methods: [tappedShearArea, stressArea],
    run: ({ thread }: Strip) => {
      const { nominal_m: nominal, pitch_m: pitch } = find(thread);
      return {
        int_mm2_per_mm: areaOf(thread) / MM,
        At_mm2: stressArea({ nominal, pitch }) / MM ** 2,
      };
    },
    leaves: { ext_mm2_per_mm: SCREW_SIDE },
  },
  "shear area per inch of engagement": {
    methods: [tappedShearArea],
    run: ({ thread }: Strip) => ({ int_in2_per_in: areaOf(thread) / INCH }),
    leaves: { ext_in2_per_in: SCREW_SIDE },
  },
  "stripping load of the tapped thread and safety factor": {
    methods: [tappedShearArea, strippingFactor],
    run: (i: Strip & { readonly load_N: number }) => strip(i, i.load_N),
  },
  "end plug: blow-out force on the O-ring seat diameter against stripping in 6061-T6": {
    methods: [tappedShearArea, strippingFactor, pressureForce],
    run: (i: Strip & { readonly pressure_MPa: number; readonly seal_dia_mm: number }) => {
      const force_N = pressureForce({
        pressure: i.pressure_MPa * MPA,
        diameter: i.seal_dia_mm * MM,
      });
      return { force_N, ...strip(i, force_N) };
    },
  },
  "tightening torque": {
    methods: [preloadFromTorque],
    run: (
      { thread, preload_N, K }: {
        readonly thread: string;
        readonly preload_N: number;
        readonly K: number;
      },
    ) => {
      const { nominal_m: nominal } = find(thread);
      // The pull of 1 N m; torque and pull are in proportion.
      return { torque_Nm: preload_N / preloadFromTorque({ torque: 1, nutFactor: K, nominal }) };
    },
  },
  "engagement so that the screw breaks before its own thread strips (equal materials)": {
    later: SCREW_SIDE,
  },
  "required engagement in a weaker tapped material": { later: SCREW_SIDE },
  "rule of thumb for tapped aluminium": { later: SCREW_SIDE },
  "property class strengths": { later: "Drill: hold-down screws" },
  "proof load and 75 % preload": { later: "Drill: hold-down screws" },
  "tightening torque by the pitch/thread/head split": { later: "Drill: hold-down screws" },
};
