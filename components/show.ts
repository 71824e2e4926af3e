/** Values and bounds as the sheets write them. */
import type { Bound, Sense, Shown } from "@/lib/evaluation/mod.ts";
import { formatNumber, formatQuantity, formatShare, type System } from "@/lib/units/mod.ts";

/** A value in the plan's units. */
export function showValue(value: number, kind: Shown, system: System): string {
  if (kind === "word") return "";
  if (kind === "factor") return formatNumber(value);
  return kind === "ratio" ? formatShare(value) : formatQuantity(value, kind, system);
}

const SENSES: Readonly<Record<Sense, string>> = {
  "at-most": "at most ",
  "at-least": "at least ",
  within: "",
};

/** A bound with the side that it has to be kept on: "at most 90.0 %". */
export function showBound(bound: Bound, sense: Sense, kind: Shown, system: System): string {
  if (typeof bound === "number") return SENSES[sense] + showValue(bound, kind, system);
  const [low, high] = bound.map((end) => showValue(end, kind, system));
  return `${low} to ${high}`;
}

/** Beyond this a margin tells nothing more. */
const MOST_SHARE = 2;

/** A share in whole percent, or one decimal where that is small: "-12 %", "3.4 %". */
export function showShare(share: number): string {
  if (share > MOST_SHARE) return `over ${MOST_SHARE * 100} %`;
  if (share < -1) return "beyond −100 %";
  const percent = share * 100;
  return `${percent.toFixed(Math.abs(percent) < 9.95 ? 1 : 0).replace("-", "−")} %`;
}

/** A text with a full stop, unless it ends with a mark of its own. */
export function sentence(text: string): string {
  return /[.!?:]$/.test(text) ? text : `${text}.`;
}

/** A text that begins with a capital letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
