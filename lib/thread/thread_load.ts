/** What tightening does to the thread in the bar. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { NOMINAL, PITCH } from "./limits.ts";

const SHEAR_STRENGTH: MethodInput = {
  unit: "Pa",
  min: 1e7,
  max: 1e9,
  says: "Shear strength of the bar's material",
  symbol: "\\tau",
};
const PRELOAD: MethodInput = {
  unit: "N",
  min: 1,
  max: 1e6,
  says: "Pull in the screw once tightened",
  symbol: "F",
};
const AREA_PER_LENGTH: MethodInput = {
  unit: "m",
  min: 1e-5,
  max: 1,
  says: "Shear area of the tapped thread to a length of it",
  symbol: "a",
};

/**
 * Shear area [m^2/m, that is m] of the tapped thread to a length of full thread, at the least
 * material that the tolerance classes allow: the smallest screw in the largest hole.
 *
 * Holds for 60 and 55 degree threads by the flank angle. Source: FED-STD-H28/2B appendix,
 * with 0.57735 = tan 30 degrees.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M10x1, 6g in 6H
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const area_m = tappedShearArea({
 *   screwMajorMin: 9.794e-3,
 *   holePitchMax: 9.5e-3,
 *   pitch: 1e-3,
 *   flank: Math.PI / 6,
 * });
 *
 * assertAlmostEquals(area_m, 20.61e-3, 1e-5); // 20.61 mm^2 to the millimetre
 * ```
 */
export const tappedShearArea: Method<
  Record<"screwMajorMin" | "holePitchMax" | "pitch" | "flank", MethodInput>
> = method({
  id: "tapped-shear-area",
  title: "Shear area of a tapped thread to a length of it",
  inputs: {
    screwMajorMin: { ...NOMINAL, says: "Smallest major diameter of the screw", symbol: "d_{min}" },
    holePitchMax: {
      ...NOMINAL,
      says: "Largest pitch diameter of the tapped hole",
      symbol: "D_{2,max}",
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
  formula: "pi * screwMajorMin / pitch * (pitch / 2 + tan(flank) * (screwMajorMin - holePitchMax))",
  source: "FED-STD-H28/2B appendix: shear area of internal threads",
  compute: ({ screwMajorMin, holePitchMax, pitch, flank }) =>
    Math.PI * screwMajorMin / pitch *
    (pitch / 2 + Math.tan(flank) * (screwMajorMin - holePitchMax)),
});

/**
 * Pull [N] in a screw by its tightening torque. Scatters by a quarter to a third either way.
 *
 * The nut factor is about 0.2 dry and 0.12 to 0.18 oiled. Source: T = K d F, J. E. Shigley,
 * Mechanical Engineering Design.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 18 N m on an oiled M10
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const preload_N = preloadFromTorque({ torque: 18, nutFactor: 0.15, nominal: 0.01 });
 *
 * assertAlmostEquals(preload_N, 12_000, 1e-6);
 * ```
 */
export const preloadFromTorque: Method<Record<"torque" | "nutFactor" | "nominal", MethodInput>> =
  method({
    id: "preload-from-torque",
    title: "Pull in a screw by its tightening torque",
    inputs: {
      torque: { unit: "N m", min: 0, max: 500, open: true, says: "Tightening torque", symbol: "T" },
      nutFactor: { unit: "-", min: 0.08, max: 0.4, says: "Nut factor", symbol: "K" },
      nominal: NOMINAL,
    },
    output: { ...PRELOAD, name: "preload", min: 0, max: 1e7 },
    formula: "torque / (nutFactor * nominal)",
    source: "T = K d F; J. E. Shigley, Mechanical Engineering Design",
    compute: ({ torque, nutFactor, nominal }) => torque / (nutFactor * nominal),
  });

/**
 * Load that strips a thread [N], the tapped one or the screw's.
 *
 * Takes the load as spread evenly over the thread. Source: FED-STD-H28/2B.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M10x1.5 in soft aluminium of 130 MPa, 21.6 mm deep; printed: 69.6 kN
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const load_N = strippingLoad({
 *   areaPerLength: 24.84e-3,
 *   fullThread: 21.6e-3,
 *   shearStrength: 130e6,
 * });
 *
 * assertAlmostEquals(load_N, 69_750, 10);
 * ```
 */
export const strippingLoad: Method<
  Record<"areaPerLength" | "fullThread" | "shearStrength", MethodInput>
> = method({
  id: "stripping-load",
  title: "Load that strips a thread",
  inputs: {
    areaPerLength: { ...AREA_PER_LENGTH, says: "Shear area of the thread to a length of it" },
    fullThread: { unit: "m", min: 0, max: 0.2, says: "Length of full thread", symbol: "L_e" },
    shearStrength: { ...SHEAR_STRENGTH, max: 2e9, says: "Shear strength of the thread's metal" },
  },
  output: { name: "load", unit: "N", min: 0, max: 4e8, says: "Stripping load", symbol: "F_s" },
  formula: "areaPerLength * fullThread * shearStrength",
  source: "FED-STD-H28/2B: stripping load is shear area times shear strength",
  compute: ({ areaPerLength, fullThread, shearStrength }) =>
    areaPerLength * fullThread * shearStrength,
});

/**
 * Load that strips the tapped thread over the pull in the screw [-].
 *
 * Takes the load as spread evenly over the thread; the first threads really carry more, which
 * is one reason for asking for 2 to 3. No full thread holds nothing: 0. Source: FED-STD-H28/2B.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 5 mm of M10x1 in an aluminium bar at 12 kN
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const factor = strippingFactor({
 *   areaPerLength: 20.61e-3,
 *   fullThread: 5e-3,
 *   shearStrength: 207e6,
 *   preload: 12_000,
 * });
 *
 * assertAlmostEquals(factor, 1.778, 1e-3);
 * ```
 */
export const strippingFactor: Method<
  Record<"areaPerLength" | "fullThread" | "shearStrength" | "preload", MethodInput>
> = method({
  id: "stripping-factor",
  title: "Stripping load of a tapped thread over the pull",
  inputs: {
    areaPerLength: AREA_PER_LENGTH,
    fullThread: {
      unit: "m",
      min: 0,
      max: 0.2,
      says: "Length of full thread",
      symbol: "L_e",
    },
    shearStrength: SHEAR_STRENGTH,
    preload: PRELOAD,
  },
  output: {
    name: "factor",
    unit: "-",
    min: 0,
    max: 1e9,
    says: "Stripping load over pull",
    symbol: "S",
  },
  formula: "areaPerLength * fullThread * shearStrength / preload",
  source: "FED-STD-H28/2B: stripping load is shear area times shear strength",
  compute: ({ areaPerLength, fullThread, shearStrength, preload }) =>
    areaPerLength * fullThread * shearStrength / preload,
});

/**
 * Length of full thread [m] that a wanted factor against stripping takes. Source: FED-STD-H28/2B.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Factor 3 on an M10x1 in an aluminium bar at 12 kN
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = threadForFactor({
 *   factor: 3,
 *   areaPerLength: 20.61e-3,
 *   shearStrength: 207e6,
 *   preload: 12_000,
 * });
 *
 * assertAlmostEquals(length_m, 8.44e-3, 1e-5);
 * ```
 */
export const threadForFactor: Method<
  Record<"factor" | "areaPerLength" | "shearStrength" | "preload", MethodInput>
> = method({
  id: "thread-for-factor",
  title: "Full thread that a factor against stripping takes",
  inputs: {
    factor: { unit: "-", min: 0.5, max: 10, says: "Factor wanted", symbol: "S" },
    areaPerLength: AREA_PER_LENGTH,
    shearStrength: SHEAR_STRENGTH,
    preload: PRELOAD,
  },
  output: { name: "fullThread", unit: "m", min: 0, max: 1e5, says: "Length of full thread" },
  formula: "factor * preload / (areaPerLength * shearStrength)",
  source: "FED-STD-H28/2B: stripping load is shear area times shear strength",
  compute: ({ factor, areaPerLength, shearStrength, preload }) =>
    factor * preload / (areaPerLength * shearStrength),
});
