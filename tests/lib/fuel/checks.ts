import { assert } from "@std/assert";
import { fireData } from "@/lib/proof/mod.ts";
import {
  blendMolarMass,
  blendSpecificHeat,
  COMBUSTION,
  ethanolVapourFactor,
  findEthanolVapourFactor,
  FLAMMABILITY,
  FUEL_BULK,
  liquidDensity,
  liquidSoundSpeed,
  liquidVapourPressure,
  liquidViscosity,
  petrolDensity,
  petrolExpansion,
  petrolSoundSpeed,
  petrolVapourPressure,
  petrolViscosity,
  PURE_FLUIDS,
  type PureFluid,
  stoichiometricAirFuelRatio,
} from "@/lib/fuel/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Check, fromReference } from "../../helpers/checks.ts";
import { blendVapourChecks } from "./blend_vapour_checks.ts";
import { correlationAnswers } from "./correlation_answers.ts";
import { exactChecks } from "./exact_checks.ts";
import { hotVapourChecks } from "./hot_vapour_checks.ts";
import { propertyAnswers } from "./property_answers.ts";
import { pureLiquid } from "./pure_liquid.ts";
import { surrogate } from "./surrogates.ts";

const AFDC = "U.S. Department of Energy, Alternative Fuels Data Center, Properties of Fuels";

/** CoolProp 8.0.0 at -10 °C and 1 atm: kg/m^3, m/s, Pa s, Pa. */
const COLD: readonly (readonly [PureFluid, number, number, number, number])[] = [
  ["n-heptane", 708.8228, 1278.046, 5.967045e-4, 798.9173],
  ["toluene", 894.6569, 1457.488, 8.990396e-4, 465.8645],
  ["ethanol", 814.8755, 1265.974, 2.287633e-3, 768.9358],
  ["methanol", 819.1327, 1219.066, 9.61663e-4, 2101.708],
];

/** CoolProp 8.0.0: vapour pressure of light petrol at -10 °C over that at 0 °C. */
const [BUTANE_COOLING, PENTANE_COOLING] = [69552.5 / 103225.8, 15196.96 / 24455.32];

const TRF = { isooctane: 0.5, "n-heptane": 0.15, toluene: 0.35 };

const byHand: readonly Check[] = [
  {
    name: "the fits hold down to -10 °C",
    methods: [liquidDensity, liquidSoundSpeed, liquidViscosity, liquidVapourPressure],
    source: "CoolProp 8.0.0 at 263.15 K, 101325 Pa",
    provenance: "computed-with-library",
    run: () => {
      for (const [fluid, density, soundSpeed, viscosity, vapourPressure] of COLD) {
        const state = pureLiquid(fluid, 263.15);
        assertClose(state.density_kg_per_m3, density, 5e-4, `density of ${fluid}`);
        assertClose(state.speed_of_sound_m_per_s, soundSpeed, 2e-3, `sound in ${fluid}`);
        assertClose(state.dynamic_viscosity_Pa_s, viscosity, 4e-3, `viscosity of ${fluid}`);
        assertClose(state.vapour_pressure_Pa, vapourPressure, 4e-3, `vapour pressure of ${fluid}`);
      }
    },
  },
  {
    name: "petrol's viscosity lies inside the published ranges, near their middle",
    methods: [petrolViscosity],
    source: `${AFDC}: 0.5 to 0.6 mm^2/s at 20 °C, 0.8 to 1.0 at -20 °C`,
    provenance: "read-from-source",
    run: () => {
      assertClose(petrolViscosity({ temperature: 293.15 }), 0.55e-6, 0.01);
      assertClose(petrolViscosity({ temperature: 253.15 }), 0.9e-6, 0.01);
    },
  },
  {
    name: "petrol of the published range of densities is taken",
    methods: [petrolDensity, petrolExpansion],
    source: `${AFDC}: specific gravity 0.72 to 0.78 at 15.6 °C`,
    provenance: "read-from-source",
    run: () => {
      for (const density15 of [720, 780]) {
        const expansion = petrolExpansion({ density15 });
        const density = petrolDensity({ density15, expansion, temperature: 288.75 });
        assertClose(density, density15, 1e-3);
      }
    },
  },
  {
    name: "sound in petrol runs as in a mixture that stands for it, -10 to 60 °C",
    methods: [petrolSoundSpeed],
    source: "Wood's rule on isooctane, n-heptane and toluene (50, 15, 35 % by volume)",
    provenance: "second-correlation",
    run: () => {
      for (const temperature of [263.15, 273.15, 293.15, 313.15, 333.15]) {
        const { speed_of_sound_m_per_s } = surrogate(TRF, temperature);
        const ours = petrolSoundSpeed({ temperature });
        assertClose(ours, speed_of_sound_m_per_s, 5e-3, `at ${temperature} K`);
      }
    },
  },
  {
    name: "below freezing, petrol's vapour pressure falls as that of its light ends",
    methods: [petrolVapourPressure],
    source: "CoolProp 8.0.0: n-butane and n-pentane at -10 and 0 °C",
    provenance: "computed-with-library",
    run: () => {
      for (const reidPressure of [45e3, 60e3, 68_947.57]) {
        const at = (temperature: number) => petrolVapourPressure({ reidPressure, temperature });
        const cooling = at(263.15) / at(273.15);
        assert(
          cooling > PENTANE_COOLING && cooling < BUTANE_COOLING,
          `${cooling} at ${reidPressure} Pa`,
        );
      }
    },
  },
  {
    name: "equal numbers of molecules have the mean molar mass",
    methods: [blendMolarMass],
    source: "definition of the mole: n1 = n2 makes M = (M1 + M2) / 2",
    provenance: "exact-solution",
    run: () => {
      const [petrol, ethanol] = [0.1, 0.046068];
      const massShare = ethanol / (petrol + ethanol);
      assertClose(blendMolarMass({ massShare, petrol, ethanol }), (petrol + ethanol) / 2, 1e-12);
    },
  },
  {
    name: "a blend takes the heat that its parts take",
    methods: [blendSpecificHeat],
    source: "balance of energy: 3 kg at 2 kJ/(kg K) and 1 kg at 2.4 take 8.4 kJ for each kelvin",
    provenance: "exact-solution",
    run: () => {
      const heat = 4 * blendSpecificHeat({ massShare: 0.25, petrol: 2000, ethanol: 2400 });
      assertClose(heat, 8400, 1e-12);
    },
  },
  {
    name: "specific heats of the pure liquids",
    methods: [],
    source: "CoolProp 8.0.0 at 298.15 K, 101325 Pa",
    provenance: "computed-with-library",
    run: () => {
      assertClose(PURE_FLUIDS["n-heptane"].specificHeat_J_kgK, 2240.5, 2e-3);
      assertClose(PURE_FLUIDS.toluene.specificHeat_J_kgK, 1701.1, 2e-3);
      assertClose(PURE_FLUIDS.ethanol.specificHeat_J_kgK, 2434.5, 2e-3);
      assertClose(PURE_FLUIDS.methanol.specificHeat_J_kgK, 2534.5, 2e-3);
      assertClose(FUEL_BULK.ethanol.specificHeat_J_kgK, 2434.5, 5e-3);
      assertClose(FUEL_BULK.methanol.specificHeat_J_kgK, 2534.5, 5e-3);
    },
  },
  {
    name: "petrol's specific heat at the temperature of a rail, 40 °C",
    methods: [],
    source: "C. S. Cragoe, NBS Misc. Pub. 97 (1929), from memory: (1685 + 3.4 t) / sqrt(s)",
    provenance: "second-correlation",
    run: () => {
      const cragoe = (1685 + 3.4 * 40) / Math.sqrt(0.745);
      assertClose(FUEL_BULK.petrol.specificHeat_J_kgK, cragoe, 0.015);
    },
  },
  {
    name: "petrol's molar mass is near that of a mixture that stands for it",
    methods: [],
    source: "balance of mass on isooctane, n-heptane and toluene (50, 15, 35 % by volume)",
    provenance: "second-correlation",
    run: () => {
      let [mass, amount] = [0, 0];
      for (const [fluid, share] of Object.entries(TRF) as [PureFluid, number][]) {
        const part = share * pureLiquid(fluid, 293.15).density_kg_per_m3;
        mass += part;
        amount += part / PURE_FLUIDS[fluid].molarMass_kg_mol;
      }
      assertClose(FUEL_BULK.petrol.molarMass_kg_mol, mass / amount, 0.05);
    },
  },
  {
    name: "15 % ethanol raises vapour pressure as 10 % does",
    methods: [ethanolVapourFactor],
    source: "R. L. McCormick and J. Yanowitz, Effect of Ethanol Blending on Gasoline RVP (2012)",
    provenance: "read-from-source",
    run: () => {
      const at = (share: number) => findEthanolVapourFactor(new Working(), "factor", share);
      assertClose(at(0.15), at(0.1), 0.015);
    },
  },
  {
    name: "air in the table is what the formulas need",
    methods: [stoichiometricAirFuelRatio],
    source: "balance of elements; petrol CH1.85",
    provenance: "exact-solution",
    run: () => {
      const air = { oxygenShare: 0.20946, airMolarMass: 0.0289647 };
      const formulas = [
        ["petrol", 1, 1.85, 0],
        ["ethanol", 2, 6, 1],
        ["methanol", 1, 4, 1],
        ["n-heptane", 7, 16, 0],
        ["isooctane", 8, 18, 0],
        ["toluene", 7, 8, 0],
      ] as const;
      for (const [fuel, carbon, hydrogen, oxygen] of formulas) {
        const ratio = stoichiometricAirFuelRatio({ carbon, hydrogen, oxygen, ...air });
        assertClose(COMBUSTION[fuel].stoichiometricRatio, ratio, 4e-3, fuel);
      }
    },
  },
  {
    name: "fire data agree with those of the leak tests as far as their sources do",
    methods: [],
    source: "IEC 60079-20-1 (2010) here, NFPA 497 (2008) there",
    provenance: "read-from-source",
    run: () => {
      for (const fuel of ["petrol", "ethanol", "methanol"] as const) {
        const [here, there] = [FLAMMABILITY[fuel], fireData(fuel)];
        assert(here.lowerLimit <= there.lowerLimit && here.lowerLimit > 0.9 * there.lowerLimit);
        assert(here.flashPoint_K <= there.flashPoint_K);
        assertClose(here.flashPoint_K, there.flashPoint_K, 0.012);
        assertClose(here.upperLimit, there.upperLimit, 1e-9);
        assertClose(here.autoignition_K, there.autoignition_K, 0.09);
      }
    },
  },
];

export const checks: readonly Check[] = [
  ...fromReference("fuel-properties.json", propertyAnswers),
  ...fromReference("fuel-correlations.json", correlationAnswers),
  ...blendVapourChecks,
  ...exactChecks,
  ...hotVapourChecks,
  ...byHand,
];
