/** The sixth to the ninth rung: running, hot, driven, and every year. */
import { duration, pressure } from "./amounts.ts";
import { blockedBelowWorking } from "./bench_proof.ts";
import { letGo } from "./car_static.ts";
import type { ProofContext } from "./context.ts";
import { type Line, line } from "./line.ts";
import { carPlaces } from "./places.ts";
import type { Rung } from "./rung.ts";
import { stepsFor } from "./steps.ts";
import { trappedNotes } from "./trapped_notes.ts";
import { vapourWords } from "./vapour_words.ts";

const MINUTE_s = 60;

/** Makes the rung of the first start. */
export function running(context: ProofContext): Rung {
  const hold_s = 5 * MINUTE_s;
  return {
    ...ofCar(context),
    id: "running",
    title: "First start and idle",
    why: line("Flow, shaking and heat come to the joints, one after the other."),
    pressure_Pa: context.railIdle_Pa,
    hold_s,
    fitted: [line("As tested with the engine off; coils and plugs back on.")],
    steps: stepsFor(context, [
      [
        "person",
        line("The second person at the cut-off, the extinguisher in reach."),
        "first-start",
        "extinguisher-ready",
        "methanol-flame",
        "pale-flame",
      ],
      ["prime", line("Prime, and look once more before cranking."), "prime-limit"],
      ["start", line("Start, let it idle, hands away from belts and fan.")],
      ["look", line("Go round every place with a light, for {hold}.", { hold: duration(hold_s) })],
      ["off", line("Switch off and go round again.")],
    ]),
    passes: [
      line("Every place is dry, running and after."),
      line("The pump stops when the engine does."),
      gaugeAtIdle(context),
    ],
    sees: [
      line(
        `Idle shakes and pulses, but gives ${
          context.boosted ? "neither full flow nor boost" : "no full flow"
        }.`,
      ),
    ],
  };
}

/** What the gauge shows while the engine idles. */
function gaugeAtIdle({ reference, railIdle_Pa, setPressure_Pa }: ProofContext): Line {
  const set = pressure(setPressure_Pa);
  return reference === "manifold"
    ? line("The gauge holds steady near {idle}, and near {set} with the regulator's hose off.", {
      idle: pressure(railIdle_Pa),
      set,
    })
    : line("The gauge holds steady near {set}, also when the engine is blipped.", { set });
}

/** Makes the rung of the hot soak. */
export function hotSoak(context: ProofContext): Rung {
  const hold_s = 30 * MINUTE_s;
  const { workingPressure_Pa, proofPressure_Pa } = context.pressures;
  const working = pressure(workingPressure_Pa);
  const words = vapourWords(context.fuel);
  return {
    ...ofCar(context),
    id: "hot-soak",
    title: "Hot soak",
    why: line("A stopped engine heats its rail: rings soften, clamps give, shut-in fuel rises."),
    pressure_Pa: context.setPressure_Pa,
    hold_s,
    notes: trappedNotes(context),
    fitted: [line("The engine at its full working temperature, then switched off, bonnet shut.")],
    steps: stepsFor(context, [
      ["warm", line("Run until the thermostat has opened and the fan has come on."), "hot-engine"],
      ["off", line("Switch off, write down the gauge, shut the bonnet.")],
      [
        "look",
        line(`${words.look} after {first}, {second} and {hold}; write down the gauge each time.`, {
          first: duration(5 * MINUTE_s),
          second: duration(15 * MINUTE_s),
          hold: duration(hold_s),
        }),
        "ignition-sources",
      ],
      [
        "stop",
        line(
          "Should the gauge reach {proof}, the proof pressure, stop: open the bonnet, keep away while " +
            "it cools, and bleed it cold at the gauge valve, without starting.",
          { proof: pressure(proofPressure_Pa) },
        ),
        "leaking",
      ],
      ["restart", line("Start again and go round once more."), "first-start"],
      ["tighten", line("Once cold and without pressure, check torque and marks."), "hose-life"],
    ]),
    passes: [
      line(`Dry at every look, and ${words.clean} under the bonnet.`),
      line("The gauge never passed {working}, the highest working pressure.", { working }),
      line("It starts again without cranking long."),
    ],
    ifNot: stepsFor(context, [
      [
        "above",
        line(
          "Was it above {working}? Find what should have relieved the shut-in fuel (regulator, relief " +
            "valve, bleed past the check valve) before the next start.",
          { working },
        ),
      ],
      ...letGo(context),
    ]),
    sees: [
      line(
        `The hottest that the rail gets standing; ${
          context.boosted ? "boost" : "full flow"
        } is still to come.`,
      ),
    ],
  };
}

/** Makes the rung after the first drive. */
export function firstDrive(context: ProofContext): Rung {
  const working = pressure(context.pressures.workingPressure_Pa);
  return {
    ...ofCar(context),
    id: "first-drive",
    title: "After the first drive",
    why: line("Full flow, full pressure of {working}, bumps.", { working }),
    pressure_Pa: context.pressures.workingPressure_Pa,
    hold_s: 15 * MINUTE_s,
    fitted: [line("As it will be driven, with the extinguisher in the car.")],
    steps: stepsFor(context, [
      [
        "papers",
        line("Settle what the law and the insurer ask before any road."),
        "insurance-road",
      ],
      [
        "drive",
        line(
          "Drive {time} near home, gently first, then once to full load where that is allowed.",
          {
            time: duration(15 * MINUTE_s),
          },
        ),
      ],
      ["look", line("Switch off and go round every place at once."), "hot-engine"],
      ["tighten", line("Once cold, check torque, clamps and marks."), "hose-life", "depressurise"],
      ["route", line("Look for rubbing and heat along every hose."), "hose-routing"],
    ]),
    passes: [
      line("Every place is dry, and every mark in line."),
      line("No hose has moved, rubbed or hardened."),
    ],
    sees: [line("What one drive shows. Look again after the first tank of fuel.")],
  };
}

/** Makes the rung for every year and after any work. */
export function yearly(context: ProofContext): Rung {
  return {
    ...ofCar(context),
    id: "yearly",
    title: "Every year, and after any work",
    why: line("Rings, hoses and clamps age; hands forget."),
    pressure_Pa: context.setPressure_Pa,
    hold_s: 10 * MINUTE_s,
    fitted: [line("As it is driven, cold.")],
    steps: stepsFor(context, [
      [
        "place",
        line("Make the place ready as for the first fuel."),
        "ignition-sources",
        "ventilation",
        "extinguisher-ready",
        "alcohol-foam",
      ],
      ["hoses", line("Bend every hose and read its date."), "hose-life", "hose-routing"],
      ["prime", line("Prime with the engine off, go round, wait, go round."), "prime-limit"],
      ["cut-off", line("Trip the impact cut-off once."), "inertia"],
      [
        "opened",
        line(
          "A joint that was opened gets a new ring; a new part on the rail begins on the bench.",
        ),
        "depressurise",
        "battery",
      ],
    ]),
    passes: [
      line("Every place is dry after {hold}.", { hold: duration(10 * MINUTE_s) }),
      line("Every hose is within its age, soft and whole."),
    ],
    sees: [line(`${vapourWords(context.fuel).found}; the inside of a hose does not show.`)],
  };
}

/** What the rungs in the car share. */
function ofCar(
  context: ProofContext,
): Pick<Rung, "where" | "medium" | "notes" | "look" | "ifNot" | "source" | "blocked"> {
  const blocked = blockedBelowWorking(context);
  return {
    where: "car",
    medium: "fuel",
    ...(blocked === undefined ? {} : { blocked }),
    notes: [],
    look: carPlaces(context),
    ifNot: stepsFor(context, letGo(context)),
    source: "common practice, no source",
  };
}
