/** A result held against what it must meet. */
import type { Kind } from "@/lib/units/mod.ts";

/** How a value and its bounds are shown: as a quantity, as a plain factor like 1.2, or not at all. */
export type Shown = Kind | "factor" | "word";

/** One of the four steps of the work. */
export type Step = "size" | "drill" | "prove" | "hand-over";

/** How a check came out. */
export type Verdict = "meets" | "marginal" | "fails" | "open";

/** Which side of its bounds a value has to be on; `within` bounds are pairs. */
export type Sense = "at-most" | "at-least" | "within";

/** A bound: one number, or the two ends of a band. */
export type Bound = number | readonly [low: number, high: number];

/** What a check asks for: the same for every plan. */
export interface Criterion {
  /** Unique; in lower case with hyphens. */
  readonly id: string;
  /** What is judged, as a noun phrase. */
  readonly title: string;
  /** The step whose sheet shows it. */
  readonly step: Step;
  /** The kind of quantity, for showing value and bounds. */
  readonly kind: Shown;
  /** Which side of the bounds is the right one. */
  readonly sense: Sense;
  /** What must not be passed. */
  readonly limit?: Bound;
  /** What good practice keeps away from. */
  readonly aim?: Bound;
  /** Why there is no limit, or no aim apart from the limit. */
  readonly without?: string;
  /** Where limit and aim are from. */
  readonly source: string;
}

/** A criterion applied to a plan; what a criterion lacks is undefined here. */
export interface Check {
  /** The criterion's id, with the part's number behind it where there are several: `duty-peak-2`. */
  readonly id: string;
  /** What is judged, as a noun phrase. */
  readonly title: string;
  /** The step whose sheet shows it. */
  readonly step: Step;
  /** The kind of quantity, for showing value and bounds. */
  readonly kind: Shown;
  /** Which side of the bounds is the right one. */
  readonly sense: Sense;
  /** What must not be passed. */
  readonly limit: Bound | undefined;
  /** What good practice keeps away from. */
  readonly aim: Bound | undefined;
  /** Why there is no limit, or no aim apart from the limit. */
  readonly without: string | undefined;
  /** Where limit and aim are from. */
  readonly source: string;
  /** The result judged, in the SI unit of its kind; undefined when it can't be found. */
  readonly value: number | undefined;
  /** How far on the right side of the limit (or the aim), as a share of it; negative when past it. */
  readonly margin: number | undefined;
  /** How it came out. */
  readonly verdict: Verdict;
  /** Why, in words, with the numbers that decided. */
  readonly because: string;
  /** The result in the working that it judges: `injectors.peak.0.duty`. */
  readonly result: string | undefined;
}

/** What a plan brings to a criterion. */
export interface Judged {
  /** The number judged, in SI; undefined when it is not known. */
  readonly value: number | undefined;
  /** Why, in words, with the numbers that decided. */
  readonly because: string;
  /** The part's number where several are judged alike, from 1. */
  readonly part?: number;
  /** The result in the working that it judges. */
  readonly result?: string;
  /** The best verdict that the input allows, when the value rests on a scaling or a bound. */
  readonly atBest?: Verdict;
  /** The worst verdict that is just, where another means stands ready for what this one can't do. */
  readonly atWorst?: Verdict;
  /** A limit of the plan's own, where the criterion leaves it to the plan. */
  readonly limit?: Bound;
  /** An aim of the plan's own, likewise. */
  readonly aim?: Bound;
}

/** From best to worst. */
const ORDER: readonly Verdict[] = ["meets", "marginal", "fails"];

/**
 * Applies a criterion.
 *
 * @param criterion What is asked.
 * @param judged What the plan brings.
 * @returns The check: `open` without a value, `fails` past the limit,
 * `marginal` past the aim, else `meets`.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const duty: Criterion = {
 *   id: "duty-peak", title: "Injector duty", step: "size", kind: "ratio",
 *   sense: "at-most", limit: 0.9, aim: 0.8, source: "ours",
 * };
 *
 * assertEquals(judge(duty, { value: 0.85, because: "85 % of the time" }).verdict, "marginal");
 * assertEquals(judge(duty, { value: undefined, because: "No injector flow" }).verdict, "open");
 * ```
 */
export function judge(criterion: Criterion, judged: Judged): Check {
  const { value, because, part, result } = judged;
  const limit = judged.limit ?? criterion.limit;
  const aim = judged.aim ?? criterion.aim;
  const found = value === undefined ? "open" : verdictOf(criterion.sense, value, limit, aim);
  return {
    id: part === undefined ? criterion.id : `${criterion.id}-${part}`,
    title: part === undefined ? criterion.title : `${criterion.title}, stage ${part}`,
    step: criterion.step,
    kind: criterion.kind,
    sense: criterion.sense,
    limit,
    aim,
    without: criterion.without,
    source: criterion.source,
    value,
    margin: value === undefined ? undefined : marginOf(criterion.sense, value, limit ?? aim),
    verdict: found === "open" ? found : between(found, judged),
    because,
    result,
  };
}

function between(found: Verdict, { atBest = "meets", atWorst = "fails" }: Judged): Verdict {
  const rank = Math.max(ORDER.indexOf(found), ORDER.indexOf(atBest));
  return ORDER[Math.min(rank, ORDER.indexOf(atWorst))] ?? found;
}

function verdictOf(
  sense: Sense,
  value: number,
  limit: Bound | undefined,
  aim: Bound | undefined,
): Verdict {
  if (limit !== undefined && !keeps(sense, value, limit)) return "fails";
  if (aim !== undefined && !keeps(sense, value, aim)) return "marginal";
  return "meets";
}

/** Share of a bound by which rounding in the arithmetic may miss it. */
const ROUNDING = 1e-9;

function keeps(sense: Sense, value: number, bound: Bound): boolean {
  if (typeof bound !== "number") return atLeast(value, bound[0]) && atLeast(bound[1], value);
  return sense === "at-least" ? atLeast(value, bound) : atLeast(bound, value);
}

function atLeast(value: number, bound: number): boolean {
  return value >= bound - ROUNDING * Math.abs(bound);
}

function marginOf(sense: Sense, value: number, bound: Bound | undefined): number | undefined {
  if (bound === undefined) return undefined;
  if (typeof bound !== "number") {
    const half = (bound[1] - bound[0]) / 2;
    return half > 0 ? Math.min(value - bound[0], bound[1] - value) / half : undefined;
  }
  if (bound === 0) return undefined;
  const margin = (value - bound) / Math.abs(bound);
  return sense === "at-least" ? margin : -margin;
}
