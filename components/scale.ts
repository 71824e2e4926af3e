/** A linear scale with round ends, for charts. */
import { scaleLinear } from "d3-scale";

/** What is used of the package, which comes without types. */
interface Linear {
  (value: number): number;
  domain(ends: readonly [number, number]): Linear;
  range(ends: readonly [number, number]): Linear;
  nice(count: number): Linear;
  ticks(count: number): number[];
}

/** A scale between round numbers. */
export interface Scale {
  /** Where a value lies, as a share of the whole [0 to 1]. */
  readonly at: (value: number) => number;
  /** Round values to mark. */
  readonly ticks: readonly number[];
}

/**
 * Makes a scale from zero.
 *
 * @param largest The largest value to show, above zero.
 * @param marks How many marks are wanted, about.
 * @returns The scale; its end is the next round number.
 */
export function scaleTo(largest: number, marks: number): Scale {
  return scaleBetween(0, largest, marks);
}

/**
 * Makes a scale between any two values.
 *
 * @param least The least value to show.
 * @param most The largest; where it is not above the least, the scale is one long.
 * @param marks How many marks are wanted, about.
 * @returns The scale; its ends are the next round numbers outside.
 */
export function scaleBetween(least: number, most: number, marks: number): Scale {
  const ends = [least, most > least ? most : least + 1] as const;
  const scale = (scaleLinear as () => Linear)().domain(ends).range([0, 1]).nice(marks);
  return { at: (value) => scale(value), ticks: scale.ticks(marks) };
}
