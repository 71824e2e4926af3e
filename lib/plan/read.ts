/** Reads anything that claims to be a plan: old versions are brought up, faults are named field by field. */
import { crossFaults } from "./cross_checks.ts";
import type { Fault } from "./fault.ts";
import { resolvePlan } from "./resolve.ts";
import type { Section } from "./field.ts";
import { type Plan, PLAN_VERSION } from "./plan.ts";
import { planSchema } from "./ready.ts";
import { type PlanValues, SECTIONS } from "./sections.ts";
import { upgrade } from "./upgrades.ts";

/** The values of a plan of which even what is required may be missing. */
export type PartOfValues = {
  readonly [S in keyof PlanValues]: {
    readonly [F in keyof PlanValues[S]]: PlanValues[S][F] | undefined;
  };
};

/** A plan, or why it isn't one. */
export type Reading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads a plan.
 *
 * @param input Anything; what JSON gives.
 * @returns The plan, or a fault for each field that can't be taken.
 * @throws {Error} Before `planReady`.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { planReady } from "./ready.ts";
 *
 * await planReady();
 * const engine = { cycle: "four-stroke", cylinders: 4, powerSpeed: "7000 rpm", aspiration: "natural" };
 *
 * const good = readPlan({ version: 1, engine: { ...engine, power: "200 hp" }, fuel: { name: "E10" } });
 * const bad = readPlan({ version: 1, engine: { ...engine, power: "200" }, fuel: { name: "E10" } });
 *
 * assertEquals(good.ok, true);
 * assert(!bad.ok && bad.faults[0]?.path === "engine.power");
 * ```
 */
export function readPlan(input: unknown): Reading {
  const upgraded = upgrade(input);
  if (!upgraded.ok) return { ok: false, faults: [{ path: "version", message: upgraded.message }] };
  const parsed = planSchema().safeParse(upgraded.plan);
  if (!parsed.success) {
    const faults = faultsOf(parsed.error.issues);
    const good = goodPart(upgraded.plan, faults);
    // So that nobody puts one fault right only to be shown the next.
    return { ok: false, faults: [...faults, ...crossFaults(resolvePlan(good).values, faults)] };
  }
  const plan = parsed.data as Plan;
  const faults = crossFaults(resolvePlan(plan).values);
  return faults.length === 0 ? { ok: true, plan } : { ok: false, faults };
}

/**
 * Resolves as much of a document as holds no fault, for a form that has to show
 * what it asks for while some of its answers can't be taken.
 *
 * @param input Anything; what JSON gives.
 * @returns The values of a plan; `undefined` too where one at fault would be needed.
 * @throws {Error} Before `planReady`.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { planReady } from "./ready.ts";
 *
 * await planReady();
 * const values = valuesWithoutFault({ version: 1, engine: { power: "lots", aspiration: "boosted" } });
 *
 * assertEquals(values.engine.power, undefined);
 * assertEquals(values.engine.boost, 1e5);
 * ```
 */
export function valuesWithoutFault(input: unknown): PartOfValues {
  const parsed = planSchema().safeParse(input);
  const faults = parsed.success ? [] : faultsOf(parsed.error.issues);
  return resolvePlan(goodPart(input, faults)).values;
}

/** One fault for each path, the first that zod found. */
function faultsOf(
  issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[],
): Fault[] {
  const first = new Map<string, Fault>();
  for (const issue of issues) {
    const path = issue.path.map(String).join(".");
    if (!first.has(path)) first.set(path, { path, message: issue.message });
  }
  return [...first.values()];
}

/** The fields that hold no fault, for the rules between fields; lists are kept or left out whole. */
function goodPart(input: unknown, faults: readonly Fault[]): Plan {
  const plan: Record<string, unknown> = { version: PLAN_VERSION };
  for (const [name, { fields }] of Object.entries<Section>(SECTIONS)) {
    const typed = ownOf(input, name);
    const kept: Record<string, unknown> = {};
    for (const key of Object.keys(fields)) {
      const path = `${name}.${key}`;
      const bad = faults.some((fault) => fault.path === path || fault.path.startsWith(`${path}.`));
      const value = ownOf(typed, key);
      if (!bad && value !== undefined) kept[key] = value;
    }
    plan[name] = kept;
  }
  return plan as Plan;
}

function ownOf(value: unknown, key: string): unknown {
  return typeof value === "object" && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string, unknown>)[key]
    : undefined;
}
