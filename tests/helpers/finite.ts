/** Looks for what no result may hold. */

/** Paths of numbers that are not finite, anywhere below a value. */
export function notFinite(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}

/** What must never stand in a text that people read. */
export const UNFIT_TEXT = /\b(?:NaN|Infinity|undefined|null|\[object)\b|-?\bat file:/;
