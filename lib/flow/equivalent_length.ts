/** Losses of pipe fittings told in bores of straight pipe. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { FRICTION_FACTOR } from "./limits.ts";
import { CRANE, LOSS, TURBULENT_FRICTION } from "./loss_limits.ts";

/** Roughness of clean commercial steel pipe [m], 0.0018 in. Source: Crane TP-410 (2009) A-24. */
export const STEEL_PIPE_ROUGHNESS_m = 45.72e-6;

/**
 * Bores of straight pipe that lose as much as a threaded fitting, in fully turbulent flow.
 *
 * Source: Crane TP-410 (2009) A-30, from memory.
 */
export const FITTING_LENGTHS: Readonly<
  Record<"elbow-90" | "elbow-45" | "tee-run" | "tee-branch", number>
> = { "elbow-90": 30, "elbow-45": 16, "tee-run": 20, "tee-branch": 60 };

/**
 * Friction factor [-] of fully turbulent flow, where it no longer depends on velocity.
 *
 * Source: J. Nikuradse's law of the rough pipe, as in Crane TP-410 (2009) chapter 2.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half-inch steel pipe, 15.8 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const friction = roughPipeFriction({ roughness: STEEL_PIPE_ROUGHNESS_m, bore: 15.8e-3 });
 *
 * assertAlmostEquals(friction, 0.026, 5e-4);
 * ```
 */
export const roughPipeFriction: Method<Record<"roughness" | "bore", MethodInput>> = method({
  id: "rough-pipe-friction",
  title: "Friction factor of fully turbulent flow",
  inputs: {
    roughness: {
      unit: "m",
      min: 1e-6,
      max: 1e-4,
      says: "Roughness of the wall; steel pipe 45.72 µm",
      symbol: "\\varepsilon",
    },
    bore: { unit: "m", min: 3e-3, max: 1, says: "Inner diameter of the pipe", symbol: "d" },
  },
  output: { ...FRICTION_FACTOR, name: "frictionFactor", max: 0.1, symbol: "f_T" },
  formula: "0.25 / log10(roughness / (3.7 * bore))^2",
  source: "J. Nikuradse, VDI-Forschungsheft 361 (1933); " + CRANE,
  compute: ({ roughness, bore }) => 0.25 / Math.log10(roughness / (3.7 * bore)) ** 2,
});

/**
 * Loss coefficient [-] of a fitting told in bores of straight pipe.
 *
 * Source: Crane TP-410 (2009) A-27.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Standard threaded elbow on half-inch pipe
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = equivalentLengthLoss({
 *   lengthRatio: FITTING_LENGTHS["elbow-90"],
 *   frictionFactor: 0.026,
 * });
 *
 * assertAlmostEquals(loss, 0.78, 1e-12);
 * ```
 */
export const equivalentLengthLoss: Method<Record<"lengthRatio" | "frictionFactor", MethodInput>> =
  method({
    id: "equivalent-length-loss",
    title: "Loss coefficient by equivalent length",
    inputs: {
      lengthRatio: {
        unit: "-",
        min: 0,
        max: 1000,
        says: "Length of straight pipe that loses as much, over bore",
        symbol: "L / d",
      },
      frictionFactor: { ...TURBULENT_FRICTION, says: "Friction factor of fully turbulent flow" },
    },
    output: { ...LOSS, max: 100 },
    formula: "lengthRatio * frictionFactor",
    source: CRANE,
    compute: ({ lengthRatio, frictionFactor }) => lengthRatio * frictionFactor,
  });
