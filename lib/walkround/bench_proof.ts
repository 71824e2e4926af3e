/** The second rung: strength, with liquid. */
import { comesOff, PROOF_HOLD_s, TEST_LIQUID_FLASH_K } from "@/lib/proof/mod.ts";
import { duration, energy, pressure, temperature } from "./amounts.ts";
import { dummyPlugs } from "./bench_air.ts";
import type { ProofContext } from "./context.ts";
import { type Line, line } from "./line.ts";
import { railPlaces } from "./places.ts";
import type { Rung } from "./rung.ts";
import { stepsFor } from "./steps.ts";

/** Range of a test gauge over the test pressure. Source: ASME BPVC section VIII UG-102, from memory. */
const GAUGE_RANGE = { least: 1.5, most: 4 } as const;

/** Makes the rung of the liquid proof test. */
export function benchProof(context: ProofContext): Rung {
  const { numbers, pressures } = context;
  const { proofPressure_Pa } = pressures;
  const proof = pressure(proofPressure_Pa);
  const hold = duration(PROOF_HOLD_s);
  const blocked = blockedBelowWorking(context);
  return {
    id: "bench-proof",
    title: "Proof with liquid, on the bench",
    why: line(
      "Shows that everything stands {proof}, and makes joints weep that air did not find.",
      {
        proof,
      },
    ),
    where: "bench",
    medium: "water or test liquid",
    pressure_Pa: proofPressure_Pa,
    hold_s: PROOF_HOLD_s,
    volume_m3: numbers.volume_m3,
    energy_J: numbers.liquidEnergy_J,
    ...(blocked === undefined ? {} : { blocked }),
    notes: notesOn(context),
    fitted: [
      ...dummyPlugs(context),
      line("A hand pump, and a gauge whose scale ends between {least} and {most}.", {
        least: pressure(GAUGE_RANGE.least * proofPressure_Pa),
        most: pressure(GAUGE_RANGE.most * proofPressure_Pa),
      }),
    ],
    steps: stepsFor(context, [
      [
        "fill",
        line("Fill from the lowest end with water, or a liquid that flashes at {flash} or above.", {
          flash: temperature(TEST_LIQUID_FLASH_K),
        }),
        "proof-liquid",
      ],
      ["vent", line("Vent at the highest end until no bubble comes; tap the rail; then plug it.")],
      [
        "connect",
        line("Leave the line to the gauge open to the rail all the time."),
        "never-valved-off",
      ],
      ["dry", line("Dry the outside, and lay clean paper under it.")],
      [
        "raise",
        line("Raise to {halt}, stop and look; then in steps to {proof}.", {
          halt: pressure(numbers.firstHalt_Pa),
          proof,
        }),
        "pressure-test-person",
      ],
      ["hold", line("Keep it at {proof} for {hold}, pumping up as it settles.", { proof, hold })],
      ["look", line("Go round every place with a light and dry paper.")],
      ["let-off", line("Let it down slowly to nought, and open the highest end.")],
    ]),
    look: railPlaces(context, "dummy plugs"),
    passes: [
      line("Nothing weeps or beads in {hold}, and the paper stays dry.", { hold }),
      line("Plugs, screws and bar are where they were: marks in line, a straightedge agrees."),
      line(
        "The fall of pressure does not judge here: a full, stiff rail moves by bars with one kelvin.",
      ),
    ],
    ifNot: stepsFor(context, [
      ["let-off", line("Let the pressure off to nought and mark the place.")],
      ["renew", line("Take it apart, clean it, fit a new ring, tighten to torque, begin anew.")],
      [
        "yielded",
        line("Something has moved or stretched: it is scrap; find out why before another."),
      ],
    ]),
    sees: [
      line("Strength, and weeping that can be seen. Air left in the rail hides both."),
      line(
        "Water stores {liquid} at this pressure; as much air would store {air} at working already.",
        {
          liquid: energy(numbers.liquidEnergy_J),
          air: energy(numbers.workingAirEnergy_J),
        },
      ),
    ],
    source: "ASME B31.3 para. 345.2 and 345.4 by analogy: a vehicle is outside that code",
  };
}

/** Why nothing may be pressed, when a part may not even be given the working pressure. */
export function blockedBelowWorking({ pressures }: ProofContext): Line | undefined {
  const { conflict } = pressures;
  if (conflict?.belowWorking !== true) return undefined;
  return line(`Not yet. ${conflict.change} It may have {rating}, and works at {working}.`, {
    rating: pressure(conflict.rating_Pa),
    working: pressure(pressures.workingPressure_Pa),
  });
}

function notesOn(context: ProofContext): Line[] {
  const { pressures, fault, weakest, sensorRange_Pa, layout } = context;
  const { conflict, governs, wantedPressure_Pa, proofPressure_Pa, workingPressure_Pa } = pressures;
  const notes: Line[] = [];
  if (conflict !== undefined) {
    notes.push(
      line(`{wanted} is wanted, but the ${conflict.part} may have {rating}. ${conflict.change}`, {
        wanted: pressure(wantedPressure_Pa),
        rating: pressure(conflict.rating_Pa),
      }),
    );
  }
  notes.push(
    governs === "working"
      ? line("Proof is 1.5 times the highest working pressure of {working}.", {
        working: pressure(workingPressure_Pa),
      })
      : line(
        `Proof is the pressure when something fails, ${
          fault?.isLeast || layout === "dead-ended" ? "at least " : ""
        }{fault}: more than 1.5 times working.`,
        { fault: pressure(wantedPressure_Pa) },
      ),
  );
  if (fault === undefined || fault.isLeast) {
    notes.push(
      line(
        "Not known: what the pump makes at shut-off. If that is above {proof}, a blocked return or a " +
          "stuck regulator brings more than was proved.",
        { proof: pressure(proofPressure_Pa) },
      ),
    );
  }
  if (layout === "dead-ended") {
    notes.push(
      line(
        "Not known: what fuel makes that is shut in and warmed. If that is above {proof}, it brings " +
          "more than was proved.",
        { proof: pressure(proofPressure_Pa) },
      ),
    );
  }
  if (weakest === undefined) {
    notes.push(
      line(
        "Not known: the rating of the weakest part. Nothing is given more than its maker allows.",
      ),
    );
  }
  if (weakest !== undefined && comesOff(weakest.part)) {
    notes.push(
      line(
        `The ${weakest.part} comes off for this test: its rating of {rating} says what may run, not ` +
          "what is proved. Enter the lowest rating of what stays on.",
        { rating: pressure(weakest.rating_Pa) },
      ),
    );
  }
  if (sensorRange_Pa !== undefined && sensorRange_Pa < proofPressure_Pa) {
    notes.push(
      line("The sensor ends at {range}, below this test: it stays off and its port is plugged.", {
        range: pressure(sensorRange_Pa),
      }),
    );
  }
  return notes;
}
