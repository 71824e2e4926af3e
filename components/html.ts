/** `html`, bound to this program's one copy of preact. */
import htm from "htm";
import { h, type VNode } from "preact";

/** What `html` is: it takes markup and gives its one root element. */
export type Html = (strings: TemplateStringsArray, ...values: unknown[]) => VNode;

/** Markup as a tagged template; always one root element. */
// The package's types know its default export only to CommonJS programs.
export const html: Html = (htm as unknown as { bind(create: typeof h): Html }).bind(h);
