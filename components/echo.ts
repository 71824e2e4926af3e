/** What was typed, said again in other units, so that a slip shows. */
import type { Field, ListField, QuantityField } from "@/lib/plan/mod.ts";
import { formatQuantity, parseQuantity, type System } from "@/lib/units/mod.ts";

/**
 * Says a typed quantity again.
 *
 * @param field The field it was typed into.
 * @param typed The text.
 * @param system The units of the plan; they come first.
 * @returns Like "= 313 kW"; nothing when the text is no quantity, or when it
 * already stands in the only unit that its kind is shown in.
 */
export function echoOf(field: Field, typed: string, system: System): string | undefined {
  if (field.type !== "quantity") return undefined;
  const value = valueOf(field, typed);
  if (value === undefined) return undefined;
  const own = formatQuantity(value, field.kind, system);
  const other = formatQuantity(value, field.kind, system === "metric" ? "inch" : "metric");
  const said = [own, other].find((text) => !typed.trim().endsWith(unitOf(text)));
  return said === undefined ? undefined : `= ${said}`;
}

/**
 * Says a metric default in inches and pounds.
 *
 * @param field The field that it stands in for.
 * @param text The default, as a user would type it.
 * @returns Like "104 °F"; nothing for what both systems write alike, and for nought.
 */
export function inInches(field: Field | ListField | undefined, text: string): string | undefined {
  if (field?.type !== "quantity") return undefined;
  const value = valueOf(field, text);
  if (value === undefined || value === 0) return undefined;
  const inch = formatQuantity(value, field.kind, "inch");
  return inch === formatQuantity(value, field.kind, "metric") ? undefined : inch;
}

/** The number typed into a quantity or a count, in SI; nothing when it is none. */
export function numberIn(field: Field, typed: string): number | undefined {
  if (field.type === "quantity") return valueOf(field, typed);
  return field.type === "count" && /^\d{1,6}$/.test(typed) ? Number(typed) : undefined;
}

function valueOf(field: QuantityField, typed: string): number | undefined {
  const { kind, massAt_kg_m3: density, reference } = field;
  const parsed = parseQuantity(typed, kind, {
    ...(density !== undefined && { density_kg_m3: density }),
    ...(reference !== undefined && { reference }),
  });
  return parsed.ok ? parsed.value : undefined;
}

function unitOf(shown: string): string {
  return shown.slice(shown.indexOf(" ") + 1);
}
