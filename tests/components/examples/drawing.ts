/** Examples of drawing sheets. */
import { DrawingSheet } from "@/components/drawing_sheet.ts";
import { html } from "@/components/html.ts";
import { drawingSheets } from "@/lib/drawing/mod.ts";
import { METRIC } from "../../lib/drawing/options.ts";
import { fourInjectors } from "../../lib/drawing/sample_layouts.ts";
import type { Examples } from "./example.ts";

/** By component. */
export const drawingExamples: Examples = {
  DrawingSheet: Object.fromEntries(
    drawingSheets(fourInjectors(), METRIC).map((sheet) => [
      sheet.name,
      () => html`<${DrawingSheet} sheet=${sheet} title="Rail" />`,
    ]),
  ),
};
