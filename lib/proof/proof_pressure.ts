/** The pressure a rail is proved at with liquid. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Proof pressure wanted [Pa, gauge]: the larger of 1.5 times the highest
 * working pressure and 1.0 times the fault pressure. Whether the weakest part
 * may be given it is another question, see {@linkcode proofPressures}.
 *
 * Source: 1.5 as ASME B31.3 para. 345.4.2, used by analogy (a vehicle is
 * outside that code); 1.0 times the fault pressure is ours.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(proofPressure({ workingPressure: 4e5, faultPressure: 5e5 }), 6e5);
 * assertEquals(proofPressure({ workingPressure: 4e5, faultPressure: 8e5 }), 8e5);
 * ```
 */
export const proofPressure: Method<
  Record<"workingPressure" | "faultPressure", MethodInput>
> = method({
  id: "proof-pressure",
  title: "Proof pressure wanted",
  inputs: {
    workingPressure: {
      unit: "Pa",
      min: 0,
      max: 2.5e6,
      says: "Highest working pressure, gauge",
      symbol: "p_\\text{work}",
    },
    faultPressure: {
      unit: "Pa",
      min: 0,
      max: 1e9,
      says: "Highest pressure when something fails, gauge; nought where it is not known",
      symbol: "p_\\text{fault}",
    },
  },
  output: {
    name: "proofPressure",
    unit: "Pa",
    min: 0,
    max: 1e9,
    says: "Proof pressure, gauge",
    symbol: "p_\\text{proof}",
  },
  formula: "max(1.5 * workingPressure, faultPressure)",
  source: "1.5 as ASME B31.3-2016 para. 345.4.2, by analogy; the fault pressure's part is ours",
  compute: ({ workingPressure, faultPressure }) => Math.max(1.5 * workingPressure, faultPressure),
});
