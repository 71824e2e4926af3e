/** Lays out a 45 degree seat at the bottom of a sensor port. */
import type { Working } from "@/lib/method/mod.ts";
import {
  sealingDepth,
  seatDepthByGallery,
  seatDepthByReach,
  seatToGallery,
  shoulderGap,
} from "./port_depths.ts";
import { coneDepth, pointLength, seatRing } from "./port_geometry.ts";

/** Angle of the spotting drill that cuts a 45 degree seat [rad]. */
const SEAT_INCLUDED_rad = Math.PI / 2;

/** Gap aimed at under the sensor's shoulder [m]; ours. */
export const GAP_AIM_m = 0.0005;

/** Metal aimed at between cone and gallery [m]; ours. */
export const SEAT_LEFT_AIM_m = 0.002;

/** Least metal between cone and gallery [m]; ours. */
export const SEAT_LEFT_LIMIT_m = 0.001;

/** What {@linkcode layConeSeat} needs. */
export interface ConeSeatInput {
  /** Diameter of the tapping drill [m]. */
  readonly drill_m: number;
  /** Diameter of the pilot [m]. */
  readonly pilot_m: number;
  /** Depth where the gallery first opens [m]. */
  readonly opening_m: number;
  /** Shoulder of the sensor to its sealing circle [m]. */
  readonly reach_m: number | undefined;
  /** Diameter of the sensor's sealing circle [m]. */
  readonly nose_m: number | undefined;
}

/** Where the seat lies and what is left around it. */
export interface ConeSeat {
  /** Width of the seat ring along the radius [m]; negative when the pilot is wider. */
  readonly seatRing_m: number;
  /** Depth of the cone [m]; undefined when the pilot leaves none. */
  readonly coneDepth_m: number | undefined;
  /** Length of the spotting drill's point, from the start of the cone to its tip [m]. */
  readonly spotPoint_m: number;
  /** Depth where the cone begins [m]; negative when there is no room for it. */
  readonly seatDepth_m: number;
  /** Metal between cone and gallery [m]; negative when the cone runs into it. */
  readonly seatToGallery_m: number | undefined;
  /** Depth of the sealing circle [m]; undefined until the nose is known and meets the cone. */
  readonly seatAt_m: number | undefined;
  /** Gap under the shoulder when the nose seals [m]; undefined until reach and nose are known. */
  readonly shoulderGap_m: number | undefined;
  /** Whether the nose seals on the cone; undefined until that can be told. */
  readonly noseArrives: boolean | undefined;
}

/**
 * Lays a cone seat out: by the sensor's reach where reach and nose are known, else as deep as
 * leaves the metal aimed at above the gallery.
 *
 * @param working Takes the record, under `port.` and the result's key.
 * @param input Drill, pilot, gallery, and the sensor where known.
 * @returns The seat.
 * @throws {InputError} When a number lies outside its method's range.
 *
 * @example Reach 10 mm, nose 7 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const seat = layConeSeat(new Working(), {
 *   drill_m: 0.009,
 *   pilot_m: 0.004,
 *   opening_m: 0.0136,
 *   reach_m: 0.01,
 *   nose_m: 0.007,
 * });
 *
 * assertAlmostEquals(seat.seatDepth_m, 0.0085, 1e-12);
 * assertAlmostEquals(seat.seatAt_m ?? 0, 0.0095, 1e-12);
 * ```
 */
export function layConeSeat(working: Working, input: ConeSeatInput): ConeSeat {
  const { drill_m: drill, pilot_m: pilot, opening_m: opening, reach_m: reach, nose_m: nose } =
    input;
  const seatRing_m = working.run("port.seatRing_m", seatRing, { drill, pilot });
  const coneDepth_m = pilot < drill
    ? working.run("port.coneDepth_m", coneDepth, {
      wide: drill,
      narrow: pilot,
      included: SEAT_INCLUDED_rad,
    })
    : undefined;
  const meets = nose !== undefined && nose > pilot && nose < drill;
  const toCircle = meets
    ? working.run("port.toCircle_m", coneDepth, {
      wide: drill,
      narrow: nose,
      included: SEAT_INCLUDED_rad,
    })
    : undefined;
  const seatDepth_m = reach !== undefined && toCircle !== undefined
    ? working.run("port.seatDepth_m", seatDepthByReach, { reach, gap: GAP_AIM_m, toCircle })
    : working.run("port.seatDepth_m", seatDepthByGallery, {
      opening,
      left: SEAT_LEFT_AIM_m,
      coneDepth: coneDepth_m ?? 0,
    });
  const seatAt_m = toCircle === undefined
    ? undefined
    : working.run("port.seatAt_m", sealingDepth, { seatDepth: seatDepth_m, toCircle });
  const shoulderGap_m = reach === undefined || seatAt_m === undefined
    ? undefined
    : working.run("port.shoulderGap_m", shoulderGap, { reach, sealingDepth: seatAt_m });
  return {
    seatRing_m,
    coneDepth_m,
    spotPoint_m: working.run("port.spotPoint_m", pointLength, {
      drill,
      included: SEAT_INCLUDED_rad,
    }),
    seatDepth_m,
    seatToGallery_m: coneDepth_m === undefined ? undefined : working.run(
      "port.seatToGallery_m",
      seatToGallery,
      { opening, seatDepth: seatDepth_m, coneDepth: coneDepth_m },
    ),
    seatAt_m,
    shoulderGap_m,
    noseArrives: arrives(nose, meets, seatDepth_m, shoulderGap_m),
  };
}

function arrives(
  nose: number | undefined,
  meets: boolean,
  seatDepth: number,
  gap: number | undefined,
): boolean | undefined {
  if (nose === undefined) return undefined;
  if (!meets) return false;
  return gap === undefined ? undefined : gap > 0 && seatDepth >= 0;
}
