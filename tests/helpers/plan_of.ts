/** Plans for tests of what is made of them. */
import { assert } from "@std/assert";
import { type Plan, planReady, readPlan } from "@/lib/plan/mod.ts";

await planReady();

/** Reads a document that is meant to be a plan; its faults fail the test. */
export function planOf(document: unknown): Plan {
  const reading = readPlan(document);
  assert(reading.ok, JSON.stringify(reading));
  return reading.plan;
}
