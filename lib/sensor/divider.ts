/** What a converter sees of a resistor with a pull-up. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { RESISTANCE } from "./limits.ts";

const PULL_UP: MethodInput = {
  unit: "ohm",
  min: 10,
  max: 1e6,
  says: "Pull-up to the supply",
  symbol: "R_p",
};

/**
 * Signal of a resistor to ground with a pull-up, over the supply [-].
 *
 * Source: Ohm's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(dividerShare({ resistance: 2500, pullUp: 1000 }), 0.714, 1e-3);
 * ```
 */
export const dividerShare: Method<Record<"resistance" | "pullUp", MethodInput>> = method({
  id: "divider-share",
  title: "Signal of a resistor with a pull-up",
  inputs: { resistance: RESISTANCE, pullUp: PULL_UP },
  output: { name: "share", unit: "-", min: 0, max: 1, says: "Signal over supply", symbol: "s" },
  formula: "resistance / (resistance + pullUp)",
  source: "Ohm's law",
  compute: ({ resistance, pullUp }) => resistance / (resistance + pullUp),
});

/**
 * Resistance [ohm] that a signal with a pull-up tells.
 *
 * Source: Ohm's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(dividerResistance({ share: 0.5, pullUp: 1000 }), 1000, 1e-9);
 * ```
 */
export const dividerResistance: Method<Record<"share" | "pullUp", MethodInput>> = method({
  id: "divider-resistance",
  title: "Resistance that a signal tells",
  inputs: {
    share: { unit: "-", min: 0, max: 0.9999, says: "Signal over supply", symbol: "s" },
    pullUp: PULL_UP,
  },
  output: {
    name: "resistance",
    unit: "ohm",
    min: 0,
    max: 1e10,
    says: "Resistance to ground",
    symbol: "R",
  },
  formula: "pullUp * share / (1 - share)",
  source: "Ohm's law",
  compute: ({ share, pullUp }) => pullUp * share / (1 - share),
});
