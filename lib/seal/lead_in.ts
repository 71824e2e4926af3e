/** The cone at the mouth of a bore that a ring enters without being cut. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";
import { BORE } from "./limits.ts";

const OUTSIDE: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.14,
  says: "Outside diameter of the ring on its groove",
  symbol: "d_o",
};
const MOUTH: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.15,
  says: "Diameter of the mouth",
  symbol: "d_m",
};

/**
 * Diameter [m] that the mouth of a lead-in needs at least: wider than the ring.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(leadInMouth({ outside: 15.02e-3, clearance: 0.2e-3 }), 15.22e-3, 1e-12);
 * ```
 */
export const leadInMouth: Method<Record<"outside" | "clearance", MethodInput>> = method({
  id: "lead-in-mouth",
  title: "Mouth of a lead-in",
  inputs: {
    outside: OUTSIDE,
    clearance: {
      unit: "m",
      min: 0,
      max: 5e-3,
      says: "What the mouth is wider than the ring",
      symbol: "c",
    },
  },
  output: { ...MOUTH, name: "mouth" },
  formula: "outside + clearance",
  source: "Geometry",
  compute: ({ outside, clearance }) => outside + clearance,
});

/**
 * Length [m] of a lead-in; nought or below, the bore itself takes the ring.
 *
 * Source: geometry of a cone.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 15 degrees from the axis
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = leadInLength({ mouth: 15.22e-3, bore: 14e-3, angle: Math.PI / 12 });
 *
 * assertAlmostEquals(length_m, 2.277e-3, 1e-6);
 * ```
 */
export const leadInLength: Method<Record<"mouth" | "bore" | "angle", MethodInput>> = method({
  id: "lead-in-length",
  title: "Length of a lead-in",
  inputs: {
    mouth: MOUTH,
    bore: BORE,
    angle: {
      unit: "rad",
      min: 0.05,
      max: 1.2,
      says: "Angle of the cone's side from the axis",
      symbol: "\\alpha",
    },
  },
  output: {
    name: "length",
    unit: "m",
    min: -1,
    max: 1.5,
    says: "Length of the lead-in; nought or below, none is needed",
    symbol: "L",
  },
  formula: "(mouth - bore) / (2 * tan(angle))",
  source: "Geometry of a cone",
  compute: ({ mouth, bore, angle }) => (mouth - bore) / (2 * Math.tan(angle)),
});

/** What {@linkcode leadIn} needs. */
export interface LeadInSpec {
  /** Smallest bore [m]. */
  readonly bore_m: number;
  /** Largest outside diameter of the ring on its groove [m]. */
  readonly fittedOutside_m: number;
  /** Angle from the axis [rad]. */
  readonly angle_rad: number;
  /** What the mouth is to be wider than the ring [m]. */
  readonly clearance_m: number;
}

/** A lead-in. */
export interface LeadIn {
  /** Least diameter of its mouth [m]. */
  readonly mouth_m: number;
  /** Least length [m]; nought or below, none is needed. */
  readonly length_m: number;
}

/**
 * Computes the least lead-in that a ring enters without being cut.
 *
 * @param working Takes the record.
 * @param section What the results stand under in the record.
 * @param spec Bore, ring and cone.
 * @returns Mouth and length.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const { length_m } = leadIn(new Working(), "leadIn", {
 *   bore_m: 14e-3,
 *   fittedOutside_m: 15.02e-3,
 *   angle_rad: Math.PI / 9,
 *   clearance_m: 0.2e-3,
 * });
 *
 * assertAlmostEquals(length_m, 1.676e-3, 1e-6);
 * ```
 */
export function leadIn(working: Working, section: string, spec: LeadInSpec): LeadIn {
  const mouth_m = working.run(`${section}.mouth_m`, leadInMouth, {
    outside: spec.fittedOutside_m,
    clearance: spec.clearance_m,
  });
  const length_m = working.run(`${section}.length_m`, leadInLength, {
    mouth: mouth_m,
    bore: spec.bore_m,
    angle: spec.angle_rad,
  });
  return { mouth_m, length_m };
}
