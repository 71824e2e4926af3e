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

function ofFields(fields: Readonly<Record<string, Field | ListField>>): fc.Arbitrary<object> {
  const model: Record<string, fc.Arbitrary<unknown>> = {};
  const required: string[] = [];
  for (const [name, field] of Object.entries(fields)) {
    if (field.type === "list") {
      model[name] = fc.array(ofFields(field.fields), { maxLength: 2 });
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

/** Documents that are plans field by field. */
export const arbitraryPlan: fc.Arbitrary<unknown> = fc.record(SECTIONS_OF_PLAN, {
  requiredKeys: ["version", "engine", "fuel"],
});

/**
 * Reads a random document, leaving out answers that do not fit together until
 * the rest is a plan.
 *
 * @param document A document that may contradict itself.
 * @returns The plan, or undefined when answers that are required contradict one another.
 */
export function mended(document: unknown): Plan | undefined {
  let plan = document as Record<string, Record<string, unknown>>;
  for (let i = 0; i < 12; i++) {
    const reading = readPlan(plan);
    if (reading.ok) return reading.plan;
    plan = structuredClone(plan);
    for (const { path } of reading.faults) {
      const [section = "", name = ""] = path.split(".");
      delete plan[section]?.[name];
    }
  }
  return undefined;
}
