/** What must hold of the places of the hold-down screws. */
import { CLEARANCE_HOLES } from "@/lib/thread/mod.ts";
import { breadthOf, holeFaults, placeInWords, twice } from "./holes.ts";
import type { Rule } from "./rule.ts";

const LIST = "holdDown.screws";

/** What must hold of the places of the hold-down screws. */
export const HOLD_DOWN_RULES: readonly Rule[] = [
  {
    of: [LIST, "holdDown.thread", "rail.length", "rail.shape", "rail.height", "rail.width"],
    find: ({ holdDown, rail }, say) =>
      holdDown.screws.flatMap(({ at, across }, i) =>
        holeFaults(
          {
            path: `${LIST}.${i}`,
            what: "the screw's hole",
            at,
            across,
            width: CLEARANCE_HOLES[holdDown.thread].medium_m,
            face: breadthOf(rail),
          },
          rail.length,
          say,
        )
      ),
  },
  {
    of: [LIST],
    find: ({ holdDown }) =>
      twice(
        LIST,
        holdDown.screws,
        ({ at, across }) => at === undefined ? undefined : placeInWords(at, across),
      ),
  },
];
