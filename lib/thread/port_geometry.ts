/** Cones and openings of a port: drill points, seats, where a hole meets the gallery. */
import { type Method, method, type MethodInput, type MethodOutput } from "@/lib/method/mod.ts";
import { AXIS_DEPTH, DRILL, GALLERY, INCLUDED, PITCH } from "./limits.ts";

const CONE = "Geometry of a cone";

const LENGTH: MethodOutput = {
  name: "length",
  unit: "m",
  min: 0,
  max: 0.2,
  says: "Length along the axis",
};

const DEPTH: MethodOutput = {
  name: "depth",
  unit: "m",
  min: -0.2,
  max: 0.3,
  says: "Depth below the face",
  symbol: "z",
};

/**
 * Length [m] of a drill's point, and depth of a pointed drill that leaves a mouth of that
 * diameter. 0.300 d at 118 degrees, 0.207 d at 135, half of d for a 90 degree spotting drill.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 9 mm drill, 118 degrees
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const point_m = pointLength({ drill: 0.009, included: 118 / 180 * Math.PI });
 *
 * assertAlmostEquals(point_m, 2.704e-3, 1e-6);
 * ```
 */
export const pointLength: Method<Record<"drill" | "included", MethodInput>> = method({
  id: "drill-point-length",
  title: "Length of a drill's point",
  inputs: { drill: DRILL, included: INCLUDED },
  output: { ...LENGTH, says: "Length of the point" },
  formula: "drill / (2 * tan(included / 2))",
  source: CONE,
  compute: ({ drill, included }) => drill / (2 * Math.tan(included / 2)),
});

/**
 * Depth [m] of a cone between two diameters. A 45 degree seat has 90 degrees from side to side.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example From 9 mm to a 4 mm pilot, 90 degrees
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const depth_m = coneDepth({ wide: 0.009, narrow: 0.004, included: Math.PI / 2 });
 *
 * assertAlmostEquals(depth_m, 0.0025, 1e-12);
 * ```
 */
export const coneDepth: Method<Record<"wide" | "narrow" | "included", MethodInput>> = method({
  id: "cone-depth",
  title: "Depth of a conical seat",
  inputs: {
    wide: { ...DRILL, says: "Diameter where the cone begins", symbol: "d_1" },
    narrow: { ...DRILL, says: "Diameter where the cone ends", symbol: "d_2" },
    included: INCLUDED,
  },
  output: { ...LENGTH, says: "Depth of the cone" },
  formula: "(wide - narrow) / (2 * tan(included / 2))",
  source: CONE,
  compute: ({ wide, narrow, included }) => (wide - narrow) / (2 * Math.tan(included / 2)),
});

/**
 * Length [m] of a cone's side between two diameters: the width of the seat along its slope.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const side_m = coneSide({ wide: 0.011, narrow: 0.009, included: Math.PI / 2 });
 *
 * assertAlmostEquals(side_m, 1.414e-3, 1e-6);
 * ```
 */
export const coneSide: Method<Record<"wide" | "narrow" | "included", MethodInput>> = method({
  id: "cone-side",
  title: "Width of a conical seat along its slope",
  inputs: coneDepth.inputs,
  output: { ...LENGTH, says: "Width of the seat along its slope" },
  formula: "(wide - narrow) / (2 * sin(included / 2))",
  source: CONE,
  compute: ({ wide, narrow, included }) => (wide - narrow) / (2 * Math.sin(included / 2)),
});

/**
 * How much wider [m] a seat gets by going deeper: twice as much for 90 degrees.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.1 mm too deep
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(seatGrowth({ deeper: 1e-4, included: Math.PI / 2 }), 2e-4, 1e-12);
 * ```
 */
export const seatGrowth: Method<Record<"deeper" | "included", MethodInput>> = method({
  id: "seat-growth",
  title: "Growth of a seat's diameter with depth",
  inputs: {
    deeper: { unit: "m", min: 0, max: 0.01, says: "How much deeper", symbol: "\\Delta z" },
    included: INCLUDED,
  },
  output: { ...LENGTH, name: "growth", says: "Growth of the diameter" },
  formula: "2 * deeper * tan(included / 2)",
  source: CONE,
  compute: ({ deeper, included }) => 2 * deeper * Math.tan(included / 2),
});

/**
 * Width [m] of the ring that a pilot leaves of the seat, seen along the axis. Negative: the
 * pilot is wider than the seat.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(seatRing({ drill: 0.009, pilot: 0.004 }), 0.0025, 1e-12);
 * ```
 */
export const seatRing: Method<Record<"drill" | "pilot", MethodInput>> = method({
  id: "seat-ring",
  title: "Width of the seat ring",
  inputs: {
    drill: { ...DRILL, says: "Diameter of the tapping drill" },
    pilot: { ...DRILL, says: "Diameter of the pilot", symbol: "d_p" },
  },
  output: { ...LENGTH, min: -0.03, name: "ring", says: "Width of the ring along the radius" },
  formula: "(drill - pilot) / 2",
  source: "Geometry of two circles about one axis",
  compute: ({ drill, pilot }) => (drill - pilot) / 2,
});

/**
 * Depth [m] at which a hole square to the gallery first opens into it. Negative: the gallery
 * comes out of the face.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 12.7 mm gallery in the middle of 25 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(firstOpening({ axisDepth: 0.0125, gallery: 0.0127 }), 6.15e-3, 1e-9);
 * ```
 */
export const firstOpening: Method<Record<"axisDepth" | "gallery", MethodInput>> = method({
  id: "gallery-first-opening",
  title: "Depth where a hole first opens into the gallery",
  inputs: { axisDepth: AXIS_DEPTH, gallery: GALLERY },
  output: DEPTH,
  formula: "axisDepth - gallery / 2",
  source: "Two cylinders whose axes cross at a right angle",
  compute: ({ axisDepth, gallery }) => axisDepth - gallery / 2,
});

/**
 * Depth [m] of the axis of a round bar below a flat that is spotted on it: less than the radius.
 *
 * @throws {InputError} When a number lies outside its range, or the flat is wider than the bar.
 *
 * @example A flat of 15 mm on a bar of 28 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(spottedAxisDepth({ radius: 0.014, flat: 0.015 }), 11.82e-3, 1e-5);
 * ```
 */
export const spottedAxisDepth: Method<Record<"radius" | "flat", MethodInput>> = method({
  id: "spotted-axis-depth",
  title: "Depth of a round bar's axis below a spotted flat",
  inputs: {
    radius: { unit: "m", min: 0.001, max: 0.1, says: "Radius of the bar", symbol: "R" },
    flat: { unit: "m", min: 0.001, max: 0.06, says: "Diameter of the flat", symbol: "d_f" },
  },
  output: { ...DEPTH, min: 0 },
  formula: "sqrt(radius^2 - (flat / 2)^2)",
  words: "Only for a flat narrower than the bar.",
  source: "Chord of a circle",
  compute: ({ radius, flat }) => flat < 2 * radius ? Math.sqrt(radius ** 2 - flat ** 2 / 4) : NaN,
});

/**
 * Depth [m] at which a hole square to the gallery is open all round. Only for a hole narrower
 * than the gallery: a wider one is never open all round.
 *
 * @throws {InputError} When a number lies outside its range, or the hole is wider.
 *
 * @example 9 mm into a 12.7 mm gallery in the middle of 25 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const depth_m = lastOpening({ axisDepth: 0.0125, gallery: 0.0127, drill: 0.009 });
 *
 * assertAlmostEquals(depth_m, 8.02e-3, 1e-6);
 * ```
 */
export const lastOpening: Method<Record<"axisDepth" | "gallery" | "drill", MethodInput>> = method({
  id: "gallery-last-opening",
  title: "Depth where a hole is open to the gallery all round",
  inputs: { axisDepth: AXIS_DEPTH, gallery: GALLERY, drill: DRILL },
  output: DEPTH,
  formula: "axisDepth - sqrt((gallery / 2)^2 - (drill / 2)^2)",
  words: "Only for a drill narrower than the gallery.",
  source: "Two cylinders whose axes cross at a right angle",
  compute: ({ axisDepth, gallery, drill }) =>
    drill < gallery ? axisDepth - Math.sqrt(gallery ** 2 - drill ** 2) / 2 : NaN,
});

/**
 * Clearance [m] between the drill's point and the far wall of the gallery when the hole has
 * just opened all round. Negative: the point marks the far wall.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const clear_m = farWallClearance({
 *   axisDepth: 0.0125,
 *   gallery: 0.0127,
 *   opened: 8.02e-3,
 *   point: 2.704e-3,
 * });
 *
 * assertAlmostEquals(clear_m, 8.126e-3, 1e-6);
 * ```
 */
export const farWallClearance: Method<
  Record<"axisDepth" | "gallery" | "opened" | "point", MethodInput>
> = method({
  id: "far-wall-clearance",
  title: "Clearance of the drill's point to the far wall of the gallery",
  inputs: {
    axisDepth: AXIS_DEPTH,
    gallery: GALLERY,
    opened: { unit: "m", min: -0.2, max: 0.3, says: "Depth of the drill's full diameter" },
    point: { unit: "m", min: 0, max: 0.04, says: "Length of the drill's point" },
  },
  output: { ...DEPTH, min: -0.4, max: 0.5, name: "clearance", says: "Clearance" },
  formula: "axisDepth + gallery / 2 - opened - point",
  source: "Geometry of the hole",
  compute: ({ axisDepth, gallery, opened, point }) => axisDepth + gallery / 2 - opened - point,
});

/**
 * Depth [m] to which a blind hole is drilled to its full diameter, point not counted, for a
 * wanted length of full thread: tap lead and clearance come on top.
 *
 * Tap lead, by the kind of tap: bottoming 1 to 2 threads, plug 3 to 5, taper 7 to 10.
 * Source: common practice; classes of taps by ASME B94.9.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 10 mm of M10x1 with a bottoming tap
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const depth_m = blindHoleDepth({
 *   fullThread: 0.01,
 *   pitch: 0.001,
 *   leadThreads: 2,
 *   clearThreads: 1,
 * });
 *
 * assertAlmostEquals(depth_m, 0.013, 1e-12);
 * ```
 */
export const blindHoleDepth: Method<
  Record<"fullThread" | "pitch" | "leadThreads" | "clearThreads", MethodInput>
> = method({
  id: "blind-hole-depth",
  title: "Depth of a blind hole to be tapped",
  inputs: {
    fullThread: {
      unit: "m",
      min: 0,
      max: 0.1,
      says: "Length of full thread wanted",
      symbol: "L_e",
    },
    pitch: PITCH,
    leadThreads: { unit: "-", min: 0, max: 10, says: "Threads of the tap's lead", symbol: "n_l" },
    clearThreads: { unit: "-", min: 0, max: 5, says: "Pitches kept clear below the tap" },
  },
  output: DEPTH,
  formula: "fullThread + (leadThreads + clearThreads) * pitch",
  source: "Common practice; leads of taps by ASME B94.9",
  compute: ({ fullThread, pitch, leadThreads, clearThreads }) =>
    fullThread + (leadThreads + clearThreads) * pitch,
});

/**
 * Length [m] that a bottoming tap leaves without full thread above a seat: its lead and what
 * is kept clear so that it never touches the seat.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(tapRunOut({ pitch: 0.001, leadThreads: 2, clearThreads: 1 }), 0.003, 1e-12);
 * ```
 */
export const tapRunOut: Method<Record<"pitch" | "leadThreads" | "clearThreads", MethodInput>> =
  method({
    id: "tap-run-out",
    title: "Length without full thread below a tap",
    inputs: {
      pitch: PITCH,
      leadThreads: blindHoleDepth.inputs.leadThreads,
      clearThreads: blindHoleDepth.inputs.clearThreads,
    },
    output: { ...LENGTH, says: "Length without full thread" },
    formula: "(leadThreads + clearThreads) * pitch",
    source: "Common practice; leads of taps by ASME B94.9",
    compute: ({ pitch, leadThreads, clearThreads }) => (leadThreads + clearThreads) * pitch,
  });
