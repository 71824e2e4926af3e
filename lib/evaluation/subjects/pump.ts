/** Whether the pump moves enough, hot and on a low battery. */
import {
  type HeldFlow,
  heldFlow,
  neededPressure,
  pumpAt,
  type PumpDelivery,
  pumpMargin,
  readPump,
  type RunningPump,
  STANDARD_GRAVITY_m_s2,
  type Supply,
  type SupplyState,
  type Untold,
} from "@/lib/supply/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { withDirtyFilters } from "../supply/dirty_filters.ts";
import { figuresOf, type PumpDrive, pumpsOf } from "../supply/pumps_of.ts";
import { askedAtPeak, pointOf, type SolvedSupply } from "../supply/solved.ts";
import type { DemandResults } from "./demand.ts";
import type { WiringResults } from "./wiring.ts";

/** What was found for the pump. */
export interface PumpResults {
  /** Flow that the engine burns [m^3/s]. */
  readonly need_m3_s: number;
  /** Flow to shop for, the aim included [m^3/s]. */
  readonly shopFlow_m3_s: number;
  /** Pressure that the pump has to add at that flow [Pa]. */
  readonly pressure_Pa: number;
  /** Voltage at its terminals, battery lowest [V]; undefined for a pump that the engine drives. */
  readonly voltage_V: number | undefined;
  /** The most that it delivers with the set pressure held, where its figures tell it [m^3/s]. */
  readonly available_m3_s: number | undefined;
  /** True when the figures were carried to another voltage by the affinity law. */
  readonly scaled: boolean;
  /** Flow beyond the need, as a share of the need. */
  readonly margin: number | undefined;
  /** The same with the filters due for change. */
  readonly dirtyMargin: number | undefined;
  /** What is held with one pump of several standing still [m^3/s]. */
  readonly stalled_m3_s: number | undefined;
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

/** Finds the flow that the pumps hold the set pressure with, and judges its margin. */
export function judgePump(
  context: Context,
  demand: DemandResults,
  solved: SolvedSupply,
  wiring: WiringResults | undefined,
): PumpResults | undefined {
  return context.subject([CRITERIA.pumpMargin], () => {
    const { values } = context;
    const need_m3_s = demand.fuelVolume_m3_s;
    const peak = pointOf(solved, "peak");
    const { state, pump: running } = peak ?? {};
    if (peak === undefined || state === undefined) {
      const because = peak?.problem ?? "No state was found at the power peak.";
      context.check(CRITERIA.pumpMargin, { value: undefined, because });
      return undefined;
    }
    const { reference_Pa } = peak;
    const pressure_Pa = askedOf(context, solved, need_m3_s, reference_Pa);
    const held = (pump: RunningPump, supply: Supply = solved.supply): HeldFlow =>
      heldFlow(supply, pump, reference_Pa, state);
    const margin = running
      ? marginOfCurve(context, running, held(running), need_m3_s)
      : marginOfFigure(context, { pressure_Pa, voltage_V: wiring?.terminal_V }, need_m3_s);
    const unstated = solved.supply.system.feed.unstated.map(({ name }) => name);
    const voltage_V = wiring?.terminal_V;
    const wanted = `Needed: ${context.say(need_m3_s, "pumpFlow")} at ${
      context.say(pressure_Pa, "pressure")
    }${
      voltage_V === undefined ? "" : ` and ${context.say(voltage_V, "voltage")} at its terminals`
    }; with the aim ${context.say(solved.shopFlow_m3_s, "pumpFlow")}.`;
    const dirtyMargin = running &&
      heldMargin(held(running, withDirtyFilters(context, demand)), need_m3_s);
    const stalled_m3_s = stalledOf(context, peak.point, held);
    const hasFilter = solved.supply.system.feed.pieces.some(({ kind }) => kind === "filter");
    context.check(CRITERIA.pumpMargin, {
      value: margin.value,
      because: [
        wanted,
        margin.because,
        stalled_m3_s !== undefined &&
        `With one of ${values.pump.count} standing still ${
          context.say(stalled_m3_s, "pumpFlow")
        } are held.`,
        dirtyMargin !== undefined && margin.value !== undefined && hasFilter &&
        `With filters due for change it is ${formatShare(dirtyMargin)}.`,
        unstated.length > 0 && `Not in it is what is lost in: ${unstated.join(", ")}.`,
      ].filter(Boolean).join(" "),
      ...((margin.isEstimate || unstated.length > 0) && { atBest: "marginal" as const }),
      ...(margin.value !== undefined && { result: "pump.margin" }),
    });
    return {
      need_m3_s,
      shopFlow_m3_s: solved.shopFlow_m3_s,
      pressure_Pa,
      voltage_V,
      available_m3_s: margin.available_m3_s,
      scaled: running?.isScaled ?? false,
      margin: margin.value,
      dirtyMargin,
      stalled_m3_s,
      returned_m3_s: returnedOf(context, state, solved.isPumpKnown),
    };
  });
}

/** What runs on through the rail; what a pump still to be bought would return is nobody's yet. */
function returnedOf(
  { values }: Context,
  state: SupplyState,
  isKnown: boolean,
): number {
  return values.regulator.layout === "return" && isKnown ? state.returned_m3_s : 0;
}

/** The pressure to shop for, with its parts put together as they are shown. */
function askedOf(
  { working }: Context,
  solved: SolvedSupply,
  need_m3_s: number,
  reference_Pa: number,
): number {
  const { system } = solved.supply;
  const asked_Pa = askedAtPeak(solved, solved.shopFlow_m3_s, need_m3_s) ?? 0;
  const railPressure = Math.max(0, system.regulator.opens_Pa + reference_Pa);
  return working.run("pump.pressure_Pa", neededPressure, {
    railPressure,
    losses: Math.max(0, asked_Pa - railPressure),
    density: system.liquid.density_kg_m3,
    gravity: STANDARD_GRAVITY_m_s2,
    // Height is in the losses, piece by piece.
    height: 0,
  });
}

/** With one pump of several standing still, the others go on if no fuel runs back through it. */
function stalledOf(
  { values }: Context,
  point: PumpDrive,
  held: (pump: RunningPump) => HeldFlow,
): number | undefined {
  const { count, arrangement, checkValves } = values.pump;
  if (count < 2) return undefined;
  if (arrangement !== "series" && checkValves === "no") return undefined;
  const rest = pumpsOf(values, point, count - 1);
  return rest && held(rest).flow_m3_s;
}

/** A margin, or why there is none. */
interface Margin {
  readonly value: number | undefined;
  readonly available_m3_s: number | undefined;
  readonly because: string;
  readonly isEstimate: boolean;
}

const SCALED =
  "Its figures are for another voltage and were scaled, flow with voltage and pressure with its square: at best marginal, until figures on both sides of this voltage are given.";

function heldMargin({ flow_m3_s }: HeldFlow, need_m3_s: number): number | undefined {
  return flow_m3_s === undefined ? undefined : flow_m3_s / need_m3_s - 1;
}

function marginOfCurve(
  context: Context,
  running: RunningPump,
  held: HeldFlow,
  required: number,
): Margin {
  const { flow_m3_s, atLeast_m3_s, atMost_m3_s } = held;
  const margin = (available: number): number =>
    context.working.run("pump.margin", pumpMargin, { available, required });
  const isEstimate = running.isScaled;
  const scaled = isEstimate ? ` ${SCALED}` : "";
  if (flow_m3_s !== undefined) {
    const { at, pressure_Pa } = readPump(running, flow_m3_s);
    const spare = Math.max(0, 1 - required / flow_m3_s);
    const worn = spare > 0 ? ` Worn by ${formatShare(spare)} it would just do.` : "";
    return {
      value: margin(flow_m3_s),
      available_m3_s: flow_m3_s,
      isEstimate,
      because: `With the pressure held it gives at most ${context.say(flow_m3_s, "pumpFlow")}, at ${
        context.say(pressure_Pa, "pressure")
      }${
        context.values.pump.drive === "engine" ? "" : ` and ${context.say(at, "voltage")}`
      }.${worn}${scaled}`,
    };
  }
  const limit = CRITERIA.pumpMargin.limit;
  if (atLeast_m3_s !== undefined && atLeast_m3_s / required - 1 >= limit) {
    return {
      value: margin(atLeast_m3_s),
      available_m3_s: undefined,
      isEstimate,
      because: `${UNTOLD["below-table"]} Flow falls with pressure, so it gives at least ${
        context.say(atLeast_m3_s, "pumpFlow")
      }.${scaled}`,
    };
  }
  if (atMost_m3_s !== undefined && atMost_m3_s / required - 1 < limit) {
    return {
      value: margin(atMost_m3_s),
      available_m3_s: undefined,
      isEstimate,
      because: `${UNTOLD["above-table"]} Flow falls with pressure, so it gives at most ${
        context.say(atMost_m3_s, "pumpFlow")
      }.`,
    };
  }
  const why = UNTOLD[atLeast_m3_s === undefined ? "above-table" : "below-table"];
  return {
    value: undefined,
    available_m3_s: undefined,
    isEstimate,
    because:
      `${why} Enter its flow at a pressure beyond that, or ask for a pump that gives the aim there.`,
  };
}

/** What a single figure says, at the lowest voltage if it can, else at its own. */
function marginOfFigure(
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
  const { available_m3_s, atLeast_m3_s, atMost_m3_s, untold: reason, scaled } = delivery;
  const margin = (available: number): number =>
    context.working.run("pump.margin", pumpMargin, { available, required });
  const estimate = scaled ? ` ${SCALED}` : "";
  const given = { available_m3_s, isEstimate: scaled };
  if (available_m3_s !== undefined) {
    const because = `The pump gives ${context.say(available_m3_s, "pumpFlow")} there.${estimate}`;
    return { ...given, value: margin(available_m3_s), because };
  }
  const why = reason ? UNTOLD[reason] : "";
  const limit = CRITERIA.pumpMargin.limit;
  if (atLeast_m3_s !== undefined && atLeast_m3_s / required - 1 >= limit) {
    const because = `${why} Flow falls with pressure, so it gives at least ${
      context.say(atLeast_m3_s, "pumpFlow")
    }.${estimate}`;
    return { ...given, value: margin(atLeast_m3_s), because };
  }
  if (atMost_m3_s !== undefined && atMost_m3_s / required - 1 < limit) {
    const because = `${why} Flow falls with pressure, so it gives at most ${
      context.say(atMost_m3_s, "pumpFlow")
    }.`;
    return { ...given, value: margin(atMost_m3_s), because };
  }
  return untold(
    `${why} Enter its flow at a pressure above that, or ask for a pump that gives the aim there.`,
  );
}

function untold(because: string): Margin {
  return { value: undefined, available_m3_s: undefined, because, isEstimate: false };
}
