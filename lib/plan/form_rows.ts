/** Rows of a form's lists: one taken away, or a blank one put between two. */
import type { ListField } from "./field.ts";
import type { Boxes } from "./form.ts";
import { fieldAt } from "./sections.ts";

/** A row of a list. */
export interface RowAt {
  /** The path of the list. */
  readonly list: string;
  /** The list. */
  readonly field: ListField;
  /** Counted from 0. */
  readonly row: number;
}

/**
 * Takes a row out of a form; the rows behind it keep their places.
 *
 * @param boxes Text by path.
 * @param path The row, like `supply.feed.2`.
 * @returns The boxes without those of the row.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const boxes = new Map([["supply.feed.0.piece", "hose"], ["supply.feed.1.piece", "barb"]]);
 *
 * assertEquals([...withoutRow(boxes, "supply.feed.0")], [["supply.feed.1.piece", "barb"]]);
 * ```
 */
export function withoutRow(boxes: Boxes, path: string): Map<string, string> {
  return new Map([...boxes].filter(([name]) => !name.startsWith(`${path}.`)));
}

/**
 * Puts a blank row before another, in a list whose order counts.
 *
 * @param boxes Text by path.
 * @param path The row that moves down, like `supply.feed.2`.
 * @returns The boxes with that row and those behind it one further down; undefined
 * where no such row can be, and where the last row that the list takes is filled.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const boxes = new Map([["supply.feed.0.piece", "hose"], ["supply.feed.1.piece", "barb"]]);
 *
 * assertEquals(
 *   withBlankRow(boxes, "supply.feed.1"),
 *   new Map([["supply.feed.0.piece", "hose"], ["supply.feed.2.piece", "barb"]]),
 * );
 * assertEquals(withBlankRow(boxes, "pump.points.0"), undefined);
 * ```
 */
export function withBlankRow(boxes: Boxes, path: string): Map<string, string> | undefined {
  const at = rowAt(path);
  if (at?.field.ordered === undefined) return undefined;
  const last = `${at.list}.${at.field.max - 1}.`;
  if ([...boxes].some(([name, text]) => name.startsWith(last) && text !== "")) return undefined;
  return new Map([...boxes].map(([name, text]) => [belowBlankRow(name, path), text]));
}

/**
 * Says where a box or a row stands once {@linkcode withBlankRow} has put a blank row in.
 *
 * @param name The path of the box or row.
 * @param blank The path of the blank row.
 * @returns Its path below the blank row; the same where it stands before it or in no row of that list.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(belowBlankRow("supply.feed.2.length", "supply.feed.1"), "supply.feed.3.length");
 * assertEquals(belowBlankRow("supply.feed.0.length", "supply.feed.1"), "supply.feed.0.length");
 * ```
 */
export function belowBlankRow(name: string, blank: string): string {
  const at = rowAt(blank);
  if (at === undefined || !name.startsWith(`${at.list}.`)) return name;
  const [row = "", ...rest] = name.slice(at.list.length + 1).split(".");
  if (Number(row) < at.row) return name;
  return [at.list, Number(row) + 1, ...rest].join(".");
}

/**
 * Finds the row that a path names.
 *
 * @param path Like `supply.feed.2`.
 * @returns The list, its field and the row's number from 0; undefined where the plan has no such row.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(rowAt("supply.feed.2")?.list, "supply.feed");
 * assertEquals(rowAt("supply.feed.99"), undefined);
 * assertEquals(rowAt("engine.power"), undefined);
 * ```
 */
export function rowAt(path: string): RowAt | undefined {
  const [, list = "", row = ""] = /^(\w+\.\w+)\.(\d{1,2})$/.exec(path) ?? [];
  const field = fieldAt(list);
  if (field?.type !== "list" || Number(row) >= field.max) return undefined;
  return { list, field, row: Number(row) };
}
