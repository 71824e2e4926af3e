/** Numbered balloons above a plot, led to their points as on an assembly drawing. */
import type { VNode } from "preact";
import { fast } from "./fast.ts";
import { NARROW, percent, type Place, type PlotPoint, px } from "./plot_place.ts";
import { spreadOut } from "./spread_out.ts";

/** A number led to a point. What it means stands in the table. */
export interface Balloon {
  readonly text: string;
  readonly at: PlotPoint;
}

const RADIUS = 9.5;
const ROW = 22;
const PITCH = 20.5;
/** Where leaders go aslant, between the balloons and the plot. */
const BAND = 16;

/** As many rows as the balloons need on a phone. */
function rowsFor(count: number): number {
  return Math.ceil(count * PITCH / (NARROW + PITCH));
}

/** Pixels that so many balloons take above the plot. */
export function balloonHeight(count: number): number {
  return count === 0 ? 0 : rowsFor(count) * ROW + BAND;
}

/** A balloon's circle, and the point that it is led to. */
interface Led {
  readonly text: string;
  readonly from: string;
  readonly centre: number;
  readonly to: string;
  readonly y: string;
}

/** What is drawn of balloons. */
export interface BalloonsDrawn {
  /** Down, aslant to the place along x, and down to the point. */
  readonly leaders: VNode;
  /** Circles with their numbers, and the points; over all else. */
  readonly marks: VNode;
}

/** Places the balloons above the plot, each as near its point as its neighbours let it. */
export function plotBalloons(
  balloons: readonly Balloon[],
  place: Place,
  top: number,
): BalloonsDrawn {
  const rows = rowsFor(balloons.length);
  const first = top - balloonHeight(balloons.length) + RADIUS;
  const placed = balloons.map(({ text, at }) => ({ text, ...place(at) })).sort((a, b) => a.x - b.x);
  // In turn on each row: neighbours in a row are a whole pitch apart.
  const stands = spreadOut(placed.map(({ x }) => x), PITCH / NARROW / rows);
  const led = placed.map(({ text, x, y }, i): Led => ({
    text,
    from: percent(stands[i] ?? x),
    centre: first + (i % rows) * ROW,
    to: percent(x),
    y: px(y),
  }));
  return { leaders: fast`${led.map((each) => leader(each, top))}`, marks: fast`${led.map(mark)}` };
}

function leader({ from, centre, to, y }: Led, top: number): VNode {
  const slant = top - BAND;
  return fast`<line class="leader" x1="${from}" x2="${from}" y1="${centre}" y2="${slant}"/>
    <line class="leader" x1="${from}" x2="${to}" y1="${slant}" y2="${top}"/>
    <line class="leader" x1="${to}" x2="${to}" y1="${top}" y2="${y}"/>`;
}

function mark({ text, from, centre, to, y }: Led): VNode {
  return fast`<circle cx="${to}" cy="${y}" r="3.5" fill="currentColor"/>
    <circle class="balloon" cx="${from}" cy="${centre}" r="${RADIUS}"/>
    <text class="tick" x="${from}" y="${centre + 4}" text-anchor="middle">${text}</text>`;
}
