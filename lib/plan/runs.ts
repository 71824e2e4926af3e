/** The runs of the supply: lists of pieces, each with the pieces assumed until some are listed. */
import { BRANCHES, CROSSES, IN_LINE, LIFTED, RETURNS } from "./conditions.ts";
import type { DefaultRows, Earlier } from "./field.ts";
import { PIECE_FIELDS } from "./piece.ts";
import type { Typed } from "./typed.ts";

const list = {
  type: "list",
  rows: 1,
  ordered: true,
  fields: PIECE_FIELDS,
} as const;

const hose = (length: string): Typed => ({ piece: "hose", length });
const filter = (flow: string, loss: string): Typed => ({ piece: "filter", flow, loss });
const fittings = (piece: string, count: number): Typed => ({ piece, count });

const assumed = (because: string, ...rows: readonly Typed[]): DefaultRows => ({
  rows,
  because,
  source: "ours",
});

/** The list of each run, by name. */
export const RUNS = {
  suction: {
    ...list,
    label: "Suction piece",
    title: "Suction, tank to pump",
    hint:
      "From the tank, or the surge tank, to the pump's inlet; a coarse strainer counts, a rise does not: the fuel above the inlet tells it",
    max: 8,
    ...IN_LINE,
    default: assumed(
      "A pump just below the tank behind a coarse strainer; list yours, vapour starts here",
      hose("0.6 m"),
      filter("500 L/h", "3 kPa"),
      fittings("straight", 2),
    ),
  },
  feed: {
    ...list,
    label: "Feed piece",
    title: "Feed, pump to rail",
    hint: "From the pump's outlet to the rail, to where rails part, or to a regulator in the feed",
    max: 14,
    default: (v: Earlier) =>
      v.number("supply.feedLoss") !== undefined ? undefined : assumed(
        "Tank behind, engine in front, one filter; the check valve is in the pump. List yours",
        hose("3.5 m"),
        fittings("elbow-90-swept", 2),
        fittings("straight", 2),
        filter("300 L/h", "20 kPa"),
      ),
  },
  branch: {
    ...list,
    label: "Branch piece",
    title: "Branch, end of the feed to each rail",
    hint: "From where rails part, or from a regulator in the feed, to one rail; all alike",
    max: 8,
    ...BRANCHES,
    default: (v: Earlier) => {
      const parts = (v.number("rail.count") ?? 1) > 1 && v.word("rail.connection") !== "series";
      return assumed(
        parts ? "A tee near the rails and a short hose to each" : "A short hose to the rail",
        ...(parts ? [fittings("tee-branch", 1)] : []),
        hose("0.4 m"),
        fittings("straight", 1),
      );
    },
  },
  crossover: {
    ...list,
    label: "Crossover piece",
    title: "Crossover, rail to rail",
    hint: "From one rail's end to the next rail's; all alike",
    max: 8,
    ...CROSSES,
    default: assumed(
      "Across the engine between two tight elbows",
      hose("0.5 m"),
      fittings("elbow-90-forged", 2),
    ),
  },
  return: {
    ...list,
    label: "Return piece",
    title: "Return, regulator to tank",
    hint: "From the regulator to the tank or the surge tank",
    max: 14,
    ...RETURNS,
    default: assumed(
      "As long as the feed, without a filter",
      hose("3.5 m"),
      fittings("straight", 2),
      fittings("elbow-90-swept", 1),
    ),
  },
  lift: {
    ...list,
    label: "Lift piece",
    title: "Lift, lift pump to surge tank",
    hint: "From the lift pump's outlet to the surge tank",
    max: 8,
    ...LIFTED,
    default: assumed(
      "A surge tank under the bonnet or in the boot, behind a filter of its own",
      hose("3 m"),
      fittings("straight", 2),
      filter("400 L/h", "10 kPa"),
    ),
  },
} as const;

/** The name of a run. */
export type RunName = keyof typeof RUNS;
