/** The holes of a rail as lines of words, as the sheets have them. */
import type { Layout } from "@/lib/layout/mod.ts";
import { tableNote, tableRows } from "./hole_rows.ts";
import type { DrawingOptions } from "./options.ts";
import { sceneOf } from "./scene.ts";

/** A hole in words. */
export interface HoleListed {
  /** Its id. */
  readonly hole: string;
  /** Its number in the drawing's balloons. */
  readonly number: string;
  /** Its name. */
  readonly title: string;
  /** The face it is drilled from. */
  readonly face: string;
  /** Its place from the three datums; empty for the direction of its own face. */
  readonly place: readonly [x: string, y: string, z: string];
  /** What is cut how wide and how deep. */
  readonly size: string;
  /** Whether it can't be made as planned; then its size ends with the reason. */
  readonly inTrouble: boolean;
}

/** The holes of a rail in words, and what their places are measured from. */
export interface HoleListing {
  /** In the order of the layout. */
  readonly holes: readonly HoleListed[];
  /** The datums. */
  readonly note: string;
}

/** Wide enough that no line of words is broken [mm]. */
const UNBROKEN_mm = 1e5;

/**
 * Lists the holes of a rail in the words and figures of its drawing.
 *
 * @param layout The rail.
 * @param options As for the drawing.
 * @returns The holes and their datums.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const { holes } = holeListing({
 *   bar: { shape: "rectangular", length_m: 0.12, height_m: 0.025, width_m: 0.025 },
 *   holes: [{
 *     id: "screw-1",
 *     title: "Screw 1",
 *     feature: "screw",
 *     face: "opposite",
 *     exit: "injectors",
 *     entry: [0.06, 0, 0.025],
 *     into: [0, 0, -1],
 *     profile: [
 *       { cut: "bore", from_m: 0, to_m: 0.025, fromDiameter_m: 0.0066, toDiameter_m: 0.0066 },
 *     ],
 *     opensInto: [],
 *   }],
 * }, { paper: "A4", system: "metric", title: { title: "Rail" } });
 *
 * assertEquals(holes.map(({ title, place }) => [title, place[0]]), [["Screw 1", "60"]]);
 * ```
 */
export function holeListing(layout: Layout, options: DrawingOptions): HoleListing {
  const scene = sceneOf(layout, options);
  return {
    holes: tableRows(scene, UNBROKEN_mm).map(({ hole, cells, size, inTrouble }) => {
      const [number = "", title = "", face = "", x = "", y = "", z = ""] = cells;
      return { hole, number, title, face, place: [x, y, z], size: size.join(" "), inTrouble };
    }),
    note: tableNote(scene),
  };
}
