/** How much time there is for one injection. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { SPEED, TURNS } from "./limits.ts";

/**
 * Time between injections of one injector [s], one a cycle.
 *
 * Source: geometry of the cycle.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A four-stroke at 6000 rpm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(injectionInterval({ turns: 2, speed: 100 }), 0.02, 1e-12);
 * ```
 */
export const injectionInterval: Method<Record<"turns" | "speed", MethodInput>> = method({
  id: "injection-interval",
  title: "Time between injections of one injector",
  inputs: { turns: TURNS, speed: SPEED },
  output: { name: "interval", unit: "s", min: 0, max: 1, says: "Time between", symbol: "t_c" },
  formula: "turns / speed",
  source: "Geometry of the cycle",
  compute: ({ turns, speed }) => turns / speed,
});
