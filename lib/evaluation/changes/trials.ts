/** Changed plans evaluated, each once, and no more than so many. */
import { readPlan } from "@/lib/plan/mod.ts";
import type { Check } from "../check.ts";
import { evaluate } from "../evaluate.ts";
import type { Candidate, Lever } from "./lever.ts";
import type { Start } from "./start.ts";

/** The checks of a changed plan, by id. */
export type Found = ReadonlyMap<string, Check>;

/** Evaluations that one plan may take. */
export const MOST_EVALUATIONS = 150;

/** What levers were tried on one plan, and what came of it. */
export class Trials {
  readonly #candidates = new Map<Lever, readonly Candidate[]>();
  readonly #found = new Map<Candidate, Found | "no-plan">();
  #evaluations = 0;
  #isSpent = false;

  /**
   * @param start The plan that changes begin from.
   * @param most Evaluations that it may take.
   */
  constructor(readonly start: Start, readonly most: number = MOST_EVALUATIONS) {}

  /** How many evaluations it took so far. */
  get evaluations(): number {
    return this.#evaluations;
  }

  /** True once an evaluation was wanted beyond the most. */
  get isSpent(): boolean {
    return this.#isSpent;
  }

  /** The changed plans of a lever, from the smallest change up. */
  candidates(lever: Lever): readonly Candidate[] {
    let candidates = this.#candidates.get(lever);
    if (candidates === undefined) {
      candidates = lever.candidates(this.start);
      this.#candidates.set(lever, candidates);
    }
    return candidates;
  }

  /** What is found for a changed plan; undefined for one that is no plan, and once all is spent. */
  of(candidate: Candidate): Found | undefined {
    let found = this.#found.get(candidate);
    if (found === undefined) {
      if (this.#evaluations >= this.most) {
        this.#isSpent = true;
        return undefined;
      }
      found = this.#evaluated(candidate);
      this.#found.set(candidate, found);
    }
    return found === "no-plan" ? undefined : found;
  }

  /** Whether a changed plan was looked at. */
  knows(candidate: Candidate): boolean {
    return this.#found.has(candidate);
  }

  /** Rules between fields may refuse a change: a gallery as wide as the bar. */
  #evaluated({ plan }: Candidate): Found | "no-plan" {
    const reading = readPlan(plan);
    if (!reading.ok) return "no-plan";
    this.#evaluations++;
    return new Map(evaluate(reading.plan).checks.map((check) => [check.id, check]));
  }
}
