/** The regulator to ask for. */
import { CRITERIA } from "../criteria.ts";
import { atLeast, atMost, pieces, type ShoppingFigure, type Wanted } from "./item.ts";
import type { Shop } from "./shop.ts";

const PLACES = {
  rail: "after the rail",
  feed: "in the feed near the rail",
  tank: "at the tank",
} as const;

/** The regulator: the range it is set in, what it has to let back, and against what. */
export function wantedRegulator(shop: Shop): Wanted[] {
  const { values, flows, evaluation } = shop;
  const { layout, place, reference, setPressure } = values.regulator;
  const boost_Pa = values.engine.boost ?? 0;
  const isReferenced = reference === "manifold";
  const returned = flows?.returned;
  const isPumpKnown = evaluation.results.supply?.isPumpKnown ?? false;
  return [{
    id: "regulator",
    what: `Pressure regulator, ${PLACES[layout === "return" ? "rail" : place ?? "tank"]}`,
    quantity: pieces(1),
    figures: [
      ...(returned === undefined ? [] : [atLeast("return flow", returned.m3_s, "pumpFlow")]),
      ...leastDrop(shop),
      atMost("lower end of its range (gauge)", setPressure, "pressure"),
      atLeast("upper end of its range (gauge)", setPressure, "pressure"),
      ...(isReferenced && boost_Pa > 0
        ? [atLeast("pressure it holds at full boost (gauge)", setPressure + boost_Pa, "pressure")]
        : []),
    ],
    facts: [
      { name: "port for a hose to the manifold", says: isReferenced ? "yes" : "no" },
      { name: "fuel", says: shop.fuel },
    ],
    missing: [
      ...(returned === undefined ? ["Return flow: no operating point could be worked out."] : []),
      ...(isPumpKnown
        ? []
        : ["Return flow: a pump's own curve decides, and may ask for more; enter its points."]),
    ],
    because: returned && `Most goes back at: ${returned.point.name.toLowerCase()}.`,
    from: [
      "regulator.layout",
      "regulator.place",
      "regulator.reference",
      "regulator.setPressure",
      ...(values.pump.drive === "engine"
        ? []
        : ["operating.idleVoltage", "operating.cruiseVoltage", "operating.primeVoltage"]),
    ],
  }];
}

/**
 * What leaves the return's own pressure at the aim of the check on it, at whichever operating point
 * that is hardest; wide open a regulator loses with the square of flow.
 */
function leastDrop({ flows, values, evaluation }: Shop): ShoppingFigure[] {
  const most_m3_s = flows?.returned?.m3_s;
  const { layout, place } = values.regulator;
  if (most_m3_s === undefined || (layout === "dead-ended" && place !== "feed")) return [];
  const points = evaluation.results.supply?.points ?? [];
  const rooms_Pa = points.flatMap(({ found, should_Pa }) => {
    if (found === undefined || !(found.returned_m3_s > most_m3_s * LEAST_SHARE)) return [];
    const room_Pa = should_Pa - Math.max(0, found.back_Pa) / CRITERIA.returnBack.aim;
    return [room_Pa * (most_m3_s / found.returned_m3_s) ** 2];
  });
  const least_Pa = Math.min(...rooms_Pa);
  return least_Pa > 0 && least_Pa < Infinity
    ? [atMost("least drop, wide open at that flow", least_Pa, "pressure")]
    : [];
}

/** Share of the most below which a point's return is too little to say anything of a regulator wide open. */
const LEAST_SHARE = 0.1;
