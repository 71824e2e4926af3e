/** How the text of a quantity field is to be read. */
import type { ParseOptions } from "@/lib/units/mod.ts";
import type { QuantityField } from "./field.ts";

const KNOWN = new WeakMap<QuantityField, ParseOptions>();

/**
 * Gives the options that a field's text is read with, by the schema and by
 * whoever resolves the plan alike; made once for each field.
 */
export function optionsOf(field: QuantityField): ParseOptions {
  let options = KNOWN.get(field);
  if (options === undefined) {
    const { label, min, max, because, massAt_kg_m3, reference } = field;
    options = {
      field: label,
      min,
      max,
      because,
      ...(massAt_kg_m3 !== undefined && { density_kg_m3: massAt_kg_m3 }),
      ...(reference !== undefined && { reference }),
    };
    KNOWN.set(field, options);
  }
  return options;
}
