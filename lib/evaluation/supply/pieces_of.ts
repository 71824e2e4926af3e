/** The pieces of a run as the plan lists them. */
import {
  FITTINGS,
  hoseBore,
  isDuct,
  isStated,
  type Piece,
  type StatedLoss,
} from "@/lib/line/mod.ts";
import { PIECES, type PlanValues } from "@/lib/plan/mod.ts";

/** The runs that a plan lists. */
export type RunName = "suction" | "feed" | "branch" | "crossover" | "return" | "lift";

type Row = PlanValues["supply"]["feed"][number];

/** Whether filters are taken as new or as due for change. */
export type FilterState = "clean" | "dirty";

/** A dirty filter loses so many times what a clean one does, where nothing is stated. Assumed. */
export const DIRTY_TIMES = 2;

/** Bore of each run where a piece does not say its own [m]. */
function boreOf({ supply }: PlanValues, run: RunName): number | undefined {
  switch (run) {
    case "suction":
      return supply.suctionBore;
    case "feed":
      return supply.feedBore;
    case "branch":
      return supply.branchBore;
    case "crossover":
      return supply.crossoverBore;
    case "return":
      return supply.returnBore;
    case "lift":
      return supply.liftBore;
  }
}

/** The pieces of a run, in the order of the flow; none where the plan has no such run. */
export function piecesOf(values: PlanValues, run: RunName, filters: FilterState): Piece[] {
  const runBore_m = boreOf(values, run);
  if (runBore_m === undefined) return [];
  const rows = values.supply[run].filter(({ piece }) => piece !== undefined);
  const ownBore = (row: Row): number | undefined => {
    if (row.piece === undefined || isStated(row.piece)) return undefined;
    const dash = row.size && hoseBore(values.supply.hoseFamily, row.size);
    return row.bore ?? dash ?? runBore_m;
  };
  // A stated loss holds for the whole part: the bore beside it makes no step.
  let before_m = rows.map(ownBore).find((bore_m) => bore_m !== undefined) ?? runBore_m;
  return rows.flatMap((row): Piece[] => {
    const kind = row.piece;
    if (kind === undefined) return [];
    before_m = ownBore(row) ?? before_m;
    return [{
      kind,
      name: PIECES[kind],
      bore_m: before_m,
      length_m: isDuct(kind) ? row.length ?? 0 : 0,
      // The fuel above the pump's inlet already says how high the suction's ends stand.
      rise_m: run === "suction" ? 0 : row.rise ?? 0,
      count: kind in FITTINGS ? row.count ?? 1 : 1,
      stated: statedOf(row, filters),
    }];
  });
}

/** The stated losses of a row; a filter that is due for change loses more by the same law. */
function statedOf(row: Row, filters: FilterState): StatedLoss[] {
  const { flow, loss } = row;
  if (flow === undefined || loss === undefined) return [];
  const isDirty = filters === "dirty" && row.piece === "filter";
  const times = isDirty ? (row.dirtyLoss ?? DIRTY_TIMES * loss) / loss : 1;
  const first = { flow_m3_s: flow, loss_Pa: times * loss };
  return row.flow2 === undefined || row.loss2 === undefined
    ? [first]
    : [first, { flow_m3_s: row.flow2, loss_Pa: times * row.loss2 }];
}
