/** A sheet of a drawing as SVG, as large as the paper. */
import type { VNode } from "preact";
import { type DrawingSheet as Sheet, marksOf } from "@/lib/drawing/mod.ts";
import { drawingMarks } from "./drawing_marks.ts";
import { html } from "./html.ts";

/** What {@linkcode DrawingSheet} shows. */
export interface DrawingSheetProps {
  readonly sheet: Sheet;
  /** What is drawn, for those who can't see it: the rail's title. */
  readonly title: string;
}

/** The sheet; on paper it is printed at its true size, on screen as wide as there is room. */
export function DrawingSheet({ sheet, title }: DrawingSheetProps): VNode {
  const { width, height, paper, orientation, name, scale, shapes } = sheet;
  const paperName = `${paper.toLowerCase()}-${orientation}`;
  const said = scale === "none" ? "" : `, scale ${scale}`;
  return html`
    <figure class=${`drawing-sheet paper-${paperName}`}>
      <svg
        xmlns="http://www.w3.org/2000/svg"
        width=${`${width}mm`}
        height=${`${height}mm`}
        viewBox=${`0 0 ${width} ${height}`}
        role="img"
        aria-label=${`${title}: ${name}${said}`}
      >
        ${drawingMarks(marksOf(shapes), height)}
      </svg>
    </figure>
  `;
}
