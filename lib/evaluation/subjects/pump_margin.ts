/** What a pump's figures say of its margin, whole or in part. */
import {
  type HeldFlow,
  pumpAt,
  type PumpDelivery,
  pumpMargin,
  readPump,
  type RunningPump,
  type Untold,
} from "@/lib/supply/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { figuresOf } from "../supply/pumps_of.ts";

/** Why the figures don't tell, in words. */
const UNTOLD: Readonly<Record<Untold, string>> = {
  "no-figures": "No figure of the pump is given.",
  "single-point": "One point does not tell the flow at another pressure.",
  "above-table": "The pressure lies above the pump's points.",
  "below-table": "The pressure lies below the pump's points.",
  "not-a-curve": "The pump's points do not make a falling curve.",
};

/** A margin, or why there is none. */
export interface Margin {
  readonly value: number | undefined;
  readonly available_m3_s: number | undefined;
  readonly because: string;
  readonly isEstimate: boolean;
}

const SCALED =
  "Its figures are for another voltage and were scaled, flow with voltage and pressure with its square: at best marginal, until figures on both sides of this voltage are given.";

/** What the flow that the pumps hold the pressure with is worth. */
export function marginOfCurve(
  context: Context,
  running: RunningPump,
  held: HeldFlow,
  required: number,
): Margin {
  const { flow_m3_s, atLeast_m3_s } = held;
  const isEstimate = running.isScaled;
  const scaled = isEstimate ? ` ${SCALED}` : "";
  if (flow_m3_s !== undefined) {
    const { at, pressure_Pa } = readPump(running, flow_m3_s);
    const spare = Math.max(0, 1 - required / flow_m3_s);
    const worn = spare > 0 ? ` Worn by ${formatShare(spare)} it would just do.` : "";
    return {
      value: marginOver(context, flow_m3_s, required),
      available_m3_s: flow_m3_s,
      isEstimate,
      because: `With the pressure held it gives at most ${context.say(flow_m3_s, "pumpFlow")}, at ${
        context.say(pressure_Pa, "pressure")
      }${
        context.values.pump.drive === "engine" ? "" : ` and ${context.say(at, "voltage")}`
      }.${worn}${scaled}`,
    };
  }
  const told = boundedBy(context, held, required);
  const why = UNTOLD[atLeast_m3_s === undefined ? "above-table" : "below-table"];
  if (told === undefined) return { ...untold(`${why} ${BEYOND}`), isEstimate };
  return {
    value: told.value,
    available_m3_s: undefined,
    isEstimate,
    because: `${why} ${told.because}${scaled}`,
  };
}

/** What a single figure says, at the lowest voltage if it can, else at its own. */
export function marginOfFigure(
  context: Context,
  duty: { readonly pressure_Pa: number; readonly voltage_V: number | undefined },
  required: number,
): Margin {
  const [figure] = figuresOf(context.values);
  const { drive } = context.values.pump;
  if (figure === undefined || drive === "engine" || duty.voltage_V === undefined) {
    return untold(
      drive === "engine"
        ? "Enter the speed of the pump's figures and at least two points."
        : `${UNTOLD["no-figures"]} Ask for a pump that gives the aim there.`,
    );
  }
  const at = (voltage_V: number): Margin => {
    const delivery = deliveryOf(context, { pressure_Pa: duty.pressure_Pa, voltage_V });
    return marginOfDelivery(context, delivery, required);
  };
  const lowest = at(duty.voltage_V);
  if (lowest.value !== undefined) return lowest;
  const stated = at(figure.at);
  if (stated.value === undefined) return lowest;
  return {
    ...stated,
    isEstimate: true,
    because: `${stated.because} That is at ${
      context.say(figure.at, "voltage")
    }; how much less it is at ${
      context.say(duty.voltage_V, "voltage")
    } its figures do not tell: enter the points of its curve.`,
  };
}

function deliveryOf(
  { working, values }: Context,
  duty: { readonly pressure_Pa: number; readonly voltage_V: number },
): PumpDelivery {
  return pumpAt(working, "pump", {
    curves: figuresOf(values).map(({ at, points }) => ({ voltage_V: at, points })),
    count: values.pump.count,
    arrangement: values.pump.arrangement ?? "parallel",
  }, duty);
}

/** The margin, or what a flow that is only bounded says of it. */
function marginOfDelivery(context: Context, delivery: PumpDelivery, required: number): Margin {
  const { available_m3_s, untold: reason, scaled } = delivery;
  const estimate = scaled ? ` ${SCALED}` : "";
  const given = { available_m3_s, isEstimate: scaled };
  if (available_m3_s !== undefined) {
    const because = `The pump gives ${context.say(available_m3_s, "pumpFlow")} there.${estimate}`;
    return { ...given, value: marginOver(context, available_m3_s, required), because };
  }
  const why = reason ? UNTOLD[reason] : "";
  const told = boundedBy(context, delivery, required);
  if (told === undefined) return untold(`${why} ${BEYOND}`);
  return { ...given, value: told.value, because: `${why} ${told.because}${estimate}` };
}

/** What to do where a flow is only bounded, and the bound settles nothing. */
const BEYOND =
  "Enter its flow at a pressure beyond that, or ask for a pump that gives the aim there.";

/** A margin that a bound of the flow settles, on either side of the limit. */
function boundedBy(
  context: Context,
  { atLeast_m3_s, atMost_m3_s }: Pick<HeldFlow, "atLeast_m3_s" | "atMost_m3_s">,
  required: number,
): { readonly value: number; readonly because: string } | undefined {
  const { limit } = CRITERIA.pumpMargin;
  const isEnough = atLeast_m3_s !== undefined && atLeast_m3_s / required - 1 >= limit;
  const isTooLittle = atMost_m3_s !== undefined && atMost_m3_s / required - 1 < limit;
  const available = isEnough ? atLeast_m3_s : isTooLittle ? atMost_m3_s : undefined;
  if (available === undefined) return undefined;
  return {
    value: marginOver(context, available, required),
    because: `Flow falls with pressure, so it gives at ${isEnough ? "least" : "most"} ${
      context.say(available, "pumpFlow")
    }.`,
  };
}

function untold(because: string): Margin {
  return { value: undefined, available_m3_s: undefined, because, isEstimate: false };
}

function marginOver(context: Context, available: number, required: number): number {
  return context.working.run("pump.margin", pumpMargin, { available, required });
}
