/** What is lost between battery and pump. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import {
  CONTACTS,
  CURRENT,
  DROP,
  LENGTH,
  LOOP,
  RATIO,
  RESISTANCE_PER_LENGTH,
  RETURN_LENGTH,
} from "./limits.ts";

/**
 * Resistance [ohm] of the wires to the pump and back, warm.
 *
 * Source: resistances in series add. A return through the body counts by the length of the
 * same wire that would lose as much.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 4 mm2, 4 m out and 1 m back, at 60 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loop_ohm = loopResistance({
 *   resistancePerLength: 4.95e-3,
 *   ratio: 1.1572,
 *   outLength: 4,
 *   returnLength: 1,
 * });
 *
 * assertAlmostEquals(loop_ohm, 0.02864, 1e-5);
 * ```
 */
export const loopResistance: Method<
  Record<"resistancePerLength" | "ratio" | "outLength" | "returnLength", MethodInput>
> = method({
  id: "loop-resistance",
  title: "Resistance of the wires, out and back",
  inputs: {
    resistancePerLength: RESISTANCE_PER_LENGTH,
    ratio: RATIO,
    outLength: LENGTH,
    returnLength: RETURN_LENGTH,
  },
  output: { ...LOOP, name: "loopResistance" },
  formula: "resistancePerLength * ratio * (outLength + returnLength)",
  source: "Resistances in series add",
  compute: ({ resistancePerLength, ratio, outLength, returnLength }) =>
    resistancePerLength * ratio * (outLength + returnLength),
});

/**
 * Voltage [V] lost in the wires. Source: Ohm's law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(wireDrop({ current: 15, loopResistance: 0.03 }), 0.45, 1e-12);
 * ```
 */
export const wireDrop: Method<Record<"current" | "loopResistance", MethodInput>> = method({
  id: "wire-drop",
  title: "Voltage lost in the wires",
  inputs: { current: CURRENT, loopResistance: LOOP },
  output: { ...DROP, name: "drop" },
  formula: "current * loopResistance",
  source: "Ohm's law",
  compute: ({ current, loopResistance }) => current * loopResistance,
});

/**
 * Voltage [V] lost from the battery to the pump and back: wires, relay, fuse, connectors.
 *
 * Source: Kirchhoff's voltage law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(voltageLost({ drop: 0.45, contacts: 0.15 }), 0.6, 1e-12);
 * ```
 */
export const voltageLost: Method<Record<"drop" | "contacts", MethodInput>> = method({
  id: "voltage-lost",
  title: "Voltage lost in the pump's circuit",
  inputs: { drop: DROP, contacts: CONTACTS },
  output: { ...DROP, name: "lost", max: 5e5, says: "Voltage lost in all", symbol: "\\Delta U" },
  formula: "drop + contacts",
  source: "Kirchhoff's voltage law",
  compute: ({ drop, contacts }) => drop + contacts,
});

/**
 * Voltage [V] that is left at the pump. Below zero, the battery can't drive that current
 * through that circuit.
 *
 * Source: Kirchhoff's voltage law.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(terminalVoltage({ battery: 13.2, lost: 0.6 }), 12.6, 1e-12);
 * ```
 */
export const terminalVoltage: Method<Record<"battery" | "lost", MethodInput>> = method({
  id: "terminal-voltage",
  title: "Voltage at the pump",
  inputs: {
    battery: { unit: "V", min: 4, max: 30, says: "Voltage at the battery", symbol: "U_b" },
    lost: { ...DROP, max: 5e5, says: "Voltage lost in all", symbol: "\\Delta U" },
  },
  output: {
    name: "terminalVoltage",
    unit: "V",
    min: -5e5,
    max: 30,
    says: "Voltage at the pump",
    symbol: "U",
  },
  formula: "battery - lost",
  source: "Kirchhoff's voltage law",
  compute: ({ battery, lost }) => battery - lost,
});
