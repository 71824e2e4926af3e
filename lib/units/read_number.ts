/** The number at the head of a typed quantity. */

/** What stands at the head of a text. */
export type NumberRead =
  | { readonly found: "number"; readonly value: number; readonly rest: string }
  | { readonly found: "ambiguous"; readonly readings: readonly [string, string] }
  | { readonly found: "none" };

const NONE: NumberRead = { found: "none" };
const FRACTION = /^([+-]?)\s*(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)(?![\d.,])/;
// A space belongs to the number when three digits follow that begin no fraction.
const MANTISSA = /^([+-]?)\s*((?:\d(?:[\d.,]|[\s'](?=\d{3}(?!\d|\s*\/\s*\d)))*)|[.,]\d+)/;
const EXPONENT = /^(?:e([+-]?\d+)|\s*[x×*·⋅]\s*10(?:\s*\^\s*([+-]?\d+)|([+-]\d+)))/i;

/**
 * Reads the number that a tidied text begins with: whole, decimal, with an
 * exponent, a fraction, or a whole number and a fraction.
 *
 * A comma is a decimal mark unless it can be a thousands mark; where it can be
 * both, as in `1,500`, the text is ambiguous. A point is always a decimal mark
 * unless other marks show that it is not, as in `1.500,5`.
 */
export function readNumber(text: string): NumberRead {
  const fraction = FRACTION.exec(text);
  if (fraction) return readFraction(fraction, text);
  const match = MANTISSA.exec(text);
  if (!match) return NONE;
  const [head, sign = "", mantissa = ""] = match;
  const decimal = decimalOf(mantissa);
  if (decimal === undefined) return NONE;
  if (Array.isArray(decimal)) {
    return { found: "ambiguous", readings: [sign + decimal[0], sign + decimal[1]] };
  }
  let rest = text.slice(head.length);
  let power = "0";
  const exponent = EXPONENT.exec(rest);
  if (exponent) {
    power = exponent[1] ?? exponent[2] ?? exponent[3] ?? "0";
    rest = rest.slice(exponent[0].length);
  }
  return { found: "number", value: Number(`${sign}${decimal}e${power}`), rest };
}

function readFraction(match: RegExpExecArray, text: string): NumberRead {
  const [head, sign, whole, top, bottom] = match;
  const part = Number(top) / Number(bottom);
  // "3 7/4" is no way to write a number, and a division by zero is none at all.
  if (!Number.isFinite(part) || (whole !== undefined && part >= 1)) return NONE;
  const size = Number(whole ?? 0) + part;
  return { found: "number", value: sign === "-" ? -size : size, rest: text.slice(head.length) };
}

/** The mantissa as JavaScript writes it, or its two readings. */
function decimalOf(mantissa: string): string | [string, string] | undefined {
  if (/^(?:\d+\.?\d*|\.\d+)$/.test(mantissa)) return mantissa;
  if (/^\d{1,3}(?:[\s']\d{3})+(?:[.,]\d+)?$/.test(mantissa)) {
    return mantissa.replace(/[\s']/g, "").replace(",", ".");
  }
  if (/^[1-9]\d{0,2},\d{3}$/.test(mantissa)) {
    return [
      mantissa.replace(",", ""),
      mantissa.replace(",", ".").replace(/0+$/, "")
        .replace(/\.$/, ""),
    ];
  }
  if (/^\d*,\d+$/.test(mantissa)) return mantissa.replace(",", ".");
  if (/^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:,\d{3}){2,}$/.test(mantissa)) {
    return mantissa.replaceAll(",", "");
  }
  if (/^\d{1,3}(?:\.\d{3})+,\d+$|^\d{1,3}(?:\.\d{3}){2,}$/.test(mantissa)) {
    return mantissa.replaceAll(".", "").replace(",", ".");
  }
  return undefined;
}
