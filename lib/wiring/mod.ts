/**
 * The wiring of the pump: what is lost on the way, how warm the wire gets, which fuse.
 *
 * @module
 */
export { awgDiameter, conductorResistance, STRANDING, wireArea } from "./awg.ts";
export {
  COPPER_COEFFICIENT_1_K,
  COPPER_RESISTIVITY_ohm_m,
  resistanceRatio,
  WIRE_REFERENCE_K,
} from "./copper.ts";
export { loopResistance, terminalVoltage, voltageLost, wireDrop } from "./voltage.ts";
export {
  ASSUMED_FILM_W_m2_K,
  currentForWarming,
  wireHeat,
  wireHeatPerLength,
  wireWarming,
} from "./heat.ts";
export { smallestArea } from "./smallest_area.ts";
export { BLADE_FUSES_A, type Fuse, FUSE_FACTOR, fuseFor, leastFuse } from "./fuse.ts";
export {
  type GaugeWire,
  type MetricWire,
  nextWire,
  type Wire,
  WIRES,
  type WireSize,
} from "./wires.ts";
export { type PumpWiring, pumpWiring, type PumpWiringSpec } from "./pump_wiring.ts";
