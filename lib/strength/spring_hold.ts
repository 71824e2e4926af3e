/** An injector that a spring or clip holds in its pocket. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const FORCE: MethodInput = { unit: "N", min: 0, max: 1e5, says: "Force", symbol: "F" };

/**
 * Force of a spring [N].
 *
 * Source: R. Hooke (1678).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 20 N/mm pressed by 5 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(springForce({ rate: 20_000, compression: 0.005 }), 100, 1e-9);
 * ```
 */
export const springForce: Method<Record<"rate" | "compression", MethodInput>> = method({
  id: "spring-force",
  title: "Force of a spring",
  inputs: {
    rate: { unit: "N/m", min: 1, max: 1e6, says: "Rate of the spring", symbol: "k" },
    compression: { unit: "m", min: 0, max: 0.1, says: "How far it is pressed", symbol: "s" },
  },
  output: { ...FORCE, name: "force", says: "Force of the spring" },
  formula: "rate * compression",
  source: "R. Hooke (1678)",
  compute: ({ rate, compression }) => rate * compression,
});

/**
 * Holding force over lift [-] of an injector that a spring or clip holds. Under 1 it is pushed
 * out; a clip that only locates needs the rail's screws to carry the lift.
 *
 * Source: balance of forces.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(holdMargin({ holding: 100, lift: 61.58 }), 1.624, 1e-3);
 * ```
 */
export const holdMargin: Method<Record<"holding" | "lift", MethodInput>> = method({
  id: "hold-margin",
  title: "Holding force of a spring or clip over the lift",
  inputs: {
    holding: { ...FORCE, says: "Force that holds the injector", symbol: "F_s" },
    lift: { ...FORCE, min: 1e-3, says: "Lift of the injector", symbol: "F" },
  },
  output: { name: "margin", unit: "-", min: 0, max: 1e8, says: "Holding over lift", symbol: "S" },
  formula: "holding / lift",
  source: "Balance of forces",
  compute: ({ holding, lift }) => holding / lift,
});
