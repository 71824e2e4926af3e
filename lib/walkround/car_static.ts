/** The fifth rung: fuel, pump on, engine off. */
import { duration, pressure, volume } from "./amounts.ts";
import { blockedBelowWorking } from "./bench_proof.ts";
import type { ProofContext } from "./context.ts";
import { line } from "./line.ts";
import { carPlaces } from "./places.ts";
import type { Rung } from "./rung.ts";
import { stepsFor, type TypedStep } from "./steps.ts";
import { trappedNotes } from "./trapped_notes.ts";
import { airing, vapourWords } from "./vapour_words.ts";

const HOLD_s = 600;

/** Makes the rung of the static test in the car. */
export function carStatic(context: ProofContext): Rung {
  const { setPressure_Pa, numbers } = context;
  const set = pressure(setPressure_Pa);
  const hold = duration(HOLD_s);
  const blocked = blockedBelowWorking(context);
  return {
    id: "car-static",
    title: "In the car: pump primed, engine off",
    why: line(
      "First fuel in the system, nothing hot, nothing turning: the best moment for a leak.",
    ),
    where: "car",
    medium: "fuel",
    pressure_Pa: setPressure_Pa,
    hold_s: HOLD_s,
    ...(blocked === undefined ? {} : { blocked }),
    notes: trappedNotes(context),
    fitted: [
      line("The rail bolted down, every hose and clip in its place, a gauge on the rail."),
      line("The engine cold; coils or plugs unplugged, so that nothing can fire."),
    ],
    steps: stepsFor(context, [
      [
        "hoses",
        line("Before any fuel, follow every hose by hand from tank to rail and back."),
        "hose-rating",
        "hose-routing",
      ],
      [
        "place",
        line(
          "Make the place ready: doors open, floor clear. {spill} spilt can make {air} of air flammable.",
          {
            spill: volume(numbers.spill_m3),
            air: volume(numbers.spillMixture_m3),
          },
        ),
        "ignition-sources",
        "ventilation",
        "zones",
      ],
      [
        "ready",
        line("Put the extinguisher, towels and a second person where they are needed."),
        "extinguisher-ready",
        "alcohol-foam",
        "methanol-flame",
        "pale-flame",
      ],
      ["battery", line("Take the negative lead off the battery."), "battery"],
      [
        "fuel",
        line("Pour a few litres into the tank, and close tank and can."),
        "bonding",
        "covered-containers",
        "no-air-transfer",
        "alcohol-headspace",
        "methanol-toxic",
        "skin-eyes",
      ],
      [
        "dry-look",
        line(
          "Look once round before any pressure, along the pump's wires too; then refit the lead.",
        ),
        "battery",
        "pump-wiring",
      ],
      ["cut-off", line("Try the cut-off switch and the impact cut-off."), "inertia"],
      [
        "prime",
        line("Switch on: the pump runs and stops by itself. Repeat until the gauge reads {set}.", {
          set,
        }),
        "prime-limit",
        "first-start",
      ],
      ["look", line("Go round every place with a light and a dry towel.")],
      [
        "hold",
        line("Leave it for {hold} with the pump off, watch the gauge, go round again.", { hold }),
        "never-valved-off",
      ],
    ]),
    look: carPlaces(context),
    passes: [
      line("Every place is dry to a towel, twice, {hold} apart.", { hold }),
      line("The pump stopped by itself, and the cut-off stopped it too."),
      line(vapourWords(context.fuel).inCar),
    ],
    ifNot: stepsFor(context, letGo(context)),
    sees: [
      line(
        `Leaks at {set}; ${context.boosted ? "boost, " : ""}heat and shaking are still to come.`,
        {
          set,
        },
      ),
      line("A slow fall of the gauge may be the check valve or the regulator: look, then judge."),
    ],
    source: "common practice, no source",
  };
}

/** What to do about a leak of fuel. */
export function letGo({ fuel }: ProofContext): TypedStep[] {
  return [
    ["stop", line("Switch off and leave it off; take the pump's relay or fuse out."), "leaking"],
    [
      "relieve",
      line("Bleed the pressure off at the gauge valve, into a closed container."),
      "skin-eyes",
    ],
    ["air", airing(fuel), "ventilation", "methanol-toxic"],
    ["battery", line("Only then take the negative lead off the battery."), "battery"],
    ["mend", line("Mend it cold. What leaked at a seal gets a new one.")],
    ["weld", line("What needs welding leaves the car."), "hot-work"],
    ["begin", line("Begin this sheet anew; a new part on the rail begins on the bench.")],
  ];
}
