/** What must hold between the places of the injectors. */
import type { Fault } from "../fault.ts";
import type { PlanValues } from "../sections.ts";
import { breadthOf, holeFaults } from "./holes.ts";
import { asTyped, fault, type Rule, type Say } from "./rule.ts";

type Reading = PlanValues["stations"]["readings"][number];

/** How many injectors one rail may hold: one for each of its cylinders, or those of every stage. */
function injectorsOfRail({ engine, rail, injectors }: PlanValues): number[] {
  const cylinders = engine.cylinders / rail.count;
  if (!Number.isInteger(cylinders)) return [];
  const stages = injectors.stages.reduce((sum, { perCylinder }) => sum + perCylinder, 0) || 1;
  return [...new Set([cylinders, cylinders * stages])];
}

/** A list that is begun has a row for every injector of a rail. */
function countFault(list: string, label: string, rows: number, values: PlanValues): Fault[] {
  const wanted = injectorsOfRail(values);
  if (rows === 0 || wanted.length === 0 || wanted.includes(rows)) return [];
  return [fault(
    list,
    `${label}: there are ${rows} rows, and a rail has ${
      wanted.join(" or ")
    } injectors. List every one of a rail, or none.`,
  )];
}

function placeFaults({ stations, rail }: PlanValues, say: Say): Fault[] {
  return stations.places.flatMap(({ at, across }, i) =>
    holeFaults(
      {
        path: `stations.places.${i}`,
        what: "the pocket",
        at,
        across,
        width: rail.pocketBore,
        face: breadthOf(rail),
      },
      rail.length,
      say,
    )
  );
}

/** Rows that do not stand beyond the row before them. */
function notRising(
  places: readonly (number | undefined)[],
  at: (row: number, least: number) => Fault,
): Fault[] {
  return places.flatMap((place, i) => {
    const before = places[i - 1];
    if (place === undefined || before === undefined) return [];
    return asTyped(place) > asTyped(before) ? [] : [at(i, before)];
  });
}

/** A reading is both edges, or over a pin, and not the two at once. */
function readingFault({ left, right, over, pin }: Reading): readonly [string, string] | undefined {
  const edges = [left, right].filter((edge) => edge !== undefined).length;
  if (over !== undefined || pin !== undefined) {
    if (edges > 0) {
      return [
        over === undefined ? "pin" : "over",
        "Over a pin in the bore: the row has an edge too. Enter both edges, or the pin's far side and diameter, and clear the rest.",
      ];
    }
    if (over === undefined) {
      return ["over", "Over a pin in the bore: it is missing. Enter it, or clear the pin."];
    }
    if (pin === undefined) {
      return ["pin", "Diameter of the pin: it is missing. Enter it, or both edges instead."];
    }
    return asTyped(over) > asTyped(pin / 2) ? undefined : [
      "over",
      "Over a pin in the bore: the pin's middle would lie before the datum. Enter the distance to its far side.",
    ];
  }
  if (edges < 2) {
    return left === undefined
      ? ["left", "Near edge of the bore: it is missing. Enter both edges, or over a pin."]
      : ["right", "Far edge of the bore: it is missing. Enter both edges, or over a pin."];
  }
  if (left !== undefined && right !== undefined && asTyped(right) <= asTyped(left)) {
    return [
      "right",
      "Far edge of the bore: it must lie farther from the datum than the near edge.",
    ];
  }
  return undefined;
}

/** The centre of a boss, where its row says it. */
function centreOf({ left, right, over, pin }: Reading): number | undefined {
  if (over !== undefined && pin !== undefined) return over - pin / 2;
  return left === undefined || right === undefined ? undefined : (left + right) / 2;
}

/** What must hold between the places of the injectors, and within the readings. */
export const STATION_RULES: readonly Rule[] = [
  {
    of: ["stations.places", "rail.length", "rail.pocketBore", "rail.shape", "rail.width"],
    find: placeFaults,
  },
  {
    of: ["stations.places"],
    find: ({ stations }, say) =>
      notRising(stations.places.map(({ at }) => at), (row, least) =>
        fault(
          `stations.places.${row}.at`,
          `Distance from the datum end: injectors are listed from that end on. Enter more than ${
            say(least, "length")
          }.`,
        )),
  },
  {
    of: ["stations.places", "engine.cylinders", "rail.count", "injectors.stages"],
    find: (values) =>
      countFault("stations.places", "Injector", values.stations.places.length, values),
  },
  {
    of: ["stations.readings"],
    find: ({ stations }) =>
      stations.readings.flatMap((row, i) => {
        const found = readingFault(row);
        return found ? [fault(`stations.readings.${i}.${found[0]}`, found[1])] : [];
      }),
  },
  {
    of: ["stations.readings"],
    find: ({ stations: { readings } }, say) =>
      notRising(readings.map(centreOf), (row, least) => {
        const [name, label] = readings[row]?.over === undefined
          ? ["left", "Near edge of the bore"]
          : ["over", "Over a pin in the bore"];
        return fault(
          `stations.readings.${row}.${name}`,
          `${label}: bosses are listed from the datum on, and the one before has its centre at ${
            say(least, "length")
          }. Put the rows in order.`,
        );
      }),
  },
  {
    of: ["stations.readings", "engine.cylinders", "rail.count", "injectors.stages"],
    find: (values) =>
      countFault("stations.readings", "Boss", values.stations.readings.length, values),
  },
];
