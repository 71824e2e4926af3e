/** Hoses by length and fittings by count, each kind and size once. */
import { FITTINGS, isDuct, isStated } from "@/lib/line/mod.ts";
import { PIECES, SECTIONS } from "@/lib/plan/mod.ts";
import { branchesOf } from "../supply/ways.ts";
import {
  about,
  atLeast,
  pieces,
  type ShoppingFact,
  type ShoppingFigure,
  type ShoppingShare,
  sumOf,
  type Wanted,
} from "./item.ts";
import type { RunPlace, RunSide, SizedPiece } from "./places.ts";
import type { Shop } from "./shop.ts";

/** What is alike, and where it goes. */
interface Tally {
  readonly kind: string;
  readonly side: RunSide;
  readonly sized: SizedPiece;
  readonly shares: ShoppingShare[];
  readonly from: Set<string>;
}

/** Hoses and tubes, each kind and size with its whole length. */
export function wantedHoses(shop: Shop, places: readonly RunPlace[]): Wanted[] {
  const all = tally(places, (each) => isDuct(each.piece.kind), ({ piece }) => piece.length_m);
  return all.map((each) => ({
    ...common(shop, each),
    quantity: { unit: "length", value_m: sumOf(each.shares) },
    facts: hoseFacts(shop, each),
    because: "As laid in the plan; ends and waste come on top.",
  }));
}

/** Fittings, each kind and size with its count. */
export function wantedFittings(shop: Shop, places: readonly RunPlace[]): Wanted[] {
  const all = tally(places, (each) => each.piece.kind in FITTINGS, ({ piece }) => piece.count);
  return all.map((each) => {
    const shared = sharedTee(shop, each);
    return {
      ...common(shop, each),
      quantity: pieces(sumOf(each.shares) - shared),
      because: shared > 0
        ? "The branches part at a tee that each of them lists: it is counted once at each parting."
        : undefined,
    };
  });
}

/** A tee is the same part whichever way fuel runs through it. */
function kindOf({ piece }: SizedPiece): string {
  return piece.kind === "tee-run" || piece.kind === "tee-branch" ? "tee" : piece.kind;
}

function titleOf(kind: string): string {
  if (kind === "tee") return "Tee";
  const says = PIECES[kind as keyof typeof PIECES];
  return says.charAt(0).toUpperCase() + says.slice(1);
}

/** N branches part at N − 1 tees, and each lists the one that it leaves by. */
function sharedTee({ values }: Shop, { kind, shares }: Tally): number {
  const isListed = shares.some(({ place }) => place === "branch");
  return kind === "tee" && isListed && branchesOf(values) > 1 ? 1 : 0;
}

function sizeOf({ dash, piece }: SizedPiece): string {
  return dash ?? `bore-${(piece.bore_m * 1e3).toFixed(2).replace(".", "-")}mm`;
}

function tally(
  places: readonly RunPlace[],
  isWanted: (sized: SizedPiece) => boolean,
  amountOf: (sized: SizedPiece) => number,
): Tally[] {
  const found = new Map<string, Tally>();
  for (const { run, name, times, side, pieces } of places) {
    for (const sized of pieces.filter(isWanted)) {
      const kind = kindOf(sized);
      const key = `${side} ${kind} ${sizeOf(sized)}`;
      const known = found.get(key) ?? { kind, side, sized, shares: [], from: new Set<string>() };
      found.set(key, known);
      addShare(known.shares, { place: name, times, each: amountOf(sized) });
      for (const path of pathsOf(run, sized)) known.from.add(path);
    }
  }
  return [...found.values()];
}

/** What a piece and its bore follow from: its row, and what its row leaves to the run or the family. */
function pathsOf(run: string, { row }: SizedPiece): string[] {
  const bySize = row.bore === undefined && row.size !== undefined;
  return [
    `supply.${run}`,
    ...(bySize ? ["supply.hoseFamily"] : row.bore === undefined ? [`supply.${run}Bore`] : []),
  ];
}

/** Several rows of one run are one share. */
function addShare(shares: ShoppingShare[], { place, times, each }: ShoppingShare): void {
  const at = shares.findIndex((share) => share.place === place);
  const before = shares[at];
  if (before === undefined) shares.push({ place, times, each });
  else shares[at] = { place, times, each: before.each + each };
}

type CommonOfLines = Pick<Wanted, "id" | "what" | "figures" | "shares" | "missing" | "from">;

function common(shop: Shop, { kind, side, sized, shares, from }: Tally): CommonOfLines {
  const { dash, piece } = sized;
  const rating = ratingOf(shop, side);
  const size = sizeOf(sized);
  return {
    id: `${kind}-${size.replace(/^-/, "dash-")}${side === "pressure" ? "" : `-${side}`}`,
    what: `${titleOf(kind)}${dash === undefined ? "" : `, size ${dash}`}${FOR_SIDE[side]}`,
    figures: [about("bore", piece.bore_m, "length"), ...rating.figures],
    missing: rating.missing,
    shares,
    from: [...from],
  };
}

const FOR_SIDE: Readonly<Record<RunSide, string>> = {
  pressure: "",
  lift: ", lift side",
  suction: ", suction side",
};

interface Rating {
  readonly figures: readonly ShoppingFigure[];
  readonly missing: readonly string[];
}

/** What pressure a part on a side has to be rated for. */
export function ratingOf({ values, rating_Pa }: Shop, side: RunSide): Rating {
  if (side === "suction") return { figures: [], missing: [] };
  if (side === "lift") {
    const highest_Pa = Math.max(0, ...values.lift.points.map(({ pressure }) => pressure ?? 0));
    return {
      figures: highest_Pa > 0 ? [atLeast("pressure rating (gauge)", highest_Pa, "pressure")] : [],
      missing: highest_Pa > 0
        ? []
        : ["Pressure rating: the most that the lift pump can make; enter the points of its curve."],
    };
  }
  return rating_Pa === undefined
    ? { figures: [], missing: ["Pressure rating: the proof pressure could not be found."] }
    : { figures: [atLeast("pressure rating (gauge)", rating_Pa, "pressure")], missing: [] };
}

/** What a hose has to be besides its bore: a dash size alone does not tell it. */
function hoseFacts(shop: Shop, { kind, side, sized }: Tally): ShoppingFact[] {
  const { options } = SECTIONS.supply.fields.hoseFamily;
  return [
    { name: "fuel", says: shop.fuel },
    ...(kind === "tube" || sized.dash === undefined
      ? []
      : [{ name: "family", says: options[shop.values.supply.hoseFamily] }]),
    ...(side === "suction" ? [{ name: "wall", says: "one that suction does not flatten" }] : []),
  ];
}

/** Pieces with a loss that their maker states: filters, valves, connectors. */
export function statedPieces(places: readonly RunPlace[]): [RunPlace, SizedPiece, number][] {
  return places.flatMap((place) =>
    place.pieces.flatMap((sized, i): [RunPlace, SizedPiece, number][] =>
      isStated(sized.piece.kind) ? [[place, sized, i]] : []
    )
  );
}
