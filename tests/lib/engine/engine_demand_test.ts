import { assert, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { type DemandSpec, engineDemand } from "@/lib/engine/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const SPEC: DemandSpec = {
  cycle: "four-stroke",
  cylinders: 4,
  displacement_m3: 0.002,
  power_W: 330_000,
  powerSpeed_rev_s: 7000 / 60,
  maximumSpeed_rev_s: 7500 / 60,
  idleSpeed_rev_s: 15,
  bsfc_kg_J: 0.31 / 3.6e6,
  fuel: { lowerHeatingValue_J_kg: 43e6, stoichiometricRatio: 14.6 },
  fillingRatio: 1,
  manifoldPressure_Pa: 250_000,
  chargeTemperature_K: 320.15,
  lambda: 0.8,
  idleManifoldPressure_Pa: 35_000,
  idleLambda: 1,
};

Deno.test("every number of the demand is recorded under its own name", () => {
  const working = new Working();
  const demand = engineDemand(working, SPEC);
  for (const [key, value] of Object.entries(demand)) {
    assertEquals(working.uses.find((u) => u.result === `demand.${key}`)?.value, value, key);
  }
});

Deno.test("without a displacement the air route is open and the rest stands", () => {
  const { fuelByAir_kg_s, routeDifference, air_kg_s, bmep_Pa, fuelIdle_kg_s, ...rest } =
    engineDemand(new Working(), { ...SPEC, displacement_m3: undefined });
  assertEquals(
    [fuelByAir_kg_s, routeDifference, air_kg_s, bmep_Pa, fuelIdle_kg_s],
    [undefined, undefined, undefined, undefined, undefined],
  );
  for (const value of Object.values(rest)) assert(Number.isFinite(value));
});

Deno.test("idle of a warm two-litre engine burns 0.5 to 1.5 kg an hour", () => {
  // Common practice, no source: about a litre an hour.
  const idle = (engineDemand(new Working(), SPEC).fuelIdle_kg_s ?? NaN) * 3600;
  assert(idle > 0.5 && idle < 1.5, `${idle} kg/h`);
});

Deno.test("filling at idle, 35 kPa against the standard atmosphere at a ratio of 10", () => {
  const working = new Working();
  engineDemand(working, SPEC);
  const filling = working.uses.find((u) => u.result === "demand.fillingIdle")?.value;
  // Clearance gas of 1.01325 bar grown to 0.35 bar, by hand: (1.35 * 9 - 1.895) / (1.35 * 9).
  assertClose(filling ?? NaN, 0.844, 5e-4);
});

Deno.test("a rotary injects every turn, a four-stroke every other", () => {
  const four = engineDemand(new Working(), SPEC);
  const rotary = engineDemand(new Working(), { ...SPEC, cycle: "rotary" });
  assertClose(four.intervalMaximum_s, 2 * rotary.intervalMaximum_s, 1e-12);
});

Deno.test("numbers outside the range are refused by name", () => {
  assertThrows(() => engineDemand(new Working(), { ...SPEC, lambda: 0 }), InputError, "lambda");
  assertThrows(() => engineDemand(new Working(), { ...SPEC, bsfc_kg_J: NaN }), InputError, "bsfc");
});
