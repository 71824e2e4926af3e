/** Lines of a plot, told apart by dash and width. */
import type { VNode } from "preact";
import { line } from "d3-shape";
import { fast } from "./fast.ts";
import type { Place, PlotPoint } from "./plot_place.ts";

/** A line's dash and width, the same on paper as on a screen. */
export type LineType = keyof typeof LINES;

/** A line. */
export interface PlotLine {
  readonly type: LineType;
  readonly points: readonly PlotPoint[];
}

/** By ISO 128-2: continuous, dashed, dotted, chain, double chain. */
const LINES = {
  wide: { width: 3, dash: "none" },
  solid: { width: 1.5, dash: "none" },
  dashed: { width: 1.5, dash: "10 4" },
  dotted: { width: 2, dash: "2 3" },
  chain: { width: 1.5, dash: "18 3 2 3" },
  doubleChain: { width: 1.5, dash: "18 3 2 3 2 3" },
} as const;

/** A short piece of a line, to stand before its name in a key. */
export function lineSample(type: LineType): VNode {
  const { width, dash } = LINES[type];
  return fast`<svg class="sample" width="48" height="10" aria-hidden="true"><path d="M0 5H48" stroke="currentColor" stroke-width="${width}" stroke-dasharray="${dash}"/></svg>`;
}

/** The package comes without types. */
const path = (line as () => (points: readonly (readonly [number, number])[]) => string | null)();

/** Width of the lines' own drawing, wide enough for the three decimals that paths have. */
const ACROSS = 1000;

/** Lines in a drawing that is stretched to the width it finds; their strokes are not. */
export function plotLines(
  lines: readonly PlotLine[],
  place: Place,
  { top, height }: { readonly top: number; readonly height: number },
): VNode {
  return fast`<svg width="100%" height="${height}" y="${top}" viewBox="0 0 ${ACROSS} ${height}" preserveAspectRatio="none" overflow="visible">${
    lines.map(({ type, points }) => {
      const { width, dash } = LINES[type];
      const d = path(points.map(place).map(({ x, y }) => [x * ACROSS, y - top]));
      return d !== null &&
        fast`<path d="${d}" fill="none" stroke="currentColor" stroke-width="${width}" stroke-dasharray="${dash}" stroke-linejoin="round" vector-effect="non-scaling-stroke"/>`;
    })
  }</svg>`;
}
