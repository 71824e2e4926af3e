/** The overview alone, for a screen. */
import type { Layout } from "@/lib/layout/mod.ts";
import type { DrawingOptions } from "./options.ts";
import { overview } from "./overview.ts";
import { sceneOf } from "./scene.ts";
import { type DrawingSheet, finished } from "./sheet.ts";

/**
 * Draws the first of the sheets by itself: all views, small, with their holes' numbers.
 *
 * @param layout The rail.
 * @param options As for all sheets.
 * @returns The sheet.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const bar = { shape: "round", length_m: 0.12, height_m: 0.025, width_m: 0.025 } as const;
 * const options = { paper: "A4", system: "metric", title: { title: "Rail" } } as const;
 *
 * assertEquals(drawingOverview({ bar, holes: [] }, options).kind, "overview");
 * ```
 */
export function drawingOverview(layout: Layout, options: DrawingOptions): DrawingSheet {
  const [sheet] = finished([overview(sceneOf(layout, options))], options);
  if (sheet === undefined) throw new Error("a draft makes a sheet");
  return sheet;
}
