/** Numbers whose unit stands at the head of their column. */
import { formatIn, type Kind } from "@/lib/units/mod.ts";

/**
 * Writes a number without its unit.
 *
 * @param value In the SI unit of the kind; must be finite.
 * @param kind What it is.
 * @param symbol The unit at the head, one that the kind is shown in.
 * @param decimals Decimals; where missing, those that suit the kind.
 * @returns The number alone.
 * @throws {InputError} When the value is not finite.
 */
export function figureIn(value: number, kind: Kind, symbol: string, decimals?: number): string {
  // A unit may hold spaces itself: "US gal/h".
  return formatIn(value, kind, symbol, decimals).slice(0, -symbol.length).trimEnd();
}
