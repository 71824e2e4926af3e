/** What a torque wrench really gave. */
import { InputError } from "@/lib/basics/mod.ts";

/** What a screw may have got from a torque wrench [N m]. */
export interface TorqueWindow {
  /** The least. */
  readonly least_Nm: number;
  /** The most. */
  readonly most_Nm: number;
}

/**
 * Error that the standard allows a torque wrench [-]. Source: ISO 6789, from memory: 4 % above
 * 10 N m, 6 % up to it.
 *
 * @param torque_Nm The torque it is set to [N m].
 * @returns The share.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals([wrenchError(10), wrenchError(12)], [0.06, 0.04]);
 * ```
 */
export function wrenchError(torque_Nm: number): number {
  return torque_Nm > 10 ? 0.04 : 0.06;
}

/**
 * Gives the window of torque that a calibrated wrench leaves. Source: ISO 6789, from memory.
 *
 * @param torque_Nm Torque it is set to [N m].
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
  error: number = wrenchError(torque_Nm),
): TorqueWindow {
  if (!(torque_Nm > 0)) {
    throw new InputError("torque window", "torque_Nm", "must be > 0 N m", torque_Nm);
  }
  if (!(error >= 0 && error <= 0.5)) {
    throw new InputError("torque window", "error", "must be >= 0 and <= 0.5", error);
  }
  return { least_Nm: torque_Nm * (1 - error), most_Nm: torque_Nm * (1 + error) };
}
