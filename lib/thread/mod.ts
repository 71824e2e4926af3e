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
  strippingLoad,
  tappedShearArea,
  threadForFactor,
} from "./thread_load.ts";
export type { SayLength } from "./millimetres.ts";
export { type Port, type PortId, PORTS, type Seal, type SealKind, SEALS } from "./ports.ts";
export {
  O_RING_PORT_SCOPE_Pa,
  O_RING_PORTS,
  type ORingPort,
  type ORingThread,
  type PortRing,
} from "./oring_ports.ts";
export { portRingOutside, portRingOverSeat } from "./port_ring.ts";
export { FACE_PORTS, type FacePort, type FaceThread } from "./face_ports.ts";
export { nptHoleThread, nptMinorAtFace } from "./npt_hole.ts";
export { PORT_SHAPES, type PortMouth, type PortShape, type PortShapeId } from "./port_shapes.ts";
export {
  type PortCut,
  type PortProfile,
  portProfile,
  type PortProfileOptions,
  type PortSegment,
  type PortThread,
} from "./port_profile.ts";
export {
  type Flare,
  FLARE_SIZES,
  type FlareDash,
  type FlareKind,
  FLARES,
  type FlareSize,
  flaresMate,
  wrongFlareScrewsOn,
} from "./flares.ts";
export { tubeBore } from "./tube.ts";
export { type DrillChoice, drillChoices, HEIGHT_BASES } from "./drill_choices.ts";
export { reamingAllowance, type ShopTool, TOOL_SPEEDS, type ToolSpeed } from "./tool_speeds.ts";
export { edgeSpeed, type Press, type Spindle, spindleFor } from "./spindle.ts";
export {
  flexibleHone,
  SHOP_PRACTICE,
  type ShopPractice,
  type ShopPracticeId,
} from "./shop_practice.ts";
export type { PortLayer } from "./port_stack.ts";
export { type SensorPort, sensorPort, type SensorPortSpec } from "./sensor_port.ts";
export { SCREW_CLASSES, type ScrewClass, type ScrewStrength } from "./screw_classes.ts";
export {
  engagementInWeaker,
  engagementToBreak,
  screwShearArea,
  threadStrengthRatio,
} from "./screw_shear.ts";
export {
  mostPreload,
  PRELOAD_SHARE,
  proofLoad,
  proofShare,
  torqueBySplit,
  torqueForPreload,
} from "./screw_load.ts";
export {
  headBearingLoad,
  headBearingStress,
  type HeadKind,
  type ScrewHead,
  screwHead,
} from "./screw_heads.ts";
export {
  ENGAGEMENT_RULES,
  type EngagementRule,
  FASTENING_NOTES,
  type FasteningNote,
  M6_STUD_IN_ALUMINIUM_m,
} from "./engagement_rules.ts";
