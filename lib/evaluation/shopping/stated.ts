/** Filters, valves and connectors: parts whose loss their maker states. */
import { type Piece, Run } from "@/lib/line/mod.ts";
import { PIECES } from "@/lib/plan/mod.ts";
import { CRITERIA } from "../criteria.ts";
import {
  atLeast,
  atMost,
  pieces,
  type ShoppingFigure,
  type ShoppingPart,
  type Wanted,
} from "./item.ts";
import { ratingOf, statedPieces } from "./lines.ts";
import type { RunPlace, SizedPiece } from "./places.ts";
import type { Shop } from "./shop.ts";

const ASK_INJECTORS = "Fineness: ask the injectors' maker; 10 µm is common practice, no source.";
const ASK_PUMP = "Fineness: ask the pump's maker; 100 µm is common practice, no source.";

/** The shelf that each such piece lies on. */
function shelfOf({ piece }: SizedPiece): ShoppingPart {
  if (piece.kind === "filter") return "filters";
  return piece.kind === "ethanol-sensor" ? "sensors" : "valves";
}

/** The parts of one shelf. */
export function wantedStated(
  shop: Shop,
  places: readonly RunPlace[],
  shelf: ShoppingPart,
): Wanted[] {
  return statedPieces(places).filter(([, sized]) => shelfOf(sized) === shelf).map(
    ([place, sized, i]) => wanted(shop, place, sized, i),
  );
}

function wanted(shop: Shop, place: RunPlace, sized: SizedPiece, i: number): Wanted {
  const { kind } = sized.piece;
  const loss = lossOf(shop, place, sized);
  const rating = ratingOf(shop, place.side);
  const isFilter = kind === "filter";
  const { fineness } = sized.row;
  const says = PIECES[kind as keyof typeof PIECES];
  return {
    id: `${kind}-${place.run}-${i + 1}`,
    what: `${says.charAt(0).toUpperCase()}${says.slice(1)} in the ${place.name}`,
    quantity: pieces(place.times),
    figures: [
      ...(place.flow_m3_s === undefined
        ? []
        : [atLeast(isFilter ? "rated flow" : "flow through it", place.flow_m3_s, "pumpFlow")]),
      ...loss.figures,
      ...(isFilter && fineness !== undefined ? [atMost("fineness", fineness, "length", "µm")] : []),
      ...rating.figures,
    ],
    facts: [{ name: "fuel", says: shop.fuel }],
    missing: [
      ...(place.flow_m3_s === undefined
        ? ["Flow through it: it could not be found; see the pump."]
        : []),
      ...loss.missing,
      ...(isFilter && fineness === undefined
        ? [place.side === "pressure" ? ASK_INJECTORS : ASK_PUMP]
        : []),
      ...rating.missing,
    ],
    because: [flowBecause(shop, place), loss.because].filter(Boolean).join(" ") || undefined,
    from: [`supply.${place.run}`, ...(place.flow_m3_s === undefined ? [] : ["demand.bsfc"])],
  };
}

/** Where a pump is chosen that moves more than there is to shop for, its own flow counts. */
function flowBecause({ flows }: Shop, { run, flow_m3_s }: RunPlace): string | undefined {
  if (flows === undefined || flow_m3_s === undefined) return undefined;
  if (run === "return" || run === "lift" || flows.pumped_m3_s <= flows.burnt_m3_s) return undefined;
  return flow_m3_s > flows.burnt_m3_s
    ? "The flow is what the plan's own pump moves at full power."
    : undefined;
}

interface Loss {
  readonly figures: readonly ShoppingFigure[];
  readonly missing: readonly string[];
  readonly because: string | undefined;
}

/** The loss that the pump's pressure was reckoned with; a filter before the injectors keeps the aim as well. */
function lossOf({ liquid }: Shop, place: RunPlace, { piece }: SizedPiece): Loss {
  const isJudged = piece.kind === "filter" && place.run === "feed";
  const aim_Pa = isJudged ? CRITERIA.filterLoss.aim : undefined;
  const planned_Pa = plannedLoss(piece, place.flow_m3_s, liquid);
  if (planned_Pa === undefined && aim_Pa === undefined) {
    return {
      figures: [],
      missing: ["Loss: enter a flow and the loss there, as the maker states them."],
      because: undefined,
    };
  }
  const most_Pa = Math.min(planned_Pa ?? Infinity, aim_Pa ?? Infinity);
  const isAim = most_Pa === aim_Pa;
  return {
    figures: [
      atMost(`loss at that flow${piece.kind === "filter" ? ", clean" : ""}`, most_Pa, "pressure"),
    ],
    missing: [],
    because: isAim
      ? "The loss is the aim for a filter."
      : "The loss is the plan's own: the pump's pressure was reckoned with it.",
  };
}

function plannedLoss(
  piece: Piece,
  flow_m3_s: number | undefined,
  liquid: Shop["liquid"],
): number | undefined {
  if (flow_m3_s === undefined || liquid === undefined) return undefined;
  const alone = new Run([piece], liquid);
  return alone.unstated.length > 0 ? undefined : alone.costs(flow_m3_s)[0]?.lost_Pa;
}
