/** The fuel of a plan in words. */
import { type PlanValues, SECTIONS } from "@/lib/plan/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";

/**
 * Names the fuel of a plan as somebody behind a counter knows it.
 *
 * @param values The plan in numbers, of which only the fuel counts.
 * @returns Like "E85 (85 % ethanol)".
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(fuelInWords({ fuel: { name: "methanol", ethanolShare: undefined } }), "methanol");
 * assertEquals(
 *   fuelInWords({ fuel: { name: "blend", ethanolShare: 0.4 } }),
 *   "petrol with 40.0 % ethanol",
 * );
 * ```
 */
export function fuelInWords(
  { fuel }: { readonly fuel: Pick<PlanValues["fuel"], "name" | "ethanolShare"> },
): string {
  const { name, ethanolShare } = fuel;
  return name === "blend"
    ? `petrol with ${formatShare(ethanolShare ?? 0)} ethanol`
    : SECTIONS.fuel.fields.name.options[name];
}
