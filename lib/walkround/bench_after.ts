/** The third and the fourth rung: dry again, then the real seals. */
import { PARTICLE_m } from "@/lib/inspect/mod.ts";
import { AIR_ENERGY_LIMIT_J, BUBBLE_WATCH_s } from "@/lib/proof/mod.ts";
import { duration, energy, length, pressure } from "./amounts.ts";
import type { ProofContext } from "./context.ts";
import { line } from "./line.ts";
import { insidePlaces, railPlaces } from "./places.ts";
import type { Rung } from "./rung.ts";
import { stepsFor, type TypedStep } from "./steps.ts";

/** Makes the rung that gets the liquid out again. */
export function drainDry(context: ProofContext): Rung {
  return {
    id: "drain-dry",
    title: "Drain, dry, oil",
    why: line("Water left in a rail corrodes it and goes to the injectors; so does every chip."),
    where: "bench",
    medium: "nothing",
    notes: [],
    fitted: [line("All plugs out, both ends of the gallery open.")],
    steps: stepsFor(context, [
      ["drain", line("Stand it on end, then on the other.")],
      [
        "flush",
        line("Flush both ways through a fine cloth: nothing over {particle} may be left on it.", {
          particle: length(PARTICLE_m),
        }),
      ],
      [
        "dry",
        line("Blow it through with dry air, both ends open, and leave it hand-warm for an hour."),
      ],
      ["oil", line("A film of light oil in the gallery and the pockets."), "proof-liquid"],
      ["close", line("Plug every hole until it is fitted.")],
    ]),
    look: insidePlaces(context),
    passes: [
      line("Dry paper drawn through the gallery comes out dry and clean."),
      line("Against a light the gallery shows no chip, no burr, no film of water."),
    ],
    ifNot: stepsFor(context, [["again", line("Flush and dry again.")]]),
    sees: [
      line("What is in the way of the light; not what sits in a blind corner: flush both ways."),
    ],
    source: "common practice, no source",
  };
}

/** Makes the rung of the air test with the parts that will run. */
export function benchSeals(context: ProofContext): Rung {
  const { numbers } = context;
  const watch = duration(BUBBLE_WATCH_s);
  return {
    id: "bench-seals",
    title: "The real seals with air, on the bench",
    why: line("The plugs came dry; now the rings, injectors and fittings that will run."),
    where: "bench",
    medium: "air",
    pressure_Pa: numbers.airPressure_Pa,
    hold_s: numbers.airHold_s,
    volume_m3: numbers.volume_m3,
    energy_J: numbers.airEnergy_J,
    notes: [],
    fitted: [
      line("Every injector on its own new ring, lubricated, held down as in the car."),
      line("Sensor, regulator, damper and fittings as they will run, tightened to torque."),
    ],
    steps: stepsFor(context, [
      ["fit", line("Fit all; no ring may be cut at the lead-in."), "no-air-transfer"],
      [
        "raise",
        line("Raise to {half}, stop and look; then to {test}, and shut the supply.", {
          half: pressure(numbers.airPressure_Pa / 2),
          test: pressure(numbers.airPressure_Pa),
        }),
        "air-limits",
        "pressure-test-person",
      ],
      [
        "watch",
        line("Brush soap solution round every place and watch each for {watch}.", { watch }),
      ],
      [
        "nozzles",
        line(
          "A dry injector may pass a little air at its nozzle: write it down, fuel will judge it.",
        ),
      ],
      highAir(context),
      ["let-off", line("Let the pressure off to nought, wipe the soap off, blow dry.")],
    ]),
    look: railPlaces(context, "injectors"),
    passes: [
      line("No bubble grows at any place in {watch}.", { watch }),
      line("No ring shows a cut when one injector is pulled and looked at."),
    ],
    ifNot: stepsFor(context, [
      ["let-off", line("Let the pressure off and pull that injector or fitting.")],
      ["renew", line("New ring, lead-in smoothed, bore looked at with a light; begin anew.")],
    ]),
    sees: [line("Rings cold and unloaded by the engine's shaking: the hot soak looks again.")],
    source: "Bubble emission as in EN 1593; the pressure and energy limits are ours",
  };
}

/** Air at working pressure while it stores little; otherwise why not. */
function highAir({ numbers, pressures }: ProofContext): TypedStep {
  const stored = energy(numbers.workingAirEnergy_J);
  const working = pressure(pressures.workingPressure_Pa);
  if (numbers.workingAirAllowed) {
    // A part may be rated between working and the relief that the code allows.
    const relief_Pa = Math.min(numbers.workingAirRelief_Pa, pressures.proofPressure_Pa);
    return [
      "working-air",
      line(
        "If you wish, behind a shield, and with a relief at no more than {relief} in case the supply " +
          "creeps: raise in steps to {working} and no higher ({stored} stored), shut the supply, and " +
          "look from behind the shield.",
        { relief: pressure(relief_Pa), working, stored },
      ),
      "air-limits",
      "pressure-test-person",
    ];
  }
  if (pressures.conflict?.belowWorking === true) {
    return [
      "no-working-air",
      line("Go no higher: a part here may not be given {working}.", { working }),
    ];
  }
  return [
    "no-working-air",
    line("Go no higher with air: at {working} it would store {stored}, and {most} is the limit.", {
      working,
      stored,
      most: energy(AIR_ENERGY_LIMIT_J),
    }),
    "air-limits",
  ];
}
