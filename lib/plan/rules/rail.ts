/** What must hold between the answers about the rail. */
import { fault, type Rule } from "./rule.ts";

/** As long as a bar may be [m]. */
const LONGEST_BAR_M = 1.5;

/** What must hold between the answers about the rail. */
export const RAIL_RULES: readonly Rule[] = [
  {
    of: ["engine.cylinders", "rail.count"],
    find: ({ engine, rail }) =>
      engine.cylinders % rail.count !== 0
        ? fault(
          "rail.count",
          `Rails: ${engine.cylinders} cylinders do not share out evenly over ${rail.count} rails. ` +
            "Enter a number that divides them.",
        )
        : undefined,
  },
  {
    of: ["rail.bore", "rail.shape", "rail.height", "rail.width"],
    find: ({ rail }, say) => {
      const smallest = Math.min(rail.height ?? Infinity, rail.width ?? Infinity);
      return rail.bore === undefined || rail.bore < smallest ? undefined : fault(
        "rail.bore",
        `Bore of the gallery: it is as wide as the bar. Enter less than ${
          say(smallest, "length")
        }.`,
      );
    },
  },
  {
    of: ["rail.length", "rail.pitch", "rail.count", "engine.cylinders", "stations.places"],
    find: ({ rail, engine, stations }, say) => {
      // Where every injector has its own place, the pitch counts for nothing.
      if (stations.places.length > 0) return undefined;
      const span = rail.pitch * (engine.cylinders / rail.count - 1);
      if (span >= LONGEST_BAR_M) {
        return fault(
          "rail.pitch",
          `Pitch of the injectors: the injectors of a rail span ${
            say(span, "length")
          }, more than the longest bar. Enter a smaller pitch, or more rails.`,
        );
      }
      return rail.length > span ? undefined : fault(
        "rail.length",
        `Length of the bar: the injectors alone span ${
          say(span, "length")
        }. Enter a longer bar or a smaller pitch.`,
      );
    },
  },
];
