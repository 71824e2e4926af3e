/** A page that says what went wrong and what to do. */
import type { VNode } from "preact";
import { html } from "./html.ts";

/** What {@linkcode MessagePage} shows. */
export interface MessagePageProps {
  /** What is wrong, in short. */
  readonly title: string;
  /** What is wrong here. */
  readonly detail: string;
  /** What to do, the likeliest first. */
  readonly todo?: readonly string[] | undefined;
}

/** The page; it always leads back to the start. */
export function MessagePage({ title, detail, todo = [] }: MessagePageProps): VNode {
  return html`
    <div class="message">
      <h1>${title}</h1>
      <p>${detail}</p>
      ${todo.length > 0 && html`
        <ul>
          ${todo.map((each) => html`<li>${each}</li>`)}
        </ul>
      `}
      <p><a href="/">Start page</a></p>
    </div>
  `;
}
