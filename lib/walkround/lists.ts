/** Short lists to walk round with, one for each occasion. */
import { PARTICLE_m } from "@/lib/inspect/mod.ts";
import { PROOF_HOLD_s } from "@/lib/proof/mod.ts";
import { duration, length, pressure } from "./amounts.ts";
import type { CautionId } from "./caution.ts";
import { cautionsOf } from "./cautions.ts";
import { isAlcoholRich, type ProofContext } from "./context.ts";
import { type Line, line } from "./line.ts";
import { vapourWords } from "./vapour_words.ts";

/** The occasions, in order. */
export type ListId = "bench" | "first-fuel" | "first-start" | "hot-soak" | "first-drive" | "yearly";

/** One line to tick. */
export interface ListItem {
  /** Unique within its list. */
  readonly id: string;
  /** What has to be so. */
  readonly text: Line;
  /** What it is looked at with. */
  readonly with: string;
  /** How long to look or wait [s], where it matters. */
  readonly time_s?: number;
  /** The cautions to print beside it. */
  readonly cautions: readonly CautionId[];
}

/** A list for one occasion. */
export interface WalkRoundList {
  /** Its occasion. */
  readonly id: ListId;
  /** Its heading. */
  readonly title: string;
  /** What to tick, in order. */
  readonly items: readonly ListItem[];
}

/** One item as it is typed; the time may be left out. */
interface TypedItem {
  readonly id: string;
  readonly text: Line;
  readonly with: string;
  readonly time_s?: number;
  readonly cautions?: readonly CautionId[];
}

const MINUTE_s = 60;

/**
 * Makes the six walk-round lists of a plan, each short enough for one side of a card.
 *
 * @param context Facts of the evaluated plan.
 * @returns The lists in the order they are needed.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { evaluate } from "@/lib/evaluation/mod.ts";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 * import { proofContextOf } from "./of_evaluation.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "440 cc/min" }] },
 *   rail: { bore: "12 mm", height: "25 mm" },
 * });
 * assert(reading.ok);
 * const context = proofContextOf(evaluate(reading.plan), resolvePlan(reading.plan).values);
 * assert(context);
 *
 * assertEquals(walkRoundLists(context).map(({ id }) => id).slice(0, 2), ["bench", "first-fuel"]);
 * ```
 */
export function walkRoundLists(context: ProofContext): WalkRoundList[] {
  return [
    listOf(context, "bench", "On the bench", bench(context)),
    listOf(context, "first-fuel", "First fuel", firstFuel(context)),
    listOf(context, "first-start", "First start", firstStart(context)),
    listOf(context, "hot-soak", "Hot soak", hotSoak(context)),
    listOf(context, "first-drive", "First drive", firstDrive(context)),
    listOf(context, "yearly", "Every year and after work", yearly(context)),
  ];
}

function listOf(
  context: ProofContext,
  id: ListId,
  title: string,
  typed: readonly TypedItem[],
): WalkRoundList {
  const items = typed.map(({ cautions = [], ...item }) => ({
    ...item,
    cautions: cautionsOf(cautions, context.fuel).map((caution) => caution.id),
  }));
  return { id, title, items };
}

function bench({ pressures, numbers }: ProofContext): TypedItem[] {
  return [
    {
      id: "deburr",
      text: line("Every intersection of holes deburred, brushed or honed with a flexible hone"),
      with: "a fingertip probe and a brush",
    },
    {
      id: "flush",
      text: line("Flushed both ways; nothing over {particle} on the cloth", {
        particle: length(PARTICLE_m),
      }),
      with: "a fine cloth and a lens",
    },
    {
      id: "look-through",
      text: line("Looked through from both ends: no chip, burr or break-out"),
      with: "a light or a borescope",
    },
    {
      id: "threads",
      text: line("Every thread clean and to full depth"),
      with: "a thread gauge or the part itself",
    },
    {
      id: "pockets",
      text: line("Pocket bores and lead-ins smooth: no ring is cut going in"),
      with: "a light, and one ring pulled out again",
    },
    {
      id: "torque",
      text: line("Screws tightened in two steps, from the centre outwards"),
      with: "a torque wrench whose calibration is in date",
    },
    {
      id: "marks",
      text: line("A paint mark across every screw and plug"),
      with: "a paint pen",
    },
    {
      id: "air",
      text: line("No bubble under water at {test}", { test: pressure(numbers.airPressure_Pa) }),
      with: "a tank of water and a gauge",
      time_s: numbers.airHold_s,
      cautions: ["air-limits", "pressure-test-person"],
    },
    {
      id: "proof",
      text: line("Dry at {proof} of liquid", { proof: pressure(pressures.proofPressure_Pa) }),
      with: "dry paper",
      time_s: PROOF_HOLD_s,
      cautions: ["proof-liquid", "never-valved-off"],
    },
    {
      id: "dried",
      text: line("Drained, dried, oiled and plugged"),
      with: "dry paper drawn through",
    },
  ];
}

function firstFuel({ setPressure_Pa, layout }: ProofContext): TypedItem[] {
  return [
    {
      id: "hoses",
      text: line("Every hose is injection hose for this fuel, clipped and clear of the exhaust"),
      with: "hand and eye, tank to rail",
      cautions: ["hose-rating", "hose-routing"],
    },
    {
      id: "place",
      text: line("Air moves at the floor, pits are closed, nothing can light"),
      with: "a walk round the car",
      cautions: ["ventilation", "zones", "ignition-sources"],
    },
    {
      id: "ready",
      text: line("Extinguisher, towels and second person in their places"),
      with: "a look at seal and gauge",
      cautions: ["extinguisher-ready", "alcohol-foam"],
    },
    {
      id: "pour",
      text: line("Fuel poured with the battery off and the can bonded, then both closed"),
      with: "a bonding wire",
      cautions: ["battery", "bonding", "covered-containers", "methanol-toxic"],
    },
    {
      id: "prime",
      text: line("The pump stops by itself; the cut-offs stop it too"),
      with: "ear and watch",
      cautions: ["prime-limit", "inertia"],
    },
    {
      id: "pressure",
      text: line("The gauge reads {set}", { set: pressure(setPressure_Pa) }),
      with: "the gauge on the rail",
    },
    {
      id: "dry",
      text: line("Every place is dry, and again {hold} later", { hold: duration(10 * MINUTE_s) }),
      with: "a light and dry towels",
      time_s: 10 * MINUTE_s,
      cautions: ["first-start"],
    },
    layout === "return"
      ? {
        id: "return",
        text: line("Fuel comes back to the tank freely"),
        with: "the sound at the tank",
      }
      : {
        id: "dead-end",
        text: line("The gauge does not climb with the pump off"),
        with: "the gauge on the rail",
        time_s: 10 * MINUTE_s,
      },
  ];
}

function firstStart({ reference, setPressure_Pa }: ProofContext): TypedItem[] {
  return [
    {
      id: "person",
      text: line("Second person at the cut-off, extinguisher in reach"),
      with: "a word between you",
      cautions: ["first-start", "extinguisher-ready", "methanol-flame", "pale-flame"],
    },
    {
      id: "primed",
      text: line("Primed and looked round before cranking"),
      with: "a light and a dry towel",
    },
    {
      id: "idle",
      text: line("Every place is dry at idle"),
      with: "a light, hands away from belts",
      time_s: 5 * MINUTE_s,
    },
    {
      id: "gauge",
      text: reference === "manifold"
        ? line("The gauge reads {set} with the regulator's hose off, and less with it on", {
          set: pressure(setPressure_Pa),
        })
        : line("The gauge reads {set} at idle and when blipped", { set: pressure(setPressure_Pa) }),
      with: "the gauge on the rail",
    },
    {
      id: "stops",
      text: line("The pump stops when the engine does"),
      with: "ear",
      cautions: ["prime-limit"],
    },
    {
      id: "after",
      text: line("Every place is dry after switching off"),
      with: "a dry towel",
    },
  ];
}

function hotSoak({ pressures, fuel }: ProofContext): TypedItem[] {
  const { clean, lookedWith } = vapourWords(fuel);
  return [
    {
      id: "warm",
      text: line("Fully warm, fan has run, switched off"),
      with: "the temperature gauge",
      cautions: ["hot-engine"],
    },
    {
      id: "five",
      text: line(`Dry, and ${clean}`),
      with: lookedWith,
      time_s: 5 * MINUTE_s,
    },
    {
      id: "thirty",
      text: line(`At the hottest: dry, and ${clean}`),
      with: lookedWith,
      time_s: 30 * MINUTE_s,
    },
    {
      id: "gauge",
      text: line("The gauge never passed {working}", {
        working: pressure(pressures.workingPressure_Pa),
      }),
      with: "the gauge on the rail",
      time_s: 30 * MINUTE_s,
    },
    {
      id: "restart",
      text: line("Starts again at once, and stays dry"),
      with: "a light",
      cautions: ["first-start"],
    },
    {
      id: "torque",
      text: line("Cold again: torque checked after the first heat cycle, marks in line"),
      with: "the torque wrench",
      cautions: ["hose-life", "depressurise"],
    },
  ];
}

function firstDrive({ pressures, fuel }: ProofContext): TypedItem[] {
  const { clean, lookedWith } = vapourWords(fuel);
  return [
    {
      id: "papers",
      text: line("What the law and the insurer ask is settled"),
      with: "the papers",
      cautions: ["insurance-road"],
    },
    {
      id: "short",
      text: line(`Stopped after a short drive: dry, and ${clean}`),
      with: lookedWith,
      time_s: 15 * MINUTE_s,
    },
    {
      id: "full",
      text: line("At full load rail pressure was steady, at most {working}", {
        working: pressure(pressures.workingPressure_Pa),
      }),
      with: "the log of the pressure sensor",
    },
    {
      id: "hoses",
      text: line("No hose has moved, rubbed or got hot"),
      with: "hand, once cool",
      cautions: ["hose-routing"],
    },
    {
      id: "clamps",
      text: line("Clamps and screws at torque, marks in line"),
      with: "the torque wrench",
      cautions: ["hose-life", "depressurise"],
    },
    {
      id: "floor",
      text: line("A night on clean paper leaves no spot"),
      with: "paper under the car",
    },
  ];
}

function yearly(context: ProofContext): TypedItem[] {
  const items: TypedItem[] = [
    {
      id: "hoses",
      text: line("Every hose within its age, soft, dry and whole"),
      with: "hand, eye and the date on it",
      cautions: ["hose-life"],
    },
    {
      id: "places",
      text: line("Every place dry, primed, engine off"),
      with: "a light and dry towels",
      time_s: 10 * MINUTE_s,
      cautions: ["ignition-sources", "ventilation"],
    },
    {
      id: "marks",
      text: line("Every mark in line, every clip in place"),
      with: "a light",
    },
    {
      id: "cut-offs",
      text: line("The prime ends by itself; the impact cut-off trips and resets"),
      with: "ear and hand",
      cautions: ["prime-limit", "inertia"],
    },
    {
      id: "extinguisher",
      text: line("The extinguisher is charged and in date"),
      with: "a look at seal and gauge",
      cautions: ["extinguisher-ready", "alcohol-foam"],
    },
    {
      id: "opened",
      text: line("What was opened has new rings, and was tested again from the rung it belongs to"),
      with: "the sheets",
      cautions: ["depressurise"],
    },
  ];
  if (isAlcoholRich(context.fuel)) {
    items.push({
      id: "corrosion",
      text: line("No white bloom or sludge inside rail, filter and fittings of bare aluminium"),
      with: "a borescope, or the filter's housing opened",
      cautions: ["methanol-toxic"],
    });
  }
  return items;
}
