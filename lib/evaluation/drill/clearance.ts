/** Whether connectors and clips pass each other and the screws' heads. */
import { screwHead, threadOf } from "@/lib/thread/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { COARSE } from "./held.ts";
import { type PlaceAt, screwPlaces, stationPlaces } from "./places.ts";

/** Judges the room between injectors, with connectors and clips, and the heads of the screws. */
export function judgeClearance(context: Context): void {
  const { values } = context;
  const injectors = stationPlaces(values);
  const { places, areListed } = screwPlaces(values);
  const { nominal_m } = threadOf(COARSE[values.holdDown.thread]);
  const head_m = screwHead(nominal_m, "socket").outside_m / 2;
  const around_m = values.pockets.clearance;
  const gaps = [
    ...injectors.slice(1).map((one, i) => ({
      between: `injectors ${i + 1} and ${i + 2}`,
      // Turned to the same side, one connector passes the next injector's own.
      gap_m: apart(one, injectors[i] ?? one) - around_m,
    })),
    // Heads of screws that are not placed yet can still be put elsewhere.
    ...(areListed ? places : []).flatMap((screw, s) =>
      injectors.map((one, i) => ({
        between: `injector ${i + 1} and screw ${s + 1}`,
        gap_m: apart(one, screw) - around_m - head_m,
      }))
    ),
  ];
  const worst = gaps.toSorted((a, b) => a.gap_m - b.gap_m)[0];
  context.check(CRITERIA.injectorClear, {
    value: worst?.gap_m ?? CRITERIA.injectorClear.aim,
    because: worst === undefined
      ? "There is one injector and no screw beside it."
      : `Between ${worst.between}, with ${
        context.say(around_m, "length")
      } from an injector's axis to the farthest of connector and clip. Turn connectors away where it is tight.`,
  });
}

function apart(a: PlaceAt, b: PlaceAt): number {
  return Math.hypot(a.at_m - b.at_m, a.across_m - b.across_m);
}
