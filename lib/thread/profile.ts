/** The shape of a thread: its diameters, what a drill leaves of it, the area that bears a pull. */
import { type Method, method, type MethodInput, type MethodOutput } from "@/lib/method/mod.ts";
import { DRILL, NOMINAL, PITCH, SHARP_HEIGHT } from "./limits.ts";

const PROFILE_SOURCE = "ISO 68-1 basic profile; ASME B1.1 clause 5 has the same";

const DIAMETER = { unit: "m", min: 0, max: 0.06, open: true } as const;

const HEIGHT_SHARE = { unit: "-", min: -400, max: 400, symbol: "h" } as const;

/**
 * Height [m] of the triangle that a thread's flanks would meet in.
 *
 * 0.8660 times the pitch for 60 degree threads, 0.9605 for 55 degree ones.
 * Source: ISO 68-1, ISO 228-1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1 mm of pitch, 60 degrees
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sharpHeight({ pitch: 1e-3, flank: Math.PI / 6 }), 8.66e-4, 1e-7);
 * ```
 */
export const sharpHeight: Method<Record<"pitch" | "flank", MethodInput>> = method({
  id: "thread-sharp-height",
  title: "Sharp height of a thread",
  inputs: {
    pitch: PITCH,
    flank: {
      unit: "rad",
      min: 0.25,
      max: 0.8,
      says: "Half of the angle between the flanks",
      symbol: "\\alpha",
    },
  },
  output: { ...SHARP_HEIGHT, name: "height", min: 0, max: 0.02 },
  formula: "pitch / (2 * tan(flank))",
  source: "ISO 68-1 (60 degrees), ISO 228-1 (55 degrees): geometry of the triangle",
  compute: ({ pitch, flank }) => pitch / (2 * Math.tan(flank)),
});

/**
 * Basic pitch diameter [m] of a 60 degree thread. Source: ISO 68-1, ISO 724, ASME B1.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M10x1
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(pitchDiameter({ nominal: 0.01, pitch: 0.001 }), 9.350e-3, 1e-6);
 * ```
 */
export const pitchDiameter: Method<Record<"nominal" | "pitch", MethodInput>> = method({
  id: "thread-pitch-diameter",
  title: "Pitch diameter of a 60 degree thread",
  inputs: { nominal: NOMINAL, pitch: PITCH },
  output: { ...DIAMETER, name: "pitchDiameter", says: "Basic pitch diameter", symbol: "D_2" },
  formula: "nominal - 3 * sqrt(3) / 8 * pitch",
  source: PROFILE_SOURCE,
  compute: ({ nominal, pitch }) => nominal - 3 * Math.sqrt(3) / 8 * pitch,
});

/**
 * Basic minor diameter [m] of a tapped 60 degree thread: the smallest hole of its class.
 * Source: ISO 68-1, ISO 724, ASME B1.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M10x1
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(minorDiameter({ nominal: 0.01, pitch: 0.001 }), 8.917e-3, 1e-6);
 * ```
 */
export const minorDiameter: Method<Record<"nominal" | "pitch", MethodInput>> = method({
  id: "thread-minor-diameter",
  title: "Minor diameter of a tapped 60 degree thread",
  inputs: { nominal: NOMINAL, pitch: PITCH },
  output: { ...DIAMETER, name: "minorDiameter", says: "Basic minor diameter", symbol: "D_1" },
  formula: "nominal - 5 * sqrt(3) / 8 * pitch",
  source: PROFILE_SOURCE,
  compute: ({ nominal, pitch }) => nominal - 5 * Math.sqrt(3) / 8 * pitch,
});

const AREA: MethodOutput = {
  name: "area",
  unit: "m^2",
  min: 0,
  max: 0.003,
  says: "Area that a pull on the screw is reckoned to act on",
  symbol: "A_s",
};

/**
 * Tensile stress area [m^2] of a metric screw: a circle between pitch and core diameter.
 * Source: ISO 898-1 clause 9.1.6.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M6
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(stressArea({ nominal: 0.006, pitch: 0.001 }), 20.1e-6, 5e-8);
 * ```
 */
export const stressArea: Method<Record<"nominal" | "pitch", MethodInput>> = method({
  id: "thread-stress-area",
  title: "Tensile stress area of a metric screw",
  inputs: { nominal: NOMINAL, pitch: PITCH },
  output: AREA,
  formula: "pi / 4 * (nominal - 0.9382 * pitch)^2",
  source: "ISO 898-1 clause 9.1.6.1",
  compute: ({ nominal, pitch }) => Math.PI / 4 * (nominal - 0.9382 * pitch) ** 2,
});

/**
 * Tensile stress area [m^2] of a unified screw: the inch standard takes off a little more
 * than the metric one. Source: ASME B1.1 appendix B.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 7/16-20
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const area_m2 = stressAreaUnified({ nominal: 7 / 16 * 0.0254, pitch: 0.0254 / 20 });
 *
 * assertAlmostEquals(area_m2, 0.1187 * 0.0254 ** 2, 1e-7);
 * ```
 */
export const stressAreaUnified: Method<Record<"nominal" | "pitch", MethodInput>> = method({
  id: "thread-stress-area-unified",
  title: "Tensile stress area of a unified screw",
  inputs: { nominal: NOMINAL, pitch: PITCH },
  output: AREA,
  formula: "pi / 4 * (nominal - 0.9743 * pitch)^2",
  source: "ASME B1.1 appendix B",
  compute: ({ nominal, pitch }) => Math.PI / 4 * (nominal - 0.9743 * pitch) ** 2,
});

/**
 * Share of the ISO thread height that a drill leaves to be cut [-].
 *
 * The base is the basic height of the tapped thread, 5/8 of the sharp height: a drill of
 * nominal less pitch gives 0.924. Negative: the drill is wider than the thread.
 * Not the same number as {@linkcode heightShareUs}. Source: ISO 68-1, by definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 9 mm for M10x1
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const share = heightShareIso({ nominal: 0.01, drill: 0.009, sharpHeight: 8.6603e-4 });
 *
 * assertAlmostEquals(share, 0.924, 0.0005);
 * ```
 */
export const heightShareIso: Method<Record<"nominal" | "drill" | "sharpHeight", MethodInput>> =
  method({
    id: "thread-height-share-iso",
    title: "Thread height left by a drill, on the ISO base",
    inputs: { nominal: NOMINAL, drill: DRILL, sharpHeight: SHARP_HEIGHT },
    output: { ...HEIGHT_SHARE, name: "share", says: "Share of five eighths of the sharp height" },
    formula: "(nominal - drill) / (2 * 5 / 8 * sharpHeight)",
    source: "ISO 68-1: height of the tapped thread's basic profile, 5/8 H",
    compute: ({ nominal, drill, sharpHeight: h }) => (nominal - drill) / (1.25 * h),
  });

/**
 * Share of the US full thread that a drill leaves to be cut [-].
 *
 * The base is 3/4 of the sharp height: a drill of nominal less pitch gives 0.770.
 * Negative: the drill is wider than the thread. Source: rule of the trade's handbooks,
 * drill = major - 0.01299 percent pitch.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 9 mm for M10x1
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const share = heightShareUs({ nominal: 0.01, drill: 0.009, sharpHeight: 8.6603e-4 });
 *
 * assertAlmostEquals(share, 0.770, 0.0005);
 * ```
 */
export const heightShareUs: Method<Record<"nominal" | "drill" | "sharpHeight", MethodInput>> =
  method({
    id: "thread-height-share-us",
    title: "Thread height left by a drill, on the US base",
    inputs: { nominal: NOMINAL, drill: DRILL, sharpHeight: SHARP_HEIGHT },
    output: { ...HEIGHT_SHARE, name: "share", says: "Share of three quarters of the sharp height" },
    formula: "(nominal - drill) / (2 * 3 / 4 * sharpHeight)",
    source: "Machinery's Handbook, tap drills: drill = major - 0.01299 percent pitch",
    compute: ({ nominal, drill, sharpHeight: h }) => (nominal - drill) / (1.5 * h),
  });
