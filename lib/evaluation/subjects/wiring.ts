/** What reaches the pump of the battery's voltage, and whether the fuse fits pump and wire. */
import { electricalPower, hydraulicPower, pumpCurrent } from "@/lib/supply/mod.ts";
import {
  FUSE_FACTOR,
  fuseFor,
  leastFuse,
  pumpWiring,
  terminalVoltage,
  WIRES,
} from "@/lib/wiring/mod.ts";
import { type Context, known } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { figuresOf } from "../supply/pumps_of.ts";
import { askedAtPeak, pointOf, type SolvedPoint, type SolvedSupply } from "../supply/solved.ts";

/** What was found for the wiring of one pump. */
export interface WiringResults {
  /** Current at full power, battery lowest [A]. */
  readonly current_A: number;
  /** The most that it draws at any operating point [A]. */
  readonly mostCurrent_A: number;
  /** Lost between battery and pump at full power [V]. */
  readonly lost_V: number;
  /** Left at its terminals [V]. */
  readonly terminal_V: number;
  /** Warming of the wire in still air; undefined where the loss was measured [K]. */
  readonly warming_K: number | undefined;
  /** Rating of the wire; undefined where it is not known [A]. */
  readonly rating_A: number | undefined;
  /** Rating of a fuse that would fit both; undefined where none does [A]. */
  readonly fuse_A: number | undefined;
}

const OWED = [CRITERIA.wireLoss, CRITERIA.fuse] as const;

/** Judges voltage lost and fuse; a pump that the engine drives has neither. */
export function judgeWiring(
  context: Context,
  solved: SolvedSupply,
): WiringResults | undefined {
  if (context.values.pump.drive === "engine") return undefined;
  return context.subject(OWED, () => {
    const peak = pointOf(solved, "peak");
    const current_A = currentOf(context, solved, peak);
    const mostCurrent_A = Math.max(
      current_A,
      ...solved.points.map(({ state }) => state?.pump?.current_A ?? 0),
    );
    const way = wayOf(context, peak?.point.battery_V ?? 0, current_A);
    const { wiring } = context.values;
    const rating_A = wiring.rating ?? (wiring.wire && WIRES[wiring.wire].rating_A);
    context.check(CRITERIA.wireLoss, {
      value: way.lost_V,
      because: `${context.say(current_A, "current")} leave ${
        context.say(way.terminal_V, "voltage")
      } of ${context.say(peak?.point.battery_V ?? 0, "voltage")} at the terminals of ${
        context.values.pump.count > 1 ? "each pump" : "the pump"
      }.${
        solved.isPumpKnown ? "" : " The current is estimated, as the pump's curve is not known."
      }`,
      ...(!solved.isPumpKnown && { atBest: "marginal" as const }),
      result: way.warming_K === undefined ? "wiring.terminal_V" : "wiring.lost_V",
    });
    const fuse = rating_A === undefined ? undefined : fuseFor(mostCurrent_A, rating_A);
    judgeFuse(context, mostCurrent_A, rating_A, fuse?.protectsWire ? fuse.rating_A : undefined);
    return {
      current_A,
      mostCurrent_A,
      ...way,
      rating_A,
      fuse_A: fuse?.protectsWire ? fuse.rating_A : undefined,
    };
  });
}

/** From the pump's own figures; else from the power that the flow to shop for takes. */
function currentOf(
  { working, values }: Context,
  solved: SolvedSupply,
  peak: SolvedPoint | undefined,
): number {
  const reading = peak?.state?.pump;
  if (reading !== undefined) return reading.current_A;
  const { count, efficiency } = values.pump;
  const { shopFlow_m3_s } = solved;
  const asked_Pa = known(askedAtPeak(solved, shopFlow_m3_s, shopFlow_m3_s), "pump.points");
  const needed = { flow: shopFlow_m3_s / count, pressureRise: Math.max(0, asked_Pa) };
  // A pump that gives more than is needed draws more, too.
  const [figure] = figuresOf(values).flatMap(({ points }) => points);
  const power_W = Math.max(
    working.run("wiring.hydraulicPower_W", hydraulicPower, needed),
    figure ? figure.flow_m3_s * figure.pressure_Pa : 0,
  );
  return working.run("wiring.current_A", pumpCurrent, {
    electricalPower: working.run("wiring.electricalPower_W", electricalPower, {
      hydraulicPower: power_W,
      efficiency: efficiency ?? 1,
    }),
    voltage: peak?.point.battery_V ?? values.injectors.lowestVoltage,
  });
}

type Way = Pick<WiringResults, "lost_V" | "terminal_V" | "warming_K">;

function wayOf({ working, values }: Context, battery_V: number, current_A: number): Way {
  const { pump, wiring } = values;
  if (pump.wireLoss !== undefined || wiring.wire === undefined) {
    const lost_V = pump.wireLoss ?? 0;
    const terminal_V = working.run("wiring.terminal_V", terminalVoltage, {
      battery: battery_V,
      lost: lost_V,
    });
    return { lost_V, terminal_V, warming_K: undefined };
  }
  const { lost_V, terminal_V, warming_K } = pumpWiring(working, "wiring", {
    battery_V,
    current_A,
    wire: WIRES[wiring.wire],
    outLength_m: wiring.outLength ?? 0,
    returnLength_m: wiring.returnLength ?? 0,
    conductorTemperature_K: wiring.temperature ?? 293.15,
    contacts_V: wiring.contacts ?? 0,
  });
  return { lost_V, terminal_V, warming_K };
}

function judgeFuse(
  context: Context,
  current_A: number,
  rating_A: number | undefined,
  fits_A: number | undefined,
): void {
  const { fuse } = context.values.wiring;
  const least_A = context.working.run("wiring.leastFuse_A", leastFuse, {
    current: current_A,
    factor: FUSE_FACTOR,
  });
  const bounds = `The pump draws up to ${context.say(current_A, "current")}: a fuse of at least ${
    context.say(least_A, "current")
  }, and at most ${
    rating_A === undefined
      ? "the wire's rating, which is not known"
      : `the wire's ${context.say(rating_A, "current")}`
  }.`;
  const advice = rating_A === undefined
    ? "Enter the wire."
    : fits_A === undefined
    ? "No fuse is both: take a thicker wire."
    : `A ${context.say(fits_A, "current")} fuse is both.`;
  context.check(CRITERIA.fuse, {
    value: rating_A === undefined ? undefined : fuse,
    limit: [least_A, Math.max(least_A, rating_A ?? least_A)],
    // Where the wire bears less than the fuse must carry, no fuse is right.
    ...(rating_A !== undefined && rating_A < least_A &&
      { limit: [least_A, least_A] as const, atBest: "fails" as const }),
    because: `${bounds} ${advice}`,
    result: "wiring.leastFuse_A",
  });
}
