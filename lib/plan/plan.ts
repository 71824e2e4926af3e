/** What a plan is, as the user wrote it. */
import type { SectionName } from "./sections.ts";
import type { Typed } from "./typed.ts";

/** The version of the plans that this program writes. */
export const PLAN_VERSION = 1;

/**
 * A plan as the user wrote it: the version and the sections with what was typed.
 * Every quantity is text with its unit. What is left out is assumed.
 */
export type Plan =
  & { readonly version: typeof PLAN_VERSION }
  & {
    readonly [S in SectionName]?: Typed | undefined;
  };
