/** Finds a parallel thread by its designation. */
import { G_THREADS } from "./pipe_threads.ts";
import { STRAIGHT_THREADS, type StraightThread } from "./straight_threads.ts";

const BY_DESIGNATION: ReadonlyMap<string, StraightThread> = new Map(
  [...STRAIGHT_THREADS, ...Object.values(G_THREADS)].map((thread) => [thread.designation, thread]),
);

/**
 * The parallel thread of a designation, as the tables spell it: `M10x1`, `7/16-20`, `G 1/8`.
 *
 * @param designation The designation.
 * @returns The thread.
 * @throws {RangeError} When no table has it.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(threadOf("M10x1").tappingDrill_m, 0.009);
 * ```
 */
export function threadOf(designation: string): StraightThread {
  const thread = BY_DESIGNATION.get(designation);
  if (thread === undefined) throw new RangeError(`thread: there is no table of "${designation}"`);
  return thread;
}
