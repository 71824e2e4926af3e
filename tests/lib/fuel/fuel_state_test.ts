import { assert, assertEquals, assertThrows } from "@std/assert";
import { InputError } from "@/lib/basics/mod.ts";
import { fuelEnergy, type FuelSpec, type FuelState, fuelState } from "@/lib/fuel/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { notFinite } from "../../helpers/finite.ts";

const PETROL: FuelSpec = {
  base: "petrol",
  ethanolShare: 0,
  petrolDensity15_kg_m3: 745,
  reidPressure_Pa: 60e3,
};
const METHANOL: FuelSpec = { ...PETROL, base: "methanol" };

const SPECS: readonly (readonly [string, FuelSpec])[] = [
  ["petrol", PETROL],
  ["light winter petrol", { ...PETROL, petrolDensity15_kg_m3: 720, reidPressure_Pa: 100e3 }],
  ["dense summer petrol", { ...PETROL, petrolDensity15_kg_m3: 775, reidPressure_Pa: 45e3 }],
  ["E10", { ...PETROL, ethanolShare: 0.1 }],
  ["E85", { ...PETROL, ethanolShare: 0.85 }],
  ["ethanol", { ...PETROL, ethanolShare: 1 }],
  ["methanol", METHANOL],
];

function stateOf(spec: FuelSpec, temperature_K: number): FuelState {
  return fuelState(new Working(), "fuel", spec, temperature_K);
}

for (const [name, spec] of SPECS) {
  Deno.test(`${name}: finite from -10 to 60 °C, thinner and lighter when warm`, () => {
    let colder = stateOf(spec, 263.15);
    for (let temperature_K = 268.15; temperature_K <= 333.16; temperature_K += 5) {
      const state = stateOf(spec, Math.min(temperature_K, 333.15));
      assertEquals(notFinite(state), []);
      assert(state.density_kg_m3 < colder.density_kg_m3);
      assert(state.dynamicViscosity_Pa_s < colder.dynamicViscosity_Pa_s);
      assert(state.speedOfSound_m_s < colder.speedOfSound_m_s);
      assert(state.vapourPressure_Pa > colder.vapourPressure_Pa);
      colder = state;
    }
  });
  Deno.test(`${name}: the numbers belong together`, () => {
    const state = stateOf(spec, 313.15);
    const { density_kg_m3, speedOfSound_m_s, dynamicViscosity_Pa_s } = state;
    assertClose(state.bulkModulus_Pa, density_kg_m3 * speedOfSound_m_s ** 2, 1e-9);
    assertClose(state.kinematicViscosity_m2_s, dynamicViscosity_Pa_s / density_kg_m3, 1e-9);
    assertClose(fuelEnergy(spec), state.lowerHeatingValue_J_kg, 1e-12);
  });
  Deno.test(`${name}: refused outside -10 to 60 °C`, () => {
    for (const temperature_K of [263.1, 333.2, NaN, Infinity]) {
      assertThrows(() => stateOf(spec, temperature_K), InputError, "temperature");
    }
  });
  Deno.test(`${name}: each flowing number is in the working under its own name`, () => {
    const working = new Working();
    const state = fuelState(working, "shopFuel", spec, 293.15);
    for (
      const key of [
        "density_kg_m3",
        "dynamicViscosity_Pa_s",
        "kinematicViscosity_m2_s",
        "vapourPressure_Pa",
        "speedOfSound_m_s",
        "bulkModulus_Pa",
      ] as const
    ) {
      const uses = working.uses.filter((use) => use.result === `shopFuel.${key}`);
      assertEquals(uses.map((use) => use.value), [state[key]], key);
    }
  });
}

Deno.test("a trace of ethanol changes petrol by a trace", () => {
  const [none, trace] = [
    stateOf(PETROL, 313.15),
    stateOf({ ...PETROL, ethanolShare: 1e-6 }, 313.15),
  ];
  for (const key of Object.keys(none) as (keyof FuelState)[]) {
    assertClose(trace[key], none[key], 1e-5, key);
  }
});

Deno.test("a trace of petrol changes ethanol by a trace, the flammable limit apart", () => {
  const pure = stateOf({ ...PETROL, ethanolShare: 1 }, 313.15);
  const trace = stateOf({ ...PETROL, ethanolShare: 1 - 1e-6 }, 313.15);
  for (const key of Object.keys(pure) as (keyof FuelState)[]) {
    if (key !== "lowerFlammableLimit") assertClose(trace[key], pure[key], 1e-4, key);
  }
  assertEquals(trace.lowerFlammableLimit, 0.014);
  assertEquals(pure.lowerFlammableLimit, 0.031);
});

Deno.test("vapour pressure of blends rises at 10 %, is back near 45 % and falls below at 85 %", () => {
  const at = (ethanolShare: number) =>
    stateOf({ ...PETROL, ethanolShare }, 310.93).vapourPressure_Pa;
  assertClose(at(0.1) - at(0), 6895, 0.3);
  assertClose(at(0.44), at(0), 0.01);
  assert(at(0.85) < 0.6 * at(0));
  for (let percent = 15; percent < 100; percent += 5) {
    assert(at((percent + 5) / 100) < at(percent / 100), `above ${percent} %`);
  }
});

Deno.test("pure ethanol at 37.8 °C: 16 kPa", () => {
  assertClose(stateOf({ ...PETROL, ethanolShare: 1 }, 310.93).vapourPressure_Pa, 16e3, 0.02);
});

Deno.test("what no method covers is refused by name", () => {
  const wrong = [
    [{ ...METHANOL, ethanolShare: 0.1 }, "ethanolShare"],
    [{ ...PETROL, ethanolShare: 1.01 }, "ethanolShare"],
    [{ ...PETROL, ethanolShare: NaN }, "ethanolShare"],
    [{ ...PETROL, petrolDensity15_kg_m3: 840 }, "density15"],
    [{ ...PETROL, reidPressure_Pa: 2e5 }, "reidPressure"],
  ] as const;
  for (const [spec, field] of wrong) {
    assertThrows(() => stateOf(spec, 293.15), InputError, field);
  }
  assertThrows(() => fuelEnergy({ ...METHANOL, ethanolShare: 0.1 }), InputError, "ethanolShare");
});
