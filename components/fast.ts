/**
 * A tagged template for the heavy, flat parts of a page (table rows, chart marks).
 *
 * The text is written as it stands and only `${…}` is looked at: strings and
 * numbers are escaped, vnodes and arrays are rendered, `null`, `undefined` and
 * booleans are left out. It returns a vnode, so it mixes with `html` freely.
 * Unlike `html` it does not parse: attributes must be quoted, and tags closed.
 */
import { isValidElement, type VNode } from "preact";
import { jsxTemplate } from "preact/jsx-runtime";

const SPECIAL = /["&<>]/g;
const ENTITIES: Readonly<Record<string, string>> = {
  '"': "&quot;",
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
};

/** Flat markup as a tagged template. */
export function fast(strings: TemplateStringsArray, ...values: unknown[]): VNode {
  return jsxTemplate(strings as unknown as string[], ...values.map(part) as never[]);
}

/** Trusted, ready-made HTML as a vnode, without an element around it. */
export function raw(html: string): VNode {
  return jsxTemplate([html]);
}

function part(value: unknown): unknown {
  switch (typeof value) {
    case "string":
      return value.replace(SPECIAL, (character) => ENTITIES[character] ?? character);
    case "number":
    case "bigint":
      return String(value);
    case "object":
      if (value === null || Array.isArray(value) || isValidElement(value)) return value;
      throw new TypeError("fast`` was given an object that is not a vnode");
    case "function":
      throw new TypeError("fast`` was given a function");
  }
  return null;
}
