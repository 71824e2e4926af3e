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

/** A scale from zero to a round number. */
export interface Scale {
  /** Where a value lies, as a share of the whole [0 to 1]. */
  readonly at: (value: number) => number;
  /** Round values to mark. */
  readonly ticks: readonly number[];
}

/**
 * Makes a scale.
 *
 * @param largest The largest value to show, above zero.
 * @param marks How many marks are wanted, about.
 * @returns The scale; its end is the next round number.
 */
export function scaleTo(largest: number, marks: number): Scale {
  const scale = (scaleLinear as () => Linear)().domain([0, largest]).range([0, 1]).nice(marks);
  return { at: (value) => scale(value), ticks: scale.ticks(marks) };
}
