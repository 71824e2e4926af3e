/** The gap that pressure may press a ring into. */
import { InputError } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, LAND } from "./limits.ts";

/**
 * Widest gap [m] beside a groove: all of the clearance on one side, as nothing but the
 * rings centres an injector.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(widestGap({ bore: 14e-3, land: 13.8e-3 }), 0.2e-3, 1e-12);
 * ```
 */
export const widestGap: Method<Record<"bore" | "land", MethodInput>> = method({
  id: "oring-widest-gap",
  title: "Widest gap beside an O-ring",
  inputs: { bore: BORE, land: LAND },
  output: { name: "gap", unit: "m", min: -0.1, max: 0.1, says: "Widest gap", symbol: "e" },
  formula: "bore - land",
  source: "Geometry: all clearance on one side",
  compute: ({ bore, land }) => bore - land,
});

/** Hardness of the rings that {@linkcode gapAllowed} knows [Shore A]. */
export type Hardness = 70 | 90;

const PSI_Pa = 6894.757;
const INCH_m = 0.0254;

/**
 * Clearance on the diameter that a ring bridges [in], by hardness and pressure up to [psi].
 *
 * Source: a seal distributor's public table. A second maker's has 0.015 and 0.025 in at
 * 500 psi, and is stricter above.
 */
const GAPS: Readonly<Record<Hardness, readonly (readonly [upTo_psi: number, gap_in: number])[]>> = {
  70: [[500, 0.016], [1000, 0.01], [1500, 0.006], [2000, 0.004], [3000, 0.002]],
  90: [[500, 0.028], [1000, 0.024], [1500, 0.02], [2000, 0.016], [3000, 0.01]],
};

/**
 * Widest gap that a ring without back-up ring bridges. At rail pressure the least step of
 * the table counts: squeeze lost to the gap is what limits, not extrusion.
 *
 * @param hardness Hardness of the ring [Shore A].
 * @param pressure_Pa Pressure that it holds [Pa, gauge].
 * @returns The gap, all on one side [m]; undefined above what the table covers, 20.7 MPa.
 * @throws {InputError} When the pressure is negative or not a number.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(gapAllowed(70, 1e6) ?? 0, 0.4064e-3, 1e-9);
 * ```
 */
export function gapAllowed(hardness: Hardness, pressure_Pa: number): number | undefined {
  if (!(pressure_Pa >= 0)) {
    throw new InputError("gap allowed", "pressure_Pa", "must be >= 0 Pa", pressure_Pa);
  }
  const step = GAPS[hardness].find(([upTo_psi]) => pressure_Pa <= upTo_psi * PSI_Pa);
  return step && step[1] * INCH_m;
}
