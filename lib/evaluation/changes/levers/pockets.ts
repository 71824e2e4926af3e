/** Pockets, their O-rings, and the places of the injectors. */
import { chosen } from "../chosen.ts";
import { candidate, type CheckId, edited, type Lever } from "../lever.ts";
import { listed, stepped } from "../stepped.ts";

/** How the ring stands in its bore. */
const STANDS: readonly CheckId[] = ["ring-entered", "ring-below"];

/** Sections of O-rings as they are sold: ISO 3601-1 and AS568, and usual metric ones. */
const SECTIONS = {
  metric: { unit: "mm", of: [1.5, 1.78, 2, 2.5, 2.62, 3, 3.53, 4, 5, 5.33] },
  inch: { unit: "in", of: [0.07, 0.103, 0.139, 0.21] },
} as const;

const TENTH = { metric: { size: 0.1, unit: "mm" }, inch: { size: 0.005, unit: "in" } } as const;

/** Everything about pockets and rings. */
export const POCKET_LEVERS: readonly Lever[] = [
  stepped({
    id: "pocket-deeper",
    name: "deeper pockets",
    mends: [...STANDS, "injector-room"],
    path: "pockets.depth",
    to: "up",
    steps: { metric: { size: 0.5, unit: "mm" }, inch: { size: 1 / 64, unit: "in" } },
    most: 40,
  }),
  stepped({
    id: "gallery-higher",
    name: "a gallery farther from the injectors",
    mends: STANDS,
    path: "rail.galleryUp",
    to: "up",
    steps: { metric: { size: 0.5, unit: "mm" }, inch: { size: 1 / 64, unit: "in" } },
  }),
  stepped({
    id: "gallery-lower",
    name: "a gallery nearer to the injectors",
    mends: ["port-thread", "port-taper", "seat-gallery", "sensor-reach", "ports-thread"],
    path: "rail.galleryUp",
    to: "down",
    steps: { metric: { size: 0.5, unit: "mm" }, inch: { size: 1 / 64, unit: "in" } },
  }),
  stepped({
    id: "lead-in-steeper",
    name: "a shorter lead-in",
    mends: STANDS,
    path: "pockets.leadAngle",
    to: "up",
    steps: { metric: { size: 1, unit: "°" }, inch: { size: 1, unit: "°" } },
    most: 15,
  }),
  {
    id: "lead-in-blank",
    name: "a lead-in as wide as the ring asks",
    mends: ["lead-in"],
    candidates(start) {
      const path = "pockets.leadMouth";
      if (start.values.pockets.leadMouth === undefined) return [];
      return [candidate(start, {
        answers: { [path]: undefined },
        edits: [edited(start, path, "blank, which means as wide as the ring asks")],
      })];
    },
  },
  stepped({
    id: "pilot-smaller",
    name: "smaller pilots in the pockets",
    mends: ["gallery-opening", "yield"],
    path: "pockets.pilot",
    to: "down",
    steps: { metric: { size: 0.5, unit: "mm" }, inch: { size: 1 / 64, unit: "in" } },
    most: 40,
  }),
  chosen({
    id: "pocket-closer",
    name: "a closer bore of the pockets",
    mends: ["ring-squeeze-least"],
    path: "pockets.tolerance",
    words: ({ values }) => {
      const grades = ["H9", "H8", "H7"];
      return grades.slice(grades.indexOf(values.pockets.tolerance) + 1);
    },
  }),
  listed({
    id: "ring-thicker",
    name: "a thicker O-ring",
    mends: ["ring-squeeze", "ring-squeeze-least"],
    path: "pockets.ringSection",
    to: "up",
    figures: SECTIONS,
  }),
  listed({
    id: "ring-thinner",
    name: "a thinner O-ring",
    mends: ["ring-squeeze", "ring-fill"],
    path: "pockets.ringSection",
    to: "down",
    figures: SECTIONS,
  }),
  stepped({
    id: "ring-larger",
    name: "an O-ring larger inside",
    mends: ["ring-stretch"],
    path: "pockets.ringInside",
    to: "up",
    steps: TENTH,
  }),
  chosen({
    id: "ring-rubber",
    name: "another rubber",
    mends: ["fuel-rubber"],
    path: "pockets.elastomer",
    words: ({ values }) =>
      ["FKM", "FKM-high-fluorine", "HNBR", "FVMQ"].filter((word) =>
        word !== values.pockets.elastomer
      ),
  }),
  stepped({
    id: "places-closer",
    name: "holes placed more closely",
    mends: ["float"],
    path: "stations.placeTolerance",
    to: "down",
    steps: { metric: { size: 0.01, unit: "mm" }, inch: { size: 0.0005, unit: "in" } },
  }),
  stepped({
    id: "pitch-wider",
    name: "injectors farther apart",
    mends: ["injector-clear"],
    path: "rail.pitch",
    to: "up",
    steps: { metric: { size: 1, unit: "mm" }, inch: { size: 1 / 16, unit: "in" } },
  }),
  {
    id: "sensor-moved",
    name: "the sensor where it clears the rest",
    mends: ["hole-gap", "hole-wall"],
    candidates(start) {
      const path = "sensor.at";
      if (start.values.sensor.at === undefined) return [];
      return [candidate(start, {
        answers: { [path]: undefined },
        edits: [
          edited(start, path, "blank, which means where it clears the rest", "Sensor's place"),
        ],
      })];
    },
  },
];
