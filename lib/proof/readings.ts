/** What a reading taken with a hand tool means. */
import { InputError } from "@/lib/basics/mod.ts";

/** What a feeler blade under a straightedge tells. */
export interface FeelerReading {
  /** The gap is at least this [m]. */
  readonly least_m: number;
  /** The gap is less than this [m]; absent when the blade went in. */
  readonly below_m?: number;
  /** Against the limit: a blade thinner than the limit that goes in proves nothing. */
  readonly verdict: "meets" | "fails" | "open";
}

/**
 * Reads a feeler blade tried under a straightedge.
 *
 * Source: meaning of a go and no-go blade.
 *
 * @param blade_m Thickness of the blade, above nought.
 * @param enters Whether it went in.
 * @param limit_m Gap that must not be reached.
 * @returns The bounds on the gap and the verdict.
 * @throws {InputError} When the blade or the limit is not above nought.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(readFeeler(5e-5, false, 5e-5), { least_m: 0, below_m: 5e-5, verdict: "meets" });
 * assertEquals(readFeeler(4e-5, true, 5e-5).verdict, "open");
 * ```
 */
export function readFeeler(blade_m: number, enters: boolean, limit_m: number): FeelerReading {
  if (!(blade_m > 0)) throw new InputError("feeler reading", "blade_m", "must be > 0 m", blade_m);
  if (!(limit_m > 0)) throw new InputError("feeler reading", "limit_m", "must be > 0 m", limit_m);
  if (enters) return { least_m: blade_m, verdict: blade_m >= limit_m ? "fails" : "open" };
  return { least_m: 0, below_m: blade_m, verdict: blade_m <= limit_m ? "meets" : "open" };
}

/** What a screw may have got from a torque wrench [N m]. */
export interface TorqueWindow {
  /** The least. */
  readonly least_Nm: number;
  /** The most. */
  readonly most_Nm: number;
}

/**
 * Gives the window of torque that a calibrated wrench leaves.
 *
 * Source: ISO 6789 allows 4 % above 10 N m and 6 % up to it.
 *
 * @param torque_Nm Torque it is set to.
 * @param error Its error as a share; by default what the standard allows.
 * @returns The least and the most that reached the screw.
 * @throws {InputError} When the torque is not above nought or the error not from 0 to 0.5.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(torqueWindow(25), { least_Nm: 24, most_Nm: 26 });
 * ```
 */
export function torqueWindow(
  torque_Nm: number,
  error: number = torque_Nm > 10 ? 0.04 : 0.06,
): TorqueWindow {
  if (!(torque_Nm > 0)) {
    throw new InputError("torque window", "torque_Nm", "must be > 0 N m", torque_Nm);
  }
  if (!(error >= 0 && error <= 0.5)) {
    throw new InputError("torque window", "error", "must be >= 0 and <= 0.5", error);
  }
  return { least_Nm: torque_Nm * (1 - error), most_Nm: torque_Nm * (1 + error) };
}
