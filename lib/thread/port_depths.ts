/** Where seat, thread and gallery lie in a sensor port, by depth below the face. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const STACK = "Sum of depths along the axis of the port";

const depth = (says: string, min = -0.2): MethodInput => ({ unit: "m", min, max: 0.3, says });

const OUT = { unit: "m", min: -1, max: 1 } as const;

/**
 * Depth [m] at which the seat begins so that the nose seals while a gap is still left under
 * the sensor's shoulder. Negative: the sensor is too short for any seat.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Reach 10 mm, 0.5 mm of gap, sealing circle 1 mm into the cone
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const depth_m = seatDepthByReach({ reach: 0.01, gap: 0.0005, toCircle: 0.001 });
 *
 * assertAlmostEquals(depth_m, 0.0085, 1e-12);
 * ```
 */
export const seatDepthByReach: Method<Record<"reach" | "gap" | "toCircle", MethodInput>> = method({
  id: "seat-depth-by-reach",
  title: "Depth of the seat by the sensor's reach",
  inputs: {
    reach: depth("Reach of the sensor, shoulder to sealing circle", 0),
    gap: depth("Gap wanted under the shoulder", 0),
    toCircle: depth("Depth of the sealing circle below the start of the cone", 0),
  },
  output: { ...OUT, name: "seatDepth", says: "Depth where the seat begins" },
  formula: "reach - gap - toCircle",
  source: STACK,
  compute: ({ reach, gap, toCircle }) => reach - gap - toCircle,
});

/**
 * Deepest start of the seat [m] that leaves metal between cone and gallery. Negative: the bar
 * is too thin above the gallery for any seat.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const depth_m = seatDepthByGallery({ opening: 0.0136, left: 0.002, coneDepth: 0.0025 });
 *
 * assertAlmostEquals(depth_m, 0.0091, 1e-12);
 * ```
 */
export const seatDepthByGallery: Method<Record<"opening" | "left" | "coneDepth", MethodInput>> =
  method({
    id: "seat-depth-by-gallery",
    title: "Deepest seat above the gallery",
    inputs: {
      opening: depth("Depth where the gallery first opens"),
      left: depth("Metal wanted between cone and gallery", 0),
      coneDepth: depth("Depth of the cone", 0),
    },
    output: { ...OUT, name: "seatDepth", says: "Depth where the seat begins" },
    formula: "opening - left - coneDepth",
    source: STACK,
    compute: ({ opening, left, coneDepth }) => opening - left - coneDepth,
  });

/**
 * Metal [m] between the end of the cone and the gallery. Negative: the cone runs into it.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const left_m = seatToGallery({ opening: 0.0136, seatDepth: 0.009, coneDepth: 0.0025 });
 *
 * assertAlmostEquals(left_m, 0.0021, 1e-12);
 * ```
 */
export const seatToGallery: Method<Record<"opening" | "seatDepth" | "coneDepth", MethodInput>> =
  method({
    id: "seat-to-gallery",
    title: "Metal between seat and gallery",
    inputs: {
      opening: depth("Depth where the gallery first opens"),
      seatDepth: depth("Depth where the seat begins"),
      coneDepth: depth("Depth of the cone", 0),
    },
    output: { ...OUT, name: "left", says: "Metal between cone and gallery" },
    formula: "opening - seatDepth - coneDepth",
    source: STACK,
    compute: ({ opening, seatDepth, coneDepth }) => opening - seatDepth - coneDepth,
  });

/**
 * Depth [m] of the circle on which the nose seals: where the cone is as wide as the nose.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sealingDepth({ seatDepth: 0.0085, toCircle: 0.001 }), 0.0095, 1e-12);
 * ```
 */
export const sealingDepth: Method<Record<"seatDepth" | "toCircle", MethodInput>> = method({
  id: "sealing-depth",
  title: "Depth of the sealing circle",
  inputs: {
    seatDepth: depth("Depth where the seat begins"),
    toCircle: depth("Depth of the sealing circle below the start of the cone", 0),
  },
  output: { ...OUT, name: "sealingDepth", says: "Depth of the sealing circle" },
  formula: "seatDepth + toCircle",
  source: STACK,
  compute: ({ seatDepth, toCircle }) => seatDepth + toCircle,
});

/**
 * Gap [m] under the sensor's shoulder once its nose seals. Negative: the shoulder bottoms
 * first and the nose never seals.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(shoulderGap({ reach: 0.01, sealingDepth: 0.0095 }), 0.0005, 1e-12);
 * ```
 */
export const shoulderGap: Method<Record<"reach" | "sealingDepth", MethodInput>> = method({
  id: "shoulder-gap",
  title: "Gap under the sensor's shoulder",
  inputs: {
    reach: depth("Reach of the sensor, shoulder to sealing circle", 0),
    sealingDepth: depth("Depth of the sealing circle"),
  },
  output: { ...OUT, name: "gap", says: "Gap under the shoulder when the nose seals" },
  formula: "reach - sealingDepth",
  source: STACK,
  compute: ({ reach, sealingDepth: at }) => reach - at,
});

/**
 * Full thread [m] above a seat: to where the tap runs out, and never beyond the gallery.
 * Negative: none.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = fullThreadAboveSeat({ seatDepth: 0.009, runOut: 0.003, opening: 0.0136 });
 *
 * assertAlmostEquals(length_m, 0.006, 1e-12);
 * ```
 */
export const fullThreadAboveSeat: Method<Record<"seatDepth" | "runOut" | "opening", MethodInput>> =
  method({
    id: "full-thread-above-seat",
    title: "Full thread above the seat",
    inputs: {
      seatDepth: depth("Depth where the seat begins"),
      runOut: depth("Length without full thread below the tap", 0),
      opening: depth("Depth where the gallery first opens"),
    },
    output: { ...OUT, name: "fullThread", says: "Length of full thread" },
    formula: "min(seatDepth - runOut, opening)",
    source: STACK,
    compute: ({ seatDepth, runOut, opening }) => Math.min(seatDepth - runOut, opening),
  });

/**
 * Full thread [m] between a seat at the mouth and the gallery; the tap's lead runs out into
 * the gallery. Negative: none.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(fullThreadAboveGallery({ opening: 6.15e-3, mouth: 1e-3 }), 5.15e-3, 1e-12);
 * ```
 */
export const fullThreadAboveGallery: Method<Record<"opening" | "mouth", MethodInput>> = method({
  id: "full-thread-above-gallery",
  title: "Full thread above the gallery",
  inputs: {
    opening: depth("Depth where the gallery first opens"),
    mouth: depth("Depth of a seat or chamfer at the mouth", 0),
  },
  output: { ...OUT, name: "fullThread", says: "Length of full thread" },
  formula: "opening - mouth",
  source: STACK,
  compute: ({ opening, mouth }) => opening - mouth,
});

/**
 * Wall [m] between the thread and the nearer edges of the face, the port in its middle.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M10 in a 25 mm face
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(wallAroundPort({ faceWidth: 0.025, nominal: 0.01 }), 0.0075, 1e-12);
 * ```
 */
export const wallAroundPort: Method<Record<"faceWidth" | "nominal", MethodInput>> = method({
  id: "wall-around-port",
  title: "Wall between the port's thread and the edge of the face",
  inputs: {
    faceWidth: depth("Width of the face", 0.001),
    nominal: depth("Nominal diameter of the thread", 0.001),
  },
  output: { ...OUT, name: "wall", says: "Wall to the edge" },
  formula: "(faceWidth - nominal) / 2",
  source: "Geometry of the face",
  compute: ({ faceWidth, nominal }) => (faceWidth - nominal) / 2,
});
