/** What must hold between pocket, injector and O-ring for them to be of one another. */
import { asTyped, fault, type Rule } from "./rule.ts";

/** A ring that is smaller than this share of its groove is none that anyone would stretch over it. */
const LEAST_RING = 0.7;

/** A ring that is larger than this share of its groove falls off it. */
const MOST_RING = 1.05;

/** What must hold between pocket, injector and O-ring. */
export const POCKET_RULES: readonly Rule[] = [
  {
    of: ["pockets.pilot", "rail.pocketBore", "rail.bore"],
    find: ({ pockets, rail }, say) =>
      asTyped(pockets.pilot) < asTyped(rail.pocketBore) ? undefined : fault(
        "pockets.pilot",
        `Pilot of the pockets: it leaves no floor in the pocket. Enter less than its bore, ${
          say(rail.pocketBore, "length")
        }.`,
      ),
  },
  {
    of: ["pockets.leadMouth", "pockets.leadAngle", "pockets.depth", "rail.pocketBore"],
    find: ({ pockets: { leadMouth, leadAngle, depth }, rail }, say) => {
      if (leadMouth === undefined) return undefined;
      if (asTyped(leadMouth) <= asTyped(rail.pocketBore)) {
        return fault(
          "pockets.leadMouth",
          `Mouth of the lead-in: a lead-in opens outwards. Enter more than the pocket's bore, ${
            say(rail.pocketBore, "length")
          }.`,
        );
      }
      const most = rail.pocketBore + 2 * depth * Math.tan(leadAngle);
      return asTyped(leadMouth) < asTyped(most) ? undefined : fault(
        "pockets.leadMouth",
        `Mouth of the lead-in: at this angle nothing of the pocket's bore is left below it. Enter less than ${
          say(most, "length")
        }, or a deeper pocket.`,
      );
    },
  },
  {
    of: ["pockets.land", "rail.pocketBore"],
    find: ({ pockets: { land }, rail }, say) =>
      land === undefined || asTyped(land) < asTyped(rail.pocketBore) ? undefined : fault(
        "pockets.land",
        `Diameter of the injector beside the groove: it does not enter the pocket. Enter less than its bore, ${
          say(rail.pocketBore, "length")
        }.`,
      ),
  },
  {
    of: ["pockets.groove", "pockets.land", "rail.pocketBore"],
    find: ({ pockets: { groove, land }, rail }, say) => {
      const most = land ?? rail.pocketBore;
      return groove === undefined || asTyped(groove) < asTyped(most) ? undefined : fault(
        "pockets.groove",
        `Diameter of the injector's groove: it is no groove. Enter less than ${
          say(most, "length")
        }, which is beside it.`,
      );
    },
  },
  {
    of: ["pockets.ringInside", "pockets.groove", "rail.pocketBore"],
    find: ({ pockets: { ringInside, groove } }, say) => {
      if (ringInside === undefined || groove === undefined) return undefined;
      const share = asTyped(ringInside / groove);
      return share >= LEAST_RING && share <= MOST_RING ? undefined : fault(
        "pockets.ringInside",
        `Inside diameter of the O-ring: it is no ring for this groove. Enter ${
          say(LEAST_RING * groove, "length")
        } to ${say(MOST_RING * groove, "length")}, or check the groove.`,
      );
    },
  },
  {
    of: ["pockets.ringSection", "pockets.groove", "pockets.land", "rail.pocketBore"],
    find: ({ pockets: { ringSection, groove, land } }, say) => {
      if (ringSection === undefined || groove === undefined || land === undefined) return undefined;
      const least = (land - groove) / 2;
      return asTyped(ringSection) > asTyped(least) ? undefined : fault(
        "pockets.ringSection",
        `Thickness of the O-ring: it would lie below the rim of its groove. Enter more than ${
          say(least, "length")
        }, or check the groove.`,
      );
    },
  },
  {
    of: ["pockets.grooveWidth", "pockets.ringSection", "rail.pocketBore"],
    find: ({ pockets: { grooveWidth, ringSection } }, say) =>
      grooveWidth === undefined || ringSection === undefined ||
        asTyped(grooveWidth) >= asTyped(ringSection)
        ? undefined
        : fault(
          "pockets.grooveWidth",
          `Width of the injector's groove: the O-ring does not go in. Enter at least its thickness, ${
            say(ringSection, "length")
          }.`,
        ),
  },
];
