/** An axis of a plot: where values lie, and what is written along it. */
import { formatNumber } from "@/lib/units/mod.ts";
import { scaleBetween } from "./scale.ts";

/** An axis. */
export interface Axis {
  /** What runs along it, with its unit. */
  readonly title: string;
  /** Where a value [SI] lies, as a share of the axis [0 to 1]. */
  readonly at: (value: number) => number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** What an axis has to hold. */
export interface AxisOf {
  readonly title: string;
  /** The unit written along it: its SI value, and its symbol. */
  readonly unit: { readonly scale: number; readonly symbol: string };
  /** What is to be shown [SI]; zero is always within. */
  readonly values: readonly number[];
  /** How many marks are wanted, about. */
  readonly marks: number;
}

/** An axis with round ends that holds zero and all values. */
export function axisOf({ title, unit, values, marks }: AxisOf): Axis {
  const shown = values.map((value) => value / unit.scale);
  const scale = scaleBetween(Math.min(0, ...shown), Math.max(0, ...shown), marks);
  const texts = evenly(scale.ticks);
  return {
    title: `${title} [${unit.symbol}]`,
    at: (value) => scale.at(value / unit.scale),
    ticks: scale.ticks.map((tick, i) => ({ at: scale.at(tick), text: texts[i] ?? "" })),
  };
}

/** The numbers along an axis, all with the same decimals but zero. */
function evenly(ticks: readonly number[]): string[] {
  const texts = ticks.map((tick) => formatNumber(tick));
  const decimalsOf = (text: string): number => text.split(".")[1]?.length ?? 0;
  const most = Math.max(0, ...texts.map(decimalsOf));
  return texts.map((text) => {
    const missing = most - decimalsOf(text);
    if (missing === 0 || text === "0") return text;
    return `${text}${missing === most ? "." : ""}${"0".repeat(missing)}`;
  });
}
