/** Where injectors, ports and screws stand in the bar, in the layout's coordinates. */
import type { PlanValues } from "@/lib/plan/mod.ts";
import { stationsOf } from "../subjects/gallery.ts";

/** Along the bar and across it. The plan counts across towards the front, the layout away from it. */
export interface PlaceAt {
  /** From the datum end [m]. */
  readonly at_m: number;
  /** From the middle, away from the front [m]. */
  readonly across_m: number;
}

/** An injector's place, and what stands below it. */
export interface StationPlace extends PlaceAt {
  /** Lean of its axis along the bar [rad]. */
  readonly tilt_rad: number;
  /** Height of its seat over the lowest [m]. */
  readonly seat_m: number;
  /** Seat to the middle of its upper ring [m], if measured. */
  readonly injectorLength_m: number | undefined;
}

/** Where the injectors sit: as listed, else by the pitch in the middle of the bar. */
export function stationPlaces(values: PlanValues): StationPlace[] {
  const { places } = values.stations;
  if (places.length === 0) {
    return stationsOf(values).map((at_m) => ({
      at_m,
      across_m: 0,
      tilt_rad: 0,
      seat_m: 0,
      injectorLength_m: undefined,
    }));
  }
  return places.flatMap(({ at, across, tilt, seatHeight, injectorLength }) =>
    at === undefined ? [] : [{
      at_m: at,
      across_m: -(across ?? 0),
      tilt_rad: tilt ?? 0,
      seat_m: seatHeight ?? 0,
      injectorLength_m: injectorLength,
    }]
  );
}

/** Beyond the outer injectors, where there is no pair to stand between [m]; ours. */
const BESIDE_m = 0.025;

/** Where the hold-down screws stand along the bar, and whether they go through it. */
export interface ScrewPlaces {
  /** The places. */
  readonly places: readonly PlaceAt[];
  /** True for those that the plan lists, which are drilled through the bar. */
  readonly areListed: boolean;
}

/**
 * The hold-down screws: as listed, else two that hold the bar by brackets: half way between the
 * outer pairs of injectors, and of one or two injectors beside them.
 */
export function screwPlaces(values: PlanValues): ScrewPlaces {
  const listed = values.holdDown.screws.flatMap(({ at, across }) =>
    at === undefined ? [] : [{ at_m: at, across_m: -(across ?? 0) }]
  );
  if (listed.length > 0) return { places: listed, areListed: true };
  const along = stationPlaces(values).map(({ at_m }) => at_m);
  const [first, second] = along;
  const [last, before] = along.toReversed();
  if (first === undefined || last === undefined) return { places: [], areListed: false };
  const isFew = along.length < 3 || second === undefined || before === undefined;
  const at = isFew
    ? [Math.max(0, first - BESIDE_m), Math.min(values.rail.length, last + BESIDE_m)]
    : [(first + second) / 2, (before + last) / 2];
  return { places: at.map((at_m) => ({ at_m, across_m: 0 })), areListed: false };
}

/** The words for what a port is for. */
const USES: Readonly<Record<string, string>> = {
  feed: "Feed port",
  return: "Return port",
  gauge: "Gauge port",
  crossover: "Crossover port",
  temperature: "Temperature port",
  combined: "Port of the combined sensor",
  "sensor-2": "Second sensor's port",
};

/** What a port is called on a sheet. */
export function portTitle(use: string): string {
  return USES[use] ?? "Port";
}
