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
export {
  type Interpolation,
  operatingPoint,
  type SystemCurve,
  together,
} from "./operating_point.ts";
