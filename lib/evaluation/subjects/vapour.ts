/** Whether the fuel stays liquid: at the pump's inlet on a hot day, in the rail after key-off. */
import { findVapourPressure, temperatureAtVapourPressure } from "@/lib/fuel/mod.ts";
import { fuelSpecOf } from "@/lib/plan/mod.ts";
import { absoluteFromGauge, vapourMargin } from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { SolvedPoint, SolvedSupply } from "../supply/solved.ts";
import { unstatedIn } from "../supply/unstated.ts";

/** Where fuel might boil. Pressures absolute. */
export interface VapourResults {
  /** At the pump's inlet at its lowest [Pa]. */
  readonly inlet_Pa: number | undefined;
  /** Vapour pressure of the hottest fuel in the tank [Pa]. */
  readonly tankVapour_Pa: number;
  /** How much hotter the fuel might get before it boils at the inlet; undefined beyond what is known [K]. */
  readonly inletMargin_K: number | undefined;
  /** In the rail after key-off [Pa]. */
  readonly soak_Pa: number;
  /** Vapour pressure there, hot [Pa]. */
  readonly soakVapour_Pa: number;
  /** How much hotter it might get before it boils there [K]. */
  readonly soakMargin_K: number | undefined;
}

const OWED = [CRITERIA.inletVapour, CRITERIA.soakVapour] as const;

/** Judges both places. */
export function judgeVapour(
  context: Context,
  ambient_Pa: number,
  solved: SolvedSupply,
): VapourResults | undefined {
  return context.subject(OWED, () => {
    const { values, working } = context;
    const spec = fuelSpecOf(values.fuel);
    const { hottestTank, soakTemperature } = values.fuel;
    const tankVapour_Pa = findVapourPressure(working, "vapour.tank", spec, hottestTank);
    const soakVapour_Pa = findVapourPressure(working, "vapour.soak", spec, soakTemperature);
    const lowest = lowestInlet(solved);
    const inlet_Pa = lowest?.state && absolute(context, "inlet", lowest.state.inlet_Pa, ambient_Pa);
    const holds = values.supply.holdsPressure === "yes";
    const soak_Pa = absolute(context, "soak", holds ? values.regulator.setPressure : 0, ambient_Pa);
    const hotter = (pressure_Pa: number | undefined, than_K: number): number | undefined => {
      const boils_K = pressure_Pa === undefined
        ? undefined
        : temperatureAtVapourPressure(spec, pressure_Pa);
      return boils_K === undefined ? undefined : boils_K - than_K;
    };
    const results = {
      inlet_Pa,
      tankVapour_Pa,
      inletMargin_K: hotter(inlet_Pa, hottestTank),
      soak_Pa,
      soakVapour_Pa,
      soakMargin_K: hotter(soak_Pa, soakTemperature),
    };
    judgeInlet(context, solved, lowest, results);
    judgeSoak(context, results);
    return results;
  });
}

function absolute(
  { working }: Context,
  where: string,
  gauge_Pa: number,
  ambient_Pa: number,
): number {
  return working.run(`vapour.${where}_Pa`, absoluteFromGauge, {
    gauge: gauge_Pa,
    ambient: ambient_Pa,
  });
}

/** The operating point that draws the inlet down farthest; a pump to shop for has its flow at the power peak. */
function lowestInlet({ points, isPumpKnown }: SolvedSupply): SolvedPoint | undefined {
  return points.filter(({ state, point }) =>
    state !== undefined && (isPumpKnown || point.id === "peak")
  )
    .toSorted((a, b) => (a.state?.inlet_Pa ?? 0) - (b.state?.inlet_Pa ?? 0))[0];
}

function judgeInlet(
  context: Context,
  { isPumpKnown, supply }: SolvedSupply,
  lowest: SolvedPoint | undefined,
  { inlet_Pa, tankVapour_Pa, inletMargin_K }: VapourResults,
): void {
  if (inlet_Pa === undefined || lowest === undefined) {
    const because = "The flow that the pump draws is not known.";
    context.check(CRITERIA.inletVapour, { value: undefined, because });
    return;
  }
  const isTooLow = inlet_Pa <= 0;
  const value = isTooLow
    ? -tankVapour_Pa
    : context.working.run("vapour.inletMargin_Pa", vapourMargin, {
      pressure: inlet_Pa,
      vapourPressure: tankVapour_Pa,
    });
  const { suction } = supply.system;
  const unstated = unstatedIn([suction]);
  const { hottestTank } = context.values.fuel;
  context.check(CRITERIA.inletVapour, {
    value,
    because: [
      `${
        isTooLow
          ? "The suction would have to draw harder than a vacuum"
          : suction === undefined
          ? `The pump stands in the fuel, at ${context.say(inlet_Pa, "pressure")} absolute`
          : `${
            context.say(inlet_Pa, "pressure")
          } absolute at the inlet, lowest at ${lowest.point.name.toLowerCase()}`
      }; at ${context.say(hottestTank, "temperature")} the fuel boils at ${
        context.say(tankVapour_Pa, "pressure")
      }.`,
      tooHot(context, inletMargin_K),
      unstated.says,
      suction && !isPumpKnown && "The flow is that of the pump to shop for.",
    ].filter(Boolean).join(" "),
    ...unstated.cap,
    ...(!isPumpKnown && { atBest: "marginal" as const }),
    ...(!isTooLow && { result: "vapour.inletMargin_Pa" }),
  });
}

function judgeSoak(context: Context, results: VapourResults): void {
  const { soak_Pa, soakVapour_Pa, soakMargin_K } = results;
  const { values } = context;
  const value = context.working.run("vapour.soakMargin_Pa", vapourMargin, {
    pressure: soak_Pa,
    vapourPressure: soakVapour_Pa,
  });
  const holds = values.supply.holdsPressure === "yes";
  context.check(CRITERIA.soakVapour, {
    value,
    because: [
      holds
        ? `While a check valve holds ${context.say(soak_Pa, "pressure")} absolute`
        : `Nothing holds the pressure: it falls to the outside air's ${
          context.say(soak_Pa, "pressure")
        }`,
      `; at ${context.say(values.fuel.soakTemperature, "temperature")} the fuel boils at ${
        context.say(soakVapour_Pa, "pressure")
      }. `,
      tooHot(context, soakMargin_K),
      holds
        ? " A leak anywhere lets it go."
        : " The engine starts hot only once the pump has pushed the vapour out.",
    ].join(""),
    // Vapour after key-off delays a start; it does not lean out a running engine.
    ...(!holds && { atWorst: "marginal" as const }),
    result: "vapour.soakMargin_Pa",
  });
}

function tooHot(context: Context, margin_K: number | undefined): string {
  if (margin_K === undefined) return "How much hotter it may get lies beyond what is known of it.";
  const apart = context.say(Math.abs(margin_K), "temperatureDifference");
  return margin_K >= 0 ? `It may get ${apart} hotter before it boils.` : `It is ${apart} too hot.`;
}
