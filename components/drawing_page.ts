/** The drawing of the rail on sheets of paper at true scale. */
import type { VNode } from "preact";
import { drawingSheets } from "@/lib/drawing/mod.ts";
import { drawingOptions, PRINT_PAPERS, type PrintPaper } from "./drawing_of.ts";
import { DrawingSheet } from "./drawing_sheet.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";

/** What {@linkcode DrawingPage} shows. */
export interface DrawingPageProps {
  readonly shown: PlanShown;
  readonly paper: PrintPaper;
}

/** Sheet after sheet, each as large as its paper. */
export function DrawingPage({ shown, paper }: DrawingPageProps): VNode {
  const { layout, noLayout } = shown.evaluation.results.drill;
  const drill = `${shown.planPath}/drill`;
  if (layout === undefined) {
    return html`
      <h1>Drawing</h1>
      <p><b>Nothing to draw yet.</b> ${noLayout} <a href=${drill}>Back to Drill</a>.</p>
    `;
  }
  const options = drawingOptions(shown, paper);
  const sheets = drawingSheets(layout, options);
  const others = PRINT_PAPERS.filter((each) => each !== paper);
  return html`
    <div class="screen-only drawing-head">
      <h1>Drawing: ${sheets.length} sheets of ${paper}</h1>
      <p>
        Print all of it <b>at 100 %</b>, without “fit to page”, in colour or not; then measure the
        calibration bars on the first sheet before you trust any other. Strips at 1:1 are cut out and
        glued along the datum edge. The figures count, not what a ruler says on paper.
      </p>
      <ul class="links">
        <li><a href=${drill}>Back to Drill</a></li>
        ${others.map((each) =>
          html`<li><a href=${`${shown.planPath}/drawing?paper=${each}`}>On ${each} paper</a></li>`
        )}
        <li><a href=${`${shown.planPath}/rail.dxf`} download="rail.dxf">DXF file</a></li>
      </ul>
    </div>
    ${sheets.map((sheet) => DrawingSheet({ sheet, title: options.title.title }))}
  `;
}
