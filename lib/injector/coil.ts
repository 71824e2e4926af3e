/** What an injector's coil draws. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Current [A] that a coil draws when a saturated switch holds it open: what it settles
 * at. A peak-and-hold driver cuts it off earlier.
 *
 * Source: Ohm's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 12 ohm at 14 V
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(coilCurrent({ voltage: 14, resistance: 12 }), 1.167, 1e-3);
 * ```
 */
export const coilCurrent: Method<Record<"voltage" | "resistance", MethodInput>> = method({
  id: "coil-current",
  title: "Current of an injector's coil",
  inputs: {
    voltage: { unit: "V", min: 0, max: 30, says: "Voltage at the injector", symbol: "U" },
    resistance: { unit: "ohm", min: 0.1, max: 100, says: "Resistance of the coil", symbol: "R" },
  },
  output: {
    name: "current",
    unit: "A",
    min: 0,
    max: 300,
    says: "Current the coil settles at",
    symbol: "I",
  },
  formula: "voltage / resistance",
  source: "G. S. Ohm (1827)",
  compute: ({ voltage, resistance }) => voltage / resistance,
});
