/** The rows of a list on one line. */
import type { Field, ListField } from "./field.ts";
import type { Typed } from "./typed.ts";

/**
 * Says the rows of a list on one line: how many first, then the rest as it is typed.
 *
 * @param list The list that the rows belong to.
 * @param rows The rows as typed.
 * @returns Like "hose, 3.5 m; 2 × straight".
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { fieldAt } from "./sections.ts";
 *
 * const feed = fieldAt("supply.feed");
 * const rows = [{ piece: "hose", length: "3.5 m" }, { piece: "straight", count: 2 }];
 *
 * assertEquals(feed?.type === "list" && rowsInWords(feed, rows), "hose, 3.5 m; 2 × straight fitting");
 * ```
 */
export function rowsInWords({ fields }: ListField, rows: readonly Typed[]): string {
  return rows.map((row) => inWords(fields, row)).join("; ");
}

function inWords(fields: ListField["fields"], row: Typed): string {
  let count = "";
  const words: string[] = [];
  for (const [key, field] of Object.entries(fields)) {
    const typed = row[key];
    if (typed === undefined || typeof typed === "object") continue;
    if (field.type === "count") count = `${typed} × `;
    else words.push(said(field, typed));
  }
  return count + words.join(", ");
}

function said(field: Field, typed: string | number): string {
  return field.type === "choice" ? field.options[typed] ?? String(typed) : String(typed);
}
