/** A rail on sheets of paper. */
import type { Layout } from "@/lib/layout/mod.ts";
import { overview } from "./overview.ts";
import type { DrawingOptions } from "./options.ts";
import { type Scene, sceneOf } from "./scene.ts";
import { sectionSheets } from "./section_sheets.ts";
import { type DrawingSheet, finished } from "./sheet.ts";
import { stripSheets } from "./strip_sheets.ts";
import { tableSheets } from "./table_sheets.ts";
import { viewSheets } from "./view_sheets.ts";

/**
 * Draws a rail on sheets: an overview, every face at true scale with its holes' places, a section
 * through each kind of hole, the table of holes, and strips to glue on the bar.
 *
 * Figures are the layout's own numbers. Each sheet carries a frame, a title block and two bars to
 * measure before it is trusted. A bar longer than the paper comes in pieces with match lines.
 *
 * @param layout The rail.
 * @param options Paper, unit of the figures, title block, holes in trouble.
 * @returns The sheets, in order.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const sheets = drawingSheets({
 *   bar: { shape: "rectangular", length_m: 0.12, height_m: 0.025, width_m: 0.025 },
 *   holes: [{
 *     id: "gallery",
 *     title: "Gallery",
 *     feature: "gallery",
 *     face: "datum-end",
 *     exit: "far-end",
 *     entry: [0, 0, 0.0125],
 *     into: [1, 0, 0],
 *     profile: [{ cut: "bore", from_m: 0, to_m: 0.12, fromDiameter_m: 0.012, toDiameter_m: 0.012 }],
 *     opensInto: [],
 *   }],
 * }, { paper: "A4", system: "metric", title: { title: "Rail" } });
 *
 * assertEquals(sheets.map(({ kind }) => kind), ["overview", "views", "sections", "holes"]);
 * assertEquals([sheets[0]?.width, sheets[0]?.height], [297, 210]);
 * ```
 */
export function drawingSheets(layout: Layout, options: DrawingOptions): DrawingSheet[] {
  const scene: Scene = sceneOf(layout, options);
  const drafts = [
    overview(scene),
    ...viewSheets(scene),
    ...sectionSheets(scene),
    ...tableSheets(scene),
    ...stripSheets(scene),
  ];
  return finished(drafts, options);
}
