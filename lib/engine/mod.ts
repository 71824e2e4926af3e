/**
 * What the engine needs: fuel by power and by air, efficiency, time for one injection.
 *
 * @module
 */
export { airDensity, moistAirDensity, waterVapourPressure } from "./air_density.ts";
export { ambientPressure } from "./ambient_pressure.ts";
export { airFlow, airPerWork, fuelByAir, idealFilling, routeDifference } from "./breathing.ts";
export {
  bsfcAtEfficiency,
  bsfcAtEqualEfficiency,
  bsfcFloor,
  fuelByPower,
  impliedBsfc,
} from "./bsfc.ts";
export {
  AIR_GAS_CONSTANT_J_kg_K,
  type Band,
  BSFC_BANDS,
  type Cycle,
  EFFICIENCY_BANDS,
  TEXTBOOK_BEST_BSFC_kg_J,
  TURNS_PER_FILLING,
} from "./constants.ts";
export { ottoEfficiency, overallEfficiency } from "./efficiency.ts";
export { type Demand, type DemandSpec, engineDemand } from "./engine_demand.ts";
export { injectionInterval } from "./injection_interval.ts";
export { bmep, crankPower, torque } from "./power.ts";
export { fourStrokeEquivalent, rotarySweptVolume } from "./rotary.ts";
