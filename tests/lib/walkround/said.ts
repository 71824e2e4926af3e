/** Everything that ladder, lists and cautions say of a plan. */
import {
  CAUTIONS,
  cautionsOf,
  type Line,
  type ProofContext,
  testLadder,
  walkRoundLists,
} from "@/lib/walkround/mod.ts";

/** Every line with a name that tells where it stands. */
export function linesOf(context: ProofContext): [where: string, line: Line][] {
  const rungs = testLadder(context).flatMap((rung) =>
    [
      rung.why,
      ...rung.blocked === undefined ? [] : [rung.blocked],
      ...rung.notes,
      ...rung.fitted,
      ...rung.steps.map((step) => step.text),
      ...rung.passes,
      ...rung.ifNot.map((step) => step.text),
      ...rung.sees,
      { text: rung.title },
      { text: rung.source },
      ...rung.look.map(({ what, how }) => ({ text: `${what}: ${how}` })),
    ].map((each): [string, Line] => [rung.id, each])
  );
  const lists = walkRoundLists(context).flatMap((list) =>
    list.items.flatMap((item): [string, Line][] => [
      [`${list.id}/${item.id}`, item.text],
      [`${list.id}/${item.id}`, { text: item.with }],
    ])
  );
  const ids = CAUTIONS.map((caution) => caution.id);
  const cautions = cautionsOf(ids, context.fuel).flatMap((caution): [string, Line][] => [
    ...caution.points.map((point): [string, Line] => [caution.id, point]),
    [caution.id, { text: caution.title }],
    [caution.id, { text: caution.source }],
    [caution.id, { text: caution.defers }],
  ]);
  return [...rungs, ...lists, ...cautions];
}
