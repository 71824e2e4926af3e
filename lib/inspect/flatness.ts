/** How flat a sealed face has to be. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Gap allowed under a straight edge for each cylinder of sealed length [m]. Common practice, no
 * source; the engine maker's limit comes first.
 */
export const FLATNESS_PER_CYLINDER_m = 0.025e-3;

/**
 * Gap allowed under a straight edge along a sealed face [m]. Common practice, no source.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A face of two chambers
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const limit_m = flatnessLimit({ cylinders: 2, perCylinder: FLATNESS_PER_CYLINDER_m });
 *
 * assertAlmostEquals(limit_m, 0.05e-3, 1e-12);
 * ```
 */
export const flatnessLimit: Method<Record<"cylinders" | "perCylinder", MethodInput>> = method({
  id: "flatness-limit",
  title: "Gap allowed under a straight edge",
  inputs: {
    cylinders: { unit: "-", min: 1, max: 16, says: "Cylinders that the face seals" },
    perCylinder: { unit: "m", min: 1e-5, max: 1e-4, says: "Gap allowed for each" },
  },
  output: { name: "limit", unit: "m", min: 0, max: 0.002, says: "Gap that must not be reached" },
  formula: "cylinders * perCylinder",
  source: "Common practice, no source",
  compute: ({ cylinders, perCylinder }) => cylinders * perCylinder,
});
