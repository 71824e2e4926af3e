import { assert, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import {
  type BarSpec,
  barStrength,
  crossHoleFactor,
  LIGAMENT_FACTOR,
  MATERIALS,
  SHAPE_FACTOR,
} from "@/lib/strength/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const BAR: BarSpec = {
  shape: "rectangular",
  height_m: 0.025,
  width_m: 0.03,
  bore_m: 0.0127,
  length_m: 0.42,
  drilledFrom: "one",
  pilot_m: 0.008,
  proof_Pa: 6e5,
  working_Pa: 4e5,
  yield_Pa: MATERIALS["6061-T6"].yield_Pa,
  pocketBore_m: 0.014,
};

Deno.test("every number of the bar is recorded under its own name", () => {
  const working = new Working();
  for (const [key, value] of Object.entries(barStrength(working, BAR))) {
    assertEquals(working.uses.find((u) => u.result === `bar.${key}`)?.value, value, key);
  }
});

Deno.test("a drill that breaks out leaves no stresses, and the forces stand", () => {
  const bar = barStrength(new Working(), { ...BAR, height_m: 0.0135 });
  assert(bar.wallLeft_m < 0);
  assertEquals([bar.hoop_Pa, bar.peak_Pa, bar.peakWorking_Pa, bar.yieldFactor], [
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  assertClose(bar.liftPerInjector_N, 6e5 * Math.PI * 0.007 ** 2, 1e-12);
});

Deno.test("a wall of exactly nothing is no wall", () => {
  // 12 mm in 15.2 mm with 1.6 mm of wander.
  const bar = barStrength(new Working(), {
    ...BAR,
    bore_m: 0.012,
    height_m: 0.0152,
    length_m: 0.48,
  });
  assert(Math.abs(bar.wallLeft_m) < 1e-9);
  assertEquals(bar.yieldFactor, undefined);
});

Deno.test("the smaller side of a rectangle counts, of a round bar its diameter", () => {
  const turned = barStrength(new Working(), { ...BAR, height_m: 0.03, width_m: 0.025 });
  const round = barStrength(new Working(), { ...BAR, shape: "round", width_m: 0.001 });
  const { wallNominal_m } = barStrength(new Working(), BAR);
  assertEquals([turned.wallNominal_m, round.wallNominal_m], [wallNominal_m, wallNominal_m]);
});

Deno.test("drilling from both ends halves the wander; stress follows pressure", () => {
  const one = barStrength(new Working(), BAR);
  const both = barStrength(new Working(), { ...BAR, drilledFrom: "both" });
  assertClose(both.drift_m, one.drift_m / 2, 1e-12);
  assert((both.hoop_Pa ?? NaN) < (one.hoop_Pa ?? NaN));
  assertClose((one.peakWorking_Pa ?? NaN) / (one.peak_Pa ?? NaN), 4 / 6, 1e-12);
});

Deno.test("numbers outside the range are refused by name", () => {
  assertThrows(() => barStrength(new Working(), { ...BAR, bore_m: -1 }), InputError, "bore");
});

Deno.test("least values are below typical ones and shear below tension", () => {
  for (const [name, m] of Object.entries(MATERIALS)) {
    assert(m.yield_Pa < m.ultimate_Pa && m.shear_Pa < 0.67 * m.ultimate_Pa, name);
    assert(m.shear_Pa >= 0.57 * m.ultimate_Pa, name); // von Mises: 1/sqrt(3)
  }
});

Deno.test("the rules of ours: shape, ligament, and cross holes up to half the bore", () => {
  assertEquals([SHAPE_FACTOR.rectangular, SHAPE_FACTOR.round, LIGAMENT_FACTOR], [1.15, 1, 1.3]);
  for (const [pilot, factor] of [[0.001, 3], [0.006, 3], [0.00601, 3.5], [0.012, 3.5]] as const) {
    assertEquals(crossHoleFactor({ pilot, bore: 0.012 }), factor, `${pilot}`);
  }
});

Deno.test("least values in the standards' other units, stiffness as handbooks print it", () => {
  const KSI = 6.894757e6;
  // ASTM B221 and A276 in ksi; brass C36000 H02 to 1 in in ASTM B16: 25 and 55. From memory.
  const strengths = [["6061-T6", 35, 38], ["304", 30, 75], ["brass", 25, 55]] as const;
  for (const [name, yield_ksi, ultimate_ksi] of strengths) {
    assertClose(MATERIALS[name].yield_Pa, yield_ksi * KSI, 0.015, `${name}, yield`);
    assertClose(MATERIALS[name].ultimate_Pa, ultimate_ksi * KSI, 0.01, `${name}, tension`);
  }
  // Modulus in thousand ksi, handbooks from memory.
  const moduli = [["6061-T6", 10], ["304", 28], ["brass", 14]] as const;
  for (const [name, modulus] of moduli) {
    assertClose(MATERIALS[name].elasticModulus_Pa, modulus * 1e3 * KSI, 0.01, `${name}, modulus`);
  }
});
