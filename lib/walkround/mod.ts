/**
 * What a plan has to be looked at for: the ladder of leak tests, walk-round lists and cautions.
 *
 * Everything here is text as data. Quantities stand apart from it, in SI with
 * their kind, so that a page fills them in with the plan's units:
 * `fillLine(line, ({ value, kind }) => formatQuantity(value, kind, system))`.
 *
 * @module
 */
export { fillLine, type Line, line, type LineValue, type Piece, pieces } from "./line.ts";
export type { ProofContext, ProofFuel } from "./context.ts";
export { proofContextOf } from "./of_evaluation.ts";
export { type Caution, type CautionId, type CautionPoint, DEFERS } from "./caution.ts";
export { CAUTIONS, cautionsOf } from "./cautions.ts";
export type { Place } from "./places.ts";
export type { Rung, RungId, Step } from "./rung.ts";
export { testLadder } from "./ladder.ts";
export { type ListId, type ListItem, type WalkRoundList, walkRoundLists } from "./lists.ts";
