/**
 * What walls bear: materials, stresses around the gallery, forces on plugs and pockets,
 * and the screws that hold the rail down.
 *
 * @module
 */
export { type BarSpec, type BarStrength, barStrength } from "./bar_strength.ts";
export {
  barDeflection,
  bendingStress,
  boredRectangleInertia,
  boredRoundInertia,
} from "./bar_bending.ts";
export { type BlowOut, blowOut, type BlowOutSpec } from "./blow_out.ts";
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
export { facingHolesFactor } from "./facing_holes.ts";
export { clampedPlateStress, supportedPlateStress } from "./flat_plate.ts";
export { type Gap, type HeldBar, heldBar, type Lift } from "./held_bar.ts";
export { holdDown } from "./hold_down.ts";
export { clampForFactor, decidingPull, preloadFactor, shareOfStiffBar } from "./hold_down_share.ts";
export type { HeldGap, HeldScrew, HoldDown, HoldDownSpec } from "./hold_down_spec.ts";
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
export {
  CLAMPED_STIFFNESS,
  clampLeft,
  screwShare,
  separationFactor,
  tightenedScrewLoad,
} from "./preloaded_joint.ts";
export { pressureForce } from "./pressure_force.ts";
export { holdMargin, springForce } from "./spring_hold.ts";
export { centredWall, DRIFT_PER_LENGTH, drillDrift, wallLeft } from "./wall.ts";
