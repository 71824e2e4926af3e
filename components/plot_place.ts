/** Places in a plot: shares of the width along, pixels down. */

/** Two values [SI]: along x, along y. */
export type PlotPoint = readonly [x: number, y: number];

/** Where a point lies in the drawing. */
export interface Placed {
  /** Share of the width. */
  readonly x: number;
  /** Pixels down. */
  readonly y: number;
}

/** Finds where a point lies. */
export type Place = (at: PlotPoint) => Placed;

/** Pixels left for the drawing on a phone 360 wide: what finds room there does so anywhere. */
export const NARROW = 252;

/** Mean width of a letter [pixels]. */
const LETTER = 7.4;

/** Room that a text takes on a phone, as a share of the width. */
export function roomOf(text: string): number {
  return text.length * LETTER / NARROW;
}

/** A share of the width as an attribute. */
export function percent(share: number): string {
  return `${(share * 100).toFixed(2)}%`;
}

/** Pixels as an attribute. */
export function px(value: number): string {
  return String(Math.round(value * 10) / 10);
}
