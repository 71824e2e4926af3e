/** What was typed, said again in other units, so that a slip shows. */
import type { Field } from "@/lib/plan/mod.ts";
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
  const density = field.massAt_kg_m3;
  const parsed = parseQuantity(
    typed,
    field.kind,
    density === undefined ? {} : { density_kg_m3: density },
  );
  if (!parsed.ok) return undefined;
  const own = formatQuantity(parsed.value, field.kind, system);
  const other = formatQuantity(parsed.value, field.kind, system === "metric" ? "inch" : "metric");
  const said = [own, other].find((text) => !typed.trim().endsWith(unitOf(text)));
  return said === undefined ? undefined : `= ${said}`;
}

function unitOf(shown: string): string {
  return shown.slice(shown.indexOf(" ") + 1);
}
