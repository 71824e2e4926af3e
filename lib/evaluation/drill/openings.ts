/** How each hole opens into the gallery: worked out only where it is shown. */
import { type Opening, openingOf, worstOpening } from "@/lib/layout/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { Evaluation } from "../evaluation.ts";
import { laidAgain } from "./laid_again.ts";

/** A hole that opens the gallery. */
export interface OpeningRow {
  /** The hole's name. */
  readonly title: string;
  /** As drawn. */
  readonly drawn: Opening;
  /** Each number at its worst over all ways that the gallery's drill may have wandered. */
  readonly worst: Opening;
}

/**
 * Lists how holes open into the gallery, as drawn and at worst.
 *
 * @param evaluation The plan evaluated.
 * @param values The plan in numbers.
 * @returns Hole by hole; none while there is no layout.
 */
export function openingRows(evaluation: Evaluation, values: PlanValues): OpeningRow[] {
  const laid = laidAgain(evaluation, values);
  if (laid === undefined) return [];
  const { layout, gallery, drift } = laid;
  return layout.holes.flatMap((hole): OpeningRow[] => {
    if (hole.feature === "plug" || !hole.opensInto.includes(gallery.id)) return [];
    const drawn = openingOf(hole, gallery);
    const worst = worstOpening(hole, gallery, drift);
    return drawn && worst ? [{ title: hole.title, drawn, worst }] : [];
  });
}
