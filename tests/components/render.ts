/** Renders a part of a page and looks into it. */
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";

/** The part as HTML. */
export function rendered(part: VNode): string {
  return renderToString(part);
}

/** The text that a reader sees, tags taken out and spaces put together. */
export function textOf(html: string): string {
  return html.replaceAll(/<[^>]*>/g, " ").replaceAll(/\s+/g, " ").trim();
}

/** Each opening tag of an element, in order. */
export function tags(html: string, element: string): string[] {
  return [...html.matchAll(new RegExp(`<${element}\\b[^>]*>`, "g"))].map(([tag]) => tag);
}

/** The value of an attribute in a tag. */
export function attribute(tag: string | undefined, name: string): string | undefined {
  return new RegExp(` ${name}="([^"]*)"`).exec(tag ?? "")?.[1];
}
