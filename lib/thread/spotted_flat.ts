/** Whether a face takes the flat that a seal needs, and what spotting it costs. */
import { spottedAxisDepth } from "./port_geometry.ts";

/** Share of a round bar's diameter that a flat may take; ours. Wider, hardly any bar is left. */
const WIDEST_FLAT = 0.9;

/** The face that a port goes into. */
export interface PortFace {
  /** Width of the bar across the face; of a round bar its diameter [m]. */
  readonly faceWidth_m: number;
  /** Whether the bar is round. */
  readonly isRound: boolean;
}

/**
 * Tells whether a flat finds room.
 *
 * @param face The face.
 * @param flat_m Diameter of the flat [m]; undefined for none.
 * @returns Whether it does.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(takesFlat({ faceWidth_m: 0.016, isRound: false }, 0.015), true);
 * assertEquals(takesFlat({ faceWidth_m: 0.016, isRound: true }, 0.015), false);
 * ```
 */
export function takesFlat({ faceWidth_m, isRound }: PortFace, flat_m: number | undefined): boolean {
  return flat_m === undefined || flat_m <= faceWidth_m * (isRound ? WIDEST_FLAT : 1);
}

/**
 * Depth [m] that spotting a flat takes off a round bar; 0 on a flat face, or where the flat
 * finds no room.
 *
 * @param face The face.
 * @param flat_m Diameter of the flat [m]; undefined for none.
 * @param run Runs the method; the plain method unless given.
 * @returns The depth.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(spottedOff({ faceWidth_m: 0.028, isRound: true }, 0.015), 2.18e-3, 1e-5);
 * ```
 */
export function spottedOff(
  face: PortFace,
  flat_m: number | undefined,
  run: (input: { radius: number; flat: number }) => number = spottedAxisDepth,
): number {
  if (flat_m === undefined || !face.isRound || !takesFlat(face, flat_m)) return 0;
  const radius = face.faceWidth_m / 2;
  return radius - run({ radius, flat: flat_m });
}
