/** Loss of a stream that turns. */
import { linearCurve } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { CRANE, LOSS, RENNELS, TURBULENT_FRICTION, TURN } from "./loss_limits.ts";

/**
 * Loss coefficient [-] of a swept bend, wall friction along it included.
 *
 * Source: Rennels and Hudson (2012), chapter 15.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 90 degrees, radius 1.5 bores
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = bendLoss({ turnAngle: Math.PI / 2, radiusRatio: 1.5, frictionFactor: 0.03 });
 *
 * assertAlmostEquals(loss, 0.3285, 1e-4);
 * ```
 */
export const bendLoss: Method<
  Record<"turnAngle" | "radiusRatio" | "frictionFactor", MethodInput>
> = method({
  id: "bend-loss",
  title: "Loss coefficient of a swept bend",
  inputs: {
    turnAngle: TURN,
    radiusRatio: {
      unit: "-",
      min: 1,
      max: 20,
      says: "Radius of the bend, at the middle of the bore, over bore",
      symbol: "r / d",
    },
    frictionFactor: TURBULENT_FRICTION,
  },
  output: { ...LOSS, max: 10 },
  formula: "frictionFactor * turnAngle * radiusRatio + " +
    "(0.1 + 2.4 * frictionFactor) * sin(turnAngle / 2) + " +
    "6.6 * frictionFactor * (sqrt(sin(turnAngle / 2)) + sin(turnAngle / 2)) / " +
    "radiusRatio^(4 * turnAngle / pi)",
  source: RENNELS,
  compute: ({ turnAngle, radiusRatio, frictionFactor }) => {
    const turn = Math.sin(turnAngle / 2);
    return frictionFactor * turnAngle * radiusRatio +
      (0.1 + 2.4 * frictionFactor) * turn +
      6.6 * frictionFactor * (Math.sqrt(turn) + turn) / radiusRatio ** (4 * turnAngle / Math.PI);
  },
});

/**
 * Loss coefficient [-] of a sharp corner: a mitre, or two drilled holes that meet.
 *
 * Source: Rennels and Hudson (2012), chapter 15.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example A drilled right angle
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(cornerLoss({ turnAngle: Math.PI / 2 }), 1.202, 1e-3);
 * ```
 */
export const cornerLoss: Method<Record<"turnAngle", MethodInput>> = method({
  id: "corner-loss",
  title: "Loss coefficient of a sharp corner",
  inputs: { turnAngle: { ...TURN, max: 2.618 } },
  output: { ...LOSS, max: 3 },
  formula: "0.42 * sin(turnAngle / 2) + 2.56 * sin(turnAngle / 2)^3",
  source: RENNELS,
  compute: ({ turnAngle }) => {
    const turn = Math.sin(turnAngle / 2);
    return 0.42 * turn + 2.56 * turn ** 3;
  },
});

/** Bores of straight pipe that lose as much as a corner of 0, 15 ... 90 degrees. */
const CORNER_LENGTHS = linearCurve([[0, 2], [1, 4], [2, 8], [3, 15], [4, 25], [5, 40], [6, 60]]);

/**
 * Loss coefficient [-] of a sharp corner by Crane's table, straight between its lines.
 *
 * Source: Crane TP-410 (2009) A-30.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A drilled right angle
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = cornerLossCrane({ turnAngle: Math.PI / 2, frictionFactor: 0.023 });
 *
 * assertAlmostEquals(loss, 1.38, 1e-9);
 * ```
 */
export const cornerLossCrane: Method<Record<"turnAngle" | "frictionFactor", MethodInput>> = method({
  id: "corner-loss-crane",
  title: "Loss coefficient of a sharp corner, Crane",
  inputs: {
    turnAngle: { ...TURN, max: Math.PI / 2 },
    frictionFactor: { ...TURBULENT_FRICTION, says: "Friction factor of fully turbulent flow" },
  },
  output: { ...LOSS, max: 10 },
  // The table bends upwards throughout, so the highest of its straight lines is the curve.
  formula: "frictionFactor * max(2 + 24 * turnAngle / pi, 48 * turnAngle / pi, " +
    "84 * turnAngle / pi - 6, 120 * turnAngle / pi - 15, 180 * turnAngle / pi - 35, " +
    "240 * turnAngle / pi - 60)",
  words: "Straight between the table's lines: 2, 4, 8, 15, 25, 40 and 60 bores of straight pipe " +
    "at 0, 15, 30, 45, 60, 75 and 90 degrees.",
  source: CRANE,
  compute: ({ turnAngle, frictionFactor }) =>
    frictionFactor * CORNER_LENGTHS(Math.min(6, turnAngle * 12 / Math.PI)),
});
