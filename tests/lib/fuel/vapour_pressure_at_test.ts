/** Vapour pressure of a fuel over its whole range, and its boiling point. */
import { assert, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import {
  findVapourPressure,
  type FuelSpec,
  fuelState,
  temperatureAtVapourPressure,
  VAPOUR_TEMPERATURE,
  vapourPressureAt,
} from "@/lib/fuel/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const petrol = (ethanolShare: number, reidPressure_Pa = 60e3): FuelSpec => ({
  base: "petrol",
  ethanolShare,
  petrolDensity15_kg_m3: 745,
  reidPressure_Pa,
});

const FUELS: readonly (readonly [name: string, spec: FuelSpec])[] = [
  ["petrol", petrol(0)],
  ["E5 of the lightest petrol", petrol(0.05, 105e3)],
  ["E10", petrol(0.1)],
  ["E51", petrol(0.51)],
  ["E85 of a heavy petrol", petrol(0.85, 30e3)],
  ["ethanol", petrol(1)],
  ["methanol", { ...petrol(0), base: "methanol" }],
];

for (const [name, spec] of FUELS) {
  Deno.test(`${name}: up to 60 °C it is the vapour pressure of fuelState()`, () => {
    for (const temperature of [263.15, 283.15, 298.15, 323.15, 333.15]) {
      const { vapourPressure_Pa } = fuelState(new Working(), "fuel", spec, temperature);
      assertEquals(vapourPressureAt(spec, temperature), vapourPressure_Pa);
    }
  });

  Deno.test(`${name}: no step at 60 °C, and it rises all the way`, () => {
    const { min, max } = VAPOUR_TEMPERATURE;
    assertClose(vapourPressureAt(spec, 333.15 + 1e-9), vapourPressureAt(spec, 333.15), 1e-9);
    for (let temperature = min; temperature < max; temperature += 0.5) {
      const rise = vapourPressureAt(spec, temperature + 0.5) / vapourPressureAt(spec, temperature);
      assert(rise > 1.003 && rise < 1.04, `${rise} at ${temperature} K`);
    }
  });

  Deno.test(`${name}: it boils where its vapour pressure is the pressure on it`, () => {
    for (const temperature of [263.15, 270, 320, 333.15, 350, 393.15]) {
      const found = temperatureAtVapourPressure(spec, vapourPressureAt(spec, temperature));
      assertClose(found ?? NaN, temperature, 1e-8);
    }
  });

  Deno.test(`${name}: outside -10 to 120 °C no boiling point is told`, () => {
    const lowest = vapourPressureAt(spec, VAPOUR_TEMPERATURE.min);
    const highest = vapourPressureAt(spec, VAPOUR_TEMPERATURE.max);
    for (const pressure of [-1e5, 0, 0.999 * lowest, 1.001 * highest, Infinity]) {
      assertEquals(temperatureAtVapourPressure(spec, pressure), undefined);
    }
  });
}

Deno.test("the record of a hot fuel shows the line and both points it is drawn through", () => {
  const working = new Working();
  const pressure = findVapourPressure(working, "soak", petrol(0), 363.15);
  assertEquals(pressure, vapourPressureAt(petrol(0), 363.15));
  assertEquals(working.uses.map(({ result, method }) => [result, method]), [
    ["soak.cooler.vapourPressure_Pa", "petrol-vapour-pressure"],
    ["soak.warmer.vapourPressure_Pa", "petrol-vapour-pressure"],
    ["soak.vapourSteepness_K", "vapour-steepness"],
    ["soak.vapourPressure_Pa", "vapour-pressure-beyond"],
  ]);
});

Deno.test("what no line reaches, and what is no number, is refused by name", () => {
  for (const temperature of [263, 393.2, NaN, Infinity]) {
    assertThrows(() => vapourPressureAt(petrol(0.1), temperature), InputError, "temperature");
  }
  assertThrows(() => temperatureAtVapourPressure(petrol(0), NaN), InputError, "pressure_Pa");
  assertThrows(() => vapourPressureAt(petrol(1.5), 300), InputError, "ethanolShare");
});
