/** Whether the pump has margin, hot and on a low battery. */
import {
  neededPressure,
  pumpAt,
  type PumpDelivery,
  pumpFlowToAskFor,
  pumpMargin,
  returnFlow,
  STANDARD_GRAVITY_m_s2,
  type Untold,
} from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { DemandResults } from "./demand.ts";
import type { PressureResults } from "./pressures.ts";

/** What was found for the pump. */
export interface PumpResults {
  /** Flow that the engine burns [m^3/s]. */
  readonly need_m3_s: number;
  /** Flow to shop for, the aim included [m^3/s]. */
  readonly shopFlow_m3_s: number;
  /** Pressure that the pump has to make [Pa, gauge]. */
  readonly pressure_Pa: number;
  /** Voltage at its terminals, battery lowest [V]. */
  readonly voltage_V: number;
  /** Flow there, where its figures tell it [m^3/s]. */
  readonly available_m3_s: number | undefined;
  /** True when the figures were carried to another voltage by the affinity law. */
  readonly scaled: boolean;
  /** Flow beyond the need, as a share of the need. */
  readonly margin: number | undefined;
  /** Flow that goes back through the rail at full power [m^3/s]; nought without a return, or with none over. */
  readonly returned_m3_s: number;
}

/** Why the figures don't tell, in words. */
const UNTOLD: Readonly<Record<Untold, string>> = {
  "no-figures": "No figure of the pump is given.",
  "single-point": "One point does not tell the flow at another pressure.",
  "above-table": "The pressure lies above the pump's points.",
  "below-table": "The pressure lies below the pump's points.",
  "not-a-curve": "The pump's points do not make a falling curve.",
};

/** Finds the pump's flow at working pressure and low voltage, and judges its margin. */
export function judgePump(
  context: Context,
  demand: DemandResults,
  pressures: PressureResults,
): PumpResults | undefined {
  return context.subject([CRITERIA.pumpMargin], () => {
    const { working, values } = context;
    const need_m3_s = demand.fuelVolume_m3_s;
    const pressure_Pa = working.run("pump.pressure_Pa", neededPressure, {
      railPressure: pressures.railPeak_Pa,
      losses: values.supply.feedLoss,
      density: demand.fuel.density_kg_m3,
      gravity: STANDARD_GRAVITY_m_s2,
      height: 0,
    });
    const voltage_V = values.injectors.lowestVoltage - values.pump.wireLoss;
    const shopFlow_m3_s = working.run("pump.shopFlow_m3_s", pumpFlowToAskFor, {
      required: need_m3_s,
      margin: CRITERIA.pumpMargin.aim,
    });
    const delivery = deliveryOf(context, "pump", { pressure_Pa, voltage_V });
    const available = delivery.available_m3_s;
    const over = available === undefined
      ? undefined
      : working.run("pump.returned_m3_s", returnFlow, { available, required: need_m3_s });
    const atLowest = marginOf(context, "pump", delivery, need_m3_s);
    const margin = atLowest.value === undefined
      ? atStatedVoltage(context, atLowest, { pressure_Pa, voltage_V }, need_m3_s)
      : atLowest;
    const wanted = `Needed: ${context.say(need_m3_s, "pumpFlow")} at ${
      context.say(pressure_Pa, "pressure")
    } and ${context.say(voltage_V, "voltage")}; with the aim ${
      context.say(shopFlow_m3_s, "pumpFlow")
    }.`;
    context.check(CRITERIA.pumpMargin, {
      value: margin.value,
      because: `${wanted} ${margin.because}`,
      ...((delivery.scaled || margin !== atLowest) && { atBest: "marginal" as const }),
      ...(margin.result && { result: margin.result }),
    });
    return {
      need_m3_s,
      shopFlow_m3_s,
      pressure_Pa,
      voltage_V,
      available_m3_s: available,
      scaled: delivery.scaled,
      margin: margin.value,
      returned_m3_s: values.regulator.layout === "return" ? Math.max(0, over ?? 0) : 0,
    };
  });
}

/** Pressure and voltage that a flow is wanted at. */
interface Duty {
  readonly pressure_Pa: number;
  readonly voltage_V: number;
}

/** What the pumps of the plan deliver at a pressure and voltage. */
function deliveryOf({ working, values }: Context, section: string, duty: Duty): PumpDelivery {
  const { pump } = values;
  const points = pump.points.flatMap(({ pressure, flow }) =>
    pressure === undefined || flow === undefined ? [] : [{ pressure_Pa: pressure, flow_m3_s: flow }]
  );
  return pumpAt(working, section, {
    curves: [{ voltage_V: pump.voltage, points }],
    count: pump.count,
    arrangement: "parallel",
  }, duty);
}

/** A margin, or why there is none. */
interface Margin {
  readonly value: number | undefined;
  readonly because: string;
  readonly result?: string;
}

/**
 * What the figures say at their own voltage, where they say nothing at the lowest:
 * enough for a first verdict, as a pump gives no more at less.
 */
function atStatedVoltage(context: Context, atLowest: Margin, duty: Duty, required: number): Margin {
  const { voltage } = context.values.pump;
  const section = "pump.stated";
  const delivery = deliveryOf(context, section, { ...duty, voltage_V: voltage });
  const found = marginOf(context, section, delivery, required);
  if (found.value === undefined) return atLowest;
  const because = `${found.because} That is at ${
    context.say(voltage, "voltage")
  }; how much less it is at ${
    context.say(duty.voltage_V, "voltage")
  } its figures do not tell: enter the points of its curve.`;
  return { ...found, because };
}

/** The margin, or what a flow that is only bounded says of it. */
function marginOf(
  context: Context,
  section: string,
  delivery: PumpDelivery,
  required: number,
): Margin {
  const { available_m3_s, atLeast_m3_s, atMost_m3_s, untold } = delivery;
  const margin = (available: number): number =>
    context.working.run(`${section}.margin`, pumpMargin, { available, required });
  const estimate = delivery.scaled
    ? " Its figures are for another voltage and were scaled, flow with voltage and pressure with its square: at best marginal, until a figure at this voltage is given."
    : "";
  if (available_m3_s !== undefined) {
    const because = `The pump gives ${context.say(available_m3_s, "pumpFlow")} there.${estimate}`;
    return { value: margin(available_m3_s), because, result: `${section}.margin` };
  }
  const why = untold ? UNTOLD[untold] : "";
  if (atLeast_m3_s !== undefined && margin(atLeast_m3_s) >= CRITERIA.pumpMargin.limit) {
    const because = `${why} Flow falls with pressure, so it gives at least ${
      context.say(atLeast_m3_s, "pumpFlow")
    }.${estimate}`;
    return { value: margin(atLeast_m3_s), because, result: `${section}.margin` };
  }
  if (atMost_m3_s !== undefined && margin(atMost_m3_s) < CRITERIA.pumpMargin.limit) {
    const because = `${why} Flow falls with pressure, so it gives at most ${
      context.say(atMost_m3_s, "pumpFlow")
    }.`;
    return { value: margin(atMost_m3_s), because, result: `${section}.margin` };
  }
  const todo = untold === "no-figures"
    ? "Ask for a pump that gives the aim there."
    : "Enter its flow at a pressure above that, or ask for a pump that gives the aim there.";
  return { value: undefined, because: `${why} ${todo}` };
}
