/** Cautions by name, as a plan's pages show them. */
import { fuelSpecOf } from "@/lib/plan/mod.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import { type CautionId, cautionsOf, fillLine } from "@/lib/walkround/mod.ts";
import type { CautionShown } from "./caution_box.ts";
import type { PlanShown } from "./plan_shown.ts";
import { unbroken } from "./unbroken.ts";

/** The cautions that the plan's fuel calls for, in the plan's units. */
export function cautionsShown(
  { values, system }: PlanShown,
  ids: readonly CautionId[],
): CautionShown[] {
  return cautionsOf(ids, fuelSpecOf(values.fuel)).map(({ title, points, source }) => ({
    title,
    source,
    points: points.map((point) =>
      unbroken(fillLine(point, ({ value, kind }) => formatQuantity(value, kind, system)))
    ),
  }));
}

/** Those that a pump's wires call for; a pump that the engine drives has none. */
export function wiringCautions({ values }: PlanShown): readonly CautionId[] {
  return values.pump.drive === "engine" ? [] : ["pump-wiring", "inertia", "prime-limit"];
}
