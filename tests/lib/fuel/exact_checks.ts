/** Constants and derivatives of the room, against what fixes them to their last digits. */
import { assert } from "@std/assert";
import {
  AIR_OXYGEN_SHARE,
  COMBUSTION,
  FUEL_BULK,
  fuelEnergy,
  liquidDensity,
  liquidExpansion,
  petrolVapourPressure,
  PURE_FLUIDS,
  type PureFluid,
  stoichiometricAirFuelRatio,
} from "@/lib/fuel/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

/** Atoms of carbon, hydrogen and oxygen in a molecule. */
const FORMULAS: Readonly<Record<PureFluid, readonly [number, number, number]>> = {
  "n-heptane": [7, 16, 0],
  isooctane: [8, 18, 0],
  toluene: [7, 8, 0],
  ethanol: [2, 6, 1],
  methanol: [1, 4, 1],
  water: [0, 2, 1],
};

const FLUIDS = Object.keys(FORMULAS) as PureFluid[];

function molarMass(fluid: PureFluid): number {
  const [carbon, hydrogen, oxygen] = FORMULAS[fluid];
  return (12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen) / 1000;
}

/** Vapour pressure [psi] of petrol of slope 3 as AP-42 gives it for programs: `exp(A - B / T)`. */
function byConstants(reid_psi: number, temperature_K: number): number {
  const [rootSlope, lnReid] = [Math.sqrt(3), Math.log(reid_psi)];
  const a = 15.64 - 1.854 * rootSlope - (0.8742 - 0.328 * rootSlope) * lnReid;
  const b = 8742 - 1042 * rootSlope - (1049 - 179.4 * rootSlope) * lnReid;
  return Math.exp(a - b / (temperature_K * 1.8 - 459.67 + 459.6));
}

/** What the constants and derivatives are held against. */
export const exactChecks: readonly Check[] = [
  {
    name: "molar masses are those of the atoms",
    methods: [],
    source: "IUPAC standard atomic masses, abridged (2021)",
    provenance: "exact-solution",
    run: () => {
      for (const fluid of FLUIDS) {
        assertClose(PURE_FLUIDS[fluid].molarMass_kg_mol, molarMass(fluid), 1e-4, fluid);
      }
      for (const fuel of ["ethanol", "methanol"] as const) {
        assertClose(FUEL_BULK[fuel].molarMass_kg_mol, molarMass(fuel), 1e-4, fuel);
      }
    },
  },
  {
    name: "expansion is the slope of the density",
    methods: [liquidExpansion, liquidDensity],
    source: "Definition of the coefficient of expansion, by central difference",
    provenance: "exact-solution",
    run: () => {
      for (const fluid of FLUIDS) {
        const fit = PURE_FLUIDS[fluid].density;
        for (const temperature of [275, 300, 331]) {
          const density = liquidDensity({ temperature, ...fit });
          const slope = (liquidDensity({ temperature: temperature + 0.5, ...fit }) -
            liquidDensity({ temperature: temperature - 0.5, ...fit })) / density;
          const { a1, a2, a3 } = fit;
          assertClose(liquidExpansion({ temperature, density, a1, a2, a3 }), -slope, 1e-3, fluid);
        }
      }
    },
  },
  {
    name: "petrol's vapour pressure, by the constants given for programs",
    methods: [petrolVapourPressure],
    source: "U.S. EPA AP-42 section 7.1, equations of figure 7.1-15 as an open program has them",
    provenance: "read-from-source",
    run: () => {
      for (const reid_psi of [5, 7, 10, 13, 15]) {
        for (const temperature of [263.15, 283.15, 303.15, 333.15]) {
          const ours = petrolVapourPressure({ reidPressure: reid_psi * 6894.757, temperature });
          assertClose(ours / 6894.757, byConstants(reid_psi, temperature), 3e-3, `${reid_psi} psi`);
        }
      }
    },
  },
  {
    name: "petrol's heating value lies where handbooks put it",
    methods: [],
    source: "Handbooks of fuels: 42.7 to 43.5 MJ/kg",
    provenance: "from-memory",
    run: () => {
      const { lowerHeatingValue_J_kg } = COMBUSTION.petrol;
      assert(lowerHeatingValue_J_kg >= 42.7e6 && lowerHeatingValue_J_kg <= 43.5e6);
    },
  },
  {
    name: "E85 holds ethanol by its volume at 15 °C",
    methods: [],
    source: "Balance of mass on CoolProp 8.0.0: ethanol of 793.689 kg/m^3 at 15 °C, 26.8 MJ/kg",
    provenance: "computed-with-library",
    run: () => {
      const heat_J_kg = fuelEnergy({
        base: "petrol",
        ethanolShare: 0.85,
        petrolDensity15_kg_m3: 745,
        reidPressure_Pa: 60e3,
      });
      const ethanol = 0.85 * 793.689;
      const petrol = 0.15 * 745;
      assertClose(heat_J_kg, (ethanol * 26.8e6 + petrol * 43e6) / (ethanol + petrol), 1e-4);
    },
  },
  {
    name: "a fuel burns in the air that holds its oxygen",
    methods: [stoichiometricAirFuelRatio],
    source: "One mole of oxygen (0.031998 kg, 23.14 % of dry air by mass) for each of carbon",
    provenance: "exact-solution",
    run: () => {
      const both = (hydrogen: number): number =>
        stoichiometricAirFuelRatio({
          carbon: 1,
          hydrogen,
          oxygen: 0,
          oxygenShare: AIR_OXYGEN_SHARE,
          airMolarMass: 0.0289647,
        });
      const oxygen = (hydrogen: number): number =>
        (1 + hydrogen / 4) * 31.998 / (12.011 + 1.008 * hydrogen);
      for (const hydrogen of [1, 1.85, 4]) {
        assertClose(both(hydrogen), oxygen(hydrogen) / 0.2314, 5e-4, `CH${hydrogen}`);
      }
    },
  },
];
