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
    // All that the pump gives runs through the feed when the surplus returns from the rail.
    const pumped = returns ? pump?.available_m3_s : undefined;
    const feed_m3_s = Math.max(demand.fuelVolume_m3_s, pumped ?? 0);
    const from = pumped === undefined ? "what the engine burns" : "all that the pump gives";
    return {
      feedVelocity_m_s: velocity(context, CRITERIA.feedVelocity, {
        bore_m: supply.feedBore,
        flow_m3_s: feed_m3_s,
        from,
      }),
      suctionVelocity_m_s: given.place === "tank" ? undefined : velocity(
        context,
        CRITERIA.suctionVelocity,
        { bore_m: supply.suctionBore, flow_m3_s: pump?.available_m3_s ?? feed_m3_s, from },
      ),
      returnVelocity_m_s: returns ? returned(context, demand, pump) : undefined,
    };
  });
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
      because: "Enter the pump's flow: at idle nearly all of it goes back.",
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
  hose: { readonly bore_m: number | undefined; readonly flow_m3_s: number; readonly from: string },
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
    because: `${context.say(flow_m3_s, "flow")} (${from}) through ${
      context.say(bore_m, "length")
    }.`,
    result,
  });
  return value;
}
