/** Every joint, ring, port and fitting of a plan, in the order of a walk round. */
import type { ProofContext } from "./context.ts";
import { vapourWords } from "./vapour_words.ts";

/** One place to look at. */
export interface Place {
  /** Unique within its rung. */
  readonly id: string;
  /** What it is. */
  readonly what: string;
  /** How to look at it. */
  readonly how: string;
}

/** What stands in the pockets. */
export type InPockets = "dummy plugs" | "injectors";

/** The name of a rail: nothing to add when there is only one. */
function railName(context: ProofContext, rail: number): string {
  return context.rails === 1 ? "" : `Rail ${rail}, `;
}

function named(context: ProofContext, rail: number, what: string): string {
  const name = railName(context, rail);
  return name === "" ? what.charAt(0).toUpperCase() + what.slice(1) : name + what;
}

/**
 * Lists the places on the rails themselves: feed end to far end.
 *
 * @param context The plan.
 * @param inPockets What stands in the injector pockets.
 * @returns The places in order.
 */
export function railPlaces(context: ProofContext, inPockets: InPockets): Place[] {
  const places: Place[] = [];
  for (let rail = 1; rail <= context.rails; rail++) {
    const add = (id: string, what: string, how: string): void => {
      places.push({ id: `rail-${rail}-${id}`, what: named(context, rail, what), how });
    };
    add("feed", "feed fitting and its seal", "all round, and where the thread ends");
    for (let n = 1; n <= context.injectorsPerRail; n++) {
      add(
        `injector-${n}`,
        inPockets === "injectors" ? `injector ${n}, upper ring` : `pocket ${n}, plug and ring`,
        "all round the mouth of the pocket",
      );
    }
    // One sensor serves all: rails after the first have its port only when they were drilled alike.
    if (rail === 1) add("sensor", "sensor port", "all round the seat");
    else add("sensor", "plug in the sensor port, if one was drilled", "all round the seat");
    if (context.layout === "return") {
      add("regulator", "regulator port or return fitting", "all round");
    } else add("damper", "damper port, if there is one", "all round");
    add("end", "far end plug", "all round, and where the thread ends");
    add("bar", "the bar's faces", "for pores, cracks and drill break-outs, in raking light");
  }
  return places;
}

/**
 * Lists where to look into rails that were emptied.
 *
 * @param context The plan.
 * @returns The places in order.
 */
export function insidePlaces(context: ProofContext): Place[] {
  const places: Place[] = [];
  for (let rail = 1; rail <= context.rails; rail++) {
    places.push(
      {
        id: `rail-${rail}-gallery`,
        what: named(context, rail, "gallery, end to end"),
        how: "against a light",
      },
      {
        id: `rail-${rail}-mouths`,
        what: named(context, rail, "mouth of every pocket and port"),
        how: "a light and dry paper",
      },
    );
  }
  return places;
}

/**
 * Lists the places in the car: from the tank to the rail and back.
 *
 * @param context The plan.
 * @returns The places in order.
 */
export function carPlaces(context: ProofContext): Place[] {
  const places: Place[] = [
    { id: "tank", what: "Tank flange, filler and vent", how: vapourWords(context.fuel).atTank },
    {
      id: "pump",
      what: context.pumpPlace === "tank" ? "Pump hanger: fittings and plug" : "Pump, both ends",
      how: "a dry towel all round",
    },
  ];
  places.push(
    { id: "filter", what: "Filter, both ends", how: "a dry towel all round" },
    {
      id: "feed-hose",
      what: "Feed hose: both ends, and every clip on the way",
      how: "bend it a little; look for damp, rubbing and heat",
    },
    ...railPlaces(context, "injectors"),
    {
      id: "lower-rings",
      what: "Lower rings, each injector in the manifold",
      how: "look for damp below each, engine off",
    },
  );
  if (context.layout === "return") {
    places.push({
      id: "return-hose",
      what: "Return hose, both ends",
      how: "a dry towel all round",
    });
  }
  places.push(
    context.reference === "manifold"
      ? {
        id: "reference-hose",
        what: "Regulator's hose to the manifold",
        how: "pull it off: fuel in it means a torn diaphragm",
      }
      : {
        id: "reference-vent",
        what: "Regulator's vent",
        how: "dry and open: fuel at it means a torn diaphragm",
      },
    {
      id: "ground",
      what: "The floor below the whole run",
      how: "a clean sheet of paper, left lying",
    },
  );
  return places;
}
