/** What strips first: the screw's thread, the tapped one, or does the screw break? */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { NOMINAL, PITCH } from "./limits.ts";

const H28 = "FED-STD-H28/2B appendix";

const AREA_PER_LENGTH: MethodInput = {
  unit: "m",
  min: 1e-5,
  max: 1,
  says: "Shear area of a thread to a length of it",
  symbol: "a",
};
const STRENGTH: MethodInput = {
  unit: "Pa",
  min: 1e7,
  max: 3e9,
  says: "Tensile strength",
  symbol: "R_m",
};

/**
 * Shear area [m^2/m, that is m] of the screw's thread to a length of engagement, at the least
 * material that the tolerance classes allow: the thinnest screw in the widest hole.
 *
 * Source: FED-STD-H28/2B appendix, with 0.57735 = tan 30 degrees.
 *
 * @throws {InputError} When a number lies outside its range, or no metal of the screw reaches
 * into the hole's thread.
 *
 * @example M6x1, 6g in 6H
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const area_m = screwShearArea({
 *   holeMinorMax: 5.153e-3,
 *   screwPitchMin: 5.212e-3,
 *   pitch: 1e-3,
 *   flank: Math.PI / 6,
 * });
 *
 * assertAlmostEquals(area_m, 8.646e-3, 1e-6); // 8.646 mm^2 to the millimetre
 * ```
 */
export const screwShearArea: Method<
  Record<"holeMinorMax" | "screwPitchMin" | "pitch" | "flank", MethodInput>
> = method({
  id: "screw-shear-area",
  title: "Shear area of a screw's thread to a length of it",
  inputs: {
    holeMinorMax: {
      ...NOMINAL,
      says: "Largest minor diameter of the tapped hole",
      symbol: "D_{1,max}",
    },
    screwPitchMin: {
      ...NOMINAL,
      says: "Smallest pitch diameter of the screw",
      symbol: "d_{2,min}",
    },
    pitch: PITCH,
    flank: {
      unit: "rad",
      min: 0.25,
      max: 0.8,
      says: "Half of the angle between the flanks",
      symbol: "\\alpha",
    },
  },
  output: { ...AREA_PER_LENGTH, name: "areaPerLength", max: 100 },
  formula: "pi * holeMinorMax / pitch * (pitch / 2 + tan(flank) * (screwPitchMin - holeMinorMax))",
  source: `${H28}: shear area of external threads`,
  compute: ({ holeMinorMax, screwPitchMin, pitch, flank }) =>
    Math.PI * holeMinorMax / pitch *
    (pitch / 2 + Math.tan(flank) * (screwPitchMin - holeMinorMax)),
});

/**
 * Engagement [m] at which a screw breaks before its own thread strips, in a nut as strong as
 * itself. The 2 stands for shear strength over tensile strength, with a little to spare.
 *
 * Source: FED-STD-H28/2B appendix.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M6
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = engagementToBreak({ stressArea: 20.12e-6, screwArea: 8.646e-3 });
 *
 * assertAlmostEquals(length_m, 4.654e-3, 1e-6);
 * ```
 */
export const engagementToBreak: Method<Record<"stressArea" | "screwArea", MethodInput>> = method({
  id: "engagement-to-break",
  title: "Engagement at which the screw breaks before its thread strips",
  inputs: {
    stressArea: {
      unit: "m^2",
      min: 1e-7,
      max: 0.003,
      says: "Tensile stress area of the screw",
      symbol: "A_s",
    },
    screwArea: {
      ...AREA_PER_LENGTH,
      says: "Shear area of the screw's thread to a length of it",
      symbol: "a_s",
    },
  },
  output: {
    name: "engagement",
    unit: "m",
    min: 0,
    max: 1e3,
    says: "Engagement in a nut as strong as the screw",
    symbol: "L_e",
  },
  formula: "2 * stressArea / screwArea",
  source: `${H28}: length of engagement, equal materials`,
  compute: ({ stressArea, screwArea }) => 2 * stressArea / screwArea,
});

/**
 * How much weaker the tapped thread is than the screw's [-]: above 1 the hole strips first.
 *
 * Source: FED-STD-H28/2B appendix, its J.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M6 8.8 in a bar of 260 MPa
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const ratio = threadStrengthRatio({
 *   screwArea: 8.646e-3,
 *   screwStrength: 800e6,
 *   tappedArea: 12.19e-3,
 *   tappedStrength: 260e6,
 * });
 *
 * assertAlmostEquals(ratio, 2.182, 1e-3);
 * ```
 */
export const threadStrengthRatio: Method<
  Record<"screwArea" | "screwStrength" | "tappedArea" | "tappedStrength", MethodInput>
> = method({
  id: "thread-strength-ratio",
  title: "Strength of the screw's thread over that of the tapped one",
  inputs: {
    screwArea: {
      ...AREA_PER_LENGTH,
      says: "Shear area of the screw's thread to a length of it",
      symbol: "a_s",
    },
    screwStrength: { ...STRENGTH, says: "Tensile strength of the screw", symbol: "R_{m,s}" },
    tappedArea: {
      ...AREA_PER_LENGTH,
      says: "Shear area of the tapped thread to a length of it",
      symbol: "a_n",
    },
    tappedStrength: {
      ...STRENGTH,
      says: "Tensile strength of what is tapped",
      symbol: "R_{m,n}",
    },
  },
  output: {
    name: "ratio",
    unit: "-",
    min: 0,
    max: 1e8,
    says: "Screw's thread over tapped thread; above 1 the hole strips first",
    symbol: "J",
  },
  formula: "screwArea * screwStrength / (tappedArea * tappedStrength)",
  source: `${H28}: relative strength J`,
  compute: ({ screwArea, screwStrength, tappedArea, tappedStrength }) =>
    screwArea * screwStrength / (tappedArea * tappedStrength),
});

/**
 * Engagement [m] at which the screw breaks before a weaker tapped hole strips. A hold-down
 * whose pull is a fraction of the screw's strength needs less: see its stripping factor.
 *
 * Source: FED-STD-H28/2B appendix.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = engagementInWeaker({ engagement: 4.655e-3, ratio: 2.182 });
 *
 * assertAlmostEquals(length_m, 10.16e-3, 1e-5);
 * ```
 */
export const engagementInWeaker: Method<Record<"engagement" | "ratio", MethodInput>> = method({
  id: "engagement-in-weaker",
  title: "Engagement at which the screw breaks before the hole strips",
  inputs: {
    engagement: {
      unit: "m",
      min: 1e-4,
      max: 0.2,
      says: "Engagement at which the screw breaks before its own thread strips",
      symbol: "L_e",
    },
    ratio: {
      unit: "-",
      min: 0.01,
      max: 100,
      says: "Strength of the screw's thread over that of the tapped one",
      symbol: "J",
    },
  },
  output: {
    name: "engagement",
    unit: "m",
    min: 0,
    max: 20,
    says: "Engagement at which the screw breaks first",
    symbol: "L_J",
  },
  formula: "engagement * max(1, ratio)",
  source: `${H28}: length of engagement times J, where J is above 1`,
  compute: ({ engagement, ratio }) => engagement * Math.max(1, ratio),
});
