/** Numbers that stay with their units. */

const NUMBER_THEN_UNIT = /([\d⁰¹²³⁴⁵⁶⁷⁸⁹]) (?=[\p{L}°µΩ%])/gu;

/** A text whose numbers and the word or unit behind them are not parted at the end of a line. */
export function unbroken(text: string): string {
  return text.replace(NUMBER_THEN_UNIT, "$1\u00a0");
}
