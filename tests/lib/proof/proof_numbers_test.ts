/** What the leak tests of a rail are computed to be. */
import { assert, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  AIR_ENERGY_LIMIT_J,
  FIRST_AIR_LIMIT_Pa,
  leakFromDecay,
  proofNumbers,
  type ProofNumbersInput,
  proofPressures,
} from "@/lib/proof/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const INPUT: ProofNumbersInput = {
  pressures: proofPressures(new Working(), {
    setPressure_Pa: 3e5,
    boost_Pa: 0,
    reference: "atmosphere",
  }),
  bore_m: 0.0127,
  length_m: 0.42,
  hose_m3: 1e-4,
  airPressure_Pa: 5e4,
  gaugeResolution_Pa: 2000,
  temperature_K: 293.15,
  ambient_Pa: 101_325,
  fuel: {
    density_kg_m3: 745,
    viscosity_Pa_s: 4.1e-4,
    molarMass_kg_mol: 0.1,
    lowerLimit: 0.014,
  },
};

const numbersOf = (change: Partial<ProofNumbersInput>) =>
  proofNumbers(new Working(), { ...INPUT, ...change });

Deno.test("proofNumbers() never gives the first air test more than 0.5 bar", () => {
  assertEquals(numbersOf({ airPressure_Pa: 3e5 }).airPressure_Pa, FIRST_AIR_LIMIT_Pa);
  assertEquals(numbersOf({ airPressure_Pa: 2e4 }).airPressure_Pa, 2e4);
});

Deno.test("proofNumbers() allows air at working pressure up to 100 J and no further", () => {
  const below = numbersOf({});
  assert(below.workingAirAllowed && below.workingAirEnergy_J < AIR_ENERGY_LIMIT_J);
  const above = numbersOf({ hose_m3: 1e-3 });
  assert(!above.workingAirAllowed && above.workingAirEnergy_J > AIR_ENERGY_LIMIT_J);
});

Deno.test("proofNumbers() allows no air at working pressure to a part too weak for it", () => {
  const pressures = proofPressures(new Working(), {
    setPressure_Pa: 3e5,
    boost_Pa: 0,
    reference: "atmosphere",
    weakest: { part: "hose", rating_Pa: 2e5 },
  });
  assertEquals(numbersOf({ pressures }).workingAirAllowed, false);
});

Deno.test("the leak allowed at working pressure is far smaller at that of the air test", () => {
  const found = numbersOf({});
  // Poiseuille: (1.51325^2 - 1.01325^2) / (4.31325^2 - 1.01325^2) of it.
  assertClose(found.testLeak_Pa_m3_s / found.allowedLeak_Pa_m3_s, 0.07182, 1e-3);
});

Deno.test("a coarse gauge does not decide, a fine one does", () => {
  const coarse = numbersOf({});
  assertEquals([coarse.gaugeDecides, coarse.airHold_s], [false, 1800]);
  const fine = numbersOf({ gaugeResolution_Pa: 1 });
  assertEquals(fine.gaugeDecides, true);
  assert(fine.airHold_s >= 600 && fine.airHold_s < 1800);
});

Deno.test("the fall expected, put back through the decay formula, is the leak", () => {
  const found = numbersOf({});
  const start = INPUT.ambient_Pa + found.airPressure_Pa;
  const leak_Pa_m3_s = leakFromDecay({
    volume: found.volume_m3,
    duration: found.airHold_s,
    startPressure: start,
    startTemperature: INPUT.temperature_K,
    endPressure: start - found.expectedFall_Pa,
    endTemperature: INPUT.temperature_K,
    reference: INPUT.temperature_K,
  });
  assertClose(leak_Pa_m3_s, found.testLeak_Pa_m3_s, 1e-9);
});

Deno.test("every number computed is in the record under its own key", () => {
  const working = new Working();
  const found: object = proofNumbers(working, INPUT);
  assert(working.uses.length >= 14);
  for (const { result, value } of working.uses) {
    const key = result.replace(/^proof\./, "");
    if (key === "airViscosity_Pa_s") continue;
    assertEquals((found as Record<string, unknown>)[key], value, key);
  }
});

Deno.test("proofNumbers() stays cheap", () => {
  const working = new Working();
  const before = performance.now();
  for (let i = 0; i < 2000; i++) proofNumbers(working, INPUT);
  const each_ms = (performance.now() - before) / 2000;
  assert(each_ms < 0.2, `${each_ms} ms`);
});
