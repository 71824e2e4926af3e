/**
 * The rail with steady flow: pressures along the gallery, spread between injectors, volumes.
 *
 * @module
 */
export { takeOffLoss, takeOffRecovery } from "./take_off.ts";
export { type FrictionLaw, type RailPressures, railPressures, type RailSpec } from "./march.ts";
export { flowSpread } from "./flow_spread.ts";
export { type RailSteady, railSteady } from "./rail_steady.ts";
export { flowAtSpread } from "./flow_at_spread.ts";
export {
  galleryVolume,
  type RailVolumes,
  railVolumes,
  shotShare,
  shotVolume,
  type VolumesSpec,
} from "./volumes.ts";
export { takeOffFactor } from "./uniform_factor.ts";
export { type FeedLine, railTwoEnds, type TwoEndFlow, type TwoEndSpec } from "./two_ends.ts";
export {
  type OrificeRailFlow,
  type OrificeRailSpec,
  orificeTakeOffs,
} from "./orifice_take_offs.ts";
