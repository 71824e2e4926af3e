/** How the room answers `fuel-properties.json`. */
import {
  type BaseFuel,
  blendAirFuelRatio,
  blendBulkModulus,
  blendDensity,
  blendHeatingValue,
  blendVapourPressure,
  blendViscosity,
  type Burnable,
  COMBUSTION,
  D5798,
  dynamicViscosity,
  EN228_DENSITY_kg_m3,
  EN228_VAPOUR_PRESSURE_Pa,
  ethanolActivity,
  ethanolMassShare,
  ethanolVapourFactor,
  findEthanolVapourFactor,
  FLAMMABILITY,
  FUEL_BULK,
  liquidDensity,
  liquidExpansion,
  liquidSoundSpeed,
  liquidViscosity,
  PETROL_SCATTER,
  petrolDensity,
  petrolExpansion,
  petrolSoundSpeed,
  petrolVapourPressure,
  petrolViscosity,
  PURE_FLUIDS,
  type PureFluid,
  ratingFluidDensity,
  soundSpeedFromModulus,
  stoichiometricAirFuelRatio,
  waveBulkModulus,
} from "@/lib/fuel/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Answer, Answers } from "../../helpers/checks.ts";
import { PURE_LIQUID_METHODS, pureLiquid } from "./pure_liquid.ts";
import { surrogate } from "./surrogates.ts";

interface AtTemperature {
  readonly fluid: PureFluid;
  readonly temperature_K: number;
}

const ROOM_K = 293.15;

const liquid: Answer = {
  methods: PURE_LIQUID_METHODS,
  run: ({ fluid, temperature_K }: AtTemperature) => pureLiquid(fluid, temperature_K),
};

const ratingLiquid: Answer = {
  methods: [...PURE_LIQUID_METHODS, ratingFluidDensity],
  run: ({ temperature_K }: AtTemperature) => {
    const pure = pureLiquid("n-heptane", temperature_K);
    const density = ratingFluidDensity({ temperature: temperature_K });
    assertClose(density, pure.density_kg_per_m3, 1e-9, "both ways to the density of n-heptane");
    return { ...pure, density_kg_per_m3: density };
  },
};

const liquids: Answers = {
  "liquid state of n-heptane at 1 atm": ratingLiquid,
  "liquid state of*": liquid,
  "measured liquid properties of*": liquid,
  "speed of sound of ethyl alcohol, handbook": {
    methods: [liquidSoundSpeed],
    run: ({ temperature_K }: AtTemperature) => {
      const at = (temperature: number) =>
        liquidSoundSpeed({ temperature, ...PURE_FLUIDS.ethanol.soundSpeed });
      return {
        speed_of_sound_m_per_s: at(temperature_K),
        slope_m_per_s_per_K: (at(temperature_K + 5) - at(temperature_K - 5)) / 10,
      };
    },
  },
};

/** The fuel that a case names: "petrol (gasoline)" is petrol. */
function fuelOf({ fluid }: { readonly fluid: string }): Burnable {
  return fluid.replace(/ \(.*/, "") as Burnable;
}

const heat: Answers = {
  "lower heating value of*": {
    methods: [],
    run: (i) => ({ lower_heating_value_J_per_kg: COMBUSTION[fuelOf(i)].lowerHeatingValue_J_kg }),
  },
  "heat of vaporisation, published": {
    methods: [],
    run: () => ({
      petrol_J_per_kg: COMBUSTION.petrol.heatOfVaporisation_J_kg,
      methanol_J_per_kg: COMBUSTION.methanol.heatOfVaporisation_J_kg,
      ethanol_J_per_kg: COMBUSTION.ethanol.heatOfVaporisation_J_kg,
    }),
  },
  "heat of vaporisation of*": {
    methods: [],
    run: (i) => ({ heat_of_vaporisation_J_per_kg: COMBUSTION[fuelOf(i)].heatOfVaporisation_J_kg }),
  },
  "stoichiometric air-fuel ratio by mass, published": {
    methods: [],
    run: () => ({
      petrol: COMBUSTION.petrol.stoichiometricRatio,
      ethanol: COMBUSTION.ethanol.stoichiometricRatio,
    }),
  },
  "stoichiometric air-fuel ratio of*": {
    methods: [stoichiometricAirFuelRatio],
    run: (i) => ({
      air_fuel_ratio_mass: stoichiometricAirFuelRatio({
        carbon: i.formula_C,
        hydrogen: i.formula_H,
        oxygen: i.formula_O,
        oxygenShare: i.oxygen_mole_fraction_dry_air,
        airMolarMass: i.molar_mass_air_kg_per_mol,
      }),
    }),
  },
};

const petrol: Answers = {
  "kinematic viscosity range of petrol": {
    methods: [],
    run: () => ({}),
    leaves: Object.fromEntries(
      [
        "nu_20C_min_m2_per_s",
        "nu_20C_max_m2_per_s",
        "nu_minus20C_min_m2_per_s",
        "nu_minus20C_max_m2_per_s",
      ].map((key) => [key, "the range has to hold the curve, not to equal it: checked by hand"]),
    ),
  },
  "density range of petrol at 15.6 degC": {
    methods: [],
    run: () => ({}),
    leaves: {
      min_kg_per_m3: "the method has to take it: checked by hand",
      max_kg_per_m3: "as min_kg_per_m3",
    },
  },
  "volumetric thermal expansion of fuels": {
    methods: [petrolExpansion, liquidDensity, liquidExpansion],
    run: () => {
      const density = liquidDensity({ temperature: ROOM_K, ...PURE_FLUIDS.ethanol.density });
      const { a1, a2, a3 } = PURE_FLUIDS.ethanol.density;
      return {
        petrol_per_K: petrolExpansion({ density15: 745 }),
        ethanol_per_K: liquidExpansion({ temperature: ROOM_K, density, a1, a2, a3 }),
      };
    },
  },
  "speed of sound and isentropic bulk modulus of petrol at 20 degC: band": {
    methods: [petrolSoundSpeed, waveBulkModulus],
    run: () => {
      const soundSpeed = petrolSoundSpeed({ temperature: ROOM_K });
      return {
        speed_of_sound_min_m_per_s: soundSpeed * (1 - PETROL_SCATTER.soundSpeed),
        speed_of_sound_max_m_per_s: soundSpeed * (1 + PETROL_SCATTER.soundSpeed),
        nominal_m_per_s: soundSpeed,
        bulk_modulus_nominal_Pa: waveBulkModulus({ density: 741, soundSpeed }),
      };
    },
  },
  "petrol density at temperature from density at 15 degC": {
    methods: [petrolExpansion, petrolDensity],
    run: ({ density_15C_kg_per_m3: density15, temperature_K: temperature }) => {
      const expansion = petrolExpansion({ density15 });
      const density = petrolDensity({ density15, expansion, temperature });
      return {
        expansion_coefficient_15C_per_K: expansion,
        volume_correction_factor: density / density15,
        density_kg_per_m3: density,
      };
    },
  },
  "true vapour pressure of petrol from Reid vapour pressure": {
    methods: [petrolVapourPressure],
    run: (i) => ({
      true_vapour_pressure_Pa: petrolVapourPressure({
        reidPressure: i.reid_vapour_pressure_Pa,
        temperature: i.temperature_K,
      }),
    }),
  },
  "AP-42 table values of petrol vapour pressure": {
    methods: [petrolVapourPressure],
    run: (i) => ({
      true_vapour_pressure_Pa: i.temperatures_K.map((temperature: number) =>
        petrolVapourPressure({ reidPressure: i.reid_vapour_pressure_Pa, temperature })
      ),
    }),
  },
};

/** Viscosity of the petrol in a blend at 20 °C [Pa s]. */
function petrolAtRoom(): number {
  const density15 = 745;
  const expansion = petrolExpansion({ density15 });
  const density = petrolDensity({ density15, expansion, temperature: ROOM_K });
  return dynamicViscosity({ kinematic: petrolViscosity({ temperature: ROOM_K }), density });
}

const blends: Answers = {
  "ideal volumetric blend of petrol*": {
    methods: [ethanolMassShare, blendDensity, blendHeatingValue, blendAirFuelRatio],
    run: (i) => {
      const volumes = {
        ethanolShare: i.ethanol_vol_frac,
        petrolDensity: i.density_petrol_kg_per_m3,
        ethanolDensity: i.density_ethanol_kg_per_m3,
      };
      const massShare = ethanolMassShare(volumes);
      const density = blendDensity(volumes);
      const heatingValue = blendHeatingValue({
        massShare,
        petrol: i.lhv_petrol_J_per_kg,
        ethanol: i.lhv_ethanol_J_per_kg,
      });
      return {
        density_kg_per_m3: density,
        ethanol_mass_frac: massShare,
        lower_heating_value_J_per_kg: heatingValue,
        lower_heating_value_J_per_m3: heatingValue * density,
        air_fuel_ratio_mass: blendAirFuelRatio({
          massShare,
          petrol: i.afr_petrol,
          ethanol: i.afr_ethanol,
        }),
      };
    },
  },
  "viscosity of petrol with*": {
    methods: [blendViscosity],
    run: (i) => ({
      dynamic_viscosity_Pa_s: blendViscosity({
        ethanolShare: i.ethanol_vol_frac,
        petrolViscosity: i.viscosity_petrol_Pa_s,
        ethanolViscosity: i.viscosity_ethanol_Pa_s,
      }),
    }),
  },
  "measured dynamic viscosity of an E85 blend": {
    methods: [petrolViscosity, dynamicViscosity, liquidViscosity, blendViscosity],
    run: (i) => ({
      dynamic_viscosity_Pa_s: blendViscosity({
        ethanolShare: i.ethanol_vol_frac,
        petrolViscosity: petrolAtRoom(),
        ethanolViscosity: liquidViscosity({
          temperature: ROOM_K,
          ...PURE_FLUIDS.ethanol.viscosity,
        }),
      }),
    }),
  },
  "rise of Reid vapour pressure when 10 vol % ethanol is blended into petrol": {
    methods: [ethanolVapourFactor, blendVapourPressure],
    run: ({ ethanol_vol_frac: ethanolShare }) => {
      const petrolPressure = 60e3;
      const blend = blendVapourPressure({
        activity: ethanolActivity({ ethanolShare }),
        factor: findEthanolVapourFactor(new Working(), "factor", ethanolShare),
        petrolPressure,
        ethanolPressure: 16e3,
      });
      return { rise_Pa: blend - petrolPressure };
    },
  },
  "petrol surrogate*": {
    methods: [blendDensity, blendBulkModulus, soundSpeedFromModulus],
    run: (i) => surrogate(i.volume_fractions, i.temperature_K),
  },
  "sound speed of TRF surrogate with*": {
    methods: [blendDensity, blendBulkModulus, soundSpeedFromModulus],
    run: (i) => surrogate(i.volume_fractions, i.temperature_K),
  },
};

const data: Answers = {
  "flash point, flammability limits in air and autoignition temperature of*": {
    methods: [],
    run: (i) => {
      const { flashPoint_K, lowerLimit, upperLimit, autoignition_K } = FLAMMABILITY[fuelOf(i)];
      return {
        flash_point_K: flashPoint_K,
        lower_flammable_limit_vol_frac: lowerLimit,
        upper_flammable_limit_vol_frac: upperLimit,
        autoignition_K,
      };
    },
  },
  "EN 228 petrol density at 15 degC": {
    methods: [],
    run: () => ({ min_kg_per_m3: EN228_DENSITY_kg_m3[0], max_kg_per_m3: EN228_DENSITY_kg_m3[1] }),
  },
  "EN 228 vapour pressure classes (DVPE at 37.8 degC)": {
    methods: [],
    run: () =>
      Object.fromEntries(
        Object.entries(EN228_VAPOUR_PRESSURE_Pa).map(([name, range]) => [`${name}_Pa`, range]),
      ),
  },
  "ASTM D5798 ethanol content and vapour pressure classes": {
    methods: [],
    run: () => ({
      ethanol_min_vol_frac: D5798.ethanolShare[0],
      ethanol_max_vol_frac: D5798.ethanolShare[1],
      ...Object.fromEntries(
        Object.entries(D5798.vapourPressure_Pa).map(([name, range]) => [`class${name}_Pa`, range]),
      ),
    }),
  },
  "electrical conductivity, order of magnitude": {
    methods: [],
    run: () => {
      const decade = (fuel: BaseFuel) => Math.log10(FUEL_BULK[fuel].conductivity_S_m);
      return {
        log10_petrol_S_per_m: decade("petrol"),
        log10_ethanol_S_per_m: decade("ethanol"),
        log10_methanol_S_per_m: decade("methanol"),
      };
    },
  },
};

export const propertyAnswers: Answers = { ...liquids, ...heat, ...petrol, ...blends, ...data };
