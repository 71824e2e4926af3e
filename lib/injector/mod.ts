/**
 * Injectors: pressure across them, flow, dead time, pulse, duty, stages.
 *
 * @module
 */
export {
  injectorDifferential,
  type InjectorPressures,
  injectorPressures,
  LEAST_DIFFERENTIAL_Pa,
  railPressure,
  type RegulatedPoint,
} from "./differential.ts";
export {
  carriedFuel,
  fuelPerInjection,
  injectorDuty,
  neededStaticFlow,
  openTime,
  overSmallestPulse,
  pulseWidth,
} from "./pulse.ts";
export {
  ASSUMED_DEAD_TIMES,
  deadTimeAt,
  deadTimeBetween,
  type DeadTimePoint,
  type DeadTimeRow,
  type DeadTimeTable,
} from "./dead_time.ts";
export {
  type CeilingPoint,
  fuelCarried,
  type InjectionPoint,
  type Stage,
  type StageDuties,
  type StageDuty,
  stageDuty,
  stageShare,
} from "./stages.ts";
export { coilCurrent } from "./coil.ts";
