/** How much a spread of pressure makes injectors differ. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Spread of flow [-] between injectors of one rail: half the spread of pressure over the
 * differential pressure, as flow goes with its root.
 *
 * Source: first term of the root law; the next is a quarter of its square.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1 kPa at 3 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(flowSpread({ pressureSpread: 1e3, differential: 3e5 }), 0.00167, 1e-5);
 * ```
 */
export const flowSpread: Method<Record<"pressureSpread" | "differential", MethodInput>> = method({
  id: "flow-spread",
  title: "Spread of flow between injectors",
  inputs: {
    pressureSpread: {
      unit: "Pa",
      min: 0,
      max: 1e11,
      says: "Highest less lowest pressure at the injectors of a rail",
      symbol: "\\Delta p_s",
    },
    differential: {
      unit: "Pa",
      min: 1e4,
      max: 4e6,
      says: "Differential pressure across the injectors",
      symbol: "\\Delta p",
    },
  },
  output: {
    name: "flowSpread",
    unit: "-",
    min: 0,
    max: 1e7,
    says: "Largest less smallest flow of an injector, over the mean",
    symbol: "\\Delta q / q",
  },
  formula: "pressureSpread / (2 * differential)",
  source: "E. Torricelli (1644): flow goes with the root of pressure, so half its relative spread",
  compute: ({ pressureSpread, differential }) => pressureSpread / (2 * differential),
});

/**
 * Highest less lowest of some pressures [Pa].
 *
 * @param pressures_Pa At least one pressure [Pa].
 * @returns The spread [Pa].
 */
export function spreadOf(pressures_Pa: readonly number[]): number {
  let lowest = Infinity;
  let highest = -Infinity;
  for (const pressure of pressures_Pa) {
    if (pressure < lowest) lowest = pressure;
    if (pressure > highest) highest = pressure;
  }
  return highest - lowest;
}
