/** From battery to pump: what is lost, what is left, how warm the wire gets. */
import type { Working } from "@/lib/method/mod.ts";
import { COPPER_COEFFICIENT_1_K, resistanceRatio, WIRE_REFERENCE_K } from "./copper.ts";
import { ASSUMED_FILM_W_m2_K, wireHeat, wireHeatPerLength, wireWarming } from "./heat.ts";
import { loopResistance, terminalVoltage, voltageLost, wireDrop } from "./voltage.ts";
import type { Wire } from "./wires.ts";

/** What {@linkcode pumpWiring} needs. */
export interface PumpWiringSpec {
  /** Voltage at the battery [V]. */
  readonly battery_V: number;
  /** What the pump draws [A]. */
  readonly current_A: number;
  /** The wire, like one of {@linkcode WIRES}. */
  readonly wire: Pick<Wire, "resistance20_ohm_m" | "outside_m">;
  /** Length of the wire to the pump [m]. */
  readonly outLength_m: number;
  /** Length back [m]; through the body, the length of the same wire that it is worth. */
  readonly returnLength_m: number;
  /** Temperature of the conductor [K]. */
  readonly conductorTemperature_K: number;
  /** Lost in relay, fuse and connectors at that current [V]. */
  readonly contacts_V: number;
}

/** What {@linkcode pumpWiring} finds. */
export interface PumpWiring {
  /** Resistance of the wires, out and back, warm [ohm]. */
  readonly loop_ohm: number;
  /** Lost in the wires [V]. */
  readonly drop_V: number;
  /** Lost in all: wires, relay, fuse, connectors [V]. */
  readonly lost_V: number;
  /** Left at the pump [V]; below zero, the battery can't drive that current. */
  readonly terminal_V: number;
  /** Heat in the wires [W]. */
  readonly heat_W: number;
  /** Heat in a metre of wire [W/m]. */
  readonly heatPerMetre_W_m: number;
  /** Warming of a single wire above still air [K]; in a bundle it is more. */
  readonly warming_K: number;
}

/**
 * Finds what the wiring of a pump loses and how warm it gets, and records how.
 *
 * @param working The record.
 * @param section Where the results belong, like `wiring`.
 * @param spec Battery, pump, wire and lengths.
 * @returns The results.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 15 A through 4 mm2, 4 m out and 1 m back
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 * import { WIRES } from "./wires.ts";
 *
 * const wiring = pumpWiring(new Working(), "wiring", {
 *   battery_V: 13.2,
 *   current_A: 15,
 *   wire: WIRES["4 mm2"],
 *   outLength_m: 4,
 *   returnLength_m: 1,
 *   conductorTemperature_K: 333.15,
 *   contacts_V: 0.15,
 * });
 *
 * assertAlmostEquals(wiring.lost_V, 0.58, 0.01);
 * assertAlmostEquals(wiring.terminal_V, 12.62, 0.01);
 * assertAlmostEquals(wiring.warming_K, 11.1, 0.1);
 * ```
 */
export function pumpWiring(
  working: Working,
  section: string,
  spec: PumpWiringSpec,
): PumpWiring {
  const { current_A: current, wire } = spec;
  const ratio = working.run(`${section}.ratio`, resistanceRatio, {
    temperature: spec.conductorTemperature_K,
    reference: WIRE_REFERENCE_K,
    coefficient: COPPER_COEFFICIENT_1_K,
  });
  const loop_ohm = working.run(`${section}.loop_ohm`, loopResistance, {
    resistancePerLength: wire.resistance20_ohm_m,
    ratio,
    outLength: spec.outLength_m,
    returnLength: spec.returnLength_m,
  });
  const drop_V = working.run(`${section}.drop_V`, wireDrop, { current, loopResistance: loop_ohm });
  const lost_V = working.run(`${section}.lost_V`, voltageLost, {
    drop: drop_V,
    contacts: spec.contacts_V,
  });
  const terminal_V = working.run(`${section}.terminal_V`, terminalVoltage, {
    battery: spec.battery_V,
    lost: lost_V,
  });
  const heat_W = working.run(`${section}.heat_W`, wireHeat, { current, loopResistance: loop_ohm });
  const heatPerMetre_W_m = working.run(`${section}.heatPerMetre_W_m`, wireHeatPerLength, {
    current,
    resistancePerLength: wire.resistance20_ohm_m,
    ratio,
  });
  const warming_K = working.run(`${section}.warming_K`, wireWarming, {
    heatPerLength: heatPerMetre_W_m,
    outside: wire.outside_m,
    filmCoefficient: ASSUMED_FILM_W_m2_K,
  });
  return { loop_ohm, drop_V, lost_V, terminal_V, heat_W, heatPerMetre_W_m, warming_K };
}
