/** Between the boxes of a form, named by path, and a plan. */
import type { Field, ListField } from "./field.ts";
import { type Plan, PLAN_VERSION } from "./plan.ts";
import type { Typed } from "./typed.ts";
import type { Assumption } from "./resolve.ts";
import { fieldAt, SECTIONS } from "./sections.ts";

/** The text in each box, by path; what a form sends and what a page shows again. */
export type Boxes = ReadonlyMap<string, string>;

/**
 * Makes a plan document of the boxes of a form. Blank boxes are left out, rows
 * that are blank all over too; boxes that belong to no field are ignored.
 *
 * @param boxes Text by path.
 * @returns A document for `readPlan`, which judges it.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const boxes = new Map([
 *   ["engine.power", " 420 hp "],
 *   ["engine.cylinders", "4"],
 *   ["injectors.stages.0.flow", ""],
 *   ["injectors.stages.1.flow", "1000 cc/min"],
 *   ["fuel.name", ""],
 * ]);
 *
 * assertEquals(planFromBoxes(boxes), {
 *   version: 1,
 *   engine: { cylinders: 4, power: "420 hp" },
 *   fuel: {},
 *   injectors: { stages: [{ flow: "1000 cc/min" }] },
 * });
 * ```
 */
export function planFromBoxes(boxes: Boxes): unknown {
  const plan: Record<string, unknown> = { version: PLAN_VERSION };
  for (const [name, { fields }] of Object.entries(SECTIONS)) {
    const section: Record<string, unknown> = {};
    let required = false;
    for (const [key, field] of Object.entries<Field | ListField>(fields)) {
      const path = `${name}.${key}`;
      const value = field.type === "list"
        ? rowsFrom(boxes, path, field)
        : valueFrom(boxes, path, field);
      if (value !== undefined) section[key] = value;
      if (field.type !== "list" && field.required) required = true;
    }
    if (required || Object.keys(section).length > 0) plan[name] = section;
  }
  return plan;
}

/**
 * Gives the boxes of a plan, by path.
 *
 * @param plan The plan as typed, valid or not.
 * @returns Text by path.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const boxes = boxesOf({ version: 1, engine: { cylinders: 4, power: "420 hp" } });
 *
 * assertEquals([...boxes], [["engine.cylinders", "4"], ["engine.power", "420 hp"]]);
 * ```
 */
export function boxesOf(plan: Plan): Map<string, string> {
  const boxes = new Map<string, string>();
  for (const name in SECTIONS) {
    fill(boxes, name, plan[name as keyof typeof SECTIONS] ?? {});
  }
  return boxes;
}

/**
 * Moves the rows of each list up over blank ones, as {@linkcode planFromBoxes}
 * counts them: what is found wrong in the plan then stands at the box it was typed into.
 *
 * @param boxes Text by path.
 * @returns The same boxes, without gaps between the rows of a list.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const boxes = new Map([["confirm", "x"], ["pump.points.0.flow", " "], ["pump.points.2.flow", "9"]]);
 *
 * assertEquals([...closedUp(boxes)], [["confirm", "x"], ["pump.points.0.flow", "9"]]);
 * ```
 */
export function closedUp(boxes: Boxes): Map<string, string> {
  const closed = new Map(boxes);
  for (const [name, { fields }] of Object.entries(SECTIONS)) {
    for (const [key, field] of Object.entries<Field | ListField>(fields)) {
      if (field.type === "list") closeUp(closed, `${name}.${key}`, field);
    }
  }
  return closed;
}

/**
 * Writes what is assumed into the boxes, as if it had been typed.
 *
 * @param boxes Text by path.
 * @param assumption What the user settles.
 * @returns The boxes with its text in its box, or its rows in the list's first rows.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const why = { because: "Short", source: "ours" };
 * const rows = [{ piece: "straight", count: 2 }];
 *
 * assertEquals(
 *   [...settle(new Map(), { path: "supply.lift", label: "Lift", text: "2 × straight", ...why, rows })],
 *   [["supply.lift.0.piece", "straight"], ["supply.lift.0.count", "2"]],
 * );
 * assertEquals(
 *   [...settle(new Map(), { path: "rail.count", label: "Rails", text: "1", ...why })],
 *   [["rail.count", "1"]],
 * );
 * ```
 */
export function settle(boxes: Boxes, { path, text, rows }: Assumption): Map<string, string> {
  const settled = new Map(boxes);
  if (rows === undefined) settled.set(path, text);
  else rows.forEach((row, i) => fill(settled, `${path}.${i}`, row));
  return settled;
}

/** Moves filled rows up; nothing is left where a row stood. */
function closeUp(boxes: Map<string, string>, path: string, list: ListField): void {
  const keys = Object.keys(list.fields);
  let free = 0;
  for (let i = 0; i < list.max; i++) {
    const row = keys.map((key) => [key, boxes.get(`${path}.${i}.${key}`)] as const);
    for (const key of keys) boxes.delete(`${path}.${i}.${key}`);
    if (!row.some(([, text]) => text?.trim())) continue;
    for (const [key, text] of row) {
      if (text !== undefined) boxes.set(`${path}.${free}.${key}`, text);
    }
    free++;
  }
}

function fill(boxes: Map<string, string>, prefix: string, typed: Typed): void {
  for (const [key, value] of Object.entries(typed)) {
    const path = `${prefix}.${key}`;
    if (fieldAt(path) === undefined || value === undefined) continue;
    if (typeof value === "object") value.forEach((row, i) => fill(boxes, `${path}.${i}`, row));
    else boxes.set(path, String(value));
  }
}

function valueFrom(boxes: Boxes, path: string, field: Field): string | number | undefined {
  const text = boxes.get(path)?.trim();
  if (text === undefined || text === "") return undefined;
  // A count that is no whole number stays text, for the schema to refuse with its message.
  return field.type === "count" && /^\d{1,6}$/.test(text) ? Number(text) : text;
}

function rowsFrom(boxes: Boxes, path: string, list: ListField): unknown[] | undefined {
  const rows: unknown[] = [];
  for (let i = 0; i < list.max; i++) {
    const row: Record<string, unknown> = {};
    for (const [key, field] of Object.entries(list.fields)) {
      const value = valueFrom(boxes, `${path}.${i}.${key}`, field);
      if (value !== undefined) row[key] = value;
    }
    if (Object.keys(row).length > 0) rows.push(row);
  }
  return rows.length > 0 ? rows : undefined;
}
