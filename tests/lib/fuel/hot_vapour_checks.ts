/** Vapour pressure above 60 °C, against equations of state and measured boiling points. */
import { assert } from "@std/assert";
import { findRoot } from "@/lib/basics/mod.ts";
import {
  liquidVapourPressure,
  PURE_FLUIDS,
  type PureFluid,
  temperatureAtVapourPressure,
  vapourPressureAt,
  vapourPressureBeyond,
  vapourSteepness,
} from "@/lib/fuel/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

const ATMOSPHERE_Pa = 101_325;
const GAS_CONSTANT = 8.314462618;
const NOT_PETROL = { petrolDensity15_kg_m3: 745, reidPressure_Pa: 60e3 } as const;
const ETHANOL = { base: "petrol", ethanolShare: 1, ...NOT_PETROL } as const;
const METHANOL = { base: "methanol", ethanolShare: 0, ...NOT_PETROL } as const;

const METHODS = [vapourSteepness, vapourPressureBeyond];

/**
 * CoolProp 8.0.0: heat of evaporation at 55 °C [J/mol] and how much a mole grows there, over the
 * volume of an ideal gas; vapour pressure at 80, 100, 120 °C [Pa].
 */
const PURE: readonly (readonly [
  PureFluid,
  number,
  number,
  readonly [number, number, number],
])[] = [
  ["ethanol", 40_743, 0.98262, [107_805, 224_175, 427_301]],
  ["methanol", 35_852, 0.95467, [181_113, 353_735, 640_812]],
  ["n-heptane", 34_696, 0.97999, [57_090, 106_229, 183_605]],
  ["toluene", 36_407, 0.989, [38_868, 74_246, 131_367]],
];

/** Normal boiling points [K]. */
const BOILING: readonly (readonly [PureFluid, number, string])[] = [
  ["ethanol", 351.5, "NIST WebBook: 351.5 +- 0.2 K, average of 138 values"],
  ["n-heptane", 371.5, "NIST WebBook: 371.5 +- 0.3 K, average of 215 values"],
  ["methanol", 337.8, "NIST WebBook: 337.8 K, from memory"],
  ["isooctane", 372.4, "NIST WebBook: 372.4 K, from memory"],
];

/** Bubble pressures [Pa] at 37.8, 60, 80, 100, 120 °C of petrols with 2, 6 and 9 % of n-butane. */
const PETROLS = [
  ["light summer petrol", 48_902, [97_081, 166_647, 269_354, 414_028]],
  ["summer petrol", 63_997, [122_945, 205_786, 325_414, 490_721]],
  ["winter petrol", 75_128, [142_060, 234_776, 367_038, 547_798]],
] as const;

/** Bubble pressures [Pa] of petrol at 37.8 °C and of its blends by share at 60, 80, 100, 120 °C. */
const BLENDS = [
  ["E10 of light summer petrol", 50_419, 0.1, [126_152, 232_991, 404_662, 665_973]],
  ["E50 of light summer petrol", 50_419, 0.5, [116_337, 220_152, 392_960, 665_739]],
  ["E85 of light summer petrol", 50_419, 0.85, [77_890, 158_523, 301_210, 537_667]],
  ["E10 of winter petrol", 77_580, 0.1, [169_780, 300_108, 503_007, 804_723]],
  ["E50 of winter petrol", 77_580, 0.5, [149_384, 270_219, 465_143, 765_864]],
  ["E85 of winter petrol", 77_580, 0.85, [90_886, 178_086, 329_235, 576_300]],
] as const;

const HOT_C = [60, 80, 100, 120] as const;

const TEN =
  "n-butane, isopentane, n-pentane, isohexane, n-hexane, n-heptane, isooctane, toluene, " +
  "o-xylene, n-nonane";

/** The line through a pure liquid's own values at 50 and 60 °C. */
function lineOf(fluid: PureFluid): { steepness: number; at: (temperature: number) => number } {
  const fit = PURE_FLUIDS[fluid].vapourPressure;
  const [lowerTemperature, upperTemperature] = [323.15, 333.15];
  const lowerPressure = liquidVapourPressure({ temperature: lowerTemperature, ...fit });
  const upperPressure = liquidVapourPressure({ temperature: upperTemperature, ...fit });
  const steepness = vapourSteepness({
    lowerTemperature,
    lowerPressure,
    upperTemperature,
    upperPressure,
  });
  return {
    steepness,
    at: (temperature) =>
      vapourPressureBeyond({ temperature, steepness, upperTemperature, upperPressure }),
  };
}

/** Petrol that presses so much at 37.8 °C, with a share of ethanol. */
function petrolOf(at37_8_Pa: number, ethanolShare: number) {
  const spec = (reidPressure_Pa: number, share: number) =>
    ({ base: "petrol", ethanolShare: share, petrolDensity15_kg_m3: 745, reidPressure_Pa }) as const;
  const reid = findRoot(
    (reidPressure_Pa) => vapourPressureAt(spec(reidPressure_Pa, 0), 310.95) - at37_8_Pa,
    { from: 30e3, to: 105e3, tolerance: 1 },
  );
  return spec(reid, ethanolShare);
}

/** What vapour pressure above 60 °C is held against. */
export const hotVapourChecks: readonly Check[] = [
  {
    name: "steepness of a pure liquid is its heat of evaporation over the gas constant",
    methods: [vapourSteepness],
    source: "Clapeyron's equation with heat and volumes of CoolProp 8.0.0 at 55 °C",
    provenance: "computed-with-library",
    run: () => {
      for (const [fluid, heat, growth] of PURE) {
        assertClose(lineOf(fluid).steepness, heat / (growth * GAS_CONSTANT), 3e-3, fluid);
      }
    },
  },
  {
    name: "a vapour pressure that is a straight line is met on it, near and far",
    methods: METHODS,
    source: "p = 1e10 Pa exp(-4000 K / T) by hand",
    provenance: "exact-solution",
    run: () => {
      const exact = (temperature: number): number => 1e10 * Math.exp(-4000 / temperature);
      const steepness = vapourSteepness({
        lowerTemperature: 320,
        lowerPressure: exact(320),
        upperTemperature: 340,
        upperPressure: exact(340),
      });
      assertClose(steepness, 4000, 1e-12);
      for (const temperature of [340, 360, 390]) {
        const known = { upperTemperature: 340, upperPressure: exact(340) };
        const met = vapourPressureBeyond({ temperature, steepness, ...known });
        assertClose(met, exact(temperature), 1e-12);
      }
    },
  },
  {
    name: "pure liquids press up to 1.5, 4.5 and 8 % less than the line at 80, 100 and 120 °C",
    methods: METHODS,
    source: "CoolProp 8.0.0, saturated liquid",
    provenance: "computed-with-library",
    run: () => {
      for (const [fluid, , , pressures] of PURE) {
        const { at } = lineOf(fluid);
        for (const [i, most] of [0.015, 0.045, 0.08].entries()) {
          const excess = at([353.15, 373.15, 393.15][i] ?? NaN) / (pressures[i] ?? NaN) - 1;
          assert(excess > most / 3 && excess < most, `${fluid}: ${excess}, at most ${most}`);
        }
      }
    },
  },
  ...BOILING.map(([fluid, boils, source]): Check => ({
    name: `${fluid} presses an atmosphere where it boils, or a little more by the line`,
    methods: METHODS,
    source,
    provenance: source.endsWith("memory") ? "from-memory" : "read-from-source",
    run: () => {
      const excess = lineOf(fluid).at(boils) / ATMOSPHERE_Pa - 1;
      assert(excess > 0 && excess < 0.06, `${excess}`);
    },
  })),
  {
    name: "the alcohols boil under an atmosphere within a kelvin of where they do, never above",
    methods: METHODS,
    source: "CoolProp 8.0.0: ethanol 351.57 K, methanol 337.63 K at 101325 Pa",
    provenance: "computed-with-library",
    run: () => {
      for (const [spec, boils] of [[ETHANOL, 351.57], [METHANOL, 337.63]] as const) {
        const early = boils - (temperatureAtVapourPressure(spec, ATMOSPHERE_Pa) ?? NaN);
        assert(early > 0 && early < 0.5, `${early} K early`);
      }
    },
  },
  ...PETROLS.map(([name, at37_8_Pa, pressures]): Check => ({
    name: `${name} above 60 °C, from its vapour pressure at 37.8 °C: low by 0 to 7 %`,
    methods: METHODS,
    source: `Bubble points by Peng and Robinson (thermo 0.6.1) of ${TEN}`,
    provenance: "computed-with-library",
    run: () => {
      const spec = petrolOf(at37_8_Pa, 0);
      HOT_C.forEach((t, i) => {
        const excess = vapourPressureAt(spec, t + 273.15) / (pressures[i] ?? NaN) - 1;
        assert(excess < 0.005 && excess > -0.07, `${t} °C: ${excess}`);
      });
    },
  })),
  ...BLENDS.map(([name, at37_8_Pa, ethanolShare, pressures]): Check => ({
    name: `${name} above 60 °C, from its petrol's vapour pressure at 37.8 °C: within 10 %`,
    methods: METHODS,
    source: `Bubble points by UNIFAC (thermo 0.6.1, original groups), ideal vapour, of ${TEN} ` +
      "and ethanol, with vapour pressures of CoolProp 8.0.0",
    provenance: "computed-with-library",
    run: () => {
      const spec = petrolOf(at37_8_Pa, ethanolShare);
      HOT_C.forEach((t, i) => {
        assertClose(vapourPressureAt(spec, t + 273.15), pressures[i] ?? NaN, 0.1, `${t} °C`);
      });
    },
  })),
];
