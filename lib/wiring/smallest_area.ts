/** How much copper a drop asks for. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { AREA, CURRENT, LENGTH, RATIO, RESISTIVITY, RETURN_LENGTH } from "./limits.ts";

/**
 * Smallest area [m^2] of copper that loses no more than a given voltage in the wires.
 *
 * Source: Ohm's law and the definition of resistivity. Take the next thicker wire that is
 * sold, then look at its rating and its fuse.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 15 A over 4 m and 1 m back for 0.35 V
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const area_m2 = smallestArea({
 *   resistivity: 1.7241e-8,
 *   ratio: 1.1572,
 *   outLength: 4,
 *   returnLength: 1,
 *   current: 15,
 *   allowedDrop: 0.35,
 * });
 *
 * assertAlmostEquals(area_m2 * 1e6, 4.28, 0.01);
 * ```
 */
export const smallestArea: Method<
  Record<
    "resistivity" | "ratio" | "outLength" | "returnLength" | "current" | "allowedDrop",
    MethodInput
  >
> = method({
  id: "smallest-copper-area",
  title: "Smallest area of copper for an allowed drop",
  inputs: {
    resistivity: RESISTIVITY,
    ratio: RATIO,
    outLength: LENGTH,
    returnLength: RETURN_LENGTH,
    current: CURRENT,
    allowedDrop: {
      unit: "V",
      min: 0.01,
      max: 30,
      says: "Voltage that the wires may lose",
      symbol: "U_w",
    },
  },
  output: { ...AREA, name: "area", min: 0, max: 1 },
  formula: "resistivity * ratio * (outLength + returnLength) * current / allowedDrop",
  source: "Ohm's law; definition of resistivity",
  compute: ({ resistivity, ratio, outLength, returnLength, current, allowedDrop }) =>
    resistivity * ratio * (outLength + returnLength) * current / allowedDrop,
});
