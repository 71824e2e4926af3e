/** A sheet in two columns: what is entered, and what comes of it. One below the other on a phone. */
import type { ComponentChildren, VNode } from "preact";
import { html } from "./html.ts";

/** What {@linkcode SideBySide} holds. */
export interface SideBySideProps {
  /** What comes of it; first on a phone, on the right and in view on a wide screen. */
  readonly found: ComponentChildren;
  /** What is entered; not printed. */
  readonly entered: ComponentChildren;
}

/** The two columns. */
export function SideBySide({ found, entered }: SideBySideProps): VNode {
  return html`
    <div class="side-by-side">
      <div class="found">${found}</div>
      <div class="entered">${entered}</div>
    </div>
  `;
}
