/**
 * What walls bear: materials, stresses around the gallery, forces on plugs and pockets.
 *
 * @module
 */
export { type BarSpec, type BarStrength, barStrength } from "./bar_strength.ts";
export {
  axialStress,
  hoopAtBore,
  hoopAtOutside,
  minimumWall,
  radialAtBore,
  thinWallHoop,
  thinWallPressure,
  vonMises,
} from "./cylinder.ts";
export { clampedPlateStress, supportedPlateStress } from "./flat_plate.ts";
export {
  AS_BUILT_SPREAD,
  type Material,
  type MaterialName,
  MATERIALS,
  TYPICAL_STRENGTH,
  type TypicalStrength,
} from "./materials.ts";
export {
  crossHoleFactor,
  LIGAMENT_FACTOR,
  peakStress,
  SHAPE_FACTOR,
  smallCrossHoleFactor,
  yieldFactor,
} from "./peak.ts";
export { pressureForce } from "./pressure_force.ts";
export { centredWall, DRIFT_PER_LENGTH, drillDrift, wallLeft } from "./wall.ts";
