/** Formulas of the pipe thread standards. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { PITCH } from "./limits.ts";

const OUTSIDE: MethodInput = {
  unit: "m",
  min: 0.005,
  max: 0.2,
  says: "Outside diameter of the pipe",
  symbol: "D",
};
const NPT = "ASME B1.20.1";
const DIAMETER = { unit: "m", min: 0, max: 0.25, open: true } as const;
const LENGTH = { unit: "m", min: 0, max: 0.25 } as const;
const HAND_TIGHT: MethodInput = {
  unit: "m",
  min: 0.001,
  max: 0.05,
  says: "Hand-tight engagement, as tabulated",
  symbol: "L_1",
};

/**
 * Pitch diameter [m] of an NPT thread at its small end, E0. Source: ASME B1.20.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pitch_m = nptSmallEnd({ outside: 0.405 * 0.0254, pitch: 0.0254 / 27 });
 *
 * assertAlmostEquals(pitch_m / 0.0254, 0.36351, 1e-5);
 * ```
 */
export const nptSmallEnd: Method<Record<"outside" | "pitch", MethodInput>> = method({
  id: "npt-small-end",
  title: "Pitch diameter of an NPT thread at its small end",
  inputs: { outside: OUTSIDE, pitch: PITCH },
  output: { ...DIAMETER, name: "smallEnd", says: "Pitch diameter", symbol: "E_0" },
  // D is in inches in the standard: (0.05 D + 1.1) p, so 0.05 / in.
  formula: "outside - (0.05 / 0.0254 * outside + 1.1) * pitch",
  words: "The standard's 0.05 goes with inches, hence 0.05 / 0.0254.",
  fit: true,
  source: NPT,
  compute: ({ outside, pitch }) => outside - (0.05 / 0.0254 * outside + 1.1) * pitch,
});

/**
 * Length [m] of useful external NPT thread, L2. Source: ASME B1.20.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = nptUsefulLength({ outside: 0.405 * 0.0254, pitch: 0.0254 / 27 });
 *
 * assertAlmostEquals(length_m / 0.0254, 0.2639, 1e-4);
 * ```
 */
export const nptUsefulLength: Method<Record<"outside" | "pitch", MethodInput>> = method({
  id: "npt-useful-length",
  title: "Length of useful NPT thread",
  inputs: { outside: OUTSIDE, pitch: PITCH },
  output: { ...LENGTH, name: "length", says: "Length of useful thread", symbol: "L_2" },
  formula: "(0.8 / 0.0254 * outside + 6.8) * pitch",
  words: "The standard's 0.8 goes with inches, hence 0.8 / 0.0254.",
  fit: true,
  source: NPT,
  compute: ({ outside, pitch }) => (0.8 / 0.0254 * outside + 6.8) * pitch,
});

/**
 * Pitch diameter [m] of an NPT thread where hand-tight engagement ends, E1: at the face of
 * the tapped hole. Source: ASME B1.20.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pitch_m = nptFace({ smallEnd: 9.2332e-3, handTight: 4.1021e-3 });
 *
 * assertAlmostEquals(pitch_m, 9.4896e-3, 1e-7);
 * ```
 */
export const nptFace: Method<Record<"smallEnd" | "handTight", MethodInput>> = method({
  id: "npt-face",
  title: "Pitch diameter of an NPT thread at the face of the hole",
  inputs: {
    smallEnd: { ...OUTSIDE, says: "Pitch diameter at the small end", symbol: "E_0" },
    handTight: HAND_TIGHT,
  },
  output: { ...DIAMETER, name: "atFace", says: "Pitch diameter", symbol: "E_1" },
  formula: "smallEnd + handTight / 16",
  source: NPT,
  compute: ({ smallEnd, handTight }) => smallEnd + handTight / 16,
});

/**
 * Pitch diameter [m] of a tapped taper thread at a depth: 1/16 of the depth less than at the
 * face. Source: ASME B1.20.1, ISO 7-1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(taperInside({ atFace: 0.0095, depth: 0.004 }), 0.00925, 1e-9);
 * ```
 */
export const taperInside: Method<Record<"atFace" | "depth", MethodInput>> = method({
  id: "taper-thread-inside",
  title: "Pitch diameter of a taper thread inside the hole",
  inputs: {
    atFace: { ...OUTSIDE, says: "Pitch diameter at the face", symbol: "E_1" },
    depth: { unit: "m", min: 0, max: 0.05, says: "Depth below the face", symbol: "z" },
  },
  output: { ...DIAMETER, name: "inside", says: "Pitch diameter at the depth" },
  formula: "atFace - depth / 16",
  source: "ASME B1.20.1 and ISO 7-1: taper 1 in 16 on diameter",
  compute: ({ atFace, depth }) => atFace - depth / 16,
});

/**
 * Turns [-] that an NPT thread takes by hand. Tools add 1.5 to 3 (common practice).
 * Source: ASME B1.20.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const turns = handTightTurns({ handTight: 0.1615 * 0.0254, pitch: 0.0254 / 27 });
 *
 * assertAlmostEquals(turns, 4.36, 0.001);
 * ```
 */
export const handTightTurns: Method<Record<"handTight" | "pitch", MethodInput>> = method({
  id: "npt-hand-tight-turns",
  title: "Hand-tight turns of a taper thread",
  inputs: { handTight: HAND_TIGHT, pitch: PITCH },
  output: { name: "turns", unit: "-", min: 0, max: 300, says: "Turns" },
  formula: "handTight / pitch",
  source: NPT,
  compute: ({ handTight, pitch }) => handTight / pitch,
});

/**
 * Height [m] of an NPT thread with its crests cut off. Source: ASME B1.20.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(nptHeight({ pitch: 0.0254 / 27 }) / 0.0254, 0.02963, 1e-5);
 * ```
 */
export const nptHeight: Method<Record<"pitch", MethodInput>> = method({
  id: "npt-height",
  title: "Height of an NPT thread",
  inputs: { pitch: PITCH },
  output: { ...LENGTH, name: "height", says: "Largest height of the thread", symbol: "h" },
  formula: "0.8 * pitch",
  source: NPT,
  compute: ({ pitch }) => 0.8 * pitch,
});

/**
 * Height [m] of a 55 degree pipe thread: the sharp height with a sixth rounded off at each
 * end. Pitch diameter is major less this, minor diameter less twice this.
 * Source: ISO 228-1, ISO 7-1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example G 1/8
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(whitworthHeight({ pitch: 0.0254 / 28 }), 0.581e-3, 1e-6);
 * ```
 */
export const whitworthHeight: Method<Record<"pitch", MethodInput>> = method({
  id: "whitworth-height",
  title: "Height of a 55 degree pipe thread",
  inputs: { pitch: PITCH },
  output: { ...LENGTH, name: "height", says: "Height of the thread", symbol: "h" },
  formula: "0.640327 * pitch",
  source: "ISO 228-1, ISO 7-1",
  compute: ({ pitch }) => 0.640327 * pitch,
});

/**
 * Useful length [m] of a taper thread R: gauge length and 2.75 turns of fitting allowance.
 * Source: ISO 7-1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example R 1/8
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(taperUsefulLength({ gauge: 0.004, pitch: 0.0254 / 28 }), 6.49e-3, 1e-5);
 * ```
 */
export const taperUsefulLength: Method<Record<"gauge" | "pitch", MethodInput>> = method({
  id: "taper-useful-length",
  title: "Useful length of a taper thread R",
  inputs: {
    gauge: { unit: "m", min: 0.001, max: 0.05, says: "Gauge length, as tabulated" },
    pitch: PITCH,
  },
  output: { ...LENGTH, name: "length", says: "Length of useful thread" },
  formula: "gauge + 2.75 * pitch",
  source: "ISO 7-1: gauge length plus fitting allowance of 2.75 turns for these sizes",
  compute: ({ gauge, pitch }) => gauge + 2.75 * pitch,
});
