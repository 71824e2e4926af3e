/** Whether the injectors can take up what pockets and bosses are apart. */
import {
  type BossCentres,
  bossCentres,
  type BossReading,
  type Float,
  floatOf,
} from "@/lib/layout/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { stationPlaces } from "./places.ts";

/** What was found for the bosses. */
export interface FloatResults {
  /** The bosses as measured; undefined without readings. */
  readonly bosses: BossCentres | undefined;
  /** Pocket less boss along the bar, the rail shifted to where they fit best [m]. */
  readonly apart_m: readonly number[];
  /** Play, lean and what is left at each; undefined until the injectors are measured. */
  readonly float: Float | undefined;
}

const OWED = [CRITERIA.float] as const;

/** Distance between an injector's rings where it was not measured [m]; ours, for the lean alone. */
const RINGS_APART_m = 0.045;

/** Judges the play that is left at the worst injector. */
export function judgeFloat(context: Context): FloatResults | undefined {
  return context.subject(OWED, () => {
    const { values, working } = context;
    const readings = values.stations.readings.flatMap((row) => readingOf(row));
    const places = stationPlaces(values);
    const bosses = readings.length === places.length && readings.length > 0
      ? bossCentres(working, "bosses", readings)
      : undefined;
    const apart_m = bosses === undefined
      ? []
      : bestFit(places.map(({ at_m }, i) => at_m - (bosses.bosses[i]?.centre_m ?? 0)));
    const { land, seatPlay } = values.pockets;
    if (bosses === undefined || land === undefined) {
      context.check(CRITERIA.float, {
        value: undefined,
        because: bosses === undefined
          ? "Measure every boss from one datum and enter the readings: from them follows how far each pocket is off."
          : "Measure the injector beside its groove.",
      });
      return { bosses, apart_m, float: undefined };
    }
    const { placeTolerance } = values.stations;
    const float = floatOf(working, "float", {
      atRail_m: Math.max(0, (values.rail.pocketBore - land) / 2),
      atManifold_m: seatPlay,
      between_m: values.pockets.ringsApart ?? RINGS_APART_m,
      // Off along the bar and across it at once.
      trueTo_m: Math.SQRT2 * placeTolerance,
      stations: apart_m.map((along_m) => ({ along_m, across_m: 0 })),
    });
    const worst = float.left_m.indexOf(Math.min(...float.left_m));
    context.check(CRITERIA.float, {
      value: float.left_m[worst],
      because: `At injector ${worst + 1}: of ${context.say(float.play_m, "length")} of play, ${
        context.say(Math.abs(apart_m[worst] ?? 0), "length")
      } go to pocket against boss and ${
        context.say(Math.SQRT2 * placeTolerance, "length")
      } to what drilling may be off; how far the bosses lie across the bar was not measured.`,
      result: `float.injectors.${worst}.left_m`,
    });
    return { bosses, apart_m, float };
  });
}

interface ReadingRow {
  readonly left?: number | undefined;
  readonly right?: number | undefined;
  readonly over?: number | undefined;
  readonly pin?: number | undefined;
}

function readingOf({ left, right, over, pin }: ReadingRow): BossReading[] {
  if (over !== undefined && pin !== undefined) return [{ over_m: over, pin_m: pin }];
  return left === undefined || right === undefined ? [] : [{ near_m: left, far_m: right }];
}

/** The rail slides along until the most that any pocket is off is least. */
function bestFit(off_m: readonly number[]): number[] {
  const shift = (Math.min(...off_m) + Math.max(...off_m)) / 2;
  return off_m.map((off) => off - shift);
}
