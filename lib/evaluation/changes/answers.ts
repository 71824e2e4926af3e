/** Single answers of a plan as typed: looked up, and written into a copy. */
import type { Plan, SectionName, Typed } from "@/lib/plan/mod.ts";

/** An answer: text, a whole number, the rows of a list; undefined where the box is blank. */
export type Answer = Typed[string];

/** What is typed at a path: `regulator.setPressure`, `pump.points.0.flow`, `supply.feed`. */
export function answerAt(plan: Plan, path: string): Answer {
  const [section = "", name = "", row, inner] = path.split(".");
  const answer = plan[section as SectionName]?.[name];
  if (row === undefined || inner === undefined) return answer;
  return Array.isArray(answer) ? (answer[Number(row)] as Typed | undefined)?.[inner] : undefined;
}

/**
 * A copy of a plan with other answers.
 *
 * @param plan The plan, left as it is.
 * @param answers Answers by path; undefined makes the box blank. A row is only written to where it is.
 */
export function withAnswers(plan: Plan, answers: Readonly<Record<string, Answer>>): Plan {
  return Object.entries(answers).reduce(withAnswer, plan);
}

function withAnswer(plan: Plan, [path, answer]: [string, Answer]): Plan {
  const [section = "", name = "", row, inner] = path.split(".");
  const typed = plan[section as SectionName] ?? {};
  if (row === undefined || inner === undefined) {
    return { ...plan, [section]: put(typed, name, answer) };
  }
  const rows = (typed[name] ?? []) as readonly Typed[];
  const changed = rows.map((each, i) => i === Number(row) ? put(each, inner, answer) : each);
  return { ...plan, [section]: put(typed, name, changed) };
}

/** A copy of a section or row with one answer in it, or without. */
export function put(typed: Typed, name: string, answer: Answer): Typed {
  const { [name]: _, ...rest } = typed;
  return answer === undefined ? rest : { ...rest, [name]: answer };
}
