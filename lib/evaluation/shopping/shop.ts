/** What the shelves of a shopping list are filled from. */
import type { Liquid } from "@/lib/line/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { pumpFlowToAskFor } from "@/lib/supply/mod.ts";
import { formatQuantity, type Kind } from "@/lib/units/mod.ts";
import type { Criterion } from "../check.ts";
import { CRITERIA } from "../criteria.ts";
import type { Evaluation } from "../evaluation.ts";
import type { SupplyPoint } from "../subjects/supply.ts";
import { fuelInWords } from "./fuel_in_words.ts";

/** Flows through the runs, with the aim where it is a pump's to give [m^3/s]. */
export interface ShopFlows {
  /** What the engine burns at full power, and the aim of the pump's margin on top. */
  readonly burnt_m3_s: number;
  /** What the pump moves at full power, by its curve where that is known and gives more. */
  readonly pumped_m3_s: number;
  /** Through the feed. */
  readonly feed_m3_s: number;
  /** What goes back at most, and where; undefined where no point could be solved. */
  readonly returned: { readonly m3_s: number; readonly point: SupplyPoint } | undefined;
  /** What the lift pump has to bring, the aim included; undefined without one. */
  readonly lift_m3_s: number | undefined;
}

/** An evaluated plan as the shelves see it. */
export class Shop {
  /** The flows; undefined while the fuel need can't be found. */
  readonly flows: ShopFlows | undefined;
  /** The liquid; undefined likewise. */
  readonly liquid: Liquid | undefined;

  /**
   * @param evaluation The evaluated plan.
   * @param values The same plan in numbers.
   */
  constructor(readonly evaluation: Evaluation, readonly values: PlanValues) {
    const fuel = evaluation.results.demand?.fuel;
    this.liquid = fuel && {
      density_kg_m3: fuel.density_kg_m3,
      viscosity_Pa_s: fuel.dynamicViscosity_Pa_s,
    };
    this.flows = flowsOf(evaluation, values);
  }

  /** Writes a quantity in the plan's units. */
  say(value: number, kind: Kind): string {
    return formatQuantity(value, kind, this.values.sheet.units);
  }

  /** Why a check came out as it did. */
  because(criterion: Criterion): string {
    return this.evaluation.checks.find(({ id }) => id === criterion.id)?.because ??
      "The fuel need could not be found.";
  }

  /** The fuel, as somebody behind a counter knows it. */
  get fuel(): string {
    return fuelInWords(this.values);
  }

  /** Pressure that every part has to be rated for that stays on during the proof [Pa, gauge]. */
  get rating_Pa(): number | undefined {
    return this.evaluation.results.proof?.pressures.wantedPressure_Pa;
  }
}

function flowsOf({ results }: Evaluation, values: PlanValues): ShopFlows | undefined {
  const { demand, supply, surge } = results;
  if (demand === undefined) return undefined;
  const burnt_m3_s = pumpFlowToAskFor({
    required: demand.fuelVolume_m3_s,
    margin: CRITERIA.pumpMargin.aim,
  });
  const peak_m3_s = supply?.points.find(({ id }) => id === "peak")?.found?.pumped_m3_s ?? 0;
  const pumped_m3_s = Math.max(burnt_m3_s, peak_m3_s);
  const { layout, place } = values.regulator;
  const isRegulatedAtTank = layout === "dead-ended" && place === "tank";
  return {
    burnt_m3_s,
    pumped_m3_s,
    feed_m3_s: isRegulatedAtTank ? burnt_m3_s : pumped_m3_s,
    returned: mostReturned(supply?.points ?? []),
    lift_m3_s: surge && pumpFlowToAskFor({
      required: surge.taken_m3_s,
      margin: CRITERIA.liftMargin.aim,
    }),
  };
}

function mostReturned(points: readonly SupplyPoint[]): ShopFlows["returned"] {
  let most: ShopFlows["returned"];
  for (const point of points) {
    const m3_s = point.found?.returned_m3_s;
    if (m3_s !== undefined && m3_s > (most?.m3_s ?? 0)) most = { m3_s, point };
  }
  return most;
}
