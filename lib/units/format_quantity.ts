/** SI to what people read. Needs no mathjs, so pages can be drawn before it is loaded. */
import { InputError } from "@/lib/basics/mod.ts";
import { decimalsFor, plain, powerOfTen, requireFinite } from "./format_number.ts";
import type { DisplayUnit, Kind, System } from "./kind.ts";
import { KINDS } from "./kinds.ts";

/** From here on a plain number would be a row of figures nobody reads. */
const LARGEST_PLAIN = 1e9;

/**
 * Shows a quantity in the units of a system, with the digits that suit it.
 *
 * @param value In the SI unit of the kind; must be finite.
 * @param kind What it is.
 * @param system `metric` or `inch`.
 * @returns Number and unit; {@linkcode parseQuantity} reads it back.
 * @throws {InputError} When the value is not finite.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(formatQuantity(3e5, "pressure", "metric"), "3.00 bar");
 * assertEquals(formatQuantity(3e5, "pressure", "inch"), "43.5 psi");
 * assertEquals(formatQuantity(0.015875, "length", "inch"), "0.625 in");
 * ```
 */
export function formatQuantity(value: number, kind: Kind, system: System): string {
  requireFinite(KINDS[kind].noun, value);
  return show(value, unitFor(value, kind, system));
}

/** A hundredth of a percent. */
const LEAST_SHARE = 1e-4;

/**
 * Shows a share in percent, one that is too small to matter as no more than that.
 *
 * @param value The share [-]; must be finite.
 * @returns Like "85.0 %", or "under 0.01 %".
 * @throws {InputError} When the number is not finite.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(formatShare(0.0213), "2.13 %");
 * assertEquals(formatShare(3e-6), "under 0.01 %");
 * ```
 */
export function formatShare(value: number): string {
  return value > 0 && value < LEAST_SHARE
    ? `under ${formatQuantity(LEAST_SHARE, "ratio", "metric")}`
    : formatQuantity(value, "ratio", "metric");
}

/**
 * Shows a quantity in both systems: `3.00 bar (43.5 psi)`.
 *
 * @param value In the SI unit of the kind; must be finite.
 * @param kind What it is.
 * @param system The one that comes first.
 * @returns Both, or one where they are the same.
 * @throws {InputError} When the value is not finite.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(inBoth(3e5, "pressure", "metric"), "3.00 bar (43.5 psi)");
 * assertEquals(inBoth(12, "voltage", "metric"), "12.0 V");
 * ```
 */
export function inBoth(value: number, kind: Kind, system: System): string {
  const first = formatQuantity(value, kind, system);
  const second = formatQuantity(value, kind, system === "metric" ? "inch" : "metric");
  return first === second ? first : `${first} (${second})`;
}

/**
 * Shows a quantity in one unit whatever its size, for columns and axes.
 *
 * @param value In the SI unit of the kind; must be finite.
 * @param kind What it is.
 * @param symbol One of the kind's display units, as printed.
 * @param decimals Decimals; where missing, the digits that suit the kind.
 * @returns Number and unit.
 * @throws {InputError} When the value is not finite or the kind is not shown in
 * that unit.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(formatIn(0.0125, "length", "mm", 1), "12.5 mm");
 * ```
 */
export function formatIn(value: number, kind: Kind, symbol: string, decimals?: number): string {
  const { noun, metric, inch } = KINDS[kind];
  requireFinite(noun, value);
  const unit = metric.find((each) => each.symbol === symbol) ??
    inch.find((each) => each.symbol === symbol);
  if (unit === undefined) {
    throw new InputError(noun, "symbol", "must be a unit that the kind is shown in", symbol);
  }
  if (decimals === undefined) return show(value, unit);
  return joined(plain((value - (unit.offset ?? 0)) / unit.scale, decimals), unit.symbol);
}

/**
 * Gives the main unit that a kind is shown in.
 *
 * @param kind What is shown.
 * @param system `metric` or `inch`.
 * @returns Its symbol, and its scale and offset to SI.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(displayUnit("pressure", "inch").symbol, "psi");
 * ```
 */
export function displayUnit(kind: Kind, system: System): DisplayUnit {
  const [main] = KINDS[kind][system];
  if (main === undefined) throw new InputError("unit", "kind", "must have a unit", kind);
  return main;
}

/** The unit with the largest `from` that the size reaches, else the one without. */
function unitFor(value: number, kind: Kind, system: System): DisplayUnit {
  const main = displayUnit(kind, system);
  const size = Math.abs(value);
  if (size === 0) return main;
  let best: DisplayUnit | undefined;
  let smallest = main;
  for (const unit of KINDS[kind][system]) {
    if (unit.from === undefined) smallest = unit;
    else if (size >= unit.from && unit.from > (best?.from ?? 0)) best = unit;
  }
  return best ?? smallest;
}

function show(value: number, unit: DisplayUnit): string {
  const number = (value - (unit.offset ?? 0)) / unit.scale;
  const size = Math.abs(number);
  const { digits, fixed } = unit;
  if (size >= LARGEST_PLAIN) return joined(powerOfTen(number, digits), unit.symbol);
  if (fixed) return joined(plain(number, unit.decimals), unit.symbol);
  if (unit.bareWhole && isWhole(number)) return joined(plain(number, 0), unit.symbol);
  const decimals = decimalsFor(size, digits, unit.decimals);
  if (size !== 0 && size < 10 ** -unit.decimals) {
    return joined(powerOfTen(number, digits), unit.symbol);
  }
  return joined(plain(number, decimals), unit.symbol);
}

/** Whether only the rounding of the scale keeps a number from being whole. */
function isWhole(number: number): boolean {
  return Math.abs(number - Math.round(number)) <= 1e-9 * Math.abs(number);
}

/** Degrees of angle stand at their number, as ISO 80000-1 has it; all else stands apart. */
function joined(number: string, symbol: string): string {
  return symbol === "°" ? number + symbol : `${number} ${symbol}`;
}
