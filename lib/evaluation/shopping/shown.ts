/** Figures and lengths of a shopping list in the units that things are sold in. */
import { formatIn, formatQuantity, type Kind, KINDS, type System } from "@/lib/units/mod.ts";
import type { ShoppingFigure, ShoppingQuantity } from "./item.ts";

/** A number for a column of numbers, its unit for the column beside it, and both as a sheet writes them. */
export interface ShownAmount {
  /** The number in that unit, with a digit more than the text, as it may be reckoned with. */
  readonly number: number;
  /** The unit; "pieces" of a count. */
  readonly unit: string;
  /** Number and unit; a count has no unit in a text. */
  readonly text: string;
}

/** Hose and wire are sold by one unit whatever the length, so that lengths can be set beside each other. */
const LENGTH_UNIT: Readonly<Record<System, string>> = { metric: "m", inch: "ft" };

const DIGITS = 4;

/**
 * Puts a figure into the unit that it is sold in.
 *
 * @param figure The figure.
 * @param system The units of the plan's sheets.
 * @returns Number, unit, and both together.
 *
 * @example A filter's fineness is in µm on an inch sheet too
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const fineness = { name: "fineness", value: 1e-5, kind: "length", sense: "at most", soldIn: "µm" } as const;
 *
 * assertEquals(shownFigure(fineness, "inch"), { number: 10, unit: "µm", text: "10.0 µm" });
 * ```
 */
export function shownFigure({ value, kind, soldIn }: ShoppingFigure, system: System): ShownAmount {
  return soldIn === undefined
    ? amount(value, kind, formatQuantity(value, kind, system))
    : amount(value, kind, formatIn(value, kind, soldIn));
}

/**
 * Puts a length of hose, tube or wire into the unit that it is sold in.
 *
 * @param value_m The length [m].
 * @param system The units of the plan's sheets.
 * @returns Number, unit, and both together.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(shownLength(0.35, "metric"), { number: 0.35, unit: "m", text: "0.35 m" });
 * ```
 */
export function shownLength(value_m: number, system: System): ShownAmount {
  return amount(value_m, "length", formatIn(value_m, "length", LENGTH_UNIT[system], 2));
}

/**
 * Puts how much of an item there is to buy into words and numbers.
 *
 * @param quantity The quantity.
 * @param system The units of the plan's sheets.
 * @returns Number, unit, and both together.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const four = { unit: "pieces", value: 4 } as const;
 *
 * assertEquals(shownQuantity(four, "inch"), { number: 4, unit: "pieces", text: "4" });
 * ```
 */
export function shownQuantity(quantity: ShoppingQuantity, system: System): ShownAmount {
  if (quantity.unit === "length") return shownLength(quantity.value_m, system);
  return { number: quantity.value, unit: "pieces", text: String(quantity.value) };
}

/** The unit is the one that the text ends with. */
function amount(value: number, kind: Kind, text: string): ShownAmount {
  const { metric, inch, si } = KINDS[kind];
  const unit = [...metric, ...inch].find(({ symbol }) => text.endsWith(` ${symbol}`));
  const { symbol, scale, offset = 0 } = unit ?? { symbol: si, scale: 1 };
  return { number: Number(((value - offset) / scale).toPrecision(DIGITS)), unit: symbol, text };
}
