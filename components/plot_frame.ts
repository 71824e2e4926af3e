/**
 * The one grammar of all plots: axes, lines told apart by dash, words at lines, numbered balloons.
 *
 * Places along x are shares of the width, so that text keeps its size on a phone.
 */
import type { VNode } from "preact";
import { fast } from "./fast.ts";
import { html } from "./html.ts";
import type { Axis } from "./plot_axis.ts";
import { type Balloon, balloonHeight, plotBalloons } from "./plot_balloons.ts";
import { type PlotLine, plotLines } from "./plot_lines.ts";
import { percent, type Place, type Placed, type PlotPoint, px } from "./plot_place.ts";
import { type PlotSpan, plotSpans, spanHeight } from "./plot_spans.ts";

/** A word at a place. */
export interface PlotLabel {
  readonly text: string;
  readonly at: PlotPoint;
  readonly anchor?: "start" | "middle" | "end";
  /** Pixels from the place to the text: up, or down if negative; on it without. */
  readonly up?: number;
  /** Pixels to the right, or to the left if negative. */
  readonly aside?: number;
}

/** What {@linkcode PlotFrame} draws. */
export interface PlotFrameProps {
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly PlotLine[];
  readonly balloons: readonly Balloon[];
  readonly labels: readonly PlotLabel[];
  readonly spans?: readonly PlotSpan[];
}

/** Of the plot itself, in pixels. */
const HEIGHT = 200;
/** Of a line with an axis's title, or with the numbers along x. */
const TEXT_ROW = 20;

/** The drawing; the figure around it, its caption and table are the plot's own. */
export function PlotFrame({ x, y, lines, balloons, labels, spans = [] }: PlotFrameProps): VNode {
  const top = TEXT_ROW + Math.max(8, balloonHeight(balloons.length));
  const foot = top + HEIGHT;
  const end = foot + TEXT_ROW + spanHeight(spans, x);
  const place: Place = ([along, up]) => ({ x: x.at(along), y: foot - y.at(up) * HEIGHT });
  const drawn = plotBalloons(balloons, place, top);
  return html`
    <svg
      class="chart"
      width="100%"
      height=${end + TEXT_ROW}
      role="img"
      aria-label="Line plot; the table below holds the same numbers"
    >
      ${axes(x, y, foot)} ${plotLines(lines, place, { top, height: HEIGHT })}
      ${drawn.leaders} ${labels.map((label) => word(label, place(label.at)))}
      ${drawn.marks}
      ${plotSpans(spans, x, foot + TEXT_ROW)}
      <text class="tick" x="100%" y=${end + 14} text-anchor="end">${x.title}</text>
    </svg>
  `;
}

/** Lines across at round values; short marks only along x, where leaders go down. */
function axes(x: Axis, y: Axis, foot: number): VNode {
  return fast`<text class="tick" x="-44" y="12">${y.title}</text>${
    y.ticks.map(({ at, text }) => {
      const level = px(foot - at * HEIGHT);
      return fast`<line class="grid" x1="0" x2="100%" y1="${level}" y2="${level}"/>
      <text class="tick" x="-6" y="${level}" dy="4" text-anchor="end">${text}</text>`;
    })
  }${
    x.ticks.map(({ at, text }) => {
      const across = percent(at);
      return fast`<line class="leader" x1="${across}" x2="${across}" y1="${foot}" y2="${foot + 5}"/>
      <text class="tick" x="${across}" y="${foot + 17}" text-anchor="middle">${text}</text>`;
    })
  }`;
}

function word(
  { text, anchor = "start", up = 0, aside = 0 }: Omit<PlotLabel, "at">,
  { x, y }: Placed,
): VNode {
  return fast`<text class="bar-title" x="${percent(x)}" dx="${aside}" y="${
    px(y - up + 5)
  }" text-anchor="${anchor}">${text}</text>`;
}
