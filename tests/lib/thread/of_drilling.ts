/** Answers to the cases of drills and drilling. */
import { assert } from "@std/assert";
import {
  type CutMaterial,
  CUTTING_SPEEDS,
  DEEP_FROM_DIAMETERS,
  depthRatio,
  drillingTime,
  DRILLS,
  feedBand,
  feedSpeed,
  inchDrillsWithin,
  nearestDrill,
  nearestInchDrill,
  PECK_FROM_DIAMETERS,
  spindleSpeed,
} from "@/lib/thread/mod.ts";
import type { Answers } from "../../helpers/checks.ts";
import { INCH, METRE_A_MINUTE, MM } from "./shorthand.ts";

const sized = ({ name, diameter_m }: { readonly name: string; readonly diameter_m: number }) => ({
  size: name,
  dia_in: diameter_m / INCH,
  dia_mm: diameter_m / MM,
});

const byName = (set: keyof typeof DRILLS) => ({ size }: { readonly size: string }) => {
  const drill = DRILLS[set].find(({ name }) => name === size);
  assert(drill, `no drill ${size}`);
  return sized(drill);
};

const MATERIAL_OF: Readonly<Record<string, CutMaterial>> = {
  "aluminium alloy (6061/6082)": "aluminium",
  "free-cutting brass": "brass",
  "mild steel": "mild steel",
  "austenitic stainless": "stainless steel",
};

const speedOf = (material: string) => {
  const name = MATERIAL_OF[material];
  assert(name, material);
  return CUTTING_SPEEDS[name];
};

export const drilling: Answers = {
  "letter drill": { methods: [], run: byName("letter") },
  "number drill": { methods: [], run: byName("number") },
  "fractional drill": { methods: [], run: byName("fractional") },
  "nearest inch drill (fraction, letter or number) to a metric size": {
    methods: [],
    run: ({ target_mm }: { readonly target_mm: number }) => {
      const drill = nearestInchDrill(target_mm * MM);
      return { ...sized(drill), error_mm: drill.error_m / MM };
    },
  },
  "nearest 0.1 mm metric drill": {
    methods: [],
    run: ({ target_mm }: { readonly target_mm: number }) => {
      const drill = nearestDrill(DRILLS.metric, target_mm * MM);
      return { ...sized(drill), error_mm: drill.error_m / MM };
    },
  },
  "inch drills that may replace a metric tapping drill (inside the 6H minor limits)": {
    methods: [],
    run: (
      { minor_min_mm, minor_max_mm }: {
        readonly minor_min_mm: number;
        readonly minor_max_mm: number;
      },
    ) => {
      const drills = inchDrillsWithin(minor_min_mm * MM, minor_max_mm * MM);
      return {
        sizes: drills.map(({ name }) => name),
        dia_mm: drills.map(({ diameter_m }) => diameter_m / MM),
      };
    },
  },
  "HSS drill cutting-speed range": {
    methods: [],
    run: ({ material }: { readonly material: string }) => ({
      value: speedOf(material).from / METRE_A_MINUTE,
    }),
  },
  "spindle speed": {
    methods: [spindleSpeed],
    run: (
      { cutting_speed_m_min, dia_mm }: {
        readonly cutting_speed_m_min: number;
        readonly dia_mm: number;
      },
    ) => ({
      rpm: 60 *
        spindleSpeed({ cuttingSpeed: cutting_speed_m_min * METRE_A_MINUTE, drill: dia_mm * MM }),
    }),
  },
  "spindle speed (inch worked example)": {
    methods: [spindleSpeed],
    run: ({ sfm, dia_in }: { readonly sfm: number; readonly dia_in: number }) => ({
      rpm: 60 * spindleSpeed({ cuttingSpeed: sfm * 0.3048 / 60, drill: dia_in * INCH }),
    }),
  },
  "HSS drill feed per revolution": {
    methods: [],
    run: ({ dia_mm }: { readonly dia_mm: number }) => {
      const { from, to } = feedBand(dia_mm * MM) ?? { from: NaN, to: NaN };
      return { value: (from + to) / 2 / MM };
    },
  },
  "drilling time without pecking": {
    methods: [feedSpeed, drillingTime],
    run: (
      { rpm, feed_mm_rev, depth_mm }: {
        readonly rpm: number;
        readonly feed_mm_rev: number;
        readonly depth_mm: number;
      },
    ) => {
      const speed = feedSpeed({ speed: rpm / 60, feed: feed_mm_rev * MM });
      return {
        feed_mm_min: speed / MM * 60,
        minutes: drillingTime({ depth: depth_mm * MM, feedSpeed: speed }) / 60,
      };
    },
  },
  "depth ratio and pecking": {
    methods: [depthRatio],
    run: ({ depth_mm, dia_mm }: { readonly depth_mm: number; readonly dia_mm: number }) => {
      const ratio = depthRatio({ depth: depth_mm * MM, drill: dia_mm * MM });
      return {
        ratio,
        peck_needed: ratio > PECK_FROM_DIAMETERS,
        deep_hole: ratio > DEEP_FROM_DIAMETERS,
      };
    },
  },
};
