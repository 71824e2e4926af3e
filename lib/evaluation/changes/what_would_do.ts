/** For each failing or marginal check the smallest changes that mend it, found by evaluating them. */
import type { Plan } from "@/lib/plan/mod.ts";
import type { Check, Verdict } from "../check.ts";
import type { Evaluation } from "../evaluation.ts";
import { firstThat } from "./first_that.ts";
import { type Grade, gradeOf, numberMeets, shortfall } from "./grade.ts";
import { type Candidate, type CheckId, criterionOf, type Lever } from "./lever.ts";
import { LEVERS } from "./levers.ts";
import { heldBackBy, notMended } from "./reasons.ts";
import type { Change, Remedy } from "./remedy.ts";
import { startOf } from "./start.ts";
import { type Found, Trials } from "./trials.ts";

/**
 * Finds what would do: each lever that may mend a failing or marginal check is pulled until a
 * full evaluation of the changed plan has the check met, and no farther. Open checks say
 * themselves what is missing.
 *
 * @param plan A plan that `readPlan` accepted; `planReady()` must have been awaited once.
 * @param evaluation What `evaluate` found for it.
 * @param most Evaluations that it may take: about 1 ms each.
 * @returns A remedy for each such check, failing ones first; empty when there is none.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { planReady, readPlan } from "@/lib/plan/mod.ts";
 * import { evaluate } from "../evaluate.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "300 cc/min" }] },
 * });
 * assert(reading.ok);
 * const remedies = whatWouldDo(reading.plan, evaluate(reading.plan));
 * const [larger] = remedies.find(({ id }) => id === "duty-peak")?.changes ?? [];
 *
 * assertEquals(larger?.makes, "meets");
 * assertEquals(larger?.edits[0]?.from, "300 cc/min");
 * ```
 */
export function whatWouldDo(plan: Plan, evaluation: Evaluation, most?: number): Remedy[] {
  return remediesFrom(new Trials(startOf(plan, evaluation), most));
}

/** The same on trials that can be asked afterwards how many evaluations it took. */
export function remediesFrom(trials: Trials): Remedy[] {
  const { checks } = trials.start.evaluation;
  return (["fails", "marginal"] as const).flatMap((verdict) =>
    checks.filter((check) => check.verdict === verdict).map((check) => remedyOf(trials, check))
  );
}

function remedyOf(trials: Trials, check: Check): Remedy {
  const { id, title, kind, verdict } = check;
  const remedy = { id, title, kind, verdict };
  if (gradeOf(check) === 2) {
    return { ...remedy, changes: [], none: heldBackBy(check, trials.start) };
  }
  const levers = LEVERS.filter(({ mends }) => mends.includes(criterionOf(id) as CheckId));
  const changes = levers.flatMap((lever) => changeBy(trials, lever, check) ?? []);
  if (changes.length > 0) return { ...remedy, changes: changes.toSorted(inOrder), none: undefined };
  const tried = levers.filter((lever) => trials.candidates(lever).length > 0);
  const none = notMended(check, tried.map(({ name }) => name), trials.isSpent);
  return { ...remedy, changes, none };
}

/** Those that worsen nothing first, then by how well they mend. */
function inOrder(a: Change, b: Change): number {
  const harm = Number(a.worsens.length > 0) - Number(b.worsens.length > 0);
  return harm !== 0 ? harm : rankOf(b) - rankOf(a);
}

function rankOf({ makes, numberMeets }: Change): number {
  return makes === "marginal" ? Number(numberMeets) : 2;
}

/** A lever that looks like having to go so many times as far as it can is a dead end. */
const FAR = 4;

/** The smallest change by one lever that meets the check, else the smallest that comes nearest. */
function changeBy(trials: Trials, lever: Lever, check: Check): Change | undefined {
  const candidates = trials.candidates(lever);
  const at = (index: number): Candidate => candidates[index] as Candidate;
  const now = gradeOf(check);
  let best: Grade = now;
  const gradeAt = (index: number): Grade => {
    const grade = gradeIn(trials, lever, at(index), check.id);
    if (grade > best) best = grade;
    return grade;
  };
  const first = (wanted: Grade): number | undefined => {
    const reaches = (index: number): boolean => gradeAt(index) >= wanted;
    if (lever.tries === "each") {
      const found = candidates.findIndex((_, index) => reaches(index));
      return found < 0 ? undefined : found;
    }
    const { length } = candidates;
    const guess = (): number | undefined => {
      const index = guessed(check, trials.of(at(0))?.get(check.id));
      return index !== undefined && index < FAR * length ? index : undefined;
    };
    const found = firstThat({ length, reaches, guess });
    // Once all is spent, one before it may have gone unseen that is a smaller change.
    const isFirst = found === undefined || found === 0 || trials.knows(at(found - 1));
    return isFirst ? found : undefined;
  };
  const index = first(3) ?? (best > now ? first(best) : undefined);
  return index === undefined ? undefined : changeTo(trials, lever, at(index), check);
}

function gradeIn(trials: Trials, { endsCheck }: Lever, candidate: Candidate, id: string): Grade {
  const found = trials.of(candidate);
  if (found === undefined) return 0;
  if (!endsCheck || found.has(id)) return gradeOf(found.get(id));
  // What comes in its place must hold, or nothing is gained.
  const before = new Set(trials.start.evaluation.checks.map((check) => check.id));
  const others = [...found.values()].filter((check) => !before.has(check.id));
  return others.every(({ verdict }) => verdict !== "fails") ? 3 : 0;
}

/** Where a straight line through the number now and after the first change would be met. */
function guessed(now: Check, then: Check | undefined): number | undefined {
  const far = shortfall(now);
  const left = then && shortfall(then);
  if (far === undefined || left === undefined || !(left < far)) return undefined;
  const steps = Math.ceil(far / (far - left));
  return Number.isFinite(steps) ? steps - 1 : undefined;
}

function changeTo(
  trials: Trials,
  { name }: Lever,
  candidate: Candidate,
  check: Check,
): Change | undefined {
  const found = trials.of(candidate);
  if (found === undefined) return undefined;
  const then = found.get(check.id);
  return {
    name,
    edits: candidate.edits,
    plan: candidate.plan,
    makes: then?.verdict ?? "not-asked",
    value: then?.value,
    numberMeets: then !== undefined && numberMeets(then),
    worsens: worsened(trials.start.evaluation.checks, found),
  };
}

/** From best to worst: what can't be said any more is worse than what is near its limit. */
const WORSE: readonly Verdict[] = ["meets", "marginal", "open", "fails"];

/** Titles of the checks that come out worse than before, or are new and fail. */
function worsened(before: readonly Check[], found: Found): string[] {
  const verdicts = new Map(before.map(({ id, verdict }) => [id, verdict]));
  return [...found.values()].filter(({ id, verdict }) => {
    const was = verdicts.get(id);
    return was === undefined ? verdict === "fails" : WORSE.indexOf(verdict) > WORSE.indexOf(was);
  }).map(({ title }) => title);
}
