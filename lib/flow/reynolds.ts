/** The two numbers that decide how a pipe resists: Reynolds number and relative roughness. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, DENSITY, RELATIVE_ROUGHNESS, REYNOLDS, VELOCITY, VISCOSITY } from "./limits.ts";

/**
 * Reynolds number [-] of flow in a round bore.
 *
 * Source: O. Reynolds, Phil. Trans. R. Soc. 174 (1883) 935, doi:10.1098/rstl.1883.0029.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Petrol at 1.33 m/s in 8 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const reynolds = reynoldsNumber({
 *   density: 745,
 *   velocity: 1.326291192,
 *   bore: 8e-3,
 *   viscosity: 4.1e-4,
 * });
 *
 * assertAlmostEquals(reynolds, 19280, 1);
 * ```
 */
export const reynoldsNumber: Method<
  Record<"density" | "velocity" | "bore" | "viscosity", MethodInput>
> = method({
  id: "reynolds-number",
  title: "Reynolds number",
  inputs: { density: DENSITY, velocity: VELOCITY, bore: BORE, viscosity: VISCOSITY },
  output: { ...REYNOLDS, name: "reynolds" },
  formula: "density * velocity * bore / viscosity",
  source: "O. Reynolds, Phil. Trans. R. Soc. 174 (1883) 935, doi:10.1098/rstl.1883.0029",
  compute: ({ density, velocity, bore, viscosity }) => density * velocity * bore / viscosity,
});

/**
 * Relative roughness [-] of a bore: roughness over diameter.
 *
 * Source: L. F. Moody, Trans. ASME 66 (1944) 671.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Drilled gallery, 20 um in 12 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(relativeRoughness({ roughness: 20e-6, bore: 12e-3 }), 1.667e-3, 1e-6);
 * ```
 */
export const relativeRoughness: Method<Record<"roughness" | "bore", MethodInput>> = method({
  id: "relative-roughness",
  title: "Relative roughness",
  inputs: {
    roughness: {
      unit: "m",
      min: 0,
      max: 1e-3,
      says: "Roughness of the wall",
      symbol: "\\varepsilon",
    },
    bore: BORE,
  },
  output: { ...RELATIVE_ROUGHNESS, name: "relativeRoughness" },
  formula: "roughness / bore",
  source: "L. F. Moody, Trans. ASME 66 (1944) 671",
  compute: ({ roughness, bore }) => roughness / bore,
});
