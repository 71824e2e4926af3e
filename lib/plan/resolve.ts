/** From a plan as typed to numbers in SI, with what is assumed filled in and listed. */
import { parseQuantity } from "@/lib/units/mod.ts";
import type { Default, Earlier, Field, ListField, Row, Section } from "./field.ts";
import { optionsOf } from "./quantity_options.ts";
import type { Plan } from "./plan.ts";
import type { Typed } from "./typed.ts";
import { rowsInWords } from "./rows_in_words.ts";
import { type PlanValues, type SectionName, SECTIONS } from "./sections.ts";

/** A value that stands in for one not given. */
export interface Assumption extends Default {
  /** Where in the plan: `fuel.temperature`. */
  readonly path: string;
  /** The field's label, or what a list's rows are together. */
  readonly label: string;
  /** What stands in, where it is a list; `text` says it in words. */
  readonly rows?: readonly Typed[];
}

/** A plan in numbers. */
export interface Resolved {
  /** Every value in SI; `undefined` where there is none and none to assume. */
  readonly values: PlanValues;
  /** What is assumed, in the order of the form. */
  readonly assumed: readonly Assumption[];
  /** Paths of fields that are asked, empty, and have no honest default. */
  readonly missing: readonly string[];
  /** What was converted on reading or not used at all, by path: a mass flow taken for a volume flow. */
  readonly notes: Readonly<Record<string, string>>;
}

/** A field with its key and path, put together once. */
interface LaidOut {
  readonly key: string;
  readonly path: string;
  readonly field: Field | ListField;
}

/** The table of fields as {@linkcode resolvePlan} walks it. */
const LAID_OUT = Object.entries<Section>(SECTIONS).map(([name, { fields }]) => ({
  name: name as SectionName,
  fields: Object.entries(fields).map(([key, field]): LaidOut => ({
    key,
    path: `${name}.${key}`,
    field,
  })),
}));

type Value = number | string | undefined;
type Values = Record<string, Value | readonly Values[]>;

/**
 * Resolves a plan that the schema has accepted.
 *
 * Fields are taken in the order of the table, so that a default can depend on
 * what stands before it.
 *
 * @param plan The plan, valid by the schema.
 * @returns Its numbers, assumptions and gaps.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { readPlan } from "./read.ts";
 * import { planReady } from "./ready.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "440 cc/min" }] },
 *   rail: { bore: "12 mm", height: "25 mm" },
 * });
 * assert(reading.ok);
 * const { values, assumed } = resolvePlan(reading.plan);
 *
 * assertEquals(values.rail.bore, 0.012);
 * assert(assumed.some(({ path }) => path === "rail.pitch"));
 * ```
 */
export function resolvePlan(plan: Plan): Resolved {
  const reading = new Pass(plan);
  for (const { name, fields } of LAID_OUT) reading.section(name, fields, plan[name] ?? {});
  return {
    values: reading.values as unknown as PlanValues,
    assumed: reading.assumed,
    missing: reading.missing,
    notes: reading.notes,
  };
}

/**
 * Says that an answer counts for nothing beside the others.
 *
 * @param field The field that holds the answer.
 * @returns The note, with the field's own reason where it has one.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const field = { type: "text", label: "Note", hint: "", max: 9, otherwise: "the bar is round" } as const;
 *
 * assertEquals(unusedNote(field), "not used: the bar is round");
 * ```
 */
export function unusedNote(
  { otherwise = "the other answers leave no place for it" }: Field | ListField,
): string {
  return `not used: ${otherwise}`;
}

/** What a field that stands in no list sees of its row. */
const NO_ROW: Row = { number: () => undefined, word: () => undefined };

/** One pass over the table of fields. */
class Pass implements Earlier {
  readonly values: Record<string, Values> = {};
  readonly assumed: Assumption[] = [];
  readonly missing: string[] = [];
  readonly notes: Record<string, string> = {};
  readonly #plan: Plan;
  readonly #flat = new Map<string, Value>();

  constructor(plan: Plan) {
    this.#plan = plan;
  }

  number(path: string): number | undefined {
    const value = this.#flat.get(path) ?? this.#rowsGiven(path);
    return typeof value === "number" ? value : undefined;
  }

  word(path: string): string | undefined {
    const value = this.#flat.get(path);
    return typeof value === "string" ? value : undefined;
  }

  section(name: SectionName, fields: readonly LaidOut[], typed: Typed): void {
    const values: Values = this.values[name] = {};
    for (const { key, path, field } of fields) {
      if (field.type === "list") {
        values[key] = this.#rows(path, field, (typed[key] ?? []) as readonly Typed[]);
      } else {
        const value = this.#field(path, field, typed[key] as string | number | undefined, NO_ROW);
        values[key] = value;
        this.#flat.set(path, value);
      }
    }
  }

  /** Rows are counted as typed, so that a field before the list can step back for them. */
  #rowsGiven(path: string): number | undefined {
    const [section = "", name = ""] = path.split(".");
    const typed = this.#plan[section as SectionName]?.[name];
    return typeof typed === "object" ? typed.length : undefined;
  }

  #rows(path: string, list: ListField, typed: readonly Typed[]): Values[] {
    if (list.when && !list.when(this, NO_ROW)) {
      if (typed.length > 0) this.notes[path] = unusedNote(list);
      return [];
    }
    const rows = typed.length > 0 ? typed : this.#assumedRows(path, list);
    return rows.map((row, i) => this.#row(`${path}.${i}`, list, row));
  }

  #assumedRows(path: string, list: ListField): readonly Typed[] {
    const fallback = typeof list.default === "function" ? list.default(this) : list.default;
    if (fallback === undefined) return [];
    const { rows, because, source } = fallback;
    const label = list.title ?? list.label;
    this.assumed.push({ path, label, text: rowsInWords(list, rows), because, source, rows });
    return rows;
  }

  #row(path: string, list: ListField, typed: Typed): Values {
    const values: Values = {};
    const row = rowOf(values);
    for (const key in list.fields) {
      const field = list.fields[key] as Field;
      const text = typed[key] as string | number | undefined;
      values[key] = this.#field(`${path}.${key}`, field, text, row);
    }
    return values;
  }

  #field(path: string, field: Field, typed: string | number | undefined, row: Row): Value {
    const isTyped = typed !== undefined && typed !== "";
    if (field.when && !field.when(this, row)) {
      if (isTyped) this.notes[path] = unusedNote(field);
      return undefined;
    }
    if (isTyped) return this.#value(path, field, typed);
    if (field.type === "text") return undefined;
    const fallback = typeof field.default === "function" ? field.default(this, row) : field.default;
    if (fallback === undefined) {
      if (!field.optional) this.missing.push(path);
      return undefined;
    }
    this.assumed.push({ path, label: field.label, ...fallback });
    return this.#value(path, field, fallback.text);
  }

  #value(path: string, field: Field, typed: string | number): Value {
    if (field.type === "count") return Number(typed);
    if (field.type !== "quantity") return String(typed);
    const parsed = parseQuantity(String(typed), field.kind, optionsOf(field));
    if (!parsed.ok) return undefined;
    if (parsed.note !== undefined) this.notes[path] = parsed.note;
    return parsed.value;
  }
}

/** Lets a field see what stands before it in its row, as the row grows. */
function rowOf(values: Values): Row {
  return {
    number(name) {
      const value = values[name];
      return typeof value === "number" ? value : undefined;
    },
    word(name) {
      const value = values[name];
      return typeof value === "string" ? value : undefined;
    },
  };
}
