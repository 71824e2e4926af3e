/** Fuels as materials meet them. */
import { InputError } from "@/lib/basics/mod.ts";
import type { FuelSpec } from "@/lib/fuel/mod.ts";

/** Fuels told apart by what they do to materials; E85 stands for all above E10. */
export type FuelGroup = "petrol" | "E10" | "E85" | "methanol";

/** Ethanol that counts as none, for what is carried over in a tanker [-]; ours. */
const NONE = 0.005;

/** Ethanol that counts as E10: EN 228 allows 10 %, and a measurement is a percent or two off [-]. */
const E10_TO = 0.12;

/**
 * Finds the group of a fuel. What lies between E10 and E85 counts as E85: the cautious choice.
 *
 * @param fuel What it is mostly, and its ethanol by volume.
 * @returns The group.
 * @throws {InputError} When the share is not from 0 to 1.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(fuelGroup({ base: "petrol", ethanolShare: 0.2 }), "E85");
 * ```
 */
export function fuelGroup(
  { base, ethanolShare }: Pick<FuelSpec, "base" | "ethanolShare">,
): FuelGroup {
  if (!(ethanolShare >= 0 && ethanolShare <= 1)) {
    throw new InputError("fuel's group", "ethanolShare", "must be from 0 to 1", ethanolShare);
  }
  if (base === "methanol") return "methanol";
  if (ethanolShare <= NONE) return "petrol";
  return ethanolShare <= E10_TO ? "E10" : "E85";
}
