/** What pumps deliver at a pressure and a voltage, as far as their figures tell. */
import type { Working } from "@/lib/method/mod.ts";
import {
  affinityFlow,
  affinityPressure,
  parallelFlow,
  pumpFlowBetween,
  pumpFlowBetweenVoltages,
  seriesPressure,
} from "./pump_curve.ts";

/** One figure of a pump: what it delivers against a pressure. */
export interface PumpPoint {
  /** Pressure that it adds [Pa]. */
  readonly pressure_Pa: number;
  /** Flow [m^3/s]. */
  readonly flow_m3_s: number;
}

/** Figures of a pump at one voltage; a single one is a point, two or more are a curve. */
export interface PumpCurve {
  /** Voltage at the pump [V]. */
  readonly voltage_V: number;
  /** The figures, in any order. */
  readonly points: readonly PumpPoint[];
}

/** Pumps, alike. */
export interface PumpSpec {
  /** Figures of one pump, at one voltage or several. */
  readonly curves: readonly PumpCurve[];
  /** How many pumps. */
  readonly count: number;
  /** Side by side, or each feeding the next. */
  readonly arrangement: "parallel" | "series";
}

/** Why figures don't tell what a pump delivers. */
export type Untold =
  /** No figure at all. */
  | "no-figures"
  /** One point, and not at the pressure wanted. */
  | "single-point"
  /** The pressure wanted is above all points. */
  | "above-table"
  /** The pressure wanted is below all points. */
  | "below-table"
  /** Two points have the same pressure, or flow rises with pressure: a slip in typing. */
  | "not-a-curve";

/** What {@linkcode pumpAt} finds. */
export interface PumpDelivery {
  /** Flow of all pumps, or none when the figures don't tell it [m^3/s]. */
  readonly available_m3_s: number | undefined;
  /** Why there is no flow. */
  readonly untold: Untold | undefined;
  /** True when the affinity law carried the figures to another voltage: an estimate. */
  readonly scaled: boolean;
  /** Flow that the pumps give at the least, when the pressure is below the table [m^3/s]. */
  readonly atLeast_m3_s: number | undefined;
  /** Flow that the pumps give at the most, when the pressure is above the table [m^3/s]. */
  readonly atMost_m3_s: number | undefined;
}

/** Pressure and voltage at which a delivery is wanted. */
export interface PumpDuty {
  /** Pressure that the pumps together have to add [Pa]. */
  readonly pressure_Pa: number;
  /** Voltage at the pumps [V]. */
  readonly voltage_V: number;
}

/** How near a single point's pressure must be to the wanted one to answer for it [-]. Ours. */
const POINT_WITHIN = 0.01;

/** Voltages nearer than this are the same [V]. */
const SAME_VOLTAGE_V = 0.005;

/** Relative distance within which a pressure still belongs to the table's end: rounding, no more. */
const ROUNDING = 1e-9;

/** What one curve tells of one pump. */
interface Reading {
  readonly flow?: number;
  readonly untold?: Untold;
  readonly scaled: boolean;
  readonly atLeast?: number;
  readonly atMost?: number;
}

/**
 * Finds what pumps deliver at a pressure and voltage and records how.
 *
 * Between the points of a curve on straight lines, never beyond them. Between curves at
 * two voltages on a straight line in voltage; otherwise the nearest curve is carried over
 * by the affinity law, which is an estimate and is flagged. Beyond a table the flow of its
 * last point bounds what can be said, as flow falls with pressure.
 *
 * @param working The record.
 * @param section Where the results belong, like `pump`.
 * @param pump The pumps.
 * @param duty Pressure and voltage.
 * @returns The delivery, or why it is not told.
 * @throws {InputError} When a number lies outside the range of the method it goes into.
 *
 * @example A curve at 13.5 V, wanted at 12 V
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const pump = {
 *   curves: [{
 *     voltage_V: 13.5,
 *     points: [
 *       { pressure_Pa: 3e5, flow_m3_s: 9e-5 },
 *       { pressure_Pa: 4e5, flow_m3_s: 8e-5 },
 *       { pressure_Pa: 6e5, flow_m3_s: 5e-5 },
 *     ],
 *   }],
 *   count: 1,
 *   arrangement: "parallel" as const,
 * };
 * const at12 = pumpAt(new Working(), "pump", pump, { pressure_Pa: 3e5, voltage_V: 12 });
 * const beyond = pumpAt(new Working(), "pump", pump, { pressure_Pa: 7e5, voltage_V: 13.5 });
 *
 * assertAlmostEquals(at12.available_m3_s ?? 0, 7.29e-5, 1e-7);
 * assertEquals(at12.scaled, true);
 * assertEquals([beyond.available_m3_s, beyond.untold], [undefined, "above-table"]);
 * assertEquals(beyond.atMost_m3_s, 5e-5);
 * ```
 */
export function pumpAt(
  working: Working,
  section: string,
  pump: PumpSpec,
  duty: PumpDuty,
): PumpDelivery {
  const several = pump.count > 1;
  const pressure_Pa = several && pump.arrangement === "series"
    ? working.run(`${section}.pressureOfOne_Pa`, seriesPressure, {
      pressure: duty.pressure_Pa,
      count: pump.count,
    })
    : duty.pressure_Pa;
  const one = readPump(working, section, pump.curves, { ...duty, pressure_Pa });
  const all = (result: string, flow: number | undefined): number | undefined =>
    flow === undefined || !several || pump.arrangement === "series"
      ? flow
      : working.run(`${section}.${result}`, parallelFlow, { flow, count: pump.count });
  return {
    available_m3_s: all("available_m3_s", one.flow),
    untold: one.untold,
    scaled: one.scaled,
    atLeast_m3_s: all("atLeast_m3_s", one.atLeast),
    atMost_m3_s: all("atMost_m3_s", one.atMost),
  };
}

function readPump(
  working: Working,
  section: string,
  curves: readonly PumpCurve[],
  duty: PumpDuty,
): Reading {
  const known = curves.filter((curve) => curve.points.length > 0)
    .sort((a, b) => a.voltage_V - b.voltage_V);
  const upper = known.find((curve) => curve.voltage_V >= duty.voltage_V - SAME_VOLTAGE_V);
  const lower = known.findLast((curve) => curve.voltage_V <= duty.voltage_V + SAME_VOLTAGE_V);
  const nearest = upper ?? lower;
  if (nearest === undefined) return { untold: "no-figures", scaled: false };
  if (upper === undefined || lower === undefined || upper === lower) {
    return readScaled(working, section, nearest, duty);
  }
  const low = readCurve(working, `${section}.lowerVoltage`, lower, duty.pressure_Pa);
  const high = readCurve(working, `${section}.upperVoltage`, upper, duty.pressure_Pa);
  // More voltage never gives less, so the bounds of either table hold between them too.
  const atLeast = low.atLeast ?? low.flow;
  const atMost = high.atMost ?? high.flow;
  if (low.flow === undefined || high.flow === undefined) {
    const untold = low.untold ?? high.untold;
    return {
      scaled: false,
      ...(untold && { untold }),
      ...(atLeast !== undefined && { atLeast }),
      ...(atMost !== undefined && { atMost }),
    };
  }
  const flow = working.run(`${section}.flowOfOne_m3_s`, pumpFlowBetweenVoltages, {
    voltage: duty.voltage_V,
    lowerVoltage: lower.voltage_V,
    lowerFlow: low.flow,
    upperVoltage: upper.voltage_V,
    upperFlow: high.flow,
  });
  return { flow, scaled: false };
}

/** Reads one curve, carried to the voltage wanted by the affinity law where it is another. */
function readScaled(
  working: Working,
  section: string,
  curve: PumpCurve,
  duty: PumpDuty,
): Reading {
  const { voltage_V: voltage } = duty;
  const { voltage_V: statedVoltage } = curve;
  if (Math.abs(voltage - statedVoltage) <= SAME_VOLTAGE_V) {
    return readCurve(working, section, curve, duty.pressure_Pa);
  }
  const pressure = working.run(`${section}.tablePressure_Pa`, affinityPressure, {
    pressure: duty.pressure_Pa,
    voltage,
    statedVoltage,
  });
  const read = readCurve(working, section, curve, pressure);
  const carry = (result: string, flow: number | undefined): number | undefined =>
    flow === undefined
      ? undefined
      : working.run(`${section}.${result}`, affinityFlow, { flow, voltage, statedVoltage });
  const flow = carry("flowOfOneScaled_m3_s", read.flow);
  const atLeast = carry("atLeastOfOne_m3_s", read.atLeast);
  const atMost = carry("atMostOfOne_m3_s", read.atMost);
  return {
    scaled: true,
    ...(read.untold && { untold: read.untold }),
    ...(flow !== undefined && { flow }),
    ...(atLeast !== undefined && { atLeast }),
    ...(atMost !== undefined && { atMost }),
  };
}

/** Reads one curve at its own voltage. */
function readCurve(
  working: Working,
  section: string,
  curve: PumpCurve,
  pressure: number,
): Reading {
  const points = curve.points.toSorted((a, b) => a.pressure_Pa - b.pressure_Pa);
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return { untold: "no-figures", scaled: false };
  const rises = points.some((point, i) => {
    const before = points[i - 1];
    return before !== undefined &&
      (point.pressure_Pa === before.pressure_Pa || point.flow_m3_s > before.flow_m3_s);
  });
  if (rises) return { untold: "not-a-curve", scaled: false };
  if (points.length === 1 && Math.abs(pressure - first.pressure_Pa) <= POINT_WITHIN * pressure) {
    return { flow: first.flow_m3_s, scaled: false };
  }
  const single = points.length === 1 ? "single-point" : undefined;
  if (pressure < first.pressure_Pa * (1 - ROUNDING)) {
    return { untold: single ?? "below-table", atLeast: first.flow_m3_s, scaled: false };
  }
  if (pressure > last.pressure_Pa * (1 + ROUNDING)) {
    return { untold: single ?? "above-table", atMost: last.flow_m3_s, scaled: false };
  }
  const above = points.findIndex((point, i) =>
    i > 0 && pressure <= point.pressure_Pa * (1 + ROUNDING)
  );
  const lower = points[above - 1] ?? first;
  const upper = points[above] ?? last;
  const flow = working.run(`${section}.flowOfOne_m3_s`, pumpFlowBetween, {
    pressure,
    lowerPressure: lower.pressure_Pa,
    lowerFlow: lower.flow_m3_s,
    upperPressure: upper.pressure_Pa,
    upperFlow: upper.flow_m3_s,
  });
  return { flow, scaled: false };
}
