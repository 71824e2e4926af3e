/** Leaks told by bubbles under water. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const DIAMETER: MethodInput = {
  unit: "m",
  min: 1e-4,
  max: 0.02,
  says: "Diameter of a bubble; a quarter more is twice the leak",
  symbol: "d",
};
const AMBIENT: MethodInput = {
  unit: "Pa",
  min: 5e4,
  max: 1.1e5,
  says: "Pressure of the outside air, absolute",
  symbol: "p_a",
};

/**
 * Leak [Pa m^3/s] of a joint that gives off bubbles.
 *
 * Source: volume of a sphere; bubble emission as in EN 1593 and ASTM E515.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A 1 mm bubble a second
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const leak_Pa_m3_s = leakFromBubbles({ diameter: 1e-3, frequency: 1, ambient: 101325 });
 *
 * assertAlmostEquals(leak_Pa_m3_s, 5.3e-5, 1e-6);
 * ```
 */
export const leakFromBubbles: Method<
  Record<"diameter" | "frequency" | "ambient", MethodInput>
> = method({
  id: "leak-from-bubbles",
  title: "Leak from a train of bubbles",
  inputs: {
    diameter: DIAMETER,
    frequency: { unit: "1/s", min: 1e-4, max: 100, says: "Bubbles per time", symbol: "f" },
    ambient: AMBIENT,
  },
  output: { name: "leak", unit: "Pa m^3/s", min: 0, max: 100, says: "Leak", symbol: "q" },
  formula: "frequency * pi / 6 * diameter^3 * ambient",
  source: "Volume of a sphere; bubble emission as in EN 1593 and ASTM E515",
  compute: ({ diameter, frequency, ambient }) => frequency * Math.PI / 6 * diameter ** 3 * ambient,
});

/**
 * Time between bubbles [s] of a leak. Each joint is watched for three at least.
 *
 * Source: volume of a sphere.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const interval_s = bubbleInterval({ diameter: 2e-3, ambient: 101325, leak: 1e-5 });
 *
 * assertAlmostEquals(interval_s, 42.4, 0.1);
 * ```
 */
export const bubbleInterval: Method<
  Record<"diameter" | "ambient" | "leak", MethodInput>
> = method({
  id: "bubble-interval",
  title: "Time between bubbles of a leak",
  inputs: {
    diameter: DIAMETER,
    ambient: AMBIENT,
    leak: { unit: "Pa m^3/s", min: 1e-14, max: 10, says: "Leak", symbol: "q" },
  },
  output: { name: "interval", unit: "s", min: 0, max: 1e14, says: "Time between", symbol: "t" },
  formula: "pi / 6 * diameter^3 * ambient / leak",
  source: "Volume of a sphere",
  compute: ({ diameter, ambient, leak }) => Math.PI / 6 * diameter ** 3 * ambient / leak,
});
