/** What a leak test fills. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Volume under test [m^3]: one rail's gallery and what is pressurised with it.
 *
 * Source: volume of a cylinder.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const volume_m3 = testVolume({ bore: 0.0127, length: 0.42, hose: 1e-4 });
 *
 * assertAlmostEquals(volume_m3, 153.2e-6, 1e-7);
 * ```
 */
export const testVolume: Method<Record<"bore" | "length" | "hose", MethodInput>> = method({
  id: "test-volume",
  title: "Volume under test",
  inputs: {
    bore: { unit: "m", min: 0, max: 0.05, says: "Bore of the gallery", symbol: "d" },
    length: { unit: "m", min: 0, max: 3, says: "Length of the gallery", symbol: "L" },
    hose: {
      unit: "m^3",
      min: 0,
      max: 0.02,
      says: "Volume of hose and fittings pressurised with it",
      symbol: "V_\\text{hose}",
    },
  },
  output: {
    name: "volume",
    unit: "m^3",
    min: 0,
    max: 0.03,
    says: "Volume under test",
    symbol: "V",
  },
  formula: "pi / 4 * bore^2 * length + hose",
  source: "Volume of a cylinder",
  compute: ({ bore, length, hose }) => Math.PI / 4 * bore * bore * length + hose,
});
