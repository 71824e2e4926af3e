/** What must hold between the points of a pump's curve. */
import type { Fault } from "../fault.ts";
import { asTyped, fault, type Rule } from "./rule.ts";

/** A row of a pump's curve as it was given. */
interface Given {
  readonly pressure: number | undefined;
  readonly flow: number | undefined;
  readonly voltage?: number | undefined;
}

/** A whole point, with the row it stands in. */
interface Point {
  readonly row: number;
  readonly pressure: number;
  readonly flow: number;
  readonly voltage: number | undefined;
}

/** The rows that hold a whole point, each at its own voltage or that of the figures. */
function pointsOf(given: readonly Given[], voltage?: number): Point[] {
  return given.flatMap((each, row) => {
    const { pressure, flow } = each;
    if (pressure === undefined || flow === undefined) return [];
    const at_V = each.voltage ?? voltage;
    return [{
      row,
      pressure: asTyped(pressure),
      flow: asTyped(flow),
      voltage: at_V === undefined ? undefined : asTyped(at_V),
    }];
  });
}

/** What is wrong within the points of one curve; `at` is where its list stands. */
function curveFaults(at: string, points: readonly Point[]): Fault[] {
  const found: Fault[] = [];
  for (const group of Map.groupBy(points, (point) => point.voltage).values()) {
    const seen = new Set<number>();
    for (const { row, pressure } of group) {
      if (seen.has(pressure)) {
        found.push(fault(
          `${at}.${row}.pressure`,
          "Pressure: it stands twice. Enter each pressure once, or the voltage that sets the points apart.",
        ));
      }
      seen.add(pressure);
    }
    const rising = group.toSorted((a, b) => a.pressure - b.pressure);
    rising.forEach(({ row, pressure, flow }, i) => {
      const before = rising[i - 1];
      if (before === undefined || pressure === before.pressure || flow <= before.flow) return;
      found.push(fault(
        `${at}.${row}.flow`,
        "Flow: it rises with pressure. A pump gives less at a higher pressure; check this point.",
      ));
    });
  }
  return found;
}

/** Rows in which one of the two is missing. */
function halfPoints(at: string, given: readonly Given[]): Fault[] {
  return given.flatMap((row, i) => {
    const isBlank = Object.values(row).every((value) => value === undefined);
    if (isBlank || (row.pressure !== undefined && row.flow !== undefined)) return [];
    const [name, label] = row.pressure === undefined ? ["pressure", "Pressure"] : ["flow", "Flow"];
    return [fault(
      `${at}.${i}.${name}`,
      `${label}: it is missing. A point is a flow at a pressure; enter both, or clear the row.`,
    )];
  });
}

/** Points at a higher voltage that give less than one at the same pressure and a lower voltage. */
function weakerAtMore(at: string, points: readonly Point[]): Fault[] {
  return points.flatMap(({ row, pressure, flow, voltage = 0 }) => {
    const isWeaker = points.some((other) =>
      other.pressure === pressure && (other.voltage ?? 0) < voltage && other.flow > flow
    );
    return isWeaker
      ? [fault(
        `${at}.${row}.flow`,
        "Flow: it is less than at a lower voltage and the same pressure. Check both points.",
      )]
      : [];
  });
}

/** What must hold between the points of the pumps, and between pump and place. */
export const PUMP_RULES: readonly Rule[] = [
  {
    of: ["pump.points"],
    find: ({ pump }) => halfPoints("pump.points", pump.points),
  },
  {
    of: ["pump.points", "pump.voltage", "pump.drive"],
    find: ({ pump }) => curveFaults("pump.points", pointsOf(pump.points, pump.voltage)),
  },
  {
    of: ["pump.points", "pump.voltage", "pump.drive"],
    find: ({ pump }) => weakerAtMore("pump.points", pointsOf(pump.points, pump.voltage)),
  },
  {
    of: ["lift.points"],
    find: ({ lift }) => halfPoints("lift.points", lift.points),
  },
  {
    of: ["lift.points"],
    find: ({ lift }) => curveFaults("lift.points", pointsOf(lift.points)),
  },
  {
    of: ["pump.drive", "pump.place"],
    find: ({ pump }) =>
      pump.drive === "engine" && pump.place === "tank"
        ? fault(
          "pump.place",
          "Place of the pump: one that the engine drives sits at the engine, in the line. Choose that, or an electric pump.",
        )
        : undefined,
  },
];
