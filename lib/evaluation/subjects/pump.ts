/** Whether the pump moves enough, hot and on a low battery. */
import {
  type HeldFlow,
  heldFlow,
  neededPressure,
  type RunningPump,
  STANDARD_GRAVITY_m_s2,
  type Supply,
  type SupplyState,
} from "@/lib/supply/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { type PumpDrive, pumpsOf } from "../supply/pumps_of.ts";
import { askedAtPeak, pointOf, type SolvedSupply } from "../supply/solved.ts";
import { unstatedBeforeRegulator } from "../supply/unstated.ts";
import type { DemandResults } from "./demand.ts";
import { marginOfCurve, marginOfFigure } from "./pump_margin.ts";
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
    const unstated = unstatedBeforeRegulator(solved.supply.system);
    const voltage_V = wiring?.terminal_V;
    const wanted = `Needed: ${context.say(need_m3_s, "pumpFlow")} at ${
      context.say(pressure_Pa, "pressure")
    }${
      voltage_V === undefined ? "" : ` and ${context.say(voltage_V, "voltage")} at its terminals`
    }; with the aim ${context.say(solved.shopFlow_m3_s, "pumpFlow")}.`;
    const dirtyMargin = running &&
      heldMargin(held(running, solved.dirty()), need_m3_s);
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
        unstated.says,
      ].filter(Boolean).join(" "),
      ...unstated.cap,
      ...(margin.isEstimate && { atBest: "marginal" as const }),
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

function heldMargin({ flow_m3_s }: HeldFlow, need_m3_s: number): number | undefined {
  return flow_m3_s === undefined ? undefined : flow_m3_s / need_m3_s - 1;
}
