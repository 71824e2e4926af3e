/** Steps that bring a plan of an older version up to the present one. */
import { PLAN_VERSION } from "./plan.ts";

/** A plan of unknown content. */
type Document = { readonly [key: string]: unknown };

/** The step from each older version to the next. There is no older version yet. */
const STEPS: Readonly<Record<number, (old: Document) => Document>> = {};

/** A plan of the present version, or why it can't be made. */
type Upgraded =
  | { readonly ok: true; readonly plan: unknown }
  | { readonly ok: false; readonly message: string };

/**
 * Brings a plan to the present version, step by step.
 *
 * @param input Anything; what JSON gives.
 * @returns The plan in the present version; whatever has no version is left for the schema to refuse.
 */
export function upgrade(input: unknown): Upgraded {
  let plan = input;
  for (let version = versionOf(plan); version !== undefined && version !== PLAN_VERSION;) {
    const step = Object.hasOwn(STEPS, version) ? STEPS[version] : undefined;
    if (!step) return { ok: false, message: messageFor(version) };
    plan = step(plan as Document);
    version = versionOf(plan);
  }
  return { ok: true, plan };
}

function versionOf(plan: unknown): number | undefined {
  if (typeof plan !== "object" || plan === null || !("version" in plan)) return undefined;
  return typeof plan.version === "number" ? plan.version : undefined;
}

function messageFor(version: number): string {
  return version > PLAN_VERSION
    ? `The plan is of version ${version}; this program knows versions up to ${PLAN_VERSION}. ` +
      "Open it where it was made, or update this program."
    : `No plan was ever of version ${version}; version ${PLAN_VERSION} is wanted.`;
}
