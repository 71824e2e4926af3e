/** Power, torque and mean pressure. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { DISPLACEMENT, POWER, SPEED, TURNS } from "./limits.ts";

/**
 * Power at the crankshaft [W] from power at the wheels.
 *
 * Source: definition of the loss share.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(crankPower({ wheelPower: 170_000, lossShare: 0.15 }), 200_000, 1e-6);
 * ```
 */
export const crankPower: Method<Record<"wheelPower" | "lossShare", MethodInput>> = method({
  id: "crank-power",
  title: "Power at the crankshaft from power at the wheels",
  inputs: {
    wheelPower: {
      unit: "W",
      min: 500,
      max: 2e6,
      says: "Power at the wheels",
      symbol: "P_w",
    },
    lossShare: {
      unit: "-",
      min: 0,
      max: 0.5,
      says: "Share of crankshaft power lost on the way to the wheels",
      symbol: "\\lambda_d",
    },
  },
  output: {
    name: "power",
    unit: "W",
    min: 500,
    max: 4e6,
    says: "Power at the crankshaft",
    symbol: "P",
  },
  formula: "wheelPower / (1 - lossShare)",
  source: "Definition of the loss share",
  compute: ({ wheelPower, lossShare }) => wheelPower / (1 - lossShare),
});

/**
 * Torque [N m] at a power and speed.
 *
 * Source: work of a turning moment.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(torque({ power: 300_000, speed: 7000 / 60 }), 409.26, 0.01);
 * ```
 */
export const torque: Method<Record<"power" | "speed", MethodInput>> = method({
  id: "torque",
  title: "Torque at a power and speed",
  inputs: { power: POWER, speed: SPEED },
  output: { name: "torque", unit: "N m", min: 0, max: 2e5, says: "Torque", symbol: "M" },
  formula: "power / (2 * pi * speed)",
  source: "Work of a turning moment",
  compute: ({ power, speed }) => power / (2 * Math.PI * speed),
});

/**
 * Brake mean effective pressure [Pa]. At rated power without boost 8.5 to 10.5 bar is
 * usual, above 30 bar exceptional.
 *
 * Source: definition; J. B. Heywood (1988), section 2.7.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const bmep_Pa = bmep({ power: 3e5, turns: 2, displacement: 0.002, speed: 7000 / 60 });
 *
 * assertAlmostEquals(bmep_Pa, 25.71e5, 1e3);
 * ```
 */
export const bmep: Method<Record<"power" | "turns" | "displacement" | "speed", MethodInput>> =
  method({
    id: "bmep",
    title: "Brake mean effective pressure",
    inputs: { power: POWER, turns: TURNS, displacement: DISPLACEMENT, speed: SPEED },
    output: {
      name: "meanPressure",
      unit: "Pa",
      min: 0,
      max: 1e9,
      says: "Mean pressure that would do the same work",
      symbol: "p_\\text{me}",
    },
    formula: "power * turns / (displacement * speed)",
    source: "Definition; J. B. Heywood, Internal Combustion Engine Fundamentals (1988), 2.7",
    compute: ({ power, turns, displacement, speed }) => power * turns / (displacement * speed),
  });
