/** The pockets that the injectors stand in, and the ring that seals each. */
import { type Default, type Earlier, section } from "../field.ts";

const FROM_MEMORY = "from memory, common practice";

/** The pocket that the injector and ring below are common with [m]. */
const COMMON_BORE_M = 0.014;

/** How far a size may be from the common one for the rest still to be common with it [m]. */
const SPREAD_M = 0.3e-3;

/**
 * What is common beside another size that is. Of an injector or ring that goes
 * with an unusual one, nothing honest can be assumed.
 */
const beside =
  (path: string, common_m: number, fallback: Default) => (v: Earlier): Default | undefined => {
    const size_m = v.number(path);
    return size_m !== undefined && Math.abs(size_m - common_m) <= SPREAD_M ? fallback : undefined;
  };

/** A pilot that feeds any injector, unless pocket or gallery are narrow. */
function pilotFor(v: Earlier): Default {
  const pocket_m = v.number("rail.pocketBore") ?? COMMON_BORE_M;
  const most_m = Math.min(0.6 * pocket_m, v.number("rail.bore") ?? Infinity);
  const tenths = Math.floor(Math.min(0.008, most_m) * 1e4 + 1e-6);
  return {
    text: `${tenths / 10} mm`,
    because: "Feeds any injector and leaves a floor in the pocket",
    source: "ours",
  };
}

/** The pockets section of a plan. */
export const pockets = section({
  title: "Injector pockets and seals",
  about: "The stepped hole of each injector, and its upper O-ring; the bore stands with the rail.",
  fields: {
    depth: {
      type: "quantity",
      kind: "length",
      label: "Depth of the pockets",
      hint: "Of the O-ring's bore from the face, lead-in included, like 12 mm",
      why: "The ring must stand past the lead-in and short of the floor",
      min: 0.003,
      max: 0.04,
      because: "3 to 40 mm",
      default: {
        text: "12 mm",
        because: "A lead-in, the ring and some spare",
        source: "common practice, no source",
      },
    },
    pilot: {
      type: "quantity",
      kind: "length",
      label: "Pilot of the pockets",
      hint: "The hole that goes on into the gallery, like 8 mm",
      why: "Wide ones weaken the gallery, narrow ones starve the injector",
      min: 0.001,
      max: 0.025,
      because: "1 to 25 mm, and less than the pocket's bore",
      default: pilotFor,
    },
    leadAngle: {
      type: "quantity",
      kind: "angle",
      label: "Angle of the lead-in",
      hint: "From the axis, like 20°: half of what is stamped on a countersink",
      why: "A steep edge shaves the ring",
      min: Math.PI / 12,
      max: Math.PI / 6,
      because: "15 to 30 degrees from the axis",
      default: {
        text: "20°",
        because: "The upper end of 15 to 20 degrees, which is the shorter lead-in",
        source: "common practice, no source",
      },
    },
    leadMouth: {
      type: "quantity",
      kind: "length",
      label: "Mouth of the lead-in",
      hint: "Its diameter at the face, like 16 mm; blank is a little wider than the fitted ring",
      optional: true,
      min: 0.005,
      max: 0.045,
      because: "5 to 45 mm, and more than the pocket's bore",
    },
    tolerance: {
      type: "choice",
      label: "Tolerance of the pockets' bore",
      hint: "By ISO 286: on 14 mm, H7 is 0.018 mm, H8 0.027 mm, H9 0.043 mm wide",
      why: "The widest bore squeezes the ring least",
      options: { H7: "H7", H8: "H8", H9: "H9" },
      default: {
        text: "H9",
        because: "What a reamer or a form drill holds on a drill press",
        source: "common practice, no source",
      },
    },
    land: {
      type: "quantity",
      kind: "length",
      label: "Diameter of the injector beside the groove",
      hint: "What enters the pocket besides the O-ring, like 13.9 mm; measure yours",
      why: "The gap around it is what the injector may lean",
      min: 0.003,
      max: 0.03,
      because: "3 to 30 mm, and less than the pocket's bore",
      default: beside("rail.pocketBore", COMMON_BORE_M, {
        text: "13.9 mm",
        because: "A common injector; measure yours",
        source: FROM_MEMORY,
      }),
    },
    groove: {
      type: "quantity",
      kind: "length",
      label: "Diameter of the injector's groove",
      hint: "At its bottom, where the O-ring sits, like 8.4 mm; measure yours",
      min: 0.002,
      max: 0.03,
      because: "2 to 30 mm, and less than the injector beside it",
      default: beside("pockets.land", 0.0139, {
        text: "8.4 mm",
        because: "A common injector; measure yours",
        source: FROM_MEMORY,
      }),
    },
    ringInside: {
      type: "quantity",
      kind: "length",
      label: "Inside diameter of the O-ring",
      hint: "Off the injector and at rest, like 7.52 mm",
      min: 0.002,
      max: 0.03,
      because: "2 to 30 mm",
      default: beside("pockets.groove", 0.0084, {
        text: "7.52 mm",
        because: "The common upper O-ring of port injectors",
        source: FROM_MEMORY,
      }),
    },
    ringSection: {
      type: "quantity",
      kind: "length",
      label: "Thickness of the O-ring",
      hint: "The diameter of its section, like 3.53 mm",
      why: "How far it is squeezed decides whether it seals",
      min: 0.001,
      max: 0.007,
      because: "1 to 7 mm",
      default: beside("pockets.groove", 0.0084, {
        text: "3.53 mm",
        because: "The common upper O-ring of port injectors",
        source: FROM_MEMORY,
      }),
    },
    grooveWidth: {
      type: "quantity",
      kind: "length",
      label: "Width of the injector's groove",
      hint: "Along the injector, like 4.8 mm; measure yours",
      min: 0.001,
      max: 0.012,
      because: "1 to 12 mm, and more than the O-ring's thickness",
      default: beside("pockets.ringSection", 0.00353, {
        text: "4.8 mm",
        because: "A common injector; measure yours",
        source: FROM_MEMORY,
      }),
    },
    seatPlay: {
      type: "quantity",
      kind: "length",
      label: "Play of the injector in the manifold",
      hint: "All round, half of what the boss is wider than the injector, like 0.3 mm; measure it",
      why: "With the gap in the pocket it is how far boss and pocket may be apart",
      min: 0,
      max: 0.003,
      because: "0 to 3 mm",
      default: {
        text: "0.3 mm",
        because: "A common boss; measure yours",
        source: FROM_MEMORY,
      },
    },
    clearance: {
      type: "quantity",
      kind: "length",
      label: "Room around the injector",
      hint: "From its axis to the farthest of connector and clip, plugged in, like 22 mm",
      why: "Connectors and clips must pass the next injector and the screws' heads",
      min: 0.004,
      max: 0.08,
      because: "4 to 80 mm",
      default: {
        text: "22 mm",
        because: "A common injector, its connector plugged in; measure yours",
        source: FROM_MEMORY,
      },
    },
    elastomer: {
      type: "choice",
      label: "Rubber of the O-rings",
      hint: "Of every ring that fuel wets",
      why: "What petrol leaves alone, alcohol may not",
      options: {
        FKM: "FKM",
        "FKM-high-fluorine": "FKM with high fluorine content",
        FVMQ: "FVMQ (fluorosilicone)",
        HNBR: "HNBR",
        NBR: "NBR (nitrile)",
        EPDM: "EPDM",
      },
      default: {
        text: "FKM",
        because: "The usual ring for petrol and its blends with ethanol",
        source: "common practice, no source",
      },
    },
    ringsApart: {
      type: "quantity",
      kind: "length",
      label: "Distance between the injector's two O-rings",
      hint: "Middle of the upper to middle of the lower, like 45 mm",
      why: "How far an injector may lean between rail and manifold",
      optional: true,
      min: 0.01,
      max: 0.12,
      because: "10 to 120 mm",
    },
  },
});
