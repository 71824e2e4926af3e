/**
 * Leak tests: pressures, stored energy, what a leak does to a gauge, to water and to the air of a room.
 *
 * @module
 */
export {
  AIR_ENERGY_LIMIT_J,
  AIR_GAS_CONSTANT_J_kg_K,
  AIR_HEAT_RATIO,
  AIR_MOLAR_MASS_kg_mol,
  ALLOWED_LEAK_Pa_m3_s,
  ATMOSPHERE_Pa,
  BUBBLE_DIAMETER_m,
  BUBBLE_WATCH_s,
  FIRST_AIR_LIMIT_Pa,
  LEAST_STEPS,
  MOLAR_GAS_CONSTANT_J_mol_K,
  PROOF_HOLD_s,
  SEEN_STEPS,
  SWING_SHARE,
  TANK_AIR_LIMIT_Pa,
  TEST_LIQUID_FLASH_K,
  WATER_BULK_MODULUS_Pa,
} from "./constants.ts";
export { highestWorkingPressure } from "./working_pressure.ts";
export { proofPressure } from "./proof_pressure.ts";
export { trappedLiquidRise } from "./trapped_fuel.ts";
export { airTestRelief, firstHalt } from "./code_pressures.ts";
export { testVolume } from "./test_volume.ts";
export {
  airEnergyByCode,
  CODE_EXPLOSIVE_HEAT_J_kg,
  explosiveEquivalent,
  gasEnergy,
  gasEnergyBound,
  LEAST_STAND_OFF_m,
  liquidEnergy,
  standOff,
} from "./stored_energy.ts";
export {
  expectedFall,
  leakFromDecay,
  pressureAtStartTemperature,
  smallestLeakSeen,
  thermalChange,
  timeToSee,
} from "./pressure_decay.ts";
export { bubbleFall, liquidFall } from "./liquid_fall.ts";
export { bubbleInterval, leakFromBubbles } from "./bubbles.ts";
export { convertLeak, leakAmount, leakFromStandardFlow, type LeakUnit } from "./leak_units.ts";
export { airViscosity } from "./air_viscosity.ts";
export {
  airThroughCapillary,
  airThroughHole,
  criticalRatio,
  fuelThroughCapillary,
  fuelThroughHole,
  leakAtPressure,
} from "./leak_path.ts";
export {
  flammableVolume,
  headspaceShare,
  lowerLimitMass,
  vapourDensityRatio,
  vapourVolume,
} from "./vapour.ts";
export { freshAirFlow, purgeTime } from "./ventilation.ts";
export {
  blendLowerLimit,
  type BurningFuel,
  type FireData,
  fireData,
  type Headspace,
  judgeHeadspace,
} from "./fire_data.ts";
export {
  type CodeName,
  type CodeRule,
  codeRule,
  subjectOf,
  type Tightness,
  tightnessOf,
} from "./codes.ts";
export {
  type Conflict,
  type Fault,
  type FaultInput,
  faultPressure,
  type ProofPressures,
  proofPressures,
  type ProofPressuresInput,
  type TrappedFuel,
  type WeakestPart,
} from "./proof_pressures.ts";
export { comesOff } from "./comes_off.ts";
export { type ProofNumbers, proofNumbers, type ProofNumbersInput } from "./proof_numbers.ts";
