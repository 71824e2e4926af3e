/** A whole page: what stands around the content on each of them. */
import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Step } from "@/lib/evaluation/mod.ts";
import { html } from "./html.ts";
import { StepNav } from "./step_nav.ts";
import { sheetName } from "./steps.ts";
import { type SheetFacts, TitleBlock } from "./title_block.ts";

/** What {@linkcode renderPage} puts together. */
export interface PageProps {
  /** What the page is, for the window and the title block. */
  readonly title: string;
  /** The address of the stylesheet. */
  readonly stylesheet: string;
  /** The address of the icon. */
  readonly icon?: string | undefined;
  /** The step that the page belongs to, if any. */
  readonly step?: Step | undefined;
  /** Where the open plan's pages are, like `/p/1.abc`. */
  readonly planPath?: string | undefined;
  /** What the plan says of its sheet; left out where no plan is open. */
  readonly sheet?: SheetFacts | undefined;
  /** The sheet's name in the title block, where it is not the step's. */
  readonly sheetName?: string | undefined;
  /** The scale of the drawing on it, like "1:1". */
  readonly scale?: string | undefined;
  /** How many values are assumed. */
  readonly assumedCount?: number | undefined;
  /** How many checks are open. */
  readonly openCount?: number | undefined;
  /** True when something that was typed can't be taken. */
  readonly hasErrors?: boolean | undefined;
  /** The content. */
  readonly children: ComponentChildren;
}

/** Gives the whole page as text. */
export function renderPage(props: PageProps): string {
  const { title, stylesheet, icon, step, planPath, sheet, hasErrors, children } = props;
  const name = props.sheetName ?? (step && sheetName(step));
  const document = html`
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>${hasErrors ? "Error: " : ""}${title} – Dryrail</title>
        <link rel="stylesheet" href=${stylesheet} />
        ${icon && html`<link rel="icon" href=${icon} />`}
      </head>
      <body>
        <div class="chrome">
          <p class="skip"><a href="#content">Skip to the sheet</a></p>
          <header>
            <p class="name"><a href="/">Dryrail</a></p>
            ${StepNav({ step, planPath })}
            <p class="more"><a href="/methods">Methods</a></p>
          </header>
        </div>
        <div class="sheet">
          <main id="content" tabindex="-1">${children}</main>
          <footer>
            ${TitleBlock({
              title,
              sheet,
              name,
              scale: props.scale,
              assumedCount: props.assumedCount,
              openCount: props.openCount,
            })}
          </footer>
        </div>
      </body>
    </html>
  `;
  return `<!doctype html>${renderToString(document)}`;
}
