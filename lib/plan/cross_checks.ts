/** What must hold between fields, each fault put at the field that the user would change. */
import { inBoth } from "@/lib/units/mod.ts";
import type { Fault } from "./fault.ts";
import { ENGINE_RULES } from "./rules/engine.ts";
import { GALLERY_RULES } from "./rules/gallery.ts";
import { HOLD_DOWN_RULES } from "./rules/hold_down.ts";
import { POCKET_RULES } from "./rules/pockets.ts";
import { PORT_RULES } from "./rules/ports.ts";
import { PUMP_RULES } from "./rules/pump.ts";
import { RAIL_RULES } from "./rules/rail.ts";
import { REGULATOR_RULES } from "./rules/regulator.ts";
import type { Rule, Say } from "./rules/rule.ts";
import { RUN_RULES } from "./rules/runs.ts";
import { SHOP_RULES } from "./rules/shop.ts";
import { STATION_RULES } from "./rules/stations.ts";
import { SUPPLY_RULES } from "./rules/supply.ts";
import type { PlanValues } from "./sections.ts";

const RULES: readonly Rule[] = [
  ...ENGINE_RULES,
  ...RAIL_RULES,
  ...GALLERY_RULES,
  ...STATION_RULES,
  ...POCKET_RULES,
  ...PORT_RULES,
  ...HOLD_DOWN_RULES,
  ...REGULATOR_RULES,
  ...PUMP_RULES,
  ...SUPPLY_RULES,
  ...RUN_RULES,
  ...SHOP_RULES,
];

/**
 * Finds what does not fit together in a plan.
 *
 * @param values The plan in numbers; where a field is at fault, whatever stands in for it.
 * @param known The faults of single fields; a rule that looks at one of these says nothing.
 * @returns At most one fault for each field, none at a field that is known to be at fault.
 */
export function crossFaults(values: PlanValues, known: readonly Fault[] = []): Fault[] {
  const system = values.sheet.units ?? "metric";
  const say: Say = (value, kind) => inBoth(value, kind, system);
  const found = new Map<string, Fault>();
  for (const { of, find } of RULES) {
    if (of.some((path) => known.some((other) => meets(path, other.path)))) continue;
    const faults = find(values, say) ?? [];
    for (const one of "path" in faults ? [faults] : faults) {
      if (!found.has(one.path)) found.set(one.path, one);
    }
  }
  return [...found.values()];
}

/** Whether one path leads to the other, or to a part of it; an empty path is the whole plan. */
function meets(a: string, b: string): boolean {
  return a === b || a === "" || b === "" || a.startsWith(`${b}.`) || b.startsWith(`${a}.`);
}
