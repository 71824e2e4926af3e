/** Steps whose cautions suit the fuel. */
import type { CautionId } from "./caution.ts";
import { cautionsOf } from "./cautions.ts";
import type { ProofContext } from "./context.ts";
import type { Line } from "./line.ts";
import type { Step } from "./rung.ts";

/** One step as it is typed: name, what to do, cautions whatever the fuel. */
export type TypedStep = readonly [id: string, text: Line, ...cautions: CautionId[]];

/** Makes steps, leaving out the cautions that the plan's fuel does not call for. */
export function stepsFor(context: ProofContext, typed: readonly TypedStep[]): Step[] {
  return typed.map(([id, text, ...cautions]) => ({
    id,
    text,
    cautions: cautionsOf(cautions, context.fuel).map((caution) => caution.id),
  }));
}
