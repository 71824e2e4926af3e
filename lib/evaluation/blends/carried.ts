/** A plan with another blend in the tank: what belongs to its own fuel is carried over. */
import { InputError } from "@/lib/basics/mod.ts";
import { ambientPressure, bsfcAtEqualEfficiency } from "@/lib/engine/mod.ts";
import { scaledFlow, statedLoss } from "@/lib/flow/mod.ts";
import { fuelEnergy, fuelState } from "@/lib/fuel/mod.ts";
import {
  fieldAt,
  fuelSpecOf,
  type Plan,
  type PlanValues,
  resolvePlan,
  type Typed,
} from "@/lib/plan/mod.ts";
import { Context } from "../context.ts";
import { type DemandResults, judgeDemand } from "../subjects/demand.ts";
import { shareText, toldApart } from "./shares.ts";

/** A figure that was found on the plan's own fuel. */
export interface CarriedFigure {
  /** Where it is in the plan. */
  readonly path: "demand.bsfc" | "supply.feedLoss";
  /** By what it is carried, as the end of a sentence. */
  readonly by: string;
}

/** A plan with another blend. */
export interface BlendPlan {
  /** As it would be typed. */
  readonly plan: Plan;
  /** Figures that had to stay as typed, and why; none as a rule. */
  readonly problems: readonly string[];
}

/** How a figure is carried, and how it is typed then. */
interface Carrying extends CarriedFigure {
  readonly section: "demand" | "supply";
  readonly key: string;
  readonly unit: string;
  /** SI in one of the unit. */
  readonly scale: number;
  /** The figure on the other fuel, in SI. */
  of(own: PlanValues, other: PlanValues): number;
}

const BSFC: Carrying = {
  path: "demand.bsfc",
  section: "demand",
  key: "bsfc",
  by: "at equal efficiency, by the ratio of heating values",
  unit: "g/kWh",
  scale: 1 / 3.6e9,
  of: (own, other) =>
    bsfcAtEqualEfficiency({
      bsfc: own.demand.bsfc ?? 0,
      lowerHeatingValue: fuelEnergy(fuelSpecOf(own.fuel)),
      newLowerHeatingValue: fuelEnergy(fuelSpecOf(other.fuel)),
    }),
};

const FEED_LOSS: Carrying = {
  path: "supply.feedLoss",
  section: "supply",
  key: "feedLoss",
  by: "to the flow and density there, with the square of flow as at other flows of the same fuel",
  unit: "kPa",
  scale: 1e3,
  of: (own, other) => {
    const [measured, wanted] = [demandOf(own), demandOf(other)];
    return statedLoss({
      loss: own.supply.feedLoss ?? 0,
      flow: measured.fuelVolume_m3_s,
      newFlow: scaledFlow({
        flow: wanted.fuelVolume_m3_s,
        ...SAME_LOSS,
        density: wanted.fuel.density_kg_m3,
        newDensity: measured.fuel.density_kg_m3,
      }),
      exponent: 2,
    });
  },
};

/** The flow of the own fuel that loses what the other does: its pressure cancels out. */
const SAME_LOSS = { differential: 1e5, newDifferential: 1e5 } as const;

/**
 * Puts another blend of petrol and ethanol into a plan.
 *
 * A typed BSFC is carried at equal efficiency. A loss measured between pump and rail at full
 * flow is carried to the full flow of the blend. All else stays as typed; what is assumed
 * follows the fuel by itself.
 *
 * @param plan The plan.
 * @param share Ethanol by volume of the other blend [-], as shares are told apart.
 * @returns The plan itself where it is on that blend already.
 */
export function withShare(plan: Plan, share: number): BlendPlan {
  const { values } = resolvePlan(plan);
  if (shareOf(values) === share) return { plan, problems: [] };
  let changed: Plan = { ...plan, fuel: fuelOf(plan.fuel ?? {}, share) };
  const problems: string[] = [];
  for (const carrying of carryingsOf(plan)) {
    const { section, key } = carrying;
    try {
      const text = carried(carrying, values, resolvePlan(changed).values);
      changed = { ...changed, [section]: { ...changed[section], [key]: text } };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(
        `${shareText(share)}: ${fieldAt(carrying.path)?.label} stays as typed. ${error.message}.`,
      );
    }
  }
  return { plan: changed, problems };
}

/**
 * Tells which figures of a plan belong to its own fuel.
 *
 * @param plan The plan.
 * @returns Those that are typed and count.
 */
export function carriedOf(plan: Plan): readonly CarriedFigure[] {
  return carryingsOf(plan).map(({ path, by }) => ({ path, by }));
}

/** Ethanol in the fuel of a plan, as shares are told apart. */
export function shareOf({ fuel }: PlanValues): number {
  return toldApart(fuelSpecOf(fuel).ethanolShare);
}

function carryingsOf(plan: Plan): readonly Carrying[] {
  const { values, assumed } = resolvePlan(plan);
  const isAssumed = assumed.some(({ path }) => path === BSFC.path);
  return [
    ...(isAssumed || values.demand.bsfc === undefined ? [] : [BSFC]),
    // Nothing lost stays nothing on any fuel.
    ...(values.supply.feedLoss ? [FEED_LOSS] : []),
  ];
}

/** A share left behind with a fuel that names its own would show as an answer not used. */
function fuelOf({ ethanolShare: _, ...rest }: Typed, share: number): Typed {
  if (share === 0) return { ...rest, name: "petrol" };
  if (share === 1) return { ...rest, name: "E100" };
  return { ...rest, name: "blend", ethanolShare: shareText(share) };
}

/** Digits of a figure that is carried: more than anybody types, so that nothing shows of them. */
const DIGITS = 9;

function carried({ of, path, unit, scale }: Carrying, own: PlanValues, other: PlanValues): string {
  const value = of(own, other);
  const field = fieldAt(path);
  if (field?.type === "quantity" && !(value >= field.min && value <= field.max)) {
    throw new InputError("plan", path, `must be >= ${field.min} and <= ${field.max}`, value);
  }
  return `${Number((value / scale).toPrecision(DIGITS))} ${unit}`;
}

/** The fuel need alone, without all that an evaluation finds besides. */
function demandOf(values: PlanValues): DemandResults {
  const context = new Context(values);
  const { working } = context;
  const ambient_Pa = working.run("pressures.ambient_Pa", ambientPressure, {
    altitude: values.engine.altitude,
  });
  const fuel = fuelState(working, "fuel", fuelSpecOf(values.fuel), values.fuel.temperature);
  const demand = judgeDemand(context, { fuel, ambient_Pa });
  if (demand === undefined) {
    throw new InputError("fuel need", "demand", "must be within what methods allow", "not");
  }
  return demand;
}
