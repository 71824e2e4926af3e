/** Drawing sheets as a browser prints them: measured in the PDF itself. */
import { assert, assertEquals } from "@std/assert";
import { it } from "@std/testing/bdd";
import type { Page } from "playwright-core";
import { DrawingSheet } from "@/components/drawing_sheet.ts";
import {
  type DrawingOptions,
  type DrawingSheet as Sheet,
  drawingSheets,
  marksOf,
  widthOf,
} from "@/lib/drawing/mod.ts";
import { renderToString } from "preact-render-to-string";
import { INCH, METRIC } from "../lib/drawing/options.ts";
import { SAMPLES } from "../lib/drawing/sample_layouts.ts";
import { describeSite } from "./open.ts";
import { type PdfBox, pdfPages } from "./pdf_boxes.ts";

const CSS = await Deno.readTextFile(new URL("../../components/style.css", import.meta.url));

/** Shows sheets on a page with the service's stylesheet. */
async function show(page: Page, sheets: readonly Sheet[]): Promise<void> {
  const drawn = sheets.map((sheet) => renderToString(DrawingSheet({ sheet, title: "Rail" })));
  await page.setContent(
    `<!DOCTYPE html><html lang="en"><title>Rail</title><style>${CSS}</style>${drawn.join("")}`,
  );
}

/** The widths of what is 2 mm high and long: the two calibration bars. */
function calibration(boxes: readonly PdfBox[]): number[] {
  const bars = boxes.filter(({ width_mm, height_mm }) =>
    Math.abs(height_mm - 2) < 0.2 && width_mm > 40
  );
  return bars.map(({ width_mm }) => width_mm).sort((a, b) => a - b);
}

const PRINTED: readonly [paper: string, options: DrawingOptions, size_mm: [number, number]][] = [
  ["A4", METRIC, [297, 210]],
  ["Letter", INCH, [279.4, 215.9]],
];

describeSite("drawing sheets in a browser", (site) => {
  for (const [paper, options, [long, short]] of PRINTED) {
    it(`print on ${paper} one to a page, with calibration bars of 50.0 ± 0.2 mm and 2 in`, async () => {
      const page = await site.freshPage();
      for (const [name, make] of Object.entries(SAMPLES)) {
        const sheets = drawingSheets(make(), options);
        await show(page, sheets);
        const pages = await pdfPages(await page.pdf({ preferCSSPageSize: true }));
        assertEquals(pages.length, sheets.length, name);
        pages.forEach(({ width_mm, height_mm, boxes }, i) => {
          const isLevel = sheets[i]?.orientation === "landscape";
          const [width, height] = isLevel ? [long, short] : [short, long];
          assert(Math.abs(width_mm - width) < 0.3 && Math.abs(height_mm - height) < 0.3, name);
          const [metric = NaN, inch = NaN, ...more] = calibration(boxes);
          assertEquals(more, []);
          assert(Math.abs(metric - 50) <= 0.2, `${name}, sheet ${i + 1}: ${metric} mm`);
          assert(Math.abs(inch - 50.8) <= 0.2, `${name}, sheet ${i + 1}: ${inch} mm`);
        });
      }
    });
  }

  it("would show it when a page were printed too small", async () => {
    const page = await site.freshPage();
    await show(
      page,
      drawingSheets(SAMPLES["round bar"]?.() ?? { bar: never(), holes: [] }, METRIC),
    );
    const [first] = await pdfPages(await page.pdf({ preferCSSPageSize: true, scale: 0.95 }));
    const [bar = NaN] = calibration(first?.boxes ?? []);
    assert(Math.abs(bar - 47.5) <= 0.2, `${bar} mm`);
  });

  it("have words no wider than the room that was kept for them", async () => {
    const page = await site.freshPage();
    for (const [name, make] of Object.entries(SAMPLES)) {
      for (const sheet of drawingSheets(make(), METRIC)) {
        await show(page, [sheet]);
        const wide = await page.evaluate(
          `[...document.querySelectorAll("svg text")].map((e) => e.getComputedTextLength())`,
        ) as number[];
        const texts = marksOf(sheet.shapes).flatMap((mark) => mark.kind === "text" ? [mark] : []);
        assertEquals(wide.length, texts.length);
        texts.forEach(({ says, height }, i) => {
          const room = widthOf(says, height);
          assert((wide[i] ?? 0) <= room, `${name}: "${says}" is ${wide[i]} mm, not ${room}`);
        });
      }
    }
  });
});

function never(): never {
  throw new Error("the sample is gone");
}
