/** The table of holes. */
import type { Cut, Face, Feature, HoleThread, Layout } from "./model.ts";

/** A depth with its diameter: what is cut, how wide, how deep from the entry. */
export interface CutDepth {
  /** What is cut. */
  readonly cut: Cut;
  /** Diameter where it begins [m]. */
  readonly diameter_m: number;
  /** Diameter where it ends [m]; the same for a cylinder. */
  readonly endDiameter_m: number;
  /** Depth where it ends, from the entry along the axis [m]. */
  readonly depth_m: number;
}

/** A row of the table. */
export interface HoleRow {
  /** The hole's id. */
  readonly id: string;
  /** What it is called. */
  readonly title: string;
  /** What it is. */
  readonly feature: Feature;
  /** The face it is drilled from. */
  readonly face: Face;
  /** Its entry along the bar from the datum end [m]. */
  readonly x_m: number;
  /** Its entry across the bar from the middle [m]. */
  readonly y_m: number;
  /** Its entry up from the injectors' face [m]. */
  readonly z_m: number;
  /** How far its axis leans along the bar, towards the far end as it goes in [rad]; 0 if square. */
  readonly lean_rad: number;
  /** True when it comes out of the bar again. */
  readonly through: boolean;
  /** What is cut, in order of depth. */
  readonly cuts: readonly CutDepth[];
  /** Depth of its full diameter, the drill's point left out [m]. */
  readonly depth_m: number;
  /** Its thread, if any. */
  readonly thread?: HoleThread;
}

/**
 * Lists all holes with their places from the datums, diameters, depths and threads.
 *
 * @param layout The layout.
 * @returns A row for each hole, in the order of the layout.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const rows = holeTable({
 *   bar: { shape: "rectangular", length_m: 0.1, height_m: 0.025, width_m: 0.025 },
 *   holes: [{
 *     id: "screw-1",
 *     title: "Screw 1",
 *     feature: "screw",
 *     face: "opposite",
 *     exit: "injectors",
 *     entry: [0.04, 0, 0.025],
 *     into: [0, 0, -1],
 *     profile: [
 *       { cut: "bore", from_m: 0, to_m: 0.025, fromDiameter_m: 0.006, toDiameter_m: 0.006 },
 *     ],
 *     opensInto: [],
 *   }],
 * });
 *
 * assertEquals(rows.map(({ x_m, through, depth_m }) => [x_m, through, depth_m]), [
 *   [0.04, true, 0.025],
 * ]);
 * ```
 */
export function holeTable(layout: Layout): readonly HoleRow[] {
  return layout.holes.map(({ id, title, feature, face, exit, entry, into, profile, thread }) => {
    const [x_m, y_m, z_m] = entry;
    const square = face === "datum-end" || face === "far-end";
    return {
      id,
      title,
      feature,
      face,
      x_m,
      y_m,
      z_m,
      lean_rad: square ? 0 : Math.asin(into[0]),
      through: exit !== undefined,
      cuts: profile.map((s) => ({
        cut: s.cut,
        diameter_m: s.fromDiameter_m,
        endDiameter_m: s.toDiameter_m,
        depth_m: s.to_m,
      })),
      depth_m: profile.filter(({ cut }) => cut !== "tip").at(-1)?.to_m ?? 0,
      ...(thread === undefined ? {} : { thread }),
    };
  });
}
