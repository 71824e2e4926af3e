/** The demo plans at a glance. */
import type { VNode } from "preact";
import type { Verdict } from "@/lib/evaluation/mod.ts";
import { html } from "./html.ts";
import { VerdictSummary } from "./verdict_summary.ts";

/** A demo plan as the list shows it. */
export interface Demo {
  /** Where its sheet is. */
  readonly href: string;
  readonly title: string;
  /** What it is about, in a sentence or two. */
  readonly story: string;
  /** The verdicts of its checks, in any order. */
  readonly verdicts: readonly Verdict[];
}

/** What {@linkcode DemoList} shows. */
export interface DemoListProps {
  readonly demos: readonly Demo[];
}

/** Each demo with its story and how it comes out. */
export function DemoList({ demos }: DemoListProps): VNode {
  return html`
    <ul class="demos">
      ${demos.map(({ href, title, story, verdicts }) =>
        html`
          <li>
            <h3><a href=${href}>${title}</a></h3>
            <p>${story}</p>
            ${VerdictSummary({ verdicts })}
          </li>
        `
      )}
    </ul>
  `;
}
