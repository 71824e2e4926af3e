/** The first rung: air at low pressure, under water. */
import { AIR_ENERGY_LIMIT_J, BUBBLE_DIAMETER_m, BUBBLE_WATCH_s } from "@/lib/proof/mod.ts";
import { duration, energy, leak, length, pressure, volume } from "./amounts.ts";
import type { ProofContext } from "./context.ts";
import { type Line, line } from "./line.ts";
import { railPlaces } from "./places.ts";
import type { Rung } from "./rung.ts";
import { stepsFor } from "./steps.ts";

const DAY_s = 86_400;
const SETTLE_s = 600;

/** Makes the rung of the air test under water. */
export function benchAir(context: ProofContext): Rung {
  const { numbers, pressures } = context;
  const test = pressure(numbers.airPressure_Pa);
  const watch = duration(BUBBLE_WATCH_s);
  return {
    id: "bench-air",
    title: "Air under water, on the bench",
    why: line(
      "Finds open joints, pores and missing rings while little energy is stored. It says nothing of " +
        "strength.",
    ),
    where: "bench",
    medium: "air",
    pressure_Pa: numbers.airPressure_Pa,
    hold_s: numbers.airHold_s,
    volume_m3: numbers.volume_m3,
    energy_J: numbers.airEnergy_J,
    notes: muchAir(context),
    fitted: dummyPlugs(context),
    steps: stepsFor(context, [
      [
        "scope",
        line("Check what this sheet is for: port injection, highest working pressure {working}.", {
          working: pressure(pressures.workingPressure_Pa),
        }),
        "scope-DI",
      ],
      [
        "clean",
        line("Wash the rail, flush it both ways, blow it dry, look through it against a light."),
        "no-air-transfer",
      ],
      ["fit", line("Fit plugs, gauge, pressure reducer and let-off valve."), "tanks"],
      [
        "settle",
        line("Lay all of it in water at shop temperature and leave it for {settle}.", {
          settle: duration(SETTLE_s),
        }),
      ],
      [
        "raise",
        line("Raise to {half}, stop and look; then to {test}, and shut the supply.", {
          half: pressure(numbers.airPressure_Pa / 2),
          test,
        }),
        "air-limits",
        "pressure-test-person",
      ],
      [
        "watch",
        line("Wipe off the bubbles that cling from dipping, then watch each place for {watch}.", {
          watch,
        }),
      ],
      [
        "hold",
        line("Write down pressure and temperature; after {hold} write both down again.", {
          hold: duration(numbers.airHold_s),
        }),
      ],
      ["let-off", line("Let the pressure off to nought before touching anything.")],
    ]),
    look: railPlaces(context, "dummy plugs"),
    passes: [
      line("No bubble forms at any place in {watch}.", { watch }),
      gaugeLine(context),
    ],
    ifNot: stepsFor(context, [
      ["mark", line("Mark the place, let the pressure off, take the joint apart.")],
      [
        "renew",
        line(
          "Clean it, look for scratches and burrs, fit a new ring, tighten to torque, begin anew.",
        ),
      ],
      [
        "pore",
        line(
          "A pore or crack in the bar or in a weld: new bar, or weld before it ever holds fuel.",
        ),
        "hot-work",
      ],
    ]),
    sees: [
      line(
        "One bubble of {bubble} in {watch} is {seen} at this pressure. Through a fine passage that is at " +
          "most {fuel} of fuel a day at {working}.",
        {
          bubble: length(BUBBLE_DIAMETER_m),
          watch,
          seen: leak(numbers.bubbleLeak_Pa_m3_s),
          fuel: volume(numbers.fuelUnseen_m3_s * DAY_s),
          working: pressure(pressures.workingPressure_Pa),
        },
      ),
      line(
        "The leak aimed at is {allowed} at working pressure; the same passage gives {here} here, and " +
          "the gauge, read to {step}, would need {time} to show it.",
        {
          allowed: leak(numbers.allowedLeak_Pa_m3_s),
          here: leak(numbers.testLeak_Pa_m3_s),
          step: pressure(context.gaugeResolution_Pa),
          time: duration(numbers.timeToSee_s),
        },
      ),
      line("One kelvin warmer or colder moves the gauge by {change}: correct for it.", {
        change: pressure(numbers.changePerKelvin_Pa),
      }),
    ],
    source: "Bubble emission as in EN 1593 and ASTM E515; the pressure limit is ours",
  };
}

/** What stands in for the parts that are not on during bench tests. */
export function dummyPlugs(context: ProofContext): Line[] {
  const ports = context.layout === "return" ? "sensor, regulator and damper" : "sensor and damper";
  return [
    line(
      `Dummy plugs with their rings in all ${context.injectorsPerRail} injector pockets, held down ` +
        "as the injectors will be.",
    ),
    line(
      `Plugs in the ports of ${ports}: parts that are not rated for the proof pressure come off.`,
    ),
    line("The rail's own end plugs and fittings, tightened to torque."),
  ];
}

/** A warning where hose and rail hold so much that even the first test stores more than it should. */
function muchAir({ numbers }: ProofContext): Line[] {
  if (numbers.airEnergy_J <= AIR_ENERGY_LIMIT_J) return [];
  return [
    line("Even this little pressure stores {stored}, above {most}: test less hose with the rail.", {
      stored: energy(numbers.airEnergy_J),
      most: energy(AIR_ENERGY_LIMIT_J),
    }),
  ];
}

function gaugeLine({ numbers }: ProofContext): Line {
  return numbers.gaugeDecides
    ? line("Corrected for temperature, the gauge falls by less than {fall}.", {
      fall: pressure(numbers.expectedFall_Pa),
    })
    : line(
      "The gauge stands still, temperature corrected. It shows only leaks above {seen} in this " +
        "time: the bubbles decide.",
      { seen: leak(numbers.smallestSeen_Pa_m3_s) },
    );
}
