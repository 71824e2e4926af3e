/** What pressure the injectors really see, and whether the return lets the regulator work. */
import type { RegulatorState } from "@/lib/supply/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { pointOf, railOf, type SolvedPoint, type SolvedSupply } from "../supply/solved.ts";
import type { PressureResults } from "./pressures.ts";

const OWED = [CRITERIA.pressureHeld, CRITERIA.crankingHeld] as const;

const STATES: Readonly<Record<RegulatorState, string>> = {
  holds: "the regulator holds",
  shut: "the regulator is shut, as all is burnt",
  "wide-open": "the regulator is wide open and the return holds the pressure up",
};

/** Pressure across the injectors at a point, as held and as it should be [Pa]. */
interface Across {
  readonly solved: SolvedPoint;
  readonly held_Pa: number;
  readonly should_Pa: number;
}

/** Judges the pressure that is held, running and cranking, and the return's back-pressure. */
export function judgeRegulator(context: Context, solved: SolvedSupply): void {
  context.subject(OWED, () => {
    const running = solved.points.filter(({ point }) =>
      point.id !== "prime" && point.id !== "cranking"
    );
    const across = running.flatMap((each) => acrossOf(context, each));
    const unsolved = running.find(({ problem }) => problem !== undefined);
    const worst = across.toSorted((a, b) => shareOf(a) - shareOf(b))[0];
    judge(context, "pressureHeld", solved, unsolved, worst);
    const cranking = pointOf(solved, "cranking");
    judge(
      context,
      "crankingHeld",
      solved,
      cranking?.problem === undefined ? undefined : cranking,
      cranking && acrossOf(context, cranking)[0],
    );
  });
  context.subject([CRITERIA.returnBack], () => judgeReturn(context, solved));
}

function acrossOf({ values }: Context, solved: SolvedPoint): Across[] {
  const { state, point, reference_Pa } = solved;
  if (state === undefined) return [];
  const should_Pa = values.regulator.setPressure + reference_Pa - point.manifold_Pa;
  return [{ solved, held_Pa: railOf(state) - point.manifold_Pa, should_Pa }];
}

/** More than it should be is as wrong as less: both move the fuel. */
function shareOf({ held_Pa, should_Pa }: Across): number {
  return held_Pa > should_Pa ? should_Pa / held_Pa : Math.max(0, held_Pa / should_Pa);
}

function judge(
  context: Context,
  which: "pressureHeld" | "crankingHeld",
  { isPumpKnown }: SolvedSupply,
  unsolved: SolvedPoint | undefined,
  worst: Across | undefined,
): void {
  if (unsolved?.isStill) {
    context.check(CRITERIA[which], {
      value: 0,
      because: `${unsolved.point.name}: ${unsolved.problem}`,
    });
    return;
  }
  if (unsolved !== undefined || worst === undefined || !isPumpKnown) {
    context.check(CRITERIA[which], {
      value: undefined,
      because: unsolved?.problem !== undefined
        ? `${unsolved.point.name}: ${unsolved.problem}`
        : "The pump's curve decides: enter at least two of its points.",
    });
    return;
  }
  const { solved: { point, state }, held_Pa, should_Pa } = worst;
  const injected = state?.injected_m3_s ?? 0;
  const short = point.burnt_m3_s > 0 && injected < point.burnt_m3_s * (1 - SHORT)
    ? ` The injectors pass only ${formatShare(injected / point.burnt_m3_s)} of the fuel, held open.`
    : "";
  const beyond = state?.pump !== undefined && state.pump.within !== "within"
    ? " That lies beyond the pump's figures, whose last stretch was carried on: at best marginal."
    : "";
  const onTheWay_Pa = context.values.regulator.layout === "return" || state === undefined
    ? 0
    : state.regulator_Pa - railOf(state);
  const way = onTheWay_Pa > 0
    ? `; ${context.say(onTheWay_Pa, "pressure")} is lost between regulator and rail`
    : "";
  context.check(CRITERIA[which], {
    value: shareOf(worst),
    because: `${which === "pressureHeld" ? `Worst at ${lower(point.name)}: ` : ""}${
      context.say(held_Pa, "pressure")
    } of ${context.say(should_Pa, "pressure")}; ${
      STATES[state?.state ?? "holds"]
    }${way}.${short}${beyond}`,
    ...(beyond !== "" && { atBest: "marginal" as const }),
  });
}

/** Share of the fuel that rounding may leave out [-]. */
const SHORT = 1e-4;

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** At idle nearly all of the pump's flow goes back, against the return's own pressure. */
function judgeReturn(context: Context, solved: SolvedSupply): void {
  const { regulator } = context.values;
  if (regulator.layout === "dead-ended" && regulator.place !== "feed") return;
  const idle = pointOf(solved, "idle");
  const { state } = idle ?? {};
  if (idle === undefined || state === undefined || !solved.isPumpKnown) {
    context.check(CRITERIA.returnBack, {
      value: undefined,
      because: idle?.problem ??
        "Enter at least two points of the pump's curve: at idle nearly all of its flow goes back.",
    });
    return;
  }
  const { leastDrop, dropFlow } = regulator;
  const back = `At idle ${context.say(state.returned_m3_s, "pumpFlow")} go back and make ${
    context.say(state.back_Pa, "pressure")
  } before the return`;
  const set_Pa = regulator.setPressure + idle.reference_Pa;
  const least_Pa = leastDrop === undefined || dropFlow === undefined
    ? undefined
    : leastDrop * (state.returned_m3_s / dropFlow) ** 2;
  const room_Pa = set_Pa - (least_Pa ?? 0);
  const value = room_Pa <= 0 ? Infinity : Math.max(0, state.back_Pa) / room_Pa;
  const isHopeless = value >= CRITERIA.returnBack.limit;
  context.check(CRITERIA.returnBack, {
    value: least_Pa === undefined && !isHopeless ? undefined : Math.min(value, MOST_SHOWN),
    because: least_Pa === undefined
      ? `${back}, against ${
        context.say(set_Pa, "pressure")
      } that the rail should have then. Enter the regulator's least drop wide open: it comes on top.`
      : `${back}; wide open the regulator loses ${
        context.say(least_Pa, "pressure")
      } more, and the rail should have ${context.say(set_Pa, "pressure")}.`,
  });
}

/** A return that leaves the regulator no room at all is shown as this many times too much. */
const MOST_SHOWN = 99;

/** The pressures as the injectors see them, where the supply was solved. */
export function heldPressures(
  { values }: Context,
  pressures: PressureResults,
  solved: SolvedSupply,
): PressureResults {
  const held = (
    id: "idle" | "peak" | "maximum",
  ): { rail_Pa: number; across_Pa: number } | undefined => {
    const at = pointOf(solved, id);
    if (at?.state === undefined) return undefined;
    const rail_Pa = railOf(at.state);
    return { rail_Pa, across_Pa: rail_Pa - at.point.manifold_Pa };
  };
  if (values.rail.bore === undefined && !solved.isPumpKnown) return pressures;
  const idle = held("idle");
  const full = [held("peak"), held("maximum")].flatMap((each) => each ?? [])
    .toSorted((a, b) => a.across_Pa - b.across_Pa)[0];
  return {
    ...pressures,
    ...(full && { railPeak_Pa: full.rail_Pa, differentialPeak_Pa: full.across_Pa }),
    ...(idle && { railIdle_Pa: idle.rail_Pa, differentialIdle_Pa: idle.across_Pa }),
  };
}
