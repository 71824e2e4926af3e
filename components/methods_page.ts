/** The index of all methods by subject. */
import type { VNode } from "preact";
import type { AnyMethod } from "@/lib/method/mod.ts";
import { html } from "./html.ts";

/** The methods of one subject. */
export interface ChapterShown {
  readonly id: string;
  readonly title: string;
  readonly methods: readonly AnyMethod[];
}

/** What {@linkcode MethodsPage} shows. */
export interface MethodsPageProps {
  readonly chapters: readonly ChapterShown[];
}

/** Each subject with links to its methods. */
export function MethodsPage({ chapters }: MethodsPageProps): VNode {
  const count = chapters.reduce((sum, { methods }) => sum + methods.length, 0);
  return html`
    <div class="methods">
      <h1>Methods</h1>
      <p>
        Every number on a sheet comes from one of these ${count} formulas, each with the range that it
        holds in and where it is published. A test holds what is printed here against what is run. Some
        stand ready for steps that no sheet takes yet.
      </p>
      ${chapters.map(({ id, title, methods }) =>
        html`
          <section id=${id}>
            <h2>${title}</h2>
            <ul>
              ${methods.map((method) =>
                html`<li><a href=${`/methods/${method.id}`}>${method.title}</a></li>`
              )}
            </ul>
          </section>
        `
      )}
    </div>
  `;
}
