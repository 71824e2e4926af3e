/** The plan's pumps as they run at one operating point. */
import type { PlanValues } from "@/lib/plan/mod.ts";
import {
  drivenPump,
  electricPump,
  type PumpFigures,
  pumpsTogether,
  type RunningPump,
  withRelief,
} from "@/lib/supply/mod.ts";
import {
  COPPER_COEFFICIENT_1_K,
  loopResistance,
  resistanceRatio,
  WIRE_REFERENCE_K,
  WIRES,
} from "@/lib/wiring/mod.ts";

/** What drives the pump at an operating point. */
export interface PumpDrive {
  /** Voltage at the battery, or what a speed control makes of it [V]. */
  readonly battery_V: number;
  /** Speed of the engine [rev/s]. */
  readonly engine_rev_s: number;
}

/** Figures grouped by the voltage they are stated at; for an engine-driven pump by its speed. */
export function figuresOf({ pump }: Pick<PlanValues, "pump">): PumpFigures[] {
  const groups = new Map<number, PumpFigures["points"][number][]>();
  const stated = pump.drive === "engine" ? pump.ratedSpeed : pump.voltage;
  if (stated === undefined) return [];
  for (const { pressure, flow, voltage, current } of pump.points) {
    if (pressure === undefined || flow === undefined) continue;
    const at = voltage ?? stated;
    const points = groups.get(at) ?? [];
    points.push({ pressure_Pa: pressure, flow_m3_s: flow, current_A: current });
    groups.set(at, points);
  }
  return Array.from(groups, ([at, points]) => ({ at, points }));
}

/** Resistance of the wires to one pump and back, warm [ohm]; nought where the loss was measured. */
export function wiresOf({ pump, wiring }: Pick<PlanValues, "pump" | "wiring">): number {
  if (pump.wireLoss !== undefined || wiring.wire === undefined) return 0;
  return loopResistance.compute({
    resistancePerLength: WIRES[wiring.wire].resistance20_ohm_m,
    ratio: resistanceRatio.compute({
      temperature: wiring.temperature ?? WIRE_REFERENCE_K,
      reference: WIRE_REFERENCE_K,
      coefficient: COPPER_COEFFICIENT_1_K,
    }),
    outLength: wiring.outLength ?? 0,
    returnLength: wiring.returnLength ?? 0,
  });
}

/** The pumps at one operating point, `count` of them; undefined when their figures are no curve. */
export function pumpsOf(
  values: PlanValues,
  drive: PumpDrive,
  count: number = values.pump.count,
): RunningPump | undefined {
  const { pump, wiring } = values;
  const figures = figuresOf(values).filter(({ points }) => points.length >= 2);
  const [first] = figures;
  if (first === undefined || count < 1) return undefined;
  const one = pump.drive === "engine" ? driven(values, first, drive) : electricPump(figures, {
    battery_V: drive.battery_V,
    wires_ohm: wiresOf(values),
    contacts_V: pump.wireLoss ?? wiring.contacts ?? 0,
    efficiency: pump.efficiency ?? 1,
  });
  return one && pumpsTogether(one, { count, arrangement: pump.arrangement ?? "parallel" });
}

function driven(
  { pump }: PlanValues,
  figures: PumpFigures,
  { engine_rev_s }: PumpDrive,
): RunningPump | undefined {
  const speed_rev_s = engine_rev_s * (pump.driveRatio ?? 1);
  const running = drivenPump({ figures, speed_rev_s });
  return running && pump.relief !== undefined ? withRelief(running, pump.relief) : running;
}
