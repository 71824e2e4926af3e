/** What is looked at before a drilled rail is built up, with which instrument. */
/** Ids of the points. */
export type InspectionPointId =
  | "break-out"
  | "least-wall"
  | "place"
  | "flat"
  | "pocket-bore"
  | "pocket-finish"
  | "lead-in"
  | "seat"
  | "thread"
  | "deburr"
  | "flush"
  | "look-through"
  | "wrench"
  | "two-steps"
  | "paint-mark"
  | "check-again";

/** One thing to look at. */
export interface InspectionPoint {
  /** What to do and what is right. */
  readonly says: string;
  /** The instrument. */
  readonly with: string;
  /** What goes wrong otherwise. */
  readonly why: string;
  /** Where it comes from. */
  readonly source: string;
}

/**
 * Particle that an injector's inlet basket just holds back [m]: nothing larger may be left in
 * the rail, behind the main filter. Common practice, no source: baskets of 10 to 50 um.
 */
export const PARTICLE_m = 30e-6;

/** Roughness that an O-ring's bore may have, Ra [m]; preferred and limit. */
export const POCKET_ROUGHNESS_m: Readonly<Record<"aim" | "limit", number>> = {
  aim: 0.8e-6,
  limit: 1.6e-6,
};

const NO_SOURCE = "common practice, no source";

/** Roughness and particles are said in micrometres, whatever a plan's units. */
const micrometres = (length_m: number): string => `${Math.round(length_m * 1e7) / 10} µm`;

/**
 * The points by id, in the order in which they are looked at.
 *
 * @example
 * ```ts
 * import { assertStringIncludes } from "@std/assert";
 *
 * assertStringIncludes(INSPECTION_POINTS["paint-mark"].says, "every screw");
 * ```
 */
export const INSPECTION_POINTS: Readonly<Record<InspectionPointId, InspectionPoint>> = {
  "break-out": {
    says: "Where the gallery breaks out: measured from two sides, at both ends.",
    with: "a caliper",
    why: "A long drill wanders; what it lost at its far end is missing in one wall.",
    source: NO_SOURCE,
  },
  "least-wall": {
    says: "Least wall between gallery and outside, at both ends and beside each port.",
    with: "a caliper or a ball-ended micrometer",
    why: "Strength goes by the thinnest place.",
    source: NO_SOURCE,
  },
  place: {
    says: "Place of each pocket, all measured from one end of the bar, never from hole to hole.",
    with: "a caliper, pins in the pockets",
    why: "From hole to hole, the errors add up at the last injector.",
    source: "ISO 2768-1, class m, where the drawing gives no tolerance",
  },
  flat: {
    says: "Sealed faces: no blade of the limit goes in along, across and corner to corner.",
    with: "a straight edge and a feeler gauge",
    why: "A gasket or a washer fills no more than its own give.",
    source: NO_SOURCE,
  },
  "pocket-bore": {
    says: "Bore of each pocket, at two depths and crosswise.",
    with: "a bore gauge, or plug gauges of both limits",
    why: "The bore decides how much the O-ring is squeezed.",
    source: "ISO 286-2 limits of the bore's grade",
  },
  "pocket-finish": {
    says: `Wall of each pocket: Ra ${micrometres(POCKET_ROUGHNESS_m.aim)} or finer, at most ${
      micrometres(POCKET_ROUGHNESS_m.limit)
    }; no line runs along it.`,
    with: "a fingernail and a roughness sample",
    why: "A scratch along the bore leaks past the ring.",
    source: "handbooks of O-ring makers: static seals",
  },
  "lead-in": {
    says: "Lead-in of each pocket smooth, without an edge where it meets the bore.",
    with: "a fingertip and a lens",
    why: "An edge shaves the O-ring as it goes in.",
    source: NO_SOURCE,
  },
  seat: {
    says: "Seats of ports: an unbroken bright ring, marks only round it.",
    with: "a lens, marking blue and the sensor's own cone",
    why: "A mark across the seat is a leak.",
    source: NO_SOURCE,
  },
  thread: {
    says: "Threads: the gauge or the fitting goes in by hand to full depth.",
    with: "a thread gauge or the fitting itself",
    why: "A short thread strips, or bottoms before the seal is squeezed.",
    source: NO_SOURCE,
  },
  deburr: {
    says: "Deburr every intersection of holes.",
    with: "a brush or a flexible hone",
    why: "A loose burr blocks an injector; a sharp edge cuts an O-ring.",
    source: NO_SOURCE,
  },
  flush: {
    says: `Brush or hone, then flush both ways; on a fine cloth nothing over ${
      micrometres(PARTICLE_m)
    } is left.`,
    with: "clean solvent, a fine cloth and a lens",
    why: "Behind the main filter only the injector's small basket stops it.",
    source: "common practice, no source; ISO 16232 counts such particles",
  },
  "look-through": {
    says: "Look through every hole from both ends: no chip, burr or break-out.",
    with: "a light or a borescope",
    why: "What is seen now is not searched for in an injector.",
    source: NO_SOURCE,
  },
  wrench: {
    says: "A torque wrench whose calibration is in date.",
    with: "its certificate",
    why: "One out of date says nothing of the screw.",
    source: "ISO 6789: 4 % above 10 N m, 6 % up to it",
  },
  "two-steps": {
    says: "Tighten in two steps, from the centre outwards.",
    with: "the torque wrench",
    why: "The rail comes down level on its O-rings.",
    source: NO_SOURCE,
  },
  "paint-mark": {
    says: "A paint mark across every screw and what it clamps.",
    with: "a paint pen",
    why: "A screw that turns back shows.",
    source: NO_SOURCE,
  },
  "check-again": {
    says: "Check the torque again after the first heat cycle, cold.",
    with: "the torque wrench",
    why: "Seals and washers settle.",
    source: NO_SOURCE,
  },
};
