/** What to beware of at the drill press and the wash bench. */
import { formatQuantity, type System } from "@/lib/units/mod.ts";

/** The names of the workshop's cautions. */
export type WorkshopCautionId =
  | "drill-press"
  | "long-drill"
  | "taps"
  | "welding"
  | "hones"
  | "solvents"
  | "compressed-air";

/** A caution of the workshop, to be printed beside the operation that names it. */
export interface WorkshopCaution {
  /** What it is about, in a few words. */
  readonly title: string;
  /** What it says, with pressures in the units of the sheet. */
  readonly says: (system: System) => readonly string[];
  /** Where it is from, or `common practice, no source`. */
  readonly source: string;
}

const COMMON_PRACTICE = "common practice, no source";

/** Air for cleaning stays below this [Pa, gauge]: 30 psi. */
const CLEANING_AIR_Pa = 30 * 6894.757;

const always = (...says: readonly string[]): WorkshopCaution["says"] => () => says;

/**
 * The cautions of the workshop by name. Whoever shows them says beneath that local rules and the
 * judgement of qualified people come first.
 *
 * @example
 * ```ts
 * import { assertStringIncludes } from "@std/assert";
 *
 * const says = WORKSHOP_CAUTIONS["compressed-air"].says("inch").join(" ");
 *
 * assertStringIncludes(says, "30.0 psi");
 * ```
 */
export const WORKSHOP_CAUTIONS: Readonly<Record<WorkshopCautionId, WorkshopCaution>> = {
  "drill-press": {
    title: "drill press, chips and edges",
    says: always(
      "Clamp the bar, and bolt the vice down; never hold either by hand. Key out of the chuck before switching on.",
      "Eye protection on. No gloves, loose sleeves, rings or open hair near the spindle.",
      "Chips and fresh edges cut: spindle stopped, a brush, never hand or mouth. Break each edge as soon as it is cut.",
    ),
    source: COMMON_PRACTICE,
  },
  "long-drill": {
    title: "a long drill",
    says: always(
      "A long drill that turns free whips and breaks: start it slowly, in a spotted hole or a bush.",
      "Packed with chips it seizes and takes the bar round: clear it every diameter of depth, and hold the bar at its upper end too.",
    ),
    source: COMMON_PRACTICE,
  },
  taps: {
    title: "taps are brittle",
    says: always(
      "Turn a tap by hand with the press switched off and unplugged; the spindle only keeps it square.",
      "When it binds, stop and back it out. A broken end is as sharp as glass: eye protection on, pliers, not fingers.",
    ),
    source: COMMON_PRACTICE,
  },
  welding: {
    title: "welding the caps",
    says: always(
      "Only on a new bar, washed free of oil and dried of solvent. Nothing that has held fuel is welded before it is cleaned and tested gas-free.",
      "Leave a hole open: air shut in blows the last cap off, or the weld.",
      "Shield eyes and skin, draw the fume off, and keep what burns out of reach of the sparks for an hour after.",
    ),
    source: "29 CFR 1910.252 for hot work, from memory; the rest common practice, no source",
  },
  hones: {
    title: "a hone, and what it leaves behind",
    says: always(
      "A flexible hone that runs free at speed throws its balls: turning slowly before it enters, stopped only when it is out. Eye protection on.",
      "Abrasive left behind cuts pumps, seats and injectors. Solvent alone leaves it: brush with warm soapy water until a white cloth stays white.",
    ),
    source: COMMON_PRACTICE,
  },
  solvents: {
    title: "solvents",
    says: always(
      "Never petrol. Outdoors or with air drawn off at floor level; no flame, spark or heater near.",
      "Gloves and eye protection as the maker's data sheet asks; rags into a lidded metal bin.",
    ),
    source: COMMON_PRACTICE,
  },
  "compressed-air": {
    title: "compressed air",
    says: (system) => [
      `Eye protection on, and on all who stand near; below ${
        formatQuantity(CLEANING_AIR_Pa, "pressure", system)
      } at the nozzle, with a guard against chips.`,
      "Never at skin or clothes: air through the skin kills. A hole blown through throws its chips out of the other end: cover it with a cloth.",
    ],
    source: "29 CFR 1910.242(b), from memory; the rest common practice, no source",
  },
};
