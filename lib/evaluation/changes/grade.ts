/** How near a check comes to being met. */
import { type Bound, type Check, judge } from "../check.ts";

/** From past the limit to met; `number-meets`: only the verdict is held back, by what is not certain. */
export const GRADES = ["none", "marginal", "number-meets", "meets"] as const;

/** One of them, as a number that grows with it. */
export type Grade = 0 | 1 | 2 | 3;

/** The grade of a check. */
export function gradeOf(check: Check | undefined): Grade {
  switch (check?.verdict) {
    case "meets":
      return 3;
    case "marginal":
      return numberMeets(check) ? 2 : 1;
    default:
      return 0;
  }
}

/** Whether a check's number alone is on the right side of limit and aim. */
export function numberMeets(check: Check): boolean {
  const { id, title, step, kind, sense, source, value, because, limit, aim } = check;
  const criterion = {
    id,
    title,
    step,
    kind,
    sense,
    source,
    ...(limit !== undefined && { limit }),
    ...(aim !== undefined && { aim }),
  };
  return judge(criterion, { value, because }).verdict === "meets";
}

/** How far a check's number is from the right side of its aim, else of its limit; undefined where it can't be said. */
export function shortfall({ value, sense, aim, limit }: Check): number | undefined {
  const bound: Bound | undefined = aim ?? limit;
  if (value === undefined || bound === undefined) return undefined;
  if (typeof bound !== "number") return Math.max(bound[0] - value, value - bound[1]);
  return sense === "at-least" ? bound - value : value - bound;
}
