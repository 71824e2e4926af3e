/** Whether the hold-down screws keep the rail on its injectors. */
import { type HoldDown, holdDown, MATERIALS } from "@/lib/strength/mod.ts";
import { threadOf } from "@/lib/thread/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { BarResults } from "../subjects/bar.ts";
import { screwPlaces, stationPlaces } from "./places.ts";

/** What was found for the hold-down. */
export interface HeldResults extends HoldDown {
  /** The screws' thread as a drawing calls it out: `M6x1`. */
  readonly thread: string;
  /** Whether the screws go through the bar; else brackets hold it at their places. */
  readonly throughBar: boolean;
}

/** The coarse threads of the plan's screws. */
export const COARSE = { M5: "M5x0.8", M6: "M6x1", M8: "M8x1.25", M10: "M10x1.5" } as const;

/** Stiffness of what is clamped over that of the screw; a usual value for aluminium, ours [-]. */
const STIFFNESS_RATIO = 3;

const OWED = [
  CRITERIA.holdPreload,
  CRITERIA.holdStripping,
  CRITERIA.holdProof,
  CRITERIA.railBends,
] as const;

/** Judges preload over lift, the thread against stripping, the screw, and how far the bar bends. */
export function judgeHeld(context: Context, bar: BarResults | undefined): HeldResults | undefined {
  return context.subject(OWED, () => {
    const { rail, holdDown: plan } = context.values;
    const { places, areListed } = screwPlaces(context.values);
    const screws = [...new Set(places.map(({ at_m }) => at_m))].toSorted((a, b) => a - b);
    if (bar === undefined || rail.bore === undefined || screws.length < 2) {
      const because = bar === undefined || rail.bore === undefined
        ? "Enter the bore of the gallery and the size of the bar."
        : "Give the screws at least two places along the bar.";
      for (const criterion of OWED) context.check(criterion, { value: undefined, because });
      return undefined;
    }
    const boss = MATERIALS[plan.bossMaterial];
    const thread = COARSE[plan.thread];
    const found = holdDown(context.working, "holdDown", {
      lifts: stationPlaces(context.values).map(({ at_m }) => ({
        x_m: at_m,
        force_N: bar.liftPerInjector_N,
      })),
      screws,
      bar: {
        shape: rail.shape === "round" ? "round" : "rectangular",
        height_m: bar.height_m,
        width_m: bar.width_m,
        bore_m: rail.bore,
        elasticModulus_Pa: MATERIALS[rail.material].elasticModulus_Pa,
      },
      screw: {
        thread,
        class: plan.strengthClass,
        head: "socket",
        torque_Nm: plan.torque,
        nutFactor: plan.nutFactor,
      },
      tapped: {
        engagement_m: plan.engagement,
        shearStrength_Pa: boss.shear_Pa,
        ultimate_Pa: boss.ultimate_Pa,
      },
      underHead_Pa: MATERIALS[rail.material].yield_Pa,
      stiffnessRatio: STIFFNESS_RATIO,
      factor: CRITERIA.holdPreload.aim,
    });
    judgeScrews(context, found);
    context.check(CRITERIA.railBends, {
      value: found.deflection_m,
      because: `Between two screws or beyond the last one, at proof pressure, ${
        context.say(bar.liftPerInjector_N, "force")
      } lifting at each injector. What the bar rises, the O-rings follow.`,
    });
    return { ...found, thread, throughBar: areListed };
  });
}

function judgeScrews(context: Context, found: HoldDown): void {
  const { holdDown: plan } = context.values;
  const say = context.say.bind(context);
  const pulled = found.screws.filter(({ preloadFactor }) => preloadFactor !== undefined);
  const worst = pulled.toSorted((a, b) => (a.preloadFactor ?? 0) - (b.preloadFactor ?? 0))[0];
  const unloads = found.screws.some((screw) => screw.unloads)
    ? " One screw may be pressed upon instead of pulled: it holds nothing there."
    : "";
  const opens = found.screws.some(({ clampLeft_N }) => clampLeft_N <= 0) ? " The joint opens." : "";
  context.check(CRITERIA.holdPreload, {
    value: worst?.preloadFactor ?? CRITERIA.holdPreload.aim,
    because: `All injectors lift ${
      say(found.lift_N, "force")
    } together at proof pressure; the screw that bears most, ${say(worst?.pull_N ?? 0, "force")}. ${
      say(plan.torque, "torque")
    } clamps ${say(found.preload_N, "force")}; ${
      say(found.leastTorque_Nm, "torque")
    } would be enough for the aim.${opens}${unloads}`,
    ...(worst && { result: `holdDown.screws.${found.screws.indexOf(worst)}.preloadFactor` }),
  });
  const weakest = found.screws.toSorted((a, b) => a.strippingFactor - b.strippingFactor)[0];
  const { nominal_m } = threadOf(COARSE[plan.thread]);
  context.check(CRITERIA.holdStripping, {
    value: weakest?.strippingFactor,
    because: `${say(plan.engagement, "length")} of thread (${
      context.say(plan.engagement / nominal_m, "ratio")
    } of the diameter); the ${found.strips} strips first, at ${
      say(found.strippingLoad_N, "force")
    }. With ${say(found.engagementToBreak_m, "length")} the screw would break before it.`,
    ...(weakest && { result: `holdDown.screws.${found.screws.indexOf(weakest)}.strippingFactor` }),
  });
  context.check(CRITERIA.holdProof, {
    value: found.proofShare,
    because: `Class ${plan.strengthClass}. Screw, thread and the face under the head take ${
      say(found.mostTorque_Nm, "torque")
    } at most.`,
    result: "holdDown.proofShare",
  });
}
