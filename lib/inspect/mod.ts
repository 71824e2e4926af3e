/**
 * Inspection of what was drilled: tolerances, straight edge and feeler, place, torque.
 *
 * @module
 */
export { angleTolerance, generalTolerance } from "./general_tolerance.ts";
export { chainError, type Dimensioning, lastPlaceError, truePosition } from "./place.ts";
export { FLATNESS_PER_CYLINDER_m, flatnessLimit } from "./flatness.ts";
export {
  bladeFor,
  FEELER_BLADES,
  type FeelerBlade,
  type FeelerReading,
  readFeeler,
} from "./feeler.ts";
export { type TorqueWindow, torqueWindow, wrenchError } from "./torque_window.ts";
export {
  INSPECTION_POINTS,
  type InspectionPoint,
  type InspectionPointId,
  PARTICLE_m,
  POCKET_ROUGHNESS_m,
} from "./points.ts";
