/** A rail as a DXF file. */
import type { Layout } from "@/lib/layout/mod.ts";
import { boxAround } from "./boxes.ts";
import { endView } from "./end_view.ts";
import { faceView } from "./face_view.ts";
import { moved } from "./moved.ts";
import type { DrawingOptions } from "./options.ts";
import { type Block, sceneOf } from "./scene.ts";
import { sectionView } from "./section_view.ts";
import { sectionsOf } from "./sections.ts";
import { marksOf, type Shape } from "./shapes.ts";
import { facesShown } from "./view_sheets.ts";

/** Between views [mm]. */
const GAP_mm = 20;

/**
 * Writes a rail as a DXF file (AC1021) in millimetres at 1:1: all faces, both ends and all sections,
 * one below the other, on layers by what is cut. The front view's datum corner is at the origin.
 *
 * @param layout The rail.
 * @param options As for the sheets; figures are in its unit, the geometry in millimetres.
 * @returns The file's text.
 *
 * @example
 * ```ts
 * import { assertStringIncludes } from "@std/assert";
 *
 * const text = await dxfOf({
 *   bar: { shape: "round", length_m: 0.12, height_m: 0.025, width_m: 0.025 },
 *   holes: [],
 * }, { paper: "A4", system: "metric", title: { title: "Rail" } });
 *
 * assertStringIncludes(text, "AC1021");
 * ```
 */
export async function dxfOf(layout: Layout, options: DrawingOptions): Promise<string> {
  // The library takes longer to load than all the rest of a drawing.
  const { writeDxf } = await import("./write_dxf.ts");
  return writeDxf(marksOf(dxfShapes(layout, options)));
}

/**
 * The shapes of the file: views as on the sheets, below each other, at 1:1.
 *
 * @param layout The rail.
 * @param options As for the file.
 * @returns Shapes [mm].
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const bar = { shape: "round", length_m: 0.12, height_m: 0.025, width_m: 0.025 } as const;
 * const [outline] = dxfShapes({ bar, holes: [] }, {
 *   paper: "A4",
 *   system: "metric",
 *   title: { title: "Rail" },
 * });
 *
 * assertEquals(outline?.layer, "outline");
 * ```
 */
export function dxfShapes(layout: Layout, options: DrawingOptions): Shape[] {
  const scene = sceneOf(layout, options);
  const { body } = scene;
  const sections = sectionsOf(body, 1);
  const faces = facesShown(scene).toSorted((a, b) => Number(b === "front") - Number(a === "front"));
  const long = faces.map((face) =>
    faceView(scene, { face, piece: [0, body.length], scale: 1, sections })
  );
  const ends = (["datum-end", "far-end"] as const)
    .filter((face) => face === "datum-end" || body.holes.some(({ hole }) => hole.face === face))
    .map((face) => endView(scene, face, 1));
  return arranged(long, [...ends, ...sections.map((each) => sectionView(scene, each))]);
}

/** Long views below each other, ends and sections in a row below them. */
function arranged(long: readonly Block[], short: readonly Block[]): Shape[] {
  const shapes: Shape[] = [];
  for (const [i, { shapes: each, box }] of long.entries()) {
    if (i === 0) shapes.push(...each);
    else {
      const down = boxAround(shapes).bottom - GAP_mm - box.top;
      // Seen from behind, the bar lies left of its datum.
      const aside = box.right < GAP_mm ? -Math.round(boxAround(each).left) : 0;
      shapes.push(...moved(each, aside, down));
    }
  }
  const level = boxAround(shapes).bottom - GAP_mm;
  let left = 0;
  for (const { shapes: each, box } of short) {
    shapes.push(...moved(each, left - box.left, level - box.top));
    left += box.right - box.left + GAP_mm;
  }
  return shapes;
}
