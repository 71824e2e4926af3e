/**
 * Threads, drills and sensor ports: tables of the standards, what a drill leaves, where a port
 * meets the gallery, what tightening does to the thread.
 *
 * @module
 */
export {
  FLANK_60_rad,
  type HoleLimits,
  type ScrewLimits,
  STRAIGHT_THREADS,
  type StraightThread,
} from "./straight_threads.ts";
export { threadOf } from "./thread_of.ts";
export {
  heightShareIso,
  heightShareUs,
  minorDiameter,
  pitchDiameter,
  sharpHeight,
  stressArea,
  stressAreaUnified,
} from "./profile.ts";
export {
  G_THREADS,
  NPT_THREADS,
  type NptThread,
  PIPE_FAMILIES,
  type PipeFamily,
  type PipeSize,
  type WhitworthPipeThread,
  type WhitworthSize,
} from "./pipe_threads.ts";
export {
  handTightTurns,
  nptFace,
  nptHeight,
  nptSmallEnd,
  nptUsefulLength,
  taperInside,
  taperUsefulLength,
  whitworthHeight,
} from "./pipe_geometry.ts";
export { CLEARANCE_HOLES, type ClearanceHole, type ClearanceScrew } from "./clearance_holes.ts";
export {
  type Drill,
  DRILLS,
  type DrillSet,
  inchDrillsWithin,
  type NearDrill,
  nearestDrill,
  nearestDrills,
  nearestInchDrill,
} from "./drills.ts";
export {
  type Band,
  type CutMaterial,
  CUTTING_SPEEDS,
  type CuttingSpeed,
  DEEP_FROM_DIAMETERS,
  depthRatio,
  drillingTime,
  feedBand,
  feedSpeed,
  PECK_FROM_DIAMETERS,
  spindleSpeed,
} from "./drilling.ts";
export {
  blindHoleDepth,
  coneDepth,
  coneSide,
  farWallClearance,
  firstOpening,
  lastOpening,
  pointLength,
  seatGrowth,
  seatRing,
  spottedAxisDepth,
  tapRunOut,
} from "./port_geometry.ts";
export {
  fullThreadAboveGallery,
  fullThreadAboveSeat,
  sealingDepth,
  seatDepthByGallery,
  seatDepthByReach,
  seatToGallery,
  shoulderGap,
  wallAroundPort,
} from "./port_depths.ts";
export {
  preloadFromTorque,
  strippingFactor,
  tappedShearArea,
  threadForFactor,
} from "./thread_load.ts";
export type { SayLength } from "./millimetres.ts";
export { type Port, type PortId, PORTS, type Seal, type SealKind, SEALS } from "./ports.ts";
export type { PortLayer } from "./port_stack.ts";
export { type SensorPort, sensorPort, type SensorPortSpec } from "./sensor_port.ts";
