/** What must hold within each piece of a run. */
import type { Fault } from "../fault.ts";
import { LONG } from "../piece.ts";
import { type RunName, RUNS } from "../runs.ts";
import type { Piece } from "../sections.ts";
import { asTyped, fault, type Rule, type Say } from "./rule.ts";

/** A field of a row and what is wrong with it. */
type Found = readonly [name: keyof Piece, message: string];

const isBlank = (row: Piece): boolean => Object.values(row).every((value) => value === undefined);

/** What is wrong with one row; the first thing only, as the rest may follow from it. */
function faultIn(row: Piece, say: Say): Found | undefined {
  if (isBlank(row)) return undefined;
  if (row.piece === undefined) return ["piece", "Piece: choose what it is, or clear the row."];
  if (LONG.has(row.piece)) {
    return row.length === undefined ? NO_LENGTH : undefined;
  }
  return faultInPoints(row, say);
}

const NO_LENGTH: Found = [
  "length",
  "Length: it is missing. Enter how long this piece is, like 1.2 m.",
];

/** A loss is stated at a flow, and a filter's two points have to rise together. */
function faultInPoints(
  { flow, loss, flow2, loss2, dirtyLoss }: Piece,
  say: Say,
): Found | undefined {
  const needsFirst = flow2 !== undefined || loss2 !== undefined || dirtyLoss !== undefined;
  if (flow === undefined && (loss !== undefined || needsFirst)) {
    return [
      "flow",
      "Flow: it is missing. Enter the flow at which the loss is stated, or clear both.",
    ];
  }
  if (loss === undefined && (flow !== undefined || needsFirst)) {
    return ["loss", "Loss: it is missing. Enter what is lost at that flow, or clear both."];
  }
  if (flow2 === undefined && loss2 !== undefined) {
    return [
      "flow2",
      "Second flow: it is missing. Enter the flow of the second loss, or clear both.",
    ];
  }
  if (loss2 === undefined && flow2 !== undefined) {
    return ["loss2", "Second loss: it is missing. Enter what is lost at that flow, or clear both."];
  }
  if (flow === undefined || loss === undefined) return undefined;
  if (dirtyLoss !== undefined && asTyped(dirtyLoss) < asTyped(loss)) {
    return [
      "dirtyLoss",
      `Loss when due: a dirty filter loses more than a clean one. Enter at least ${
        say(loss, "pressure")
      }.`,
    ];
  }
  if (flow2 === undefined || loss2 === undefined) return undefined;
  if (asTyped(flow2) === asTyped(flow)) {
    return [
      "flow2",
      "Second flow: it is the first once more. Enter another, or clear it and its loss.",
    ];
  }
  return (flow2 - flow) * (asTyped(loss2) - asTyped(loss)) > 0 ? undefined : [
    "loss2",
    "Second loss: more flow has to lose more. Check both points.",
  ];
}

/** What must hold within each piece of a run. */
export const RUN_RULES: readonly Rule[] = Object.keys(RUNS).map((name): Rule => ({
  of: [`supply.${name}`],
  find: ({ supply }, say) =>
    supply[name as RunName].flatMap((row, i): Fault[] => {
      const found = faultIn(row, say);
      return found ? [fault(`supply.${name}.${i}.${found[0]}`, found[1])] : [];
    }),
}));
