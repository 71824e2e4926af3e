/** A shopping list as a file that spreadsheets open. */
import type { System } from "@/lib/units/mod.ts";
import { SHOPPING_PARTS, type ShoppingItem } from "./item.ts";
import { type ShownAmount, shownFigure, shownLength, shownQuantity } from "./shown.ts";

/** Tells spreadsheets that the text is UTF-8; without it they take "mm²" and "µm" for other letters. */
const MARK = "\ufeff";

const HEAD = [
  "Shelf",
  "Item",
  "Quantity",
  "Quantity unit",
  "Property",
  "Sense",
  "Value",
  "Unit",
  "Notes",
] as const;

/** A cell: a text, or a number, which is never taken for a formula. */
type Cell = string | number;

/**
 * Writes a shopping list as comma-separated values, by RFC 4180.
 *
 * One line for each figure, numbers and units in columns of their own. The quantity and the notes
 * stand on an item's first line only, so that a column of them adds up. Texts that a spreadsheet
 * would run as a formula begin with an apostrophe.
 *
 * @param items The list.
 * @param system The units of the plan's sheets.
 * @returns The file's text, with a byte order mark before it.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const text = shoppingCsv([{
 *   id: "pump", part: "pumps", what: "Pump", quantity: { unit: "pieces", value: 1 },
 *   figures: [{ name: "flow", value: 1e-4, kind: "pumpFlow", sense: "at least" }],
 *   facts: [], shares: [], missing: [], because: "=1+1", assumed: [],
 * }], "metric");
 *
 * assertEquals(
 *   text.split("\r\n")[1],
 *   "Pumps and surge tank,Pump,1,pieces,flow,at least,360,L/h,'=1+1",
 * );
 * ```
 */
export function shoppingCsv(items: readonly ShoppingItem[], system: System): string {
  const lines = [HEAD, ...items.flatMap((item) => linesOf(item, system))];
  return MARK + lines.map((cells) => `${cells.map(written).join(",")}\r\n`).join("");
}

function linesOf(item: ShoppingItem, system: System): Cell[][] {
  const properties: Cell[][] = [
    ...item.figures.map((figure) => [
      figure.name,
      figure.sense,
      ...numberAndUnit(shownFigure(figure, system)),
    ]),
    ...item.facts.map(({ name, says }) => [name, "is", says, ""]),
    ...item.missing.map((what) => [what, "open", "", ""]),
  ];
  const quantity = item.quantity === undefined
    ? ["", ""]
    : numberAndUnit(shownQuantity(item.quantity, system));
  return properties.map((property, i) => [
    SHOPPING_PARTS[item.part],
    item.what,
    ...(i === 0 ? quantity : ["", ""]),
    ...property,
    i === 0 ? notesOf(item, system) : "",
  ]);
}

function numberAndUnit({ number, unit }: ShownAmount): Cell[] {
  return [number, unit];
}

function notesOf({ because, shares, quantity, assumed }: ShoppingItem, system: System): string {
  const isLength = quantity?.unit === "length";
  const places = shares.map(({ place, times, each }) =>
    `${place} ${times > 1 ? `${times} × ` : ""}${isLength ? shownLength(each, system).text : each}`
  );
  return [
    places.length > 0 && `Where: ${places.join("; ")}.`,
    because,
    assumed.length > 0 && `Rests on assumed: ${assumed.map(({ label }) => label).join("; ")}.`,
  ].filter(Boolean).join(" ");
}

/** What a spreadsheet takes for the start of a formula, full-width signs included. */
const FORMULA = /^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;

function written(cell: Cell): string {
  if (typeof cell === "number") return String(cell);
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
