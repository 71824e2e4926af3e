/** The working of a plan: every method that ran, with its numbers. */
import type { VNode } from "preact";
import type { AnyMethod } from "@/lib/method/mod.ts";
import { html } from "./html.ts";
import type { PlanShown } from "./plan_shown.ts";
import { Working } from "./working.ts";

/** What {@linkcode WorkingPage} shows. */
export interface WorkingPageProps {
  readonly shown: PlanShown;
  /** Finds a method by its id. */
  readonly methodOf: (id: string) => AnyMethod | undefined;
  /** True to show every formula at once. */
  readonly isOpen?: boolean | undefined;
}

/** The page. Needs `mathmlReady()`. */
export function WorkingPage({ shown, methodOf, isOpen }: WorkingPageProps): VNode {
  const { evaluation, system, planPath } = shown;
  return html`
    <p class="trail"><a href=${`${planPath}/size`}>Back to the sheet</a></p>
    <h1>The working</h1>
    <p>
      ${evaluation.working.length} steps, in the order they ran. What stands here is the record of
      the run itself. Open one to see its formula, the numbers put in, where it is valid and its source.
    </p>
    <p class="screen-only">
      What is open is printed with its formula, the rest as a line each.${" "}${isOpen
        ? html`<a href=${`${planPath}/working`}>Close all</a>`
        : html`<a href=${`${planPath}/working?open=all`}>Open all</a>`}
    </p>
    <h2>By subject</h2>
    ${Working({ uses: evaluation.working, methodOf, system, isOpen })}
  `;
}
