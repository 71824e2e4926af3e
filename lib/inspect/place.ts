/** How far off its place a hole is, and may be. */
import { InputError } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { generalTolerance } from "./general_tolerance.ts";

const OFF = { unit: "m", min: -0.05, max: 0.05 } as const;

/**
 * Position of a hole [m] as the diameter of the circle about its true place that its centre
 * lies on. Source: ISO 1101.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.1 mm off both ways
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(truePosition({ along: 1e-4, across: 1e-4 }), 0.2828e-3, 1e-7);
 * ```
 */
export const truePosition: Method<Record<"along" | "across", MethodInput>> = method({
  id: "true-position",
  title: "True position of a hole",
  inputs: {
    along: { ...OFF, says: "How far off along the bar", symbol: "\\Delta x" },
    across: { ...OFF, says: "How far off across the bar", symbol: "\\Delta y" },
  },
  output: { name: "position", unit: "m", min: 0, max: 0.15, says: "Diameter of the position" },
  formula: "2 * sqrt(along^2 + across^2)",
  source: "ISO 1101: position tolerance, a cylinder about the true place",
  compute: ({ along, across }) => 2 * Math.sqrt(along ** 2 + across ** 2),
});

/**
 * How far off [m] the last hole of a chain of dimensions may be: each adds its own tolerance.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Four injectors, three pitches of +-0.3 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(chainError({ tolerance: 3e-4, links: 3 }), 0.9e-3, 1e-12);
 * ```
 */
export const chainError: Method<Record<"tolerance" | "links", MethodInput>> = method({
  id: "chain-error",
  title: "Error of the last hole of a chain of dimensions",
  inputs: {
    tolerance: { unit: "m", min: 0, max: 0.005, says: "Plus and minus of each dimension" },
    links: { unit: "-", min: 1, max: 20, says: "Dimensions in the chain" },
  },
  output: { name: "error", unit: "m", min: 0, max: 0.1, says: "Most that the last can be off" },
  formula: "links * tolerance",
  source: "Worst case of a sum",
  compute: ({ tolerance, links }) => links * tolerance,
});

/** How the places of holes are dimensioned. */
export type Dimensioning = "chain" | "datum";

/**
 * How far off the last hole of a row may be under ISO 2768-m [m]: hole to hole, the tolerances
 * add up; from one datum, only that of its own dimension counts.
 *
 * @param dimensioning How they are dimensioned, from the first hole.
 * @param holes How many, 2 to 21.
 * @param pitch_m Between neighbours [m].
 * @returns Plus and minus this [m].
 * @throws {InputError} When the holes are too few or many, or a length lies outside ISO 2768-1.
 *
 * @example Four injectors at 95 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(lastPlaceError("chain", 4, 0.095), 0.9e-3, 1e-12);
 * assertAlmostEquals(lastPlaceError("datum", 4, 0.095), 0.5e-3, 1e-12);
 * ```
 */
export function lastPlaceError(dimensioning: Dimensioning, holes: number, pitch_m: number): number {
  if (!(Number.isInteger(holes) && holes >= 2 && holes <= 21)) {
    const rule = "must be a whole number from 2 to 21";
    throw new InputError("place of the last hole", "holes", rule, holes);
  }
  const links = holes - 1;
  return dimensioning === "datum"
    ? generalTolerance(links * pitch_m)
    : chainError({ tolerance: generalTolerance(pitch_m), links });
}
