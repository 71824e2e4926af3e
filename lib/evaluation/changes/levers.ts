/** Every lever, by subject: those pulled first stand first. */
import type { Lever } from "./lever.ts";
import { FILTER_LEVERS } from "./levers/filters.ts";
import { FUEL_LEVERS } from "./levers/fuel.ts";
import { HOLD_DOWN_LEVERS } from "./levers/hold_down.ts";
import { HOSE_LEVERS } from "./levers/hoses.ts";
import { INJECTOR_LEVERS } from "./levers/injectors.ts";
import { POCKET_LEVERS } from "./levers/pockets.ts";
import { PRESSURE_LEVERS } from "./levers/pressures.ts";
import { PROOF_LEVERS } from "./levers/proof.ts";
import { PUMP_LEVERS } from "./levers/pumps.ts";
import { RAIL_LEVERS } from "./levers/rail.ts";
import { SENSOR_LEVERS } from "./levers/sensor.ts";
import { WIRING_LEVERS } from "./levers/wiring.ts";

/** All of them. */
export const LEVERS: readonly Lever[] = [
  ...INJECTOR_LEVERS,
  ...HOSE_LEVERS,
  ...FILTER_LEVERS,
  ...WIRING_LEVERS,
  ...PUMP_LEVERS,
  ...PRESSURE_LEVERS,
  ...RAIL_LEVERS,
  ...POCKET_LEVERS,
  ...HOLD_DOWN_LEVERS,
  ...SENSOR_LEVERS,
  ...PROOF_LEVERS,
  ...FUEL_LEVERS,
];
