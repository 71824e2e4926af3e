/** All cautions, and which of them a fuel calls for. */
import { CAR_CAUTIONS } from "./car_cautions.ts";
import { type Caution, type CautionId, DEFERS, type TypedCaution } from "./caution.ts";
import type { ProofFuel } from "./context.ts";
import { FIRE_CAUTIONS } from "./fire_cautions.ts";
import { PRESSURE_CAUTIONS } from "./pressure_cautions.ts";

const TYPED: Readonly<Record<CautionId, TypedCaution>> = {
  ...FIRE_CAUTIONS,
  ...PRESSURE_CAUTIONS,
  ...CAR_CAUTIONS,
};

/** Every caution there is, whatever the fuel. */
export const CAUTIONS: readonly Caution[] = (Object.keys(TYPED) as CautionId[])
  .map((id) => ({ id, ...TYPED[id], defers: DEFERS }));

const BY_ID: ReadonlyMap<CautionId, Caution> = new Map(CAUTIONS.map((each) => [each.id, each]));

/**
 * Gives the cautions of a step, leaving out those that the fuel does not call for.
 *
 * @param ids The cautions that the step names.
 * @param fuel The fuel of the plan.
 * @returns The cautions in that order.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const ids = ["bonding", "methanol-toxic"] as const;
 * const petrol = { base: "petrol", ethanolShare: 0.1 } as const;
 *
 * assertEquals(cautionsOf(ids, petrol).map((caution) => caution.id), ["bonding"]);
 * ```
 */
export function cautionsOf(ids: readonly CautionId[], fuel: ProofFuel): Caution[] {
  return ids.flatMap((id) => {
    const caution = BY_ID.get(id);
    if (caution === undefined || caution.when?.(fuel) === false) return [];
    return [caution];
  });
}
