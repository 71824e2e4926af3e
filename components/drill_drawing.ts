/** The rail as the Drill sheet shows it first: the overview, and where the true-scale sheets are. */
import type { VNode } from "preact";
import { drawingOverview } from "@/lib/drawing/mod.ts";
import { drawingOptions, PRINT_PAPERS, usualPaper } from "./drawing_of.ts";
import { DrawingSheet } from "./drawing_sheet.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";

/** The overview with links to all that is printed or sent to a machine. */
export function DrillDrawing(shown: PlanShown): VNode {
  const { evaluation, planPath } = shown;
  const { layout, noLayout } = evaluation.results.drill;
  if (layout === undefined) {
    return html`
      <p>
        The drawing needs the bar and its bore: <a href=${`${planPath}/size#rail.bore`}>enter them</a>.
        ${noLayout}
      </p>
    `;
  }
  const options = drawingOptions(shown, usualPaper(shown));
  return html`
    <section aria-labelledby="drawing">
      <h2 id="drawing">Drawing</h2>
      <div class="scroll dyed" tabindex="0" role="group" aria-label="Overview of the rail">
        ${DrawingSheet({ sheet: drawingOverview(layout, options), title: options.title.title })}
      </div>
      <ul class="screen-only">
        ${PRINT_PAPERS.map((paper) =>
          html`
            <li>
              <a href=${`${planPath}/drawing?paper=${paper}`}>Drawing sheets on ${paper}</a>: views at
              1:1, sections, hole table, strips to glue on the bar
            </li>
          `
        )}
        <li>
          <a href=${`${planPath}/rail.dxf`} download="rail.dxf">DXF file</a> for a machine: the same
          geometry in millimetres, layers by feature
        </li>
        <li>
          <a href=${`${planPath}/workshop`}>Workshop sheet</a>: order of the work, tools, speeds,
          inspection
        </li>
      </ul>
    </section>
  `;
}
