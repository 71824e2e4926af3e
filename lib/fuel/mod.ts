/**
 * Fuels: petrol, its blends with ethanol, methanol, and the liquids that stand beside them.
 *
 * @module
 */
export {
  type FluidData,
  type Polynomial,
  PURE_FLUIDS,
  type PureFluid,
  type ThreeTerms,
} from "./fluids.ts";
export {
  type BaseFuel,
  type Burnable,
  COMBUSTION,
  type Combustion,
  D5798,
  EN228_DENSITY_kg_m3,
  EN228_VAPOUR_PRESSURE_Pa,
  FLAMMABILITY,
  type Flammability,
  FUEL_BULK,
  type FuelBulk,
} from "./fuel_data.ts";
export { liquidDensity, liquidExpansion, ratingFluidDensity } from "./liquid_density.ts";
export { dynamicViscosity, kinematicViscosity, liquidViscosity } from "./liquid_viscosity.ts";
export { liquidSoundSpeed } from "./liquid_sound.ts";
export { liquidVapourPressure } from "./liquid_vapour_pressure.ts";
export { slowBulkModulus, soundSpeedFromModulus, waveBulkModulus } from "./compressibility.ts";
export {
  PETROL_SCATTER,
  petrolDensity,
  petrolExpansion,
  petrolSoundSpeed,
  petrolViscosity,
} from "./petrol.ts";
export { petrolVapourPressure } from "./petrol_vapour_pressure.ts";
export { blendBulkModulus, blendDensity, blendViscosity, ethanolMassShare } from "./blend.ts";
export {
  blendAirFuelRatio,
  blendHeatingValue,
  blendMolarMass,
  blendSpecificHeat,
  type MixedByMass,
} from "./blend_by_mass.ts";
export {
  blendVapourPressure,
  ETHANOL_VAPOUR_FACTORS,
  ethanolActivity,
  ethanolVapourFactor,
  type EthanolVapourPoint,
  findEthanolVapourFactor,
} from "./blend_vapour_pressure.ts";
export { vapourPressureBeyond, vapourSteepness } from "./vapour_pressure_beyond.ts";
export {
  findVapourPressure,
  temperatureAtVapourPressure,
  VAPOUR_TEMPERATURE,
  vapourPressureAt,
} from "./vapour_pressure_at.ts";
export { AIR_OXYGEN_SHARE, stoichiometricAirFuelRatio } from "./stoichiometry.ts";
export { fuelEnergy, type FuelSpec, type FuelState, fuelState } from "./fuel_state.ts";
