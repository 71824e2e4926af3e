/** What an example is. */
import type { VNode } from "preact";

/** Examples of components by the component's name and what the example shows. */
export type Examples = Readonly<Record<string, Readonly<Record<string, () => VNode | string>>>>;
