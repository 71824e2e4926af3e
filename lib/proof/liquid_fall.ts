/** What the loss of a little liquid does to a rail full of it. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Fall of pressure [Pa] when a stiff rail full of liquid, without air, loses a little.
 *
 * Source: definition of the bulk modulus.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example One drop of 0.01 mL out of 60 mL of water
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const fall_Pa = liquidFall({ bulkModulus: 2.2e9, lost: 1e-8, volume: 60e-6 });
 *
 * assertAlmostEquals(fall_Pa, 3.67e5, 1e3);
 * ```
 */
export const liquidFall: Method<Record<"bulkModulus" | "lost" | "volume", MethodInput>> = method({
  id: "liquid-fall",
  title: "Fall of pressure by lost liquid, no air in the rail",
  inputs: {
    bulkModulus: {
      unit: "Pa",
      min: 5e8,
      max: 3e9,
      says: "Bulk modulus of the liquid",
      symbol: "K",
    },
    lost: { unit: "m^3", min: 0, max: 1e-5, says: "Volume lost", symbol: "\\Delta V" },
    volume: { unit: "m^3", min: 1e-6, max: 0.1, says: "Volume under test", symbol: "V" },
  },
  output: {
    name: "fall",
    unit: "Pa",
    min: 0,
    max: 5e7,
    says: "Fall of pressure",
    symbol: "\\Delta p",
  },
  formula: "bulkModulus * lost / volume",
  source: "Definition of the bulk modulus",
  compute: ({ bulkModulus, lost, volume }) => bulkModulus * lost / volume,
});

/**
 * Fall of pressure [Pa] when a rail with an air bubble in it loses liquid: the
 * bubble gives way, so trapped air hides a leak.
 *
 * Source: Boyle's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(bubbleFall({ pressure: 9e5, lost: 1e-6, air: 2e-6 }), 3e5, 1e-6);
 * ```
 */
export const bubbleFall: Method<Record<"pressure" | "lost" | "air", MethodInput>> = method({
  id: "bubble-fall",
  title: "Fall of pressure by lost liquid, air in the rail",
  inputs: {
    pressure: {
      unit: "Pa",
      min: 0,
      max: 5e7,
      says: "Test pressure, absolute",
      symbol: "p",
    },
    lost: { unit: "m^3", min: 0, max: 0.01, says: "Volume lost", symbol: "\\Delta V" },
    air: {
      unit: "m^3",
      min: 1e-10,
      max: 0.01,
      says: "Volume of the trapped air at test pressure",
      symbol: "V_a",
    },
  },
  output: {
    name: "fall",
    unit: "Pa",
    min: 0,
    max: 5e7,
    says: "Fall of pressure",
    symbol: "\\Delta p",
  },
  formula: "pressure * lost / (air + lost)",
  source: "Boyle's law",
  compute: ({ pressure, lost, air }) => pressure * lost / (air + lost),
});
