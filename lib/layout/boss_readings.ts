/** What readings from one datum say of a bore. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const reading = (says: string, symbol: string): MethodInput => ({
  unit: "m",
  min: 0,
  max: 3,
  says,
  symbol,
});

const NEAR = reading("Reading to the bore's near edge", "x_1");
const FAR = reading("Reading to the bore's far edge", "x_2");

/**
 * Centre of a bore [m] from readings to both its edges, from one datum.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(centreByEdges({ near: 0.0433, far: 0.0567 }), 0.05, 1e-12);
 * ```
 */
export const centreByEdges: Method<Record<"near" | "far", MethodInput>> = method({
  id: "centre-by-edges",
  title: "Centre of a bore from both its edges",
  inputs: { near: NEAR, far: FAR },
  output: { name: "centre", unit: "m", min: 0, max: 3, says: "Centre from the datum" },
  formula: "(near + far) / 2",
  source: "A circle's centre lies midway between the ends of a diameter",
  compute: ({ near, far }) => (near + far) / 2,
});

/**
 * Diameter of a bore [m] from readings to both its edges, from one datum.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(boreByEdges({ near: 0.0433, far: 0.0567 }), 0.0134, 1e-12);
 * ```
 */
export const boreByEdges: Method<Record<"near" | "far", MethodInput>> = method({
  id: "bore-by-edges",
  title: "Diameter of a bore from both its edges",
  inputs: { near: NEAR, far: FAR },
  output: { name: "bore", unit: "m", min: -3, max: 3, says: "Diameter of the bore" },
  formula: "far - near",
  source: "A diameter is the distance of its ends",
  compute: ({ near, far }) => far - near,
});

/**
 * Centre of a bore [m] from a reading over the far side of a pin that fits it.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(centreByPin({ over: 0.0567, pin: 0.0134 }), 0.05, 1e-12);
 * ```
 */
export const centreByPin: Method<Record<"over" | "pin", MethodInput>> = method({
  id: "centre-by-pin",
  title: "Centre of a bore from a reading over a pin",
  inputs: {
    over: reading("Reading to the pin's far side", "x"),
    pin: { unit: "m", min: 0.001, max: 0.06, says: "Diameter of the pin", symbol: "d" },
  },
  output: { name: "centre", unit: "m", min: -0.1, max: 3, says: "Centre from the datum" },
  formula: "over - pin / 2",
  source: "A pin's centre lies half its diameter within its side",
  compute: ({ over, pin }) => over - pin / 2,
});
