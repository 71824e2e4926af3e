/** Plans of every shape, made from the table of fields, for property tests. */
import fc from "fast-check";
import {
  type Field,
  type ListField,
  type Plan,
  PLAN_VERSION,
  readPlan,
  SECTIONS,
} from "@/lib/plan/mod.ts";
import { KINDS } from "@/lib/units/mod.ts";

/** Texts and numbers that the field itself takes; what stands between fields may still refuse them. */
function ofField(field: Field): fc.Arbitrary<string | number> {
  switch (field.type) {
    case "text":
      return fc.string({ maxLength: Math.min(field.max, 12), unit: "grapheme-ascii" });
    case "choice":
      return fc.constantFrom(...Object.keys(field.options));
    case "count":
      return fc.integer({ min: field.min, max: field.max });
    case "quantity": {
      const { si } = KINDS[field.kind];
      const unit = si === "-" ? "" : ` ${si}`;
      // Just inside the bounds: the text is rounded on its way.
      return fc.double({ min: 0.0001, max: 0.9999, noNaN: true }).map((share) => {
        const wide = field.min > 0 && field.max / field.min > 50;
        const value = wide
          ? field.min * (field.max / field.min) ** share
          : field.min + (field.max - field.min) * share;
        return `${Number(value.toPrecision(6))}${unit}`;
      });
    }
  }
}

type Fields = Readonly<Record<string, Field | ListField>>;

/** Most rows name what nothing can stand in for, so that they say something; a few leave it out. */
function ofRow(fields: ListField["fields"]): fc.Arbitrary<object> {
  const model = Object.fromEntries(Object.entries(fields).map(([name, f]) => [name, ofField(f)]));
  const wanted = Object.entries(fields).filter(([name, field]) =>
    name === "piece" || field.type !== "text" && !field.optional && field.default === undefined
  ).map(([name]) => name);
  return fc.oneof(
    { weight: 5, arbitrary: fc.record(model, { requiredKeys: wanted }) },
    { weight: 1, arbitrary: fc.record(model, { requiredKeys: [] }) },
  );
}

function ofFields(fields: Fields): fc.Arbitrary<object> {
  const model: Record<string, fc.Arbitrary<unknown>> = {};
  const required: string[] = [];
  for (const [name, field] of Object.entries(fields)) {
    if (field.type === "list") {
      model[name] = fc.array(ofRow(field.fields), { maxLength: 3 });
    } else {
      model[name] = ofField(field);
      if (field.required) required.push(name);
    }
  }
  return fc.record(model, { requiredKeys: required });
}

const SECTIONS_OF_PLAN: Record<string, fc.Arbitrary<unknown>> = {
  version: fc.constant(PLAN_VERSION),
};
for (const [name, { fields }] of Object.entries(SECTIONS)) {
  SECTIONS_OF_PLAN[name] = ofFields(fields);
}

/** A plan's sections as this file writes them, as far as injectors are placed by them. */
interface Placed {
  readonly engine: { readonly cylinders: number };
  readonly rail?: { readonly count?: number; readonly length?: string };
  readonly stations?: { readonly places?: readonly { readonly at?: string }[] };
}

/**
 * Spreads the injectors over the bar, as many as a rail has: by chance alone there
 * are hardly ever as many, in order, and within the bar.
 */
function placed(document: Placed): unknown {
  const { engine, rail, stations } = document;
  const rows = stations?.places ?? [];
  const each = engine.cylinders / (rail?.count ?? 1);
  if (rows.length === 0 || !Number.isInteger(each)) return document;
  const length = rail?.length ?? "1 m";
  const places = Array.from({ length: each }, (_, i) => {
    const row = rows[i % rows.length];
    const share = 0.1 + 0.8 * Number.parseFloat(row?.at ?? "0") / 1.5;
    const at_m = Number.parseFloat(length) * (i + share) / each;
    return { ...row, at: `${Number(at_m.toPrecision(6))} m` };
  });
  return { ...document, rail: { ...rail, length }, stations: { ...stations, places } };
}

/** Documents that are plans field by field. */
export const arbitraryPlan: fc.Arbitrary<unknown> = fc.record(SECTIONS_OF_PLAN, {
  requiredKeys: ["version", "engine", "fuel"],
}).map((document) => placed(document as unknown as Placed));

/**
 * Reads a random document, leaving out answers and rows that do not fit together
 * until the rest is a plan.
 *
 * @param document A document that may contradict itself.
 * @returns The plan, or undefined when answers that are required contradict one another.
 */
export function mended(document: unknown): Plan | undefined {
  let plan = document as Record<string, Record<string, unknown>>;
  for (let i = 0; i < 20; i++) {
    const reading = readPlan(plan);
    if (reading.ok) return reading.plan;
    plan = structuredClone(plan);
    leaveOut(plan, reading.faults.map(({ path }) => path));
  }
  return undefined;
}

/** Takes fields out, and rows that hold a fault. */
function leaveOut(plan: Record<string, Record<string, unknown>>, paths: readonly string[]): void {
  const rows = new Map<string, Set<number>>();
  for (const path of paths) {
    const [section = "", name = "", row] = path.split(".");
    if (row === undefined) {
      delete plan[section]?.[name];
      continue;
    }
    const list = `${section}.${name}`;
    rows.set(list, (rows.get(list) ?? new Set()).add(Number(row)));
  }
  for (const [list, bad] of rows) {
    const [section = "", name = ""] = list.split(".");
    const kept = plan[section];
    const typed = kept?.[name];
    if (kept && Array.isArray(typed)) kept[name] = typed.filter((_, i) => !bad.has(i));
  }
}
