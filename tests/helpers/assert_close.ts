/** Agreement of numbers with published ones, at the tolerance the source can promise. */
import { assert } from "@std/assert";

/**
 * Fails unless a number agrees with a published one.
 *
 * @param actual What the code gives.
 * @param published What the source prints.
 * @param relative The largest difference as a share of the published number.
 * @param what What is compared, for the message.
 */
export function assertClose(
  actual: number,
  published: number,
  relative: number,
  what = "value",
): void {
  const off = Math.abs(actual - published);
  assert(
    off <= relative * Math.abs(published),
    `${what}: ${actual} differs from the published ${published} by more than ${relative} of it`,
  );
}
