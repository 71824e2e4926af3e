/** How fast the fuel runs in the hoses. */
import { meanVelocity } from "@/lib/flow/mod.ts";
import type { Criterion } from "../check.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { DemandResults } from "./demand.ts";
import type { PumpResults } from "./pump.ts";

/** Velocities in the hoses [m/s]; undefined where there is no such hose or its bore is unknown. */
export interface LineResults {
  /** From pump to rail [m/s]. */
  readonly feedVelocity_m_s: number | undefined;
  /** From tank to pump [m/s]. */
  readonly suctionVelocity_m_s: number | undefined;
  /** From regulator to tank, engine idling [m/s]. */
  readonly returnVelocity_m_s: number | undefined;
}

const OWED = [CRITERIA.feedVelocity, CRITERIA.suctionVelocity, CRITERIA.returnVelocity] as const;

/** Judges the velocities in feed, suction and return. */
export function judgeLines(
  context: Context,
  demand: DemandResults,
  pump: PumpResults | undefined,
): LineResults | undefined {
  return context.subject(OWED, () => {
    const { supply, regulator, pump: given } = context.values;
    const returns = regulator.layout === "return";
    const burnt: Stream = { flow_m3_s: demand.fuelVolume_m3_s, from: "what the engine burns" };
    const pumped: Stream | undefined = pump?.available_m3_s === undefined
      ? undefined
      : { flow_m3_s: pump.available_m3_s, from: "all that the pump gives" };
    return {
      feedVelocity_m_s: velocity(context, CRITERIA.feedVelocity, {
        bore_m: supply.feedBore,
        // All that the pump gives runs through the feed when the surplus returns from the rail.
        ...(returns ? faster(burnt, pumped) : burnt),
      }),
      suctionVelocity_m_s: given.place === "tank" ? undefined : velocity(
        context,
        CRITERIA.suctionVelocity,
        { bore_m: supply.suctionBore, ...faster(burnt, pumped) },
      ),
      returnVelocity_m_s: returns ? returned(context, demand, pump) : undefined,
    };
  });
}

/** A flow and what it is. */
interface Stream {
  readonly flow_m3_s: number;
  readonly from: string;
}

/** The pump's flow where it is known and above what is burnt. */
function faster(burnt: Stream, pumped: Stream | undefined): Stream {
  return pumped !== undefined && pumped.flow_m3_s > burnt.flow_m3_s ? pumped : burnt;
}

/** At idle nearly all of the pump's flow goes back. */
function returned(
  context: Context,
  demand: DemandResults,
  pump: PumpResults | undefined,
): number | undefined {
  const { returnBore } = context.values.supply;
  if (pump?.available_m3_s === undefined) {
    context.check(CRITERIA.returnVelocity, {
      value: undefined,
      because: context.values.pump.points.length === 0
        ? "Enter the pump's flow: at idle nearly all of it goes back."
        : "Nearly all of the pump's flow goes back at idle; its figures do not tell it at this pressure and voltage.",
    });
    return undefined;
  }
  const idle_m3_s = (demand.fuelIdle_kg_s ?? 0) / demand.fuel.density_kg_m3;
  return velocity(context, CRITERIA.returnVelocity, {
    bore_m: returnBore,
    flow_m3_s: Math.max(0, pump.available_m3_s - idle_m3_s),
    from: "the pump's flow less what idle burns",
  });
}

function velocity(
  context: Context,
  criterion: Criterion,
  hose: Stream & { readonly bore_m: number | undefined },
): number | undefined {
  const { bore_m, flow_m3_s, from } = hose;
  if (bore_m === undefined) {
    context.check(criterion, { value: undefined, because: "Enter the bore of the hose." });
    return undefined;
  }
  const result = `lines.${criterion.id}_m_s`;
  const value = context.working.run(result, meanVelocity, { flow: flow_m3_s, bore: bore_m });
  context.check(criterion, {
    value,
    because: `${context.say(flow_m3_s, "pumpFlow")} (${from}) through ${
      context.say(bore_m, "length")
    }.`,
    result,
  });
  return value;
}
