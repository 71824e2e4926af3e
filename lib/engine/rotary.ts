/** What a rotary engine displaces. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Swept volume of one chamber of a trochoid rotary engine [m^3].
 *
 * Source: R. F. Ansdale, The Wankel RC Engine, from memory.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const volume_m3 = rotarySweptVolume({ eccentricity: 0.015, radius: 0.105, width: 0.08 });
 *
 * assertAlmostEquals(volume_m3, 654.7e-6, 1e-7);
 * ```
 */
export const rotarySweptVolume: Method<
  Record<"eccentricity" | "radius" | "width", MethodInput>
> = method({
  id: "rotary-swept-volume",
  title: "Swept volume of one chamber of a rotary engine",
  inputs: {
    eccentricity: {
      unit: "m",
      min: 0.002,
      max: 0.05,
      says: "Eccentricity of the shaft",
      symbol: "e",
    },
    radius: {
      unit: "m",
      min: 0.02,
      max: 0.3,
      says: "Generating radius: centre of the rotor to its apex",
      symbol: "R",
    },
    width: { unit: "m", min: 0.01, max: 0.3, says: "Width of the rotor", symbol: "b" },
  },
  output: {
    name: "volume",
    unit: "m^3",
    min: 0,
    max: 0.03,
    says: "Swept volume of one chamber",
    symbol: "V_h",
  },
  formula: "3 * sqrt(3) * eccentricity * radius * width",
  source: "R. F. Ansdale, The Wankel RC Engine, from memory; a numerical sweep agrees",
  compute: ({ eccentricity, radius, width }) => 3 * Math.sqrt(3) * eccentricity * radius * width,
});

/**
 * Displacement [m^3] of the four-stroke piston engine that breathes as much as a rotary
 * at equal shaft speed.
 *
 * Source: one filling per shaft turn and rotor, against one in two turns.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(fourStrokeEquivalent({ chamber: 0.00065, rotors: 2 }), 0.0026, 1e-12);
 * ```
 */
export const fourStrokeEquivalent: Method<Record<"chamber" | "rotors", MethodInput>> = method({
  id: "four-stroke-equivalent",
  title: "Four-stroke displacement that breathes like a rotary",
  inputs: {
    chamber: {
      unit: "m^3",
      min: 1e-5,
      max: 0.005,
      says: "Swept volume of one chamber",
      symbol: "V_h",
    },
    rotors: { unit: "-", min: 1, max: 6, says: "Number of rotors", symbol: "n_r" },
  },
  output: {
    name: "displacement",
    unit: "m^3",
    min: 0,
    max: 0.06,
    says: "Displacement of the four-stroke",
    symbol: "V_d",
  },
  formula: "2 * chamber * rotors",
  source: "One filling per shaft turn and rotor, against one in two turns",
  compute: ({ chamber, rotors }) => 2 * chamber * rotors,
});
