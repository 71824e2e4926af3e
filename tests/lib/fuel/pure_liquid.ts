/** A pure liquid at one temperature, by the methods of the room. */
import {
  kinematicViscosity,
  liquidDensity,
  liquidExpansion,
  liquidSoundSpeed,
  liquidVapourPressure,
  liquidViscosity,
  PURE_FLUIDS,
  type PureFluid,
  slowBulkModulus,
  waveBulkModulus,
} from "@/lib/fuel/mod.ts";

/** The methods it rests on. */
export const PURE_LIQUID_METHODS = [
  liquidDensity,
  liquidViscosity,
  kinematicViscosity,
  liquidSoundSpeed,
  waveBulkModulus,
  liquidExpansion,
  slowBulkModulus,
  liquidVapourPressure,
] as const;

/** The liquid's properties, by the names of the reference files. */
export type LiquidNumbers = Readonly<
  Record<
    | "density_kg_per_m3"
    | "dynamic_viscosity_Pa_s"
    | "kinematic_viscosity_m2_per_s"
    | "speed_of_sound_m_per_s"
    | "isentropic_bulk_modulus_Pa"
    | "isothermal_bulk_modulus_Pa"
    | "vapour_pressure_Pa",
    number
  >
>;

export function pureLiquid(fluid: PureFluid, temperature: number): LiquidNumbers {
  const data = PURE_FLUIDS[fluid];
  const { a1, a2, a3 } = data.density;
  const density = liquidDensity({ temperature, ...data.density });
  const viscosity = liquidViscosity({ temperature, ...data.viscosity });
  const soundSpeed = liquidSoundSpeed({ temperature, ...data.soundSpeed });
  const bulkModulus = waveBulkModulus({ density, soundSpeed });
  return {
    density_kg_per_m3: density,
    dynamic_viscosity_Pa_s: viscosity,
    kinematic_viscosity_m2_per_s: kinematicViscosity({ viscosity, density }),
    speed_of_sound_m_per_s: soundSpeed,
    isentropic_bulk_modulus_Pa: bulkModulus,
    isothermal_bulk_modulus_Pa: slowBulkModulus({
      bulkModulus,
      expansion: liquidExpansion({ temperature, density, a1, a2, a3 }),
      temperature,
      density,
      specificHeat: data.specificHeat_J_kgK,
    }),
    vapour_pressure_Pa: liquidVapourPressure({ temperature, ...data.vapourPressure }),
  };
}
