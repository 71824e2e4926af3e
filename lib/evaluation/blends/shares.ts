/** The ethanol shares that a plan is compared at. */
import { D5798 } from "@/lib/fuel/mod.ts";
import { InputError } from "@/lib/basics/mod.ts";
import type { Default, PlanValues } from "@/lib/plan/mod.ts";

/** Ethanol shares to compare, and what they rest on. */
export interface BlendShares {
  /** By volume [-], rising, none twice. */
  readonly shares: readonly number[];
  /** What stands in where the plan lists none; undefined where it does. */
  readonly assumed: Default | undefined;
}

/** Shares are told apart to a millionth of a percent: a longer text would be noise of arithmetic. */
const DECIMALS = 8;

const [LEAST_E85, MOST_E85] = D5798.ethanolShare;
const STAND_IN = [0, 0.1, LEAST_E85, 0.85] as const;
const ASSUMED: Default = {
  text: STAND_IN.map(shareText).join(", "),
  because: "Petrol, E10, and both ends of what is sold as E85: " +
    `it may hold as little as ${shareText(LEAST_E85)}, and ${shareText(0.85)} lies just beyond ` +
    `the ${shareText(MOST_E85)} at most of the standard`,
  source: "ASTM D5798",
};

/**
 * Gives the ethanol shares that a plan asks to be compared at.
 *
 * @param values The plan in numbers.
 * @returns Those of `fuel.blends`; where none is listed, petrol, E10 and both ends of E85,
 * said to be assumed.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "E10", blends: [{ ethanolShare: "85 %" }, { ethanolShare: "0 %" }] },
 * });
 * assert(reading.ok);
 *
 * assertEquals(blendsOf(resolvePlan(reading.plan).values).shares, [0, 0.85]);
 * ```
 */
export function blendsOf({ fuel }: PlanValues): BlendShares {
  const listed = fuel.blends.flatMap(({ ethanolShare }) => ethanolShare ?? []);
  return listed.length > 0
    ? { shares: inOrder(listed), assumed: undefined }
    : { shares: inOrder(STAND_IN), assumed: ASSUMED };
}

/**
 * Puts shares in rising order, each once.
 *
 * @param shares By volume [-], 0 to 1.
 * @returns The same, rounded to what is told apart.
 * @throws {InputError} When there is none, or one lies outside 0 to 1.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(inOrder([0.85, 0.1 + 0.2, 0, 0.3]), [0, 0.3, 0.85]);
 * ```
 */
export function inOrder(shares: readonly number[]): readonly number[] {
  if (shares.length === 0) {
    throw new InputError("comparison of blends", "shares", "must hold one share at least", "none");
  }
  for (const share of shares) {
    if (!(share >= 0 && share <= 1)) {
      throw new InputError("comparison of blends", "shares", "must be >= 0 and <= 1", share);
    }
  }
  const rounded = shares.map(toldApart);
  return [...new Set(rounded)].toSorted((a, b) => a - b);
}

/** A share as it is told apart from others. */
export function toldApart(share: number): number {
  return Number(share.toFixed(DECIMALS));
}

/** A share as it is typed and shown: "51 %". */
export function shareText(share: number): string {
  return `${Number((share * 100).toFixed(DECIMALS - 2))} %`;
}
