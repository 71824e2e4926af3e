/** How vapour is noticed: smell is one sign of petrol, and none to trust with methanol. */
import { duration } from "./amounts.ts";
import { isMethanol, type ProofFuel } from "./context.ts";
import { type Line, line } from "./line.ts";

/** How long a place is aired after a leak [s]; ours: six changes of air an hour leave a twentieth. */
const AIRING_s = 1800;

/** What is said of vapour, so that nobody is told to sniff at methanol. */
interface VapourWords {
  /** How the tank is looked at. */
  readonly atTank: string;
  /** What a hot look is made with. */
  readonly lookedWith: string;
  /** What is done at a look, before what is looked at. */
  readonly look: string;
  /** What has to be so besides dry. */
  readonly clean: string;
  /** What has to be so in and under the car. */
  readonly inCar: string;
  /** What the last rung can find. */
  readonly found: string;
  /** When airing ends, besides its time. */
  readonly aired: string;
}

const BY_SMELL: VapourWords = {
  atTank: "a dry towel; notice any smell from where you stand",
  lookedWith: "light and towel; smell only from where you stand",
  look: "Look, and notice any smell from where you stand,",
  clean: "no smell",
  inCar: "No smell of fuel at the bay, the cabin or the floor.",
  found: "What can be seen, or smelt from where you stand",
  aired: "and on while anything smells",
};

// Reported odour thresholds reach above the 200 ppm of a shift (NIOSH), so smell comes too late; from memory.
const BY_TOWEL: VapourWords = {
  atTank: "a dry towel, gloves on; no sniffing",
  lookedWith: "light and towel, a methanol detector if there is one; no sniffing",
  look: "Look with light and towel, no sniffing,",
  clean: "the methanol detector, if any, silent",
  inCar:
    "A methanol detector, if there is one, shows nothing at the bay, the cabin or the floor; no " +
    "smell proves nothing.",
  found: "What a towel shows",
  aired: "and on while a methanol detector shows any; no smell proves nothing",
};

/**
 * Gives what is said of vapour.
 *
 * @param fuel The fuel of the plan.
 * @returns The words that suit it.
 */
export function vapourWords(fuel: ProofFuel): VapourWords {
  return isMethanol(fuel) ? BY_TOWEL : BY_SMELL;
}

/**
 * Says how long to air a place where fuel has leaked.
 *
 * @param fuel The fuel of the plan.
 * @returns What to do.
 */
export function airing(fuel: ProofFuel): Line {
  return line(
    `Wipe up, take the towels out, air the place for {airing}, ${vapourWords(fuel).aired}.`,
    {
      airing: duration(AIRING_s),
    },
  );
}
