/** The shopping list of an evaluated plan. */
import { InputError } from "@/lib/basics/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { Evaluation } from "../evaluation.ts";
import { wantedOfAll } from "./all.ts";
import { wantedInjectors } from "./injectors.ts";
import { SHOPPING_PARTS, type ShoppingItem, type ShoppingPart, type Wanted } from "./item.ts";
import { wantedFittings, wantedHoses } from "./lines.ts";
import { placesOf } from "./places.ts";
import { wantedPumps } from "./pumps.ts";
import { wantedJoints, wantedRail } from "./rail.ts";
import { wantedRegulator } from "./regulator.ts";
import { wantedSensor } from "./sensors.ts";
import { Shop } from "./shop.ts";
import { wantedStated } from "./stated.ts";
import { wantedWiring } from "./wiring.ts";

/**
 * Puts together what there is to buy for a plan, by figures and without makes.
 *
 * The list follows the plan as it stands, failing checks included. What can't be said yet is
 * in an item's `missing`; nothing is made up in its place.
 *
 * @param evaluation The evaluated plan.
 * @param values The same plan in numbers.
 * @returns The items, shelf by shelf. Every one has a figure, or says what is missing.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 * import { evaluate } from "../evaluate.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   supply: { feed: [{ piece: "hose", size: "-6", length: "3 m" }, { piece: "straight", size: "-6", count: 2 }] },
 *   regulator: { layout: "dead-ended" },
 * });
 * assert(reading.ok);
 * const list = shoppingList(evaluate(reading.plan), resolvePlan(reading.plan).values);
 *
 * const hose = list.find(({ part }) => part === "hoses");
 * assertEquals(hose?.quantity, { unit: "length", value_m: 3 });
 * assertEquals(hose?.what, "Hose, size -6");
 * ```
 */
export function shoppingList(evaluation: Evaluation, values: PlanValues): ShoppingItem[] {
  const shop = new Shop(evaluation, values);
  const places = placesOf(shop);
  const shelves: Readonly<Record<ShoppingPart, () => Wanted[]>> = {
    injectors: () => wantedInjectors(shop),
    pumps: () => wantedPumps(shop),
    hoses: () => [...wantedHoses(shop, places), ...wantedJoints(shop)],
    fittings: () => wantedFittings(shop, places),
    filters: () => wantedStated(shop, places, "filters"),
    valves: () => wantedStated(shop, places, "valves"),
    regulator: () => wantedRegulator(shop),
    wiring: () => wantedWiring(shop),
    sensors: () => [...wantedSensor(shop), ...wantedStated(shop, places, "sensors")],
    rail: () => wantedRail(shop),
    all: () => wantedOfAll(shop),
  };
  return (Object.keys(shelves) as ShoppingPart[]).flatMap((part) =>
    filled(part, shelves[part]).map((wanted) => itemOf(part, wanted, evaluation))
  );
}

/** A shelf whose numbers lie outside of what a method takes says so. */
function filled(part: ShoppingPart, fill: () => Wanted[]): Wanted[] {
  try {
    return fill();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const what = SHOPPING_PARTS[part];
    return [{ id: `${part}-open`, what, missing: [`${error.message}.`], from: [] }];
  }
}

function itemOf(part: ShoppingPart, wanted: Wanted, { assumed }: Evaluation): ShoppingItem {
  const { id, what, quantity, because, from } = wanted;
  return {
    id,
    part,
    quantity,
    what,
    figures: wanted.figures ?? [],
    facts: wanted.facts ?? [],
    shares: wanted.shares ?? [],
    missing: wanted.missing ?? [],
    because,
    assumed: assumed.filter(({ path }) => from.some((start) => isBelow(path, start))),
  };
}

/** `injectors.` takes a whole section, `supply.feed` the list and its rows but not `supply.feedBore`. */
function isBelow(path: string, start: string): boolean {
  return start.endsWith(".")
    ? path.startsWith(start)
    : path === start || path.startsWith(`${start}.`);
}
