/** Plain numbers for people: counts, ratios, coefficients. */
import { InputError } from "@/lib/basics/mod.ts";

const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const HYPHEN = 0x2d;
/** Narrow, and it does not break at the end of a line. */
const THIN_SPACE = "\u202f";

/**
 * Shows a number without a unit, with trailing zeros left out.
 *
 * @param value The number; must be finite.
 * @param digits Significant digits [1 to 15]; whole digits are never cut below 10⁷.
 * @returns The number; from five whole digits in groups of three, parted by a
 * narrow space; very large or small ones with a power of ten.
 * @throws {InputError} When the number is not finite.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(formatNumber(4), "4");
 * assertEquals(formatNumber(0.018512), "0.0185");
 * assertEquals(formatNumber(12300.4), "12\u202f300");
 * assertEquals(formatNumber(2.5e-9), "2.5×10⁻⁹");
 * ```
 */
export function formatNumber(value: number, digits: number = 3): string {
  requireFinite("number shown", value);
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e7)) return trimmed(powerOfTen(value, digits));
  return trimmed(plain(value, decimalsFor(size, digits, 15)));
}

/** Throws unless a number can be shown. */
export function requireFinite(what: string, value: number): void {
  if (!Number.isFinite(value)) throw new InputError(what, "value", "must be finite", value);
}

/** How many decimals give so many significant digits, at most `most`. */
export function decimalsFor(size: number, digits: number, most: number): number {
  let decimals = digits - 1;
  let edge = 10;
  // The half unit: 9.996 with three digits is 10.0, not 10.00.
  while (decimals > 0 && size >= edge - 0.5 * unitOfLast(decimals)) {
    decimals--;
    edge *= 10;
  }
  if (decimals < digits - 1 || size === 0) return size === 0 ? 0 : Math.min(decimals, most);
  edge = 1;
  while (decimals < most && size < edge - 0.5 * unitOfLast(decimals + 1)) {
    decimals++;
    edge /= 10;
  }
  return Math.min(decimals, most);
}

function unitOfLast(decimals: number): number {
  return 10 ** -decimals;
}

/** With so many decimals, in groups, and never "-0". */
export function plain(value: number, decimals: number): string {
  if (Math.abs(value) < 0.5 * unitOfLast(decimals)) return (0).toFixed(decimals);
  const text = signed(value.toFixed(decimals));
  return Math.abs(value) < 9999.5 ? text : grouped(text);
}

/** With the minus sign of print in place of the hyphen. */
function signed(text: string): string {
  return text.charCodeAt(0) === HYPHEN ? `−${text.slice(1)}` : text;
}

/** As `1.25×10⁻⁷`. */
export function powerOfTen(value: number, digits: number): string {
  const [mantissa = "", exponent = ""] = value.toExponential(digits - 1).split("e");
  let raised = "";
  for (const sign of exponent) {
    if (sign === "-") raised += "⁻";
    else if (sign !== "+") raised += SUPERSCRIPTS.charAt(Number(sign));
  }
  return `${signed(mantissa)}×10${raised}`;
}

function grouped(text: string): string {
  const [whole = "", decimals] = text.split(".");
  const parted = whole.replace(/\B(?=(?:\d{3})+$)/g, THIN_SPACE);
  return decimals === undefined ? parted : `${parted}.${decimals}`;
}

function trimmed(text: string): string {
  const [mantissa = "", power] = text.split("×");
  const short = mantissa.includes(".") ? mantissa.replace(/\.?0+$/, "") : mantissa;
  return power === undefined ? short : `${short}×${power}`;
}
