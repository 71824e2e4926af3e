/** Answers to the cases of straight threads. */
import {
  CLEARANCE_HOLES,
  type ClearanceScrew,
  heightShareIso,
  heightShareUs,
  minorDiameter,
  pitchDiameter,
  sharpHeight,
  stressArea,
  stressAreaUnified,
} from "@/lib/thread/mod.ts";
import type { Answers } from "../../helpers/checks.ts";
import { find, INCH, isoShare, MM, usShare } from "./shorthand.ts";

const basics = (thread: string) => {
  const { nominal_m: nominal, pitch_m: pitch } = find(thread);
  return {
    pitch_mm: pitch / MM,
    major_mm: nominal / MM,
    D2_mm: pitchDiameter({ nominal, pitch }) / MM,
    D1_mm: minorDiameter({ nominal, pitch }) / MM,
  };
};

const holeLimits = (unit: number, suffix: string) => ({ thread }: { readonly thread: string }) => {
  const { hole } = find(thread);
  return {
    [`minor_min_${suffix}`]: hole.minorMin_m / unit,
    [`minor_max_${suffix}`]: hole.minorMax_m / unit,
    [`pitch_min_${suffix}`]: hole.pitchMin_m / unit,
    [`pitch_max_${suffix}`]: hole.pitchMax_m / unit,
  };
};

const screwLimits = (unit: number, suffix: string) => ({ thread }: { readonly thread: string }) => {
  const { screw } = find(thread);
  return {
    [`major_max_${suffix}`]: screw.majorMax_m / unit,
    [`major_min_${suffix}`]: screw.majorMin_m / unit,
    [`pitch_max_${suffix}`]: screw.pitchMax_m / unit,
    [`pitch_min_${suffix}`]: screw.pitchMin_m / unit,
  };
};

export const threads: Answers = {
  "basic pitch and internal minor diameter": {
    methods: [pitchDiameter, minorDiameter],
    run: ({ thread }: { readonly thread: string }) => basics(thread),
  },
  "basic dimensions in mm": {
    methods: [pitchDiameter, minorDiameter],
    run: ({ thread }: { readonly thread: string }) => basics(thread),
  },
  "internal thread 6H limits": { methods: [], run: holeLimits(MM, "mm") },
  "Unified internal thread 2B limits": { methods: [], run: holeLimits(INCH, "in") },
  "external thread 6g limits (needed for stripping)": { methods: [], run: screwLimits(MM, "mm") },
  "Unified external thread 2A limits (needed for stripping)": {
    methods: [],
    run: screwLimits(INCH, "in"),
  },
  "tapping drill for a cut thread": {
    methods: [],
    run: ({ thread }: { readonly thread: string }) => ({
      drill_mm: find(thread).tappingDrill_m / MM,
    }),
  },
  "tapping drill": {
    methods: [heightShareUs],
    run: ({ thread }: { readonly thread: string }) => {
      const { tappingDrill_m, tappingDrillName } = find(thread);
      return {
        drill: tappingDrillName.replace(" in", ""),
        drill_in: tappingDrill_m / INCH,
        drill_mm: tappingDrill_m / MM,
        percent_us: 100 * usShare(thread, tappingDrill_m),
      };
    },
  },
  "thread height of the tapped hole as percent of the ISO 68-1 internal height 5H/8": {
    methods: [heightShareIso, sharpHeight],
    run: ({ thread, drill_mm }: { readonly thread: string; readonly drill_mm: number }) =>
      100 * isoShare(thread, drill_mm * MM),
  },
  "US percent full thread for a drill": {
    methods: [heightShareUs, sharpHeight],
    run: ({ thread, drill_mm }: { readonly thread: string; readonly drill_mm: number }) =>
      100 * usShare(thread, drill_mm * MM),
  },
  "percent thread for an off-table drill, and whether the hole is inside the 6H minor limits": {
    methods: [heightShareIso, heightShareUs, sharpHeight],
    run: ({ thread, drill_mm }: { readonly thread: string; readonly drill_mm: number }) => {
      const drill = drill_mm * MM;
      const { minorMin_m, minorMax_m } = find(thread).hole;
      return {
        percent_iso: 100 * isoShare(thread, drill),
        percent_us: 100 * usShare(thread, drill),
        within_6H_minor: drill >= minorMin_m && drill <= minorMax_m,
      };
    },
  },
  "nominal tensile stress area": {
    methods: [stressArea],
    run: ({ thread }: { readonly thread: string }) => {
      const { nominal_m: nominal, pitch_m: pitch } = find(thread);
      return { As_mm2: stressArea({ nominal, pitch }) / MM ** 2 };
    },
  },
  "tensile stress area": {
    methods: [stressAreaUnified],
    run: ({ thread }: { readonly thread: string }) => {
      const { nominal_m: nominal, pitch_m: pitch } = find(thread);
      const area = stressAreaUnified({ nominal, pitch });
      return { At_in2: area / INCH ** 2, At_mm2: area / MM ** 2 };
    },
  },
  "clearance hole (fine/medium/coarse)": {
    methods: [],
    run: ({ screw }: { readonly screw: ClearanceScrew }) => {
      const { close_m, medium_m, coarse_m } = CLEARANCE_HOLES[screw];
      return { close_mm: close_m / MM, medium_mm: medium_m / MM, coarse_mm: coarse_m / MM };
    },
  },
};
