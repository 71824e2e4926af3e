/** Flow and velocity in a round bore. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, FLOW, VELOCITY } from "./limits.ts";

const SOURCE = "Continuity for a round cross-section";

/**
 * Mean velocity [m/s] in a round bore. Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 4 L/min through 8 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(meanVelocity({ flow: 4e-3 / 60, bore: 8e-3 }), 1.326, 1e-3);
 * ```
 */
export const meanVelocity: Method<Record<"flow" | "bore", MethodInput>> = method({
  id: "mean-velocity",
  title: "Mean velocity in a round bore",
  inputs: { flow: FLOW, bore: BORE },
  output: { ...VELOCITY, name: "velocity" },
  formula: "4 * flow / (pi * bore^2)",
  source: SOURCE,
  compute: ({ flow, bore }) => 4 * flow / (Math.PI * bore * bore),
});

/**
 * Flow [m^3/s] that a round bore carries at a given mean velocity. Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3 m/s through 8 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(flowAtVelocity({ velocity: 3, bore: 8e-3 }), 1.508e-4, 1e-7);
 * ```
 */
export const flowAtVelocity: Method<Record<"velocity" | "bore", MethodInput>> = method({
  id: "flow-at-velocity",
  title: "Flow that a bore carries at a given velocity",
  inputs: { velocity: VELOCITY, bore: BORE },
  output: { ...FLOW, name: "flow", max: 100 },
  formula: "pi / 4 * bore^2 * velocity",
  source: SOURCE,
  compute: ({ velocity, bore }) => Math.PI / 4 * bore * bore * velocity,
});
