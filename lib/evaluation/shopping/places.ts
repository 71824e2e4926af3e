/** Where the runs of a plan go, how many there are of each, and what flows there. */
import { type DashSize, hoseBore, isDuct, type Piece } from "@/lib/line/mod.ts";
import type { PlanValues, RunName } from "@/lib/plan/mod.ts";
import { piecesOf } from "../supply/pieces_of.ts";
import { branchesOf, crossoversOf } from "../supply/ways.ts";
import type { Shop } from "./shop.ts";

/** What presses on a run: the pump, only the lift pump, or only the height of the fuel. */
export type RunSide = "pressure" | "lift" | "suction";

/** A run as somebody shops for it. */
export interface RunPlace {
  /** Which. */
  readonly run: RunName;
  /** What it is called in a sentence. */
  readonly name: string;
  /** How many alike ones there are. */
  readonly times: number;
  /** What presses on it. */
  readonly side: RunSide;
  /** What flows through one of them, the aim included [m^3/s]; undefined while it can't be found. */
  readonly flow_m3_s: number | undefined;
  /** Its pieces in the order of the flow, each with its dash size where it has one. */
  readonly pieces: readonly SizedPiece[];
}

/** A piece with its size. */
export interface SizedPiece {
  /** The piece, filters as new. */
  readonly piece: Piece;
  /** Its dash size; undefined where only its bore is known. */
  readonly dash: DashSize | undefined;
  /** The row that it was listed by. */
  readonly row: PlanValues["supply"]["feed"][number];
}

/** The runs of a plan that have pieces, in the order of the flow. */
export function placesOf({ values, flows }: Shop): RunPlace[] {
  const branches = branchesOf(values);
  const crossovers = crossoversOf(values);
  const { rail, regulator } = values;
  // What a regulator in the feed lets out does not reach the rails.
  const toRails_m3_s = regulator.layout === "return" ? flows?.pumped_m3_s : flows?.burnt_m3_s;
  const place = (
    run: RunName,
    name: string,
    times: number,
    side: RunSide,
    flow_m3_s: number | undefined,
  ): RunPlace => ({ run, name, times, side, flow_m3_s, pieces: sized(values, run) });
  const share = (of: number): number | undefined =>
    toRails_m3_s === undefined ? undefined : toRails_m3_s * of;
  return [
    place("lift", "lift run", 1, "lift", flows?.lift_m3_s),
    place("suction", "suction", 1, "suction", flows?.pumped_m3_s),
    place("feed", "feed", 1, "pressure", flows?.feed_m3_s),
    place("branch", "branch", branches, "pressure", share(1 / branches)),
    place(
      "crossover",
      "crossover",
      crossovers,
      "pressure",
      // The first rail of a series passes on what it does not take itself.
      share((rail.connection === "series" ? rail.count - 1 : 1) / rail.count),
    ),
    place("return", "return", 1, "pressure", flows?.returned?.m3_s),
  ].filter(({ pieces, times }) => pieces.length > 0 && times > 0);
}

function sized(values: PlanValues, run: RunName): SizedPiece[] {
  const rows = values.supply[run].filter(({ piece }) => piece !== undefined);
  const found = piecesOf(values, run, "clean");
  return rows.flatMap((row, i): SizedPiece[] => {
    const piece = found[i];
    return piece === undefined ? [] : [{ piece, dash: dashOf(values, row, piece), row }];
  });
}

const DASHES: readonly DashSize[] = ["-4", "-6", "-8", "-10", "-12", "-16"];

/** A bore this near to that of a dash size is of that size [m]: bores are typed to a tenth of a millimetre. */
const SAME_BORE_m = 5.1e-5;

/** The size as listed; else the one of the plan's family whose bore it is. Hard tube has none. */
function dashOf(
  { supply }: PlanValues,
  row: SizedPiece["row"],
  { kind, bore_m }: Piece,
): DashSize | undefined {
  if (row.bore === undefined && row.size !== undefined) return row.size;
  if (isDuct(kind) && kind === "tube") return undefined;
  return DASHES.find((dash) => {
    const of = hoseBore(supply.hoseFamily, dash);
    return of !== undefined && Math.abs(of - bore_m) < SAME_BORE_m;
  });
}
