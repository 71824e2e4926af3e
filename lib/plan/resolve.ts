/** From a plan as typed to numbers in SI, with what is assumed filled in and listed. */
import { parseQuantity } from "@/lib/units/mod.ts";
import type { Default, Earlier, Field, ListField, Section } from "./field.ts";
import { optionsOf } from "./quantity_options.ts";
import type { Plan, Typed } from "./plan.ts";
import { type PlanValues, type SectionName, SECTIONS } from "./sections.ts";

/** A value that stands in for one not given. */
export interface Assumption extends Default {
  /** Where in the plan: `fuel.temperature`. */
  readonly path: string;
  /** The field's label. */
  readonly label: string;
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
  const reading = new Pass();
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
  { otherwise = "the other answers leave no place for it" }: Field,
): string {
  return `not used: ${otherwise}`;
}

/** One pass over the table of fields. */
class Pass implements Earlier {
  readonly values: Record<string, Values> = {};
  readonly assumed: Assumption[] = [];
  readonly missing: string[] = [];
  readonly notes: Record<string, string> = {};
  readonly #flat = new Map<string, Value>();

  number(path: string): number | undefined {
    const value = this.#flat.get(path);
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
        const rows = (typed[key] ?? []) as readonly Typed[];
        values[key] = rows.map((row, i) => this.#row(`${path}.${i}`, field, row));
      } else {
        values[key] = this.#field(path, field, typed[key] as string | number | undefined);
        this.#flat.set(path, values[key] as Value);
      }
    }
  }

  #row(path: string, list: ListField, typed: Typed): Values {
    const values: Values = {};
    for (const key in list.fields) {
      const field = list.fields[key] as Field;
      values[key] = this.#field(`${path}.${key}`, field, typed[key] as string | number | undefined);
    }
    return values;
  }

  #field(path: string, field: Field, typed: string | number | undefined): Value {
    if (field.when && !field.when(this)) {
      if (typed !== undefined && typed !== "") this.notes[path] = unusedNote(field);
      return undefined;
    }
    if (typed !== undefined && typed !== "") return this.#value(path, field, typed);
    if (field.type === "text") return undefined;
    const fallback = typeof field.default === "function" ? field.default(this) : field.default;
    if (fallback === undefined) {
      this.missing.push(path);
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
