/** What a typed pressure says it is measured from. */

/** A pressure's unit without its mark, and what the mark says. */
export interface Referenced {
  readonly unit: string;
  readonly reference: "gauge" | "absolute" | undefined;
}

const MARKED =
  /^(psi|[mk]?bar|[mkh]?pa)\s*\(?\s*(g|ga|gauge|gage|a|abs|absolute|d|diff)\.?\s*\)?$/i;

/** Takes the mark off a unit such as `psig`, `bar(a)`, `kPa abs`. */
export function takeReference(text: string): Referenced {
  const unit = text.trim();
  const match = MARKED.exec(unit);
  const [, bare, mark] = match ?? [];
  if (bare === undefined || mark === undefined) return { unit, reference: undefined };
  const first = mark.charAt(0).toLowerCase();
  if (first === "d") return { unit: bare, reference: undefined };
  return { unit: bare, reference: first === "a" ? "absolute" : "gauge" };
}
