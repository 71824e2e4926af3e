/** Loss of a stream that enters a pipe from a large space, or leaves into one. */
import { linearCurve } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { CRANE, LOSS, RENNELS } from "./loss_limits.ts";

/**
 * Loss coefficient [-] of a sharp entrance flush with the wall, by handbook. Four say 0.5,
 * one 0.57: that gap is how well it is known.
 *
 * Source: Crane TP-410 (2009) A-30; Rennels and Hudson (2012) chapter 9; I. E. Idelchik,
 * Handbook of Hydraulic Resistance, diagram 3-1.
 */
export const SHARP_ENTRANCE: Readonly<Record<"rennels" | "crane" | "idelchik", number>> = {
  rennels: 0.57,
  crane: 0.5,
  idelchik: 0.5,
};

/**
 * Loss coefficient [-] of an exit into a large space: all that moves is lost. Turbulent
 * flow; in laminar flow it is 2, as the liquid in the middle moves twice as fast.
 *
 * Source: Borda-Carnot; Crane TP-410 (2009) A-30.
 */
export const EXIT_LOSS = 1;

const RADIUS_RATIO: MethodInput = {
  unit: "-",
  min: 0,
  max: 1,
  says: "Radius of the edge over bore of the pipe",
  symbol: "r / d",
};

const CRANE_ROUNDED = linearCurve([
  [0, SHARP_ENTRANCE.crane],
  [0.02, 0.28],
  [0.04, 0.24],
  [0.06, 0.15],
  [0.1, 0.09],
  [0.15, 0.04],
  [1, 0.04],
]);

/**
 * Loss coefficient [-] of a rounded entrance by Crane's table, straight between its lines.
 *
 * Source: Crane TP-410 (2009) A-30.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example A tenth of the bore
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(roundedEntranceCrane({ radiusRatio: 0.1 }), 0.09, 1e-12);
 * ```
 */
export const roundedEntranceCrane: Method<Record<"radiusRatio", MethodInput>> = method({
  id: "rounded-entrance-crane",
  title: "Loss coefficient of a rounded entrance, Crane",
  inputs: { radiusRatio: RADIUS_RATIO },
  output: LOSS,
  formula: "radiusRatio <= 0.02 ? 0.5 - 11 * radiusRatio : " +
    "radiusRatio <= 0.04 ? 0.32 - 2 * radiusRatio : " +
    "radiusRatio <= 0.06 ? 0.42 - 4.5 * radiusRatio : " +
    "radiusRatio <= 0.1 ? 0.24 - 1.5 * radiusRatio : " +
    "radiusRatio <= 0.15 ? 0.19 - radiusRatio : 0.04",
  words: "Straight between the table's lines: 0.5 at a sharp edge, 0.28 at r/d 0.02, 0.24 at " +
    "0.04, 0.15 at 0.06, 0.09 at 0.10, 0.04 from 0.15.",
  source: CRANE,
  compute: ({ radiusRatio }) => CRANE_ROUNDED(radiusRatio),
});

const ROUNDED_JET = "(1 + 0.622 * (1 - 0.3 * sqrt(radiusRatio) - 0.7 * radiusRatio)^4)";

/**
 * Loss coefficient [-] of a rounded entrance by Rennels and Hudson.
 *
 * Source: Rennels and Hudson (2012), chapter 9: squeeze of the jet and its spreading.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example A tenth of the bore
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(roundedEntrance({ radiusRatio: 0.1 }), 0.2029, 1e-4);
 * ```
 */
export const roundedEntrance: Method<Record<"radiusRatio", MethodInput>> = method({
  id: "rounded-entrance",
  title: "Loss coefficient of a rounded entrance",
  inputs: { radiusRatio: RADIUS_RATIO },
  output: LOSS,
  formula: `0.0696 * (1 - 0.569 * radiusRatio) * ${ROUNDED_JET}^2 + (${ROUNDED_JET} - 1)^2`,
  source: RENNELS,
  compute: ({ radiusRatio }) => {
    const jet = 1 + 0.622 * (1 - 0.3 * Math.sqrt(radiusRatio) - 0.7 * radiusRatio) ** 4;
    return 0.0696 * (1 - 0.569 * radiusRatio) * jet ** 2 + (jet - 1) ** 2;
  },
});

const BEVEL = "(1 - 2 * angle / pi) * (2 * angle / pi)^(1 / (1 + lengthRatio))";
const BEVELLED_JET =
  `(1 + 0.622 * (1 - 1.5 * ${BEVEL} * lengthRatio^((1 - sqrt(sqrt(lengthRatio))) / 2)))`;

/**
 * Loss coefficient [-] of a bevelled (chamfered) entrance.
 *
 * Source: Rennels and Hudson (2012), chapter 9.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A fifth of the bore at 45 degrees
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(bevelledEntrance({ lengthRatio: 0.2, angle: Math.PI / 4 }), 0.3104, 1e-4);
 * ```
 */
export const bevelledEntrance: Method<Record<"lengthRatio" | "angle", MethodInput>> = method({
  id: "bevelled-entrance",
  title: "Loss coefficient of a bevelled entrance",
  inputs: {
    lengthRatio: {
      unit: "-",
      min: 0.001,
      max: 1,
      says: "Length of the bevel along the axis over bore of the pipe",
      symbol: "l / d",
    },
    angle: {
      unit: "rad",
      min: 0.05,
      max: 1.55,
      says: "Angle between bevel and axis, half of the countersink's",
      symbol: "\\psi",
    },
  },
  output: LOSS,
  formula: `0.0696 * (1 - ${BEVEL} * lengthRatio) * ${BEVELLED_JET}^2 + (${BEVELLED_JET} - 1)^2`,
  source: RENNELS,
  compute: ({ lengthRatio, angle }) => {
    const share = 2 * angle / Math.PI;
    const bevel = (1 - share) * share ** (1 / (1 + lengthRatio));
    const reach = lengthRatio ** ((1 - Math.sqrt(Math.sqrt(lengthRatio))) / 2);
    const jet = 1 + 0.622 * (1 - 1.5 * bevel * reach);
    return 0.0696 * (1 - bevel * lengthRatio) * jet ** 2 + (jet - 1) ** 2;
  },
});

/**
 * Loss coefficient [-] of a pipe's end that stands out into the space it draws from, like
 * a pickup in a tank. A wall thicker than 0.05 of the bore acts as a flush sharp entrance.
 *
 * Source: Rennels and Hudson (2012), chapter 9.
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example A wall of a hundredth of the bore
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(projectingEntrance({ wallRatio: 0.01 }), 0.9217, 1e-4);
 * ```
 */
export const projectingEntrance: Method<Record<"wallRatio", MethodInput>> = method({
  id: "projecting-entrance",
  title: "Loss coefficient of a projecting entrance",
  inputs: {
    wallRatio: {
      unit: "-",
      min: 0,
      max: 0.05,
      says: "Wall of the pipe over its bore",
      symbol: "t / d",
    },
  },
  output: { ...LOSS, max: 1.2 },
  formula: "1.12 - 22 * wallRatio + 216 * wallRatio^2 + 80 * wallRatio^3",
  source: RENNELS,
  compute: ({ wallRatio }) => 1.12 - 22 * wallRatio + 216 * wallRatio ** 2 + 80 * wallRatio ** 3,
});
