/**
 * Flow in pipes and through openings: velocity, Reynolds number, friction, orifices, leaks.
 *
 * @module
 */
export { flowAtVelocity, meanVelocity } from "./velocity.ts";
export { relativeRoughness, reynoldsNumber } from "./reynolds.ts";
export {
  colebrookFriction,
  darcyFriction,
  LAMINAR_TO,
  laminarFriction,
  type Regime,
  regimeOf,
  transitionFriction,
  TURBULENT_FROM,
} from "./friction.ts";
export { dynamicPressure, pipePressureDrop } from "./pressure_drop.ts";
export { frictionLoss, type PipeFlow, pipeFlow, type PipeSpec } from "./pipe_flow.ts";
export { jetVelocity, orificeFlow, orificeFlowInPipe, PINHOLE_DISCHARGE } from "./orifice.ts";
export { massFlow, scaledFlow, volumeFlow } from "./scaling.ts";
export { capillaryLeak, capillaryLeakWithEntry, gapLeak } from "./leak.ts";
