/** A plan at several ethanol shares side by side, as a flex-fuel car meets them. */
import { type Plan, resolvePlan } from "@/lib/plan/mod.ts";
import { type CarriedFigure, carriedOf, shareOf, withShare } from "./blends/carried.ts";
import { type NumberAcross, numbersAcross } from "./blends/numbers.ts";
import { type AtShare, type BlendRow, rowsOf, worstRow } from "./blends/rows.ts";
import { inOrder, shareText } from "./blends/shares.ts";
import { evaluate } from "./evaluate.ts";

export type { CarriedFigure } from "./blends/carried.ts";
export type { NumberAcross } from "./blends/numbers.ts";
export type { AtShare, BlendRow, WorstCase } from "./blends/rows.ts";
export { type BlendShares, blendsOf } from "./blends/shares.ts";

/** The plan on one blend. */
export interface BlendColumn extends AtShare {
  /** The share as it is shown: "51 %". */
  readonly name: string;
  /** True for the blend that the plan itself is on. */
  readonly isOwn: boolean;
  /** The plan on that blend, as it would be typed. */
  readonly plan: Plan;
}

/** A plan on several blends. */
export interface BlendsCompared {
  /** True: there is a comparison. */
  readonly ok: true;
  /** By rising share. */
  readonly columns: readonly BlendColumn[];
  /** The numbers that a blend moves most. */
  readonly numbers: readonly NumberAcross[];
  /** Each check at every share, in the order of the evaluation. */
  readonly rows: readonly BlendRow[];
  /** The row to look at first; undefined when the share moves no check. */
  readonly worst: BlendRow | undefined;
  /** Figures typed for the plan's own fuel, that were carried to the others. */
  readonly carried: readonly CarriedFigure[];
  /** Figures that had to stay as typed, and why; none as a rule. */
  readonly problems: readonly string[];
}

/** A comparison, or why there can't be one. */
export type BlendComparison = BlendsCompared | {
  /** False: there is none. */
  readonly ok: false;
  /** Why, and what to do. */
  readonly message: string;
};

/**
 * Evaluates a plan at several ethanol shares.
 *
 * Each column is the full evaluation of the plan with that blend in the tank: nought is petrol,
 * one is ethanol. A typed BSFC belongs to the plan's own fuel and is carried at equal efficiency;
 * so does a measured loss of the feed, which is carried to the flow there. Lambda stays.
 *
 * Costs one evaluation a share.
 *
 * @param plan A plan that `readPlan` accepted; `planReady()` must have been awaited once.
 * @param shares Ethanol by volume [-], 0 to 1, in any order; one that stands twice counts once.
 * @returns Columns, numbers, checks with their worst case; for methanol why there are none.
 * @throws {InputError} When no share is given, or one lies outside 0 to 1.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { planReady, readPlan } from "@/lib/plan/mod.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "440 cc/min" }] },
 * });
 * assert(reading.ok);
 * const comparison = evaluateBlends(reading.plan, [0, 0.85]);
 * assert(comparison.ok);
 * const duty = comparison.rows.find(({ id }) => id === "duty-peak");
 *
 * assertEquals(comparison.columns.map(({ name }) => name), ["0 %", "85 %"]);
 * assertEquals(duty?.worst.share, 0.85);
 * ```
 */
export function evaluateBlends(plan: Plan, shares: readonly number[]): BlendComparison {
  const { values } = resolvePlan(plan);
  const asked = inOrder(shares);
  if (values.fuel.name === "methanol") return { ok: false, message: NO_METHANOL };
  const own = shareOf(values);
  const blends = asked.map((share) => ({ share, ...withShare(plan, share) }));
  const columns = blends.map(({ share, plan }): BlendColumn => ({
    share,
    name: shareText(share),
    isOwn: share === own,
    plan,
    evaluation: evaluate(plan),
  }));
  const rows = rowsOf(columns, values.sheet.units);
  return {
    ok: true,
    columns,
    numbers: numbersAcross(columns.map(({ evaluation }) => evaluation)),
    rows,
    worst: worstRow(rows),
    carried: columns.some(({ isOwn }) => !isOwn) ? carriedOf(plan) : [],
    problems: blends.flatMap(({ problems }) => problems),
  };
}

const NO_METHANOL = "The plan is on methanol. Only blends of petrol and ethanol can be compared: " +
  "choose petrol, one of its blends or ethanol for the fuel.";
