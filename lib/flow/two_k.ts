/** Loss of a fitting at any Reynolds number and size. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, REYNOLDS } from "./limits.ts";
import { LOSS } from "./loss_limits.ts";

/**
 * Loss coefficient [-] of a pipe fitting by two constants: one for laminar flow, one for a
 * large pipe in turbulent flow. Small fittings lose more, as their corners are rougher.
 *
 * Source: W. B. Hooper, Chem. Eng. 88(17) (1981) 96-100.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Screwed elbow, 10 mm, at Re 500
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = twoKLoss({ laminar: 800, large: 0.4, reynolds: 500, bore: 0.01 });
 *
 * assertAlmostEquals(loss, 3.016, 1e-9);
 * ```
 */
export const twoKLoss: Method<Record<"laminar" | "large" | "reynolds" | "bore", MethodInput>> =
  method({
    id: "two-k-loss",
    title: "Loss coefficient of a pipe fitting at any Reynolds number",
    inputs: {
      laminar: {
        unit: "-",
        min: 0,
        max: 3000,
        says: "Loss coefficient at Re 1",
        symbol: "K_1",
      },
      large: {
        unit: "-",
        min: 0,
        max: 20,
        says: "Loss coefficient of a large fitting in turbulent flow",
        symbol: "K_\\infty",
      },
      reynolds: { ...REYNOLDS, min: 1 },
      bore: BORE,
    },
    output: { ...LOSS, max: 1e4 },
    formula: "laminar / reynolds + large * (1 + 0.0254 / bore)",
    words: "0.0254 m is one inch.",
    fit: true,
    source: "W. B. Hooper, Chem. Eng. 88(17) (1981) 96-100",
    compute: ({ laminar, large, reynolds, bore }) =>
      laminar / reynolds + large * (1 + 0.0254 / bore),
  });
