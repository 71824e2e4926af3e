/**
 * The pump: what it delivers, its margin, what it draws, where it meets the system.
 *
 * @module
 */
export {
  affinityFlow,
  affinityPressure,
  parallelFlow,
  pumpFlowBetween,
  pumpFlowBetweenVoltages,
  seriesPressure,
} from "./pump_curve.ts";
export {
  pumpAt,
  type PumpCurve,
  type PumpDelivery,
  type PumpDuty,
  type PumpPoint,
  type PumpSpec,
  type Untold,
} from "./pump_at.ts";
export {
  neededPressure,
  pumpFlowToAskFor,
  pumpMargin,
  returnFlow,
  STANDARD_GRAVITY_m_s2,
} from "./pump_margin.ts";
export {
  ASSUMED_PUMP_EFFICIENCY,
  electricalPower,
  hydraulicPower,
  pumpCurrent,
  pumpWarming,
  type PumpWork,
  pumpWork,
  type PumpWorkSpec,
} from "./pump_power.ts";
export { type Interpolation, operatingPoint, type SystemCurve } from "./operating_point.ts";
export {
  type PumpFigure,
  type PumpFigures,
  type PumpReading,
  readPump,
  type RunningPoint,
  type RunningPump,
  subtractPump,
} from "./pump_law.ts";
export { electricPump, type PumpFeed } from "./electric_pump.ts";
export { type DrivenPump, drivenPump } from "./driven_curve.ts";
export { pumpsTogether, type Together, withRelief } from "./running_pump.ts";
export {
  layRails,
  type RailNet,
  type RailRuns,
  type RailsSpec,
  type Station,
  type Stretch,
} from "./rail_net.ts";
export {
  type InjectorState,
  type RegulatorSpec,
  type RegulatorState,
  type Running,
  Supply,
  type SupplySolution,
  type SupplyState,
  type SupplySystem,
} from "./supply_network.ts";
export { type HeldFlow, heldFlow } from "./held_flow.ts";
export { absoluteFromGauge, inletPressure, suctionHead, vapourMargin } from "./pump_inlet.ts";
export { tankHeatingByPump, tankHeatingByReturn } from "./tank_heating.ts";
export { missingFlow, primeTime, surgeSeconds, type SurgeSpec, surgeTime } from "./surge_tank.ts";
export { drivenPumpFlow, pumpDisplacement, pumpSpeedFromEngine, slipOf } from "./driven_pump.ts";
