/** What to ask for in a shop: figures, no makes. */
import { CRITERIA } from "@/lib/evaluation/mod.ts";
import { formatQuantity, type Kind } from "@/lib/units/mod.ts";
import type { NumberRow } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";

/** The specification of injectors, pump, sensor and the weakest part. */
export function shoppingRows(shown: PlanShown): NumberRow[] {
  return [...injectorRows(shown), ...pumpRow(shown), ...pressureRows(shown)];
}

function injectorRows(shown: PlanShown): NumberRow[] {
  const { evaluation, system } = shown;
  const { injectors } = evaluation.results;
  if (!injectors) return [];
  const say = (value: number, kind: Kind): string => formatQuantity(value, kind, system);
  const { shopFlow_m3_s, shopPressure_Pa } = injectors;
  if (shopFlow_m3_s !== undefined && shopPressure_Pa !== undefined) {
    return [{
      label: "Each injector",
      value: say(shopFlow_m3_s, "flow"),
      note: `static, at ${say(shopPressure_Pa, "pressure")}`,
    }];
  }
  return injectors.stages.map((stage, i) => ({
    label: injectors.stages.length > 1 ? `Injectors of stage ${i + 1}` : "Injectors",
    value: stage.neededFlow_m3_s === undefined
      ? "faster ones"
      : `${stage.count} × ${say(stage.neededFlow_m3_s, "flow")}`,
    note: `static, at ${say(stage.ratedPressure_Pa, "pressure")}; yours: ${
      say(stage.ratedFlow_m3_s, "flow")
    }${asTyped(shown, i)}`,
  }));
}

/** What was typed where that was a mass flow; the note on it stands under the table. */
function asTyped({ evaluation, boxes }: PlanShown, stage: number): string {
  const path = `injectors.stages.${stage}.flow`;
  const typed = boxes.get(path);
  return typed === undefined || evaluation.notes[path] === undefined
    ? ""
    : `, from ${typed} by mass`;
}

function pumpRow({ evaluation, values, system }: PlanShown): NumberRow[] {
  const { pump } = evaluation.results;
  if (!pump) return [];
  const each = pump.shopFlow_m3_s / values.pump.count;
  return [{
    label: values.pump.count > 1 ? `Pump, each of ${values.pump.count}` : "Pump",
    value: formatQuantity(each, "pumpFlow", system),
    note: `at ${formatQuantity(pump.pressure_Pa, "pressure", system)}${
      pump.voltage_V === undefined
        ? ""
        : ` and ${formatQuantity(pump.voltage_V, "voltage", system)} at its terminals`
    }, the aim of ${
      formatQuantity(CRITERIA.pumpMargin.aim, "ratio", system)
    } over the need included`,
  }];
}

function pressureRows({ evaluation, system }: PlanShown): NumberRow[] {
  const { proof } = evaluation.results;
  if (!proof) return [];
  const say = (value: number): string => formatQuantity(value, "pressure", system);
  const { workingPressure_Pa, wantedPressure_Pa } = proof.pressures;
  return [
    {
      label: "Pressure sensor, range",
      value: say(workingPressure_Pa * CRITERIA.sensorRange.aim),
      note: "at least, gauge",
    },
    {
      label: "Every part that stays on for the proof",
      value: say(wantedPressure_Pa),
      note: "rated at least, gauge",
    },
  ];
}
