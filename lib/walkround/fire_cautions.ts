/** Cautions about fuel, vapour and fire. */
import { breaksFoam, isAlcoholRich, isMethanol } from "./context.ts";
import { COMMON_PRACTICE, type TypedCaution } from "./caution.ts";

/** Cautions about fuel, vapour and fire, by name. */
export const FIRE_CAUTIONS = {
  "ignition-sources": {
    title: "Nothing that could light it",
    points: [
      {
        id: "no-ignition",
        text:
          "No flame, no spark, no smoking, no hot lamp and no heater anywhere the vapour can go.",
      },
      {
        id: "vapour-travels",
        text:
          "Fuel vapour is heavier than air: it travels along the floor and can be lit far from " +
          "the spill.",
      },
    ],
    source: "29 CFR 1910.106(e)(2)(iv)(c)",
  },
  "covered-containers": {
    title: "Little fuel, and covered",
    points: [
      {
        id: "keep-covered",
        text: "Keep fuel in approved containers with a lid, covered whenever they are not in use.",
      },
      { id: "only-needed", text: "Have no more fuel at the bench than the job needs." },
    ],
    source: "29 CFR 1910.106(e)(2)(iv)(a)",
  },
  "no-air-transfer": {
    title: "Air and fuel stay apart",
    points: [
      {
        id: "no-air-push",
        text: "Never move fuel by putting air pressure on a can or a tank.",
      },
      {
        id: "air-test-dry",
        text: "The air test of the rail is done empty and clean, off the car, without fuel.",
      },
      {
        id: "wet-rail",
        text:
          "A rail that has held fuel is drained, rinsed, dried and aired out before air goes in.",
      },
    ],
    source: "29 CFR 1910.106(e)(2)(iv)(d); the last point common practice, no source",
  },
  bonding: {
    title: "Bond before pouring",
    points: [
      {
        id: "bond-first",
        text:
          "Bond the container and what receives the fuel with a wire before pouring, and leave it " +
          "on during the whole transfer.",
      },
      {
        id: "bond-resistance",
        text: "The bond need not be heavy: a resistance of not over 1 megohm is enough.",
      },
    ],
    source: "California title 8 section 5549(b)",
  },
  ventilation: {
    title: "Air from the floor",
    points: [
      {
        id: "outdoors",
        text:
          "Work outdoors, or with mechanical ventilation that draws at low level, its motor out of " +
          "the vapour.",
      },
      { id: "pits", text: "Close pits and drains: vapour gathers in them." },
    ],
    source: "NFPA 30A repair-garage practice, from memory",
  },
  zones: {
    title: "The floor is a hazardous area",
    points: [
      {
        id: "classified",
        text:
          "Where fuel is handled, a repair garage's pits and the space up to 450 mm (18 in) above " +
          "its floor are often classified: Class I Division 2, or Zone 2.",
      },
      { id: "rated-tools", text: "Use lamps and tools rated for it down there, or keep them out." },
    ],
    source: "NFPA 70 (NEC) article 511 and directive 1999/92/EC, from memory",
  },
  depressurise: {
    title: "Let the pressure off first",
    points: [
      {
        id: "relieve",
        text:
          "Relieve the rail's pressure before opening a joint: pump fuse or relay out, bleed at a " +
          "gauge valve into a closed container or, only where all is dry, run the engine to a " +
          "stall; then wrap the joint in a rag.",
      },
      { id: "returns", text: "The pressure returns as soon as the ignition is switched on." },
    ],
    source: COMMON_PRACTICE,
  },
  leaking: {
    title: "No cranking, no start",
    points: [
      {
        id: "no-start",
        text: "Never crank or start an engine whose fuel system leaks or stands at its proof " +
          "pressure, not even to let the pressure off.",
      },
      {
        id: "bleed",
        text: "Pump relay or fuse out; bleed at the gauge valve through a hose into a closed " +
          "container, its vent led away. Without a valve, wrap the joint in rags before it is " +
          "loosened, and catch what comes.",
      },
    ],
    source: COMMON_PRACTICE,
  },
  battery: {
    title: "No current",
    points: [
      {
        id: "negative-off",
        text: "Disconnect the negative battery lead before fuel work, and refit it last.",
      },
      { id: "chargers", text: "Keep chargers away." },
    ],
    source: COMMON_PRACTICE,
  },
  "hot-work": {
    title: "No welding on what has held fuel",
    points: [
      {
        id: "gas-free",
        text:
          "No welding, brazing or grinding on or near anything that has held fuel until it is " +
          "cleaned and tested gas-free.",
      },
      {
        id: "fire-watch",
        text:
          "Make a habit of a hot-work permit: write down what, where and when, and keep a fire " +
          "watch for 60 minutes after.",
      },
    ],
    source: "NFPA 51B (2019) and 29 CFR 1910.252, from memory",
  },
  "extinguisher-ready": {
    title: "Extinguisher and a second person",
    points: [
      {
        id: "class-b",
        text:
          "A class B extinguisher (dry chemical, CO2 or foam; rated by NFPA 10, or to EN 3 for " +
          "class B of EN 2) stands in reach, between you and the exit, its seal and gauge checked.",
      },
      { id: "second-person", text: "A second person who knows the plan is there." },
    ],
    source: "NFPA 10, EN 2 and EN 3-7, from memory; common practice",
  },
  "alcohol-foam": {
    title: "Foam for alcohol",
    points: [
      {
        id: "resistant",
        text: "Foam made for petrol breaks down on this fuel: foam has to be alcohol-resistant.",
      },
    ],
    source: COMMON_PRACTICE,
    when: breaksFoam,
  },
  "alcohol-headspace": {
    title: "The space above alcohol burns",
    points: [
      {
        id: "explosive-range",
        text: "The space above this fuel in a can or a tank is within its burning limits at room " +
          "temperature, not too rich as above petrol.",
      },
    ],
    source: "Vapour pressure at 20 °C against the limits of NFPA 497 (2008)",
    when: isAlcoholRich,
  },
  "methanol-flame": {
    title: "A flame you do not see",
    points: [
      {
        id: "invisible",
        text:
          "A flame of methanol, or of any fuel rich in alcohol, is nearly invisible in daylight.",
      },
      {
        id: "shimmer",
        text: "Look for heat shimmer, feel ahead with a broom, or use a thermal camera.",
      },
    ],
    source: "Handling manual of the methanol trade body, from memory",
    when: isMethanol,
  },
  "pale-flame": {
    title: "A pale flame",
    points: [
      {
        id: "pale",
        text:
          "A flame of fuel rich in ethanol is pale and hard to see in sunlight: look for heat " +
          "shimmer.",
      },
    ],
    source: COMMON_PRACTICE,
    when: (fuel) => isAlcoholRich(fuel) && !isMethanol(fuel),
  },
  "methanol-toxic": {
    title: "Methanol is a poison",
    points: [
      {
        id: "toxic",
        text:
          "Methanol is toxic by swallowing, through the skin and as vapour: small amounts blind or " +
          "kill.",
      },
      {
        id: "protect",
        text: "Gloves rated for methanol (butyl), no siphoning by mouth, good ventilation.",
      },
    ],
    source: "NIOSH pocket guide: 200 ppm over a shift, 250 ppm for a short time, skin",
    when: isMethanol,
  },
  "skin-eyes": {
    title: "Eyes and skin",
    points: [
      {
        id: "goggles",
        text: "Goggles and fuel-proof gloves on: a joint that lets go sprays.",
      },
    ],
    source: COMMON_PRACTICE,
  },
} as const satisfies Record<string, TypedCaution>;
