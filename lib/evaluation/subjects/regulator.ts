/** What pressure the injectors really see. */
import type { RegulatorState } from "@/lib/supply/mod.ts";
import { formatShare } from "@/lib/units/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { pointOf, railOf, type SolvedPoint, type SolvedSupply } from "../supply/solved.ts";
import { unstatedAtRails } from "../supply/unstated.ts";
import { judgeReturn } from "./return_line.ts";
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
  /** As held with filters due for change, where those stand between regulator and rail [Pa]. */
  readonly dirty_Pa?: number | undefined;
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
    judge(
      context,
      "pressureHeld",
      solved,
      unsolved,
      worst && {
        ...worst,
        dirty_Pa: dirtyOf(solved, worst.solved),
      },
    );
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

/** In a dead end whatever the filter loses is missing at the rail. */
function dirtyOf(
  { supply, dirty, injectors }: SolvedSupply,
  { point, pump, reference_Pa, state }: SolvedPoint,
): number | undefined {
  const { feed, branch, regulator } = supply.system;
  const between = regulator.place === "tank"
    ? [feed, branch]
    : regulator.place === "feed"
    ? [branch]
    : [];
  const hasFilter = between.some((run) =>
    run?.pieces.some(({ kind, stated }) => kind === "filter" && stated.length > 0)
  );
  if (!hasFilter || pump === undefined) return undefined;
  const found = dirty().solve({
    pump,
    demand_m3_s: point.burnt_m3_s,
    injectors,
    manifold_Pa: point.manifold_Pa,
    reference_Pa,
  }, state);
  return found.ok ? railOf(found.state) - point.manifold_Pa : undefined;
}

/** More than it should be is as wrong as less: both move the fuel. */
function shareOf({ held_Pa, should_Pa }: Across): number {
  return held_Pa > should_Pa ? should_Pa / held_Pa : Math.max(0, held_Pa / should_Pa);
}

function judge(
  context: Context,
  which: "pressureHeld" | "crankingHeld",
  { isPumpKnown, supply }: SolvedSupply,
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
  const { solved: { point, state }, held_Pa, should_Pa, dirty_Pa } = worst;
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
  const way = onTheWay_Pa > LEAST_SHOWN_Pa
    ? `; ${context.say(onTheWay_Pa, "pressure")} is lost between regulator and rail`
    : "";
  const dirty = dirty_Pa === undefined
    ? ""
    : ` With filters due for change ${context.say(dirty_Pa, "pressure")}.`;
  const unstated = unstatedAtRails(supply.system);
  context.check(CRITERIA[which], {
    value: shareOf(worst),
    because: [
      `${which === "pressureHeld" ? `Worst at ${lower(point.name)}: ` : ""}${
        context.say(held_Pa, "pressure")
      } of ${context.say(should_Pa, "pressure")}; ${
        STATES[state?.state ?? "holds"]
      }${way}.${dirty}${short}${beyond}`,
      unstated.says,
    ].filter(Boolean).join(" "),
    ...unstated.cap,
    ...(beyond !== "" && { atBest: "marginal" as const }),
  });
}

/** A loss on the way that is not worth a word [Pa]. */
const LEAST_SHOWN_Pa = 100;

/** Share of the fuel that rounding may leave out [-]. */
const SHORT = 1e-4;

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

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
