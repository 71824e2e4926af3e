/** What must hold between fields, each fault put at the field that the user would change. */
import { bsfcFloor } from "@/lib/engine/mod.ts";
import { fuelEnergy } from "@/lib/fuel/mod.ts";
import { inBoth, type Kind } from "@/lib/units/mod.ts";
import type { Fault } from "./fault.ts";
import { fuelSpecOf } from "./fuel_choice.ts";
import type { PlanValues } from "./sections.ts";

/** Port injection as far as the methods and the scope go [Pa gauge]. */
const HIGHEST_PRESSURE_PA = 1e6;

/** Writes a quantity in the plan's units, and in the others beside them. */
type Say = (value: number, kind: Kind) => string;

/** A rule between fields. */
interface Rule {
  /** The fields or sections that it looks at; it says nothing while one of them is at fault. */
  readonly of: readonly string[];
  /** The fault it finds. */
  readonly find: (values: PlanValues, say: Say) => Fault | undefined;
}

const fault = (path: string, message: string): Fault => ({ path, message });

const RULES: readonly Rule[] = [
  {
    of: ["engine.maximumSpeed", "engine.powerSpeed"],
    find: ({ engine }, say) =>
      engine.maximumSpeed !== undefined && engine.maximumSpeed < engine.powerSpeed
        ? fault(
          "engine.maximumSpeed",
          `Maximum speed: it lies below the speed of the power peak. Enter at least ${
            say(engine.powerSpeed, "rotation")
          }, as the engine must reach its power peak.`,
        )
        : undefined,
  },
  {
    of: ["engine.idleSpeed", "engine.powerSpeed"],
    find: ({ engine }, say) =>
      engine.idleSpeed !== undefined && engine.idleSpeed >= engine.powerSpeed
        ? fault(
          "engine.idleSpeed",
          `Idle speed: it must lie below the speed of the power peak, ${
            say(engine.powerSpeed, "rotation")
          }.`,
        )
        : undefined,
  },
  {
    of: ["engine.cylinders", "rail.count"],
    find: ({ engine, rail }) =>
      engine.cylinders % rail.count !== 0
        ? fault(
          "rail.count",
          `Rails: ${engine.cylinders} cylinders do not share out evenly over ${rail.count} rails. ` +
            "Enter a number that divides them.",
        )
        : undefined,
  },
  {
    of: ["demand.bsfc", "fuel"],
    find: ({ demand, fuel }, say) => {
      if (demand.bsfc === undefined) return undefined;
      const floor = bsfcFloor({ lowerHeatingValue: fuelEnergy(fuelSpecOf(fuel)) });
      return demand.bsfc >= floor ? undefined : fault(
        "demand.bsfc",
        `BSFC at full power: it lies below ${
          say(floor, "bsfc")
        }, which an engine that wasted nothing would burn: ` +
          "the fuel holds no more energy than its heating value. Check the figure and its unit.",
      );
    },
  },
  {
    of: ["regulator", "engine.aspiration", "engine.boost"],
    find: ({ regulator, engine }, say) => {
      const boost = regulator.reference === "manifold" ? engine.boost ?? 0 : 0;
      return regulator.setPressure + boost <= HIGHEST_PRESSURE_PA ? undefined : fault(
        "regulator.setPressure",
        `Set pressure: with the boost on top, rail pressure exceeds ${
          say(HIGHEST_PRESSURE_PA, "pressure")
        } gauge, which is as far as these methods go. Enter a lower set pressure.`,
      );
    },
  },
  {
    of: ["regulator", "engine.aspiration", "engine.boost"],
    find: ({ regulator, engine }, say) => {
      const boost = regulator.reference === "manifold" ? 0 : engine.boost ?? 0;
      return regulator.setPressure > boost ? undefined : fault(
        "regulator.setPressure",
        "Set pressure: an atmosphere-referenced regulator must be set above the highest boost, " +
          `${say(boost, "pressure")}, or nothing flows at full power.`,
      );
    },
  },
  {
    of: ["rail.bore", "rail.shape", "rail.height", "rail.width"],
    find: ({ rail }, say) => {
      const smallest = Math.min(rail.height ?? Infinity, rail.width ?? Infinity);
      return rail.bore === undefined || rail.bore < smallest ? undefined : fault(
        "rail.bore",
        `Bore of the gallery: it is as wide as the bar. Enter less than ${
          say(smallest, "length")
        }.`,
      );
    },
  },
  {
    of: ["rail.length", "rail.pitch", "rail.count", "engine.cylinders"],
    find: ({ rail, engine }, say) => {
      const span = rail.pitch * (engine.cylinders / rail.count - 1);
      return rail.length > span ? undefined : fault(
        "rail.length",
        `Length of the bar: the injectors alone span ${
          say(span, "length")
        }. Enter a longer bar or a smaller pitch.`,
      );
    },
  },
  {
    of: ["pump.points"],
    find: ({ pump }) => {
      const pressures = pump.points.map((p) => p.pressure);
      const twice = pressures.findIndex((p, i) => p !== undefined && pressures.indexOf(p) < i);
      return twice < 0 ? undefined : fault(
        `pump.points.${twice}.pressure`,
        "Pressure: it stands twice. Enter each pressure once.",
      );
    },
  },
  {
    of: ["pump.points"],
    find: ({ pump }) => {
      const row = pump.points.findIndex((p) =>
        (p.pressure === undefined) !== (p.flow === undefined)
      );
      if (row < 0) return undefined;
      const lacks = pump.points[row]?.flow === undefined ? "flow" : "pressure";
      return fault(
        `pump.points.${row}.${lacks}`,
        `${
          lacks === "flow" ? "Flow" : "Pressure"
        }: it is missing. A point is a flow at a pressure; enter both, or neither.`,
      );
    },
  },
  {
    of: ["pump.points"],
    find: ({ pump }) => {
      const points = pump.points.map((p, row) => ({ row, ...p }))
        .filter((p) => p.pressure !== undefined)
        .toSorted((a, b) => (a.pressure ?? 0) - (b.pressure ?? 0));
      const rising = points.find((p, i) => i > 0 && (p.flow ?? 0) > (points[i - 1]?.flow ?? 0));
      return rising === undefined ? undefined : fault(
        `pump.points.${rising.row}.flow`,
        "Flow: it rises with pressure. A pump gives less at a higher pressure; check this point.",
      );
    },
  },
  {
    of: ["injectors.stages"],
    find: ({ injectors }) => {
      const row = injectors.stages.findIndex((s) => s.flow === undefined);
      return row > 0
        ? fault(
          `injectors.stages.${row}.flow`,
          "Static flow of one injector: enter it for this stage, or clear the rest of the stage.",
        )
        : undefined;
    },
  },
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
    const one = find(values, say);
    if (one && !found.has(one.path)) found.set(one.path, one);
  }
  return [...found.values()];
}

/** Whether one path leads to the other, or to a part of it; an empty path is the whole plan. */
function meets(a: string, b: string): boolean {
  return a === b || a === "" || b === "" || a.startsWith(`${b}.`) || b.startsWith(`${a}.`);
}
