/** Whether the lift pump keeps the surge tank full, and how long that lasts without it. */
import { findRoot } from "@/lib/basics/mod.ts";
import { Run } from "@/lib/line/mod.ts";
import {
  electricPump,
  missingFlow,
  pumpMargin,
  readPump,
  type RunningPump,
  surgeSeconds,
} from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { runOf } from "../supply/system_of.ts";
import { pointOf, type SolvedSupply } from "../supply/solved.ts";
import { unstatedIn } from "../supply/unstated.ts";
import type { DemandResults } from "./demand.ts";

/** What was found for lift pump and surge tank. */
export interface SurgeResults {
  /** Flow that the lift pump brings [m^3/s]; undefined where its figures don't tell. */
  readonly lift_m3_s: number | undefined;
  /** Flow that leaves the surge tank for good [m^3/s]. */
  readonly taken_m3_s: number;
  /** Time until it is empty when the lift pump draws air [s]; undefined without its volume. */
  readonly time_s: number | undefined;
}

const OWED = [CRITERIA.liftMargin, CRITERIA.surgeTank] as const;

/** Voltage taken to be lost on the way to the lift pump [V]: the most that good wiring should lose. */
const WIRING_V = CRITERIA.wireLoss.aim;

/** Judges both; a plan without a lift pump owes neither. */
export function judgeSurge(
  context: Context,
  demand: DemandResults,
  solved: SolvedSupply,
): SurgeResults | undefined {
  const { lift } = context.values;
  if (lift.present !== "lift") return undefined;
  return context.subject(OWED, () => {
    // Where nothing returns by a line of its own, nothing leaves but what is burnt.
    const isBack = lift.returnTo !== "tank";
    const burnt_m3_s = demand.fuelVolume_m3_s;
    const pumped_m3_s = pointOf(solved, "peak")?.state?.pumped_m3_s ?? burnt_m3_s;
    const taken_m3_s = isBack ? burnt_m3_s : pumped_m3_s;
    const lift_m3_s = judgeLift(context, solved, taken_m3_s, isBack);
    const time_s = lift.surgeVolume === undefined ? undefined : context.working.run(
      "surge.time_s",
      surgeSeconds,
      {
        usableVolume: lift.surgeVolume,
        missing: context.working.run("surge.missing_m3_s", missingFlow, {
          demand: taken_m3_s,
          lift: 0,
        }),
      },
    );
    context.check(CRITERIA.surgeTank, {
      value: time_s,
      because: lift.surgeVolume === undefined
        ? `Enter its usable volume: ${
          context.say(CRITERIA.surgeTank.aim * taken_m3_s, "volume")
        } would last as long as the aim.`
        : `${context.say(lift.surgeVolume, "volume")} at ${context.say(taken_m3_s, "pumpFlow")}${
          isBack ? ", which is what is burnt" : ", as the return goes to the main tank"
        }.`,
      ...(time_s !== undefined && { result: "surge.time_s" }),
    });
    return { lift_m3_s, taken_m3_s, time_s };
  });
}

function judgeLift(
  context: Context,
  { liquid }: SolvedSupply,
  taken_m3_s: number,
  isBack: boolean,
): number | undefined {
  const { values, working } = context;
  const run = runOf(values, "lift", liquid) ?? new Run([], liquid);
  const pump = liftPump(context);
  const found = pump && liftFlow(pump, run);
  const unstated = unstatedIn([run]);
  const from = isBack ? "what the engine burns" : "all that the main pump moves";
  context.check(CRITERIA.liftMargin, {
    value: found &&
      working.run("surge.margin", pumpMargin, { available: found, required: taken_m3_s }),
    because: [
      `Needed: ${context.say(taken_m3_s, "pumpFlow")}, ${from}, at ${
        context.say(Math.max(0, run.drop_Pa(taken_m3_s)), "pressure")
      }.`,
      pump === undefined
        ? "Enter at least two points of its curve."
        : found === undefined
        ? "Its figures do not reach down to the pressure that it works at: enter a point at a lower pressure."
        : `It brings ${context.say(found, "pumpFlow")}.`,
      unstated.says,
      pump?.isScaled && "Its figures were scaled to another voltage: at best marginal.",
    ].filter(Boolean).join(" "),
    ...unstated.cap,
    ...(pump?.isScaled && { atBest: "marginal" as const }),
    ...(found !== undefined && { result: "surge.margin" }),
  });
  return found;
}

function liftPump({ values }: Context): RunningPump | undefined {
  const { lift, injectors, pump } = values;
  const points = lift.points.flatMap(({ pressure, flow }) =>
    pressure === undefined || flow === undefined ? [] : [{ pressure_Pa: pressure, flow_m3_s: flow }]
  );
  if (points.length < 2 || lift.voltage === undefined) return undefined;
  return electricPump([{ at: lift.voltage, points }], {
    battery_V: injectors.lowestVoltage,
    wires_ohm: 0,
    contacts_V: WIRING_V,
    efficiency: pump.efficiency ?? 1,
  });
}

/** Where the lift pump's curve meets what its run asks for, both tanks at one pressure. */
function liftFlow(pump: RunningPump, run: Run): number | undefined {
  const spare = (flow_m3_s: number): number =>
    readPump(pump, flow_m3_s).pressure_Pa - run.drop_Pa(flow_m3_s);
  const from = Math.max(0, pump.points[0]?.flow_m3_s ?? 0);
  const to = pump.points.at(-1)?.flow_m3_s ?? 0;
  if (!(spare(from) >= 0 && spare(to) <= 0)) return undefined;
  return findRoot(spare, { from, to, tolerance: 1e-9 * to });
}
