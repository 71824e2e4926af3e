/** Sentences with quantities kept apart, so that each plan shows them in its own units. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Kind } from "@/lib/units/mod.ts";

/** A quantity within a sentence. */
export interface LineValue {
  /** In the SI unit of its kind. Pressures are gauge. */
  readonly value: number;
  /** What it is, for showing it. */
  readonly kind: Kind;
}

/** A sentence. Each `{name}` in its text stands for the value of that name. */
export interface Line {
  /** The text with its placeholders. */
  readonly text: string;
  /** What the placeholders stand for; absent when there are none. */
  readonly values?: Readonly<Record<string, LineValue>>;
}

/** One piece of a line, as {@linkcode pieces} cuts it. */
export type Piece = string | LineValue;

const PLACEHOLDER = /\{(\w+)\}/;

/**
 * Makes a line.
 *
 * @param text The text, with `{name}` where a value goes.
 * @param values The values by name.
 * @returns The line.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const raise = line("Raise to {pressure}.", { pressure: { value: 5e4, kind: "pressure" } });
 *
 * assertEquals(fillLine(raise, ({ value }) => `${value} Pa`), "Raise to 50000 Pa.");
 * ```
 */
export function line(text: string, values?: Readonly<Record<string, LineValue>>): Line {
  return values === undefined ? { text } : { text, values };
}

/**
 * Cuts a line into text and values, in order, for a page that marks values up.
 *
 * @param whole The line.
 * @returns Its pieces, none of them empty.
 * @throws {InputError} When a placeholder has no value.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const wait = line("Wait {hold}.", { hold: { value: 600, kind: "duration" } });
 *
 * assertEquals(pieces(wait), ["Wait ", { value: 600, kind: "duration" }, "."]);
 * ```
 */
export function pieces(whole: Line): Piece[] {
  const found: Piece[] = [];
  whole.text.split(PLACEHOLDER).forEach((part, i) => {
    // A split at a pattern with one group alternates text and group.
    if (i % 2 === 0) {
      if (part !== "") found.push(part);
      return;
    }
    const value = whole.values?.[part];
    if (value === undefined) throw new InputError("line", part, "must have a value", whole.text);
    found.push(value);
  });
  return found;
}

/**
 * Fills a line in.
 *
 * @param whole The line.
 * @param show How a value is shown, such as `formatQuantity` for a system of units.
 * @returns The finished sentence.
 * @throws {InputError} When a placeholder has no value.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { formatQuantity } from "@/lib/units/mod.ts";
 *
 * const raise = line("Raise to {p}.", { p: { value: 3e5, kind: "pressure" } });
 *
 * assertEquals(
 *   fillLine(raise, ({ value, kind }) => formatQuantity(value, kind, "inch")),
 *   "Raise to 43.5 psi.",
 * );
 * ```
 */
export function fillLine(whole: Line, show: (value: LineValue) => string): string {
  return pieces(whole).map((piece) => typeof piece === "string" ? piece : show(piece)).join("");
}
