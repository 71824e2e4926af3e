/** What must hold between fields, each fault put at the field that the user would change. */
import { bsfcFloor } from "@/lib/engine/mod.ts";
import { fuelEnergy } from "@/lib/fuel/mod.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import type { Fault } from "./fault.ts";
import { fuelSpecOf } from "./fuel_choice.ts";
import type { PlanValues } from "./sections.ts";

/** Port injection as far as the methods and the scope go [Pa gauge]. */
const HIGHEST_PRESSURE_PA = 1e6;

/** A rule between fields: the faults it finds. */
type Rule = (values: PlanValues) => Fault | undefined;

const fault = (path: string, message: string): Fault => ({ path, message });

const RULES: readonly Rule[] = [
  ({ engine }) =>
    engine.maximumSpeed !== undefined && engine.maximumSpeed < engine.powerSpeed
      ? fault(
        "engine.maximumSpeed",
        `Maximum speed: lies below the speed of the power peak. Enter at least ${
          formatQuantity(engine.powerSpeed, "rotation", "metric")
        }, as the engine must reach its power peak.`,
      )
      : undefined,
  ({ engine }) =>
    engine.idleSpeed !== undefined && engine.idleSpeed >= engine.powerSpeed
      ? fault("engine.idleSpeed", "Idle speed: must lie below the speed of the power peak.")
      : undefined,
  ({ engine, rail }) =>
    engine.cylinders % rail.count !== 0
      ? fault(
        "rail.count",
        `Rails: ${engine.cylinders} cylinders do not share out evenly over ${rail.count} rails. ` +
          "Enter a number that divides them.",
      )
      : undefined,
  ({ demand, fuel }) => {
    if (demand.bsfc === undefined) return undefined;
    const floor = bsfcFloor({ lowerHeatingValue: fuelEnergy(fuelSpecOf(fuel)) });
    return demand.bsfc >= floor ? undefined : fault(
      "demand.bsfc",
      `BSFC at full power: lies below ${
        formatQuantity(floor, "bsfc", "metric")
      }, which an engine that wasted nothing would burn: ` +
        "the fuel holds no more energy than its heating value. Check the figure and its unit.",
    );
  },
  ({ regulator, engine }) => {
    const boost = regulator.reference === "manifold" ? engine.boost ?? 0 : 0;
    return regulator.setPressure + boost <= HIGHEST_PRESSURE_PA ? undefined : fault(
      "regulator.setPressure",
      "Set pressure: with the boost on top, rail pressure exceeds 10 bar gauge, " +
        "which is as far as these methods go. Enter a lower set pressure.",
    );
  },
  ({ regulator, engine }) => {
    const boost = regulator.reference === "manifold" ? 0 : engine.boost ?? 0;
    return regulator.setPressure > boost ? undefined : fault(
      "regulator.setPressure",
      "Set pressure: an atmosphere-referenced regulator must be set above the highest boost, " +
        "or nothing flows at full power.",
    );
  },
  ({ rail }) => {
    const smallest = Math.min(rail.height ?? Infinity, rail.width ?? Infinity);
    return rail.bore === undefined || rail.bore < smallest ? undefined : fault(
      "rail.bore",
      `Bore of the gallery: is as wide as the bar. Enter less than ${
        formatQuantity(smallest, "length", "metric")
      }.`,
    );
  },
  ({ rail, engine }) => {
    const span = rail.pitch === undefined ? 0 : rail.pitch * (engine.cylinders / rail.count - 1);
    return rail.length === undefined || rail.length > span ? undefined : fault(
      "rail.length",
      `Length of the bar: the injectors alone span ${
        formatQuantity(span, "length", "metric")
      }. Enter a longer bar or a smaller pitch.`,
    );
  },
  ({ pump }) => {
    const pressures = pump.points.map((p) => p.pressure);
    const twice = pressures.findIndex((p, i) => p !== undefined && pressures.indexOf(p) < i);
    return twice < 0
      ? undefined
      : fault(`pump.points.${twice}.pressure`, "Pressure: stands twice. Enter each pressure once.");
  },
  ({ pump }) => {
    const row = pump.points.findIndex((p) => (p.pressure === undefined) !== (p.flow === undefined));
    if (row < 0) return undefined;
    const lacks = pump.points[row]?.flow === undefined ? "flow" : "pressure";
    return fault(
      `pump.points.${row}.${lacks}`,
      `${
        lacks === "flow" ? "Flow" : "Pressure"
      }: is missing. A point is a flow at a pressure; enter both, or neither.`,
    );
  },
  ({ pump }) => {
    const points = pump.points.map((p, row) => ({ row, ...p }))
      .filter((p) => p.pressure !== undefined)
      .toSorted((a, b) => (a.pressure ?? 0) - (b.pressure ?? 0));
    const rising = points.find((p, i) => i > 0 && (p.flow ?? 0) > (points[i - 1]?.flow ?? 0));
    return rising === undefined ? undefined : fault(
      `pump.points.${rising.row}.flow`,
      "Flow: rises with pressure. A pump gives less at a higher pressure; check this point.",
    );
  },
  ({ injectors }) => {
    const row = injectors.stages.findIndex((s) => s.flow === undefined);
    return row > 0
      ? fault(
        `injectors.stages.${row}.flow`,
        "Static flow of one injector: is missing in this stage.",
      )
      : undefined;
  },
  ({ sensor }) =>
    sensor.pilot !== undefined && sensor.pilot >= 0.009
      ? fault("sensor.pilot", "Pilot into the gallery: must be smaller than the tapping drill.")
      : undefined,
];

/**
 * Finds what does not fit together in a plan whose single fields are all good.
 *
 * @param values The plan in numbers.
 * @returns At most one fault for each field.
 */
export function crossFaults(values: PlanValues): Fault[] {
  const found = new Map<string, Fault>();
  for (const rule of RULES) {
    const one = rule(values);
    if (one && !found.has(one.path)) found.set(one.path, one);
  }
  return [...found.values()];
}
