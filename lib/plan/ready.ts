/** Loads what plans are read with. */
import { unitsReady } from "@/lib/units/mod.ts";

/** What is used of zod's schema outside of this room. */
export interface PlanSchema {
  /** Judges anything; what is found wrong comes with its path. */
  safeParse(input: unknown):
    | { readonly success: true; readonly data: unknown }
    | {
      readonly success: false;
      readonly error: {
        readonly issues: readonly {
          readonly path: readonly PropertyKey[];
          readonly message: string;
        }[];
      };
    };
}

let schema: PlanSchema | undefined;

/**
 * Loads zod and the units, once. Await it before plans are read; neither is
 * loaded sooner, as each takes longer than the rest of a cold start.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { readPlan } from "./read.ts";
 *
 * await planReady();
 *
 * assertEquals(readPlan({}).ok, false);
 * ```
 */
export async function planReady(): Promise<void> {
  const [{ planZod }] = await Promise.all([import("./schema.ts"), unitsReady()]);
  schema ??= planZod();
}

/**
 * The schema of a plan.
 *
 * @throws {Error} Before {@linkcode planReady}.
 */
export function planSchema(): PlanSchema {
  if (schema === undefined) throw new Error("Cannot read a plan yet: await planReady() first");
  return schema;
}

/**
 * Gives the JSON Schema of a plan, for programs that write one.
 *
 * @returns A JSON Schema, draft 2020-12.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals((await planJsonSchema()).title, "Dryrail plan");
 * ```
 */
export async function planJsonSchema(): Promise<Readonly<Record<string, unknown>>> {
  const { planJson } = await import("./schema.ts");
  return planJson();
}
