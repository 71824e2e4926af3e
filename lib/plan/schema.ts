/** The zod schema of a plan, made from the table of fields. */
import { z } from "zod";
import { KINDS, parseQuantity } from "@/lib/units/mod.ts";
import type { Field, ListField } from "./field.ts";
import { optionsOf } from "./quantity_options.ts";
import { PLAN_VERSION } from "./plan.ts";
import { SECTIONS } from "./sections.ts";

/** Text that is only shown again: one line, no control characters. */
// deno-lint-ignore no-control-regex
const CONTROL = /[\u0000-\u001f\u007f]/;

function ofField(label: string, field: Field): z.ZodType {
  switch (field.type) {
    case "text":
      return z.string().max(field.max, `${label}: at most ${field.max} characters`)
        .refine((text) => !CONTROL.test(text), `${label}: one line of text`);
    case "choice":
      return ofChoice(label, field);
    case "count": {
      const rule =
        `${label}: enter a whole number from ${field.min} to ${field.max}, as ${field.because}.`;
      return z.int(rule).min(field.min, rule).max(field.max, rule);
    }
    case "quantity": {
      const options = optionsOf(field);
      const { noun, examples } = KINDS[field.kind];
      const missing = `${label}: enter ${noun}, like ${examples.join(" or ")}.`;
      return z.string(missing).superRefine((text, context) => {
        const parsed = parseQuantity(text, field.kind, options);
        if (!parsed.ok) context.addIssue({ code: "custom", message: parsed.message });
      });
    }
  }
}

function ofChoice(label: string, field: Field & { type: "choice" }): z.ZodType {
  const words = Object.keys(field.options);
  const accepted = `Choose one of: ${Object.values(field.options).join("; ")}.`;
  // An enum, so that the JSON Schema lists the words; the message says why a refused one is refused.
  return z.enum(words as [string, ...string[]], {
    error: ({ input }) => {
      const refused =
        typeof input === "string" && field.refused && Object.hasOwn(field.refused, input)
          ? field.refused[input]
          : undefined;
      if (input === undefined) return `${label}: ${accepted}`;
      if (refused) {
        return `${label}: ${refused.label} is outside what Dryrail does: ${refused.because}. ${accepted}`;
      }
      return `${label}: "${String(input).slice(0, 40)}" is not one of the choices. ${accepted}`;
    },
  });
}

/** Only the first message of a field is shown; without it a plan can't be evaluated. */
function ofFields(fields: Readonly<Record<string, Field | ListField>>): z.ZodType {
  const shape: Record<string, z.ZodType> = {};
  for (const [name, field] of Object.entries(fields)) {
    if (field.type === "list") {
      const rule = `${field.label}: at most ${field.max} rows`;
      shape[name] = z.array(ofFields(field.fields), `${field.label}: a list of rows`).max(
        field.max,
        rule,
      )
        .optional().meta({ title: field.label, description: field.hint });
      continue;
    }
    const described = ofField(field.label, field).meta({
      title: field.label,
      description: field.hint,
    });
    shape[name] = field.required ? described : described.optional();
  }
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys"
        ? `No field is called ${
          issue.keys.map((k) => `"${String(k).slice(0, 40)}"`).join(", ")
        } here`
        : "A group of fields is wanted here",
  });
}

/** Builds the schema of a plan, version 1. */
export function planZod(): z.ZodType {
  return z.strictObject({
    version: z.literal(PLAN_VERSION, `version: must be ${PLAN_VERSION}`),
    ...Object.fromEntries(
      Object.entries(SECTIONS).map(([name, { title, about, fields }]) => {
        const schema = ofFields(fields).meta({ title, description: about });
        const needed = Object.values(fields).some((f: Field | ListField) =>
          f.type !== "list" && f.required
        );
        return [name, needed ? schema : schema.optional()];
      }),
    ),
  }, {
    error: (issue) =>
      issue.code === "unrecognized_keys"
        ? `No section is called ${issue.keys.map((k) => `"${String(k).slice(0, 40)}"`).join(", ")}`
        : "A plan is an object with a version and sections",
  }).meta({
    title: "Dryrail plan",
    description: "Every quantity is text with its unit, as typed. What is left out is assumed.",
  });
}

/** Builds the JSON Schema of a plan. */
export function planJson(): Readonly<Record<string, unknown>> {
  return z.toJSONSchema(planZod(), { io: "input" });
}
