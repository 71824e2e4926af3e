/** Named parts of a plot's x axis, dimensioned below it. */
import type { VNode } from "preact";
import { fast } from "./fast.ts";
import type { Axis } from "./plot_axis.ts";
import { percent, roomOf } from "./plot_place.ts";

/** A part of the x axis with its name. */
export interface PlotSpan {
  readonly name: string;
  /** In the axis's values [SI]. */
  readonly from: number;
  readonly to: number;
}

const ROW = 18;
const LINE = 8;

/** A name with its row, and its middle as a share of the width. */
interface NameRow {
  readonly name: string;
  readonly middle: number;
  readonly row: number;
}

/** Each name below its part, one row further down where its neighbours leave no room on a phone. */
function rowsOfNames(spans: readonly PlotSpan[], x: Axis): NameRow[] {
  const ends: number[] = [];
  return spans.map(({ name, from, to }) => {
    const half = roomOf(`${name} `) / 2;
    const middle = Math.min(Math.max((x.at(from) + x.at(to)) / 2, half), Math.max(half, 1 - half));
    const free = ends.findIndex((end) => end <= middle - half + 1e-9);
    const row = free < 0 ? ends.length : free;
    ends[row] = middle + half;
    return { name, middle, row };
  });
}

/** Pixels that the parts take below the axis. */
export function spanHeight(spans: readonly PlotSpan[], x: Axis): number {
  return spans.length === 0
    ? 0
    : LINE + ROW * (1 + Math.max(...rowsOfNames(spans, x).map(({ row }) => row)));
}

/** A line with an end mark at each joint, and the names below. */
export function plotSpans(spans: readonly PlotSpan[], x: Axis, top: number): VNode {
  const level = top + LINE / 2;
  return fast`${
    spans.map(({ from, to }) => {
      const [left, right] = [percent(x.at(from)), percent(x.at(to))];
      return fast`<line class="leader" x1="${left}" x2="${right}" y1="${level}" y2="${level}"/>${
        [left, right].map((end) =>
          fast`<line class="leader" x1="${end}" x2="${end}" y1="${top}" y2="${top + LINE}"/>`
        )
      }`;
    })
  }${
    rowsOfNames(spans, x).map(({ name, middle, row }) =>
      fast`<text x="${percent(middle)}" y="${
        top + LINE + ROW * (row + 1) - 4
      }" text-anchor="middle">${name}</text>`
    )
  }`;
}
