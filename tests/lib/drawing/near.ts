/** Lengths on paper compared in millimetres. */
import { assert } from "@std/assert";

/** Asserts that two lengths differ by no more than so much [mm]. */
export function assertNear(actual: number, wanted: number, within: number, what = "length"): void {
  assert(
    Math.abs(actual - wanted) <= within,
    `${what}: ${actual}, wanted ${wanted} within ${within}`,
  );
}
