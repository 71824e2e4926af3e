/** Parallel-thread ports that seal by a washer on a spotted face. */

/** Threads of the ports with a washer. */
export type FaceThread =
  | "M10x1"
  | "M12x1.5"
  | "M14x1.5"
  | "M16x1.5"
  | "M18x1.5"
  | "M22x1.5"
  | "G 1/8"
  | "G 1/4"
  | "G 3/8";

/** A port with a washer. Depths count from the spotted face. */
export interface FacePort {
  /** Least diameter of the spotted face [m]. */
  readonly flat_m: number;
  /** Least depth to which the thread is full [m]. */
  readonly fullThread_m: number;
  /** Least depth of the tapping drill to its full diameter [m]. */
  readonly drillDepth_m: number;
  /** Where the numbers are published. */
  readonly source: string;
}

const port = (
  [flat, full, drill]: readonly [number, number, number],
  source: string,
): FacePort => ({
  flat_m: flat / 1000,
  fullThread_m: full / 1000,
  drillDepth_m: drill / 1000,
  source,
});

const METRIC = "ISO 9974-1 (DIN 3852-1), narrow form";
const PIPE = "ISO 1179-1 (DIN 3852-2), narrow form";

/**
 * Ports with a washer by thread: spotface, full thread, tapping drill.
 *
 * Source: ISO 9974-1 and ISO 1179-1, which took over DIN 3852-1 and -2, as a published chart of
 * port forms prints them.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(FACE_PORTS["M12x1.5"].flat_m, 0.018);
 * ```
 */
export const FACE_PORTS: Readonly<Record<FaceThread, FacePort>> = {
  "M10x1": port([15, 8, 13.5], METRIC),
  "M12x1.5": port([18, 12, 18.5], METRIC),
  "M14x1.5": port([20, 12, 18.5], METRIC),
  "M16x1.5": port([22, 12, 18.5], METRIC),
  "M18x1.5": port([24, 12, 18.5], METRIC),
  "M22x1.5": port([28, 14, 20.5], METRIC),
  "G 1/8": port([15, 8, 13], PIPE),
  "G 1/4": port([19, 12, 18.5], PIPE),
  "G 3/8": port([23, 12, 18.5], PIPE),
};
