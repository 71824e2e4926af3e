/**
 * The rail as geometry: bar, holes, what is left between them, how injectors stand in it.
 *
 * @module
 */
export type { Bar, Cut, Face, Feature, Hole, HoleThread, Layout, Stretch, Vec3 } from "./model.ts";
export type {
  CapEnd,
  GalleryEnd,
  GallerySpec,
  Place,
  PocketSpec,
  PortSpec,
  RailLayoutSpec,
  RingEnd,
  ScrewSpec,
  StationSpec,
  TappedHole,
  ThreadCut,
  ThreadedEnd,
} from "./spec.ts";
export { layRail } from "./lay_rail.ts";
export { leastDistance } from "./least_distance.ts";
export { mouthDip, type ThinWall, thinWalls, type Wall, wallOf } from "./wall.ts";
export { type Clash, clashes, type LigamentLimits, type Neighbour, neighbours } from "./clashes.ts";
export { type Opening, openingOf } from "./opening.ts";
export { firstTouch, openingMargin } from "./first_touch.ts";
export { type Drift, withDrift, worstOpening } from "./drift.ts";
export { type BiggestGallery, biggestGallery, type GalleryLimits } from "./biggest_gallery.ts";
export { nearestThatFits, type PlaceLimits } from "./nearest_place.ts";
export { type CutDepth, type HoleRow, holeTable } from "./hole_table.ts";
export { type Tool, type ToolKind, tools } from "./tools.ts";
export {
  ringPastLeadIn,
  roomAboveInjector,
  shiftAtWorst,
  shiftByChance,
  spacerForPlane,
} from "./ring_heights.ts";
export {
  type StackedInjector,
  type StackSpec,
  type StackStation,
  type StackUp,
  stackUp,
  type WithTolerance,
} from "./stack_up.ts";
export { boreByEdges, centreByEdges, centreByPin } from "./boss_readings.ts";
export {
  type BossCentre,
  type BossCentres,
  bossCentres,
  type BossReading,
} from "./boss_centres.ts";
export {
  type Float,
  floatLeft,
  floatOf,
  floatPlay,
  type FloatSpec,
  type FloatStation,
  floatTilt,
} from "./ring_float.ts";
