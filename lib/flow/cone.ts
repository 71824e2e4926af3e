/** Loss where the bore changes along a cone. All coefficients are on the smaller bore. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE_RATIO, CRANE, LOSS, RENNELS, TURBULENT_FRICTION } from "./loss_limits.ts";

const CONE: MethodInput = {
  unit: "rad",
  min: 0.05,
  max: Math.PI,
  says: "Angle between the cone's sides, twice that to the axis",
  symbol: "\\theta",
};

/** 20 degrees, and the last bits of a rounded 20 degrees: there the formulas differ by 0.3 %. */
const SLENDER_TO = 0.3491;

/**
 * Loss coefficient [-] of a conical contraction by Crane, on the smaller bore.
 *
 * Source: Crane TP-410 (2009) A-27.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 12 to 8 mm along a 20 degree cone
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = conicalContractionCrane({ boreRatio: 8 / 12, coneAngle: Math.PI / 9 });
 *
 * assertAlmostEquals(loss, 0.0772, 1e-4);
 * ```
 */
export const conicalContractionCrane: Method<Record<"boreRatio" | "coneAngle", MethodInput>> =
  method({
    id: "conical-contraction-crane",
    title: "Loss coefficient of a conical contraction, Crane",
    inputs: { boreRatio: BORE_RATIO, coneAngle: CONE },
    output: LOSS,
    formula: "coneAngle <= pi / 4 ? 0.8 * sin(coneAngle / 2) * (1 - boreRatio^2) : " +
      "0.5 * sqrt(sin(coneAngle / 2)) * (1 - boreRatio^2)",
    source: CRANE,
    compute: ({ boreRatio, coneAngle }) => {
      const slope = Math.sin(coneAngle / 2);
      const share = coneAngle <= Math.PI / 4 ? 0.8 * slope : 0.5 * Math.sqrt(slope);
      return share * (1 - boreRatio ** 2);
    },
  });

const JET = "(1 + 0.622 * (coneAngle / pi)^0.8 * (1 - 0.215 * boreRatio^2 - 0.785 * boreRatio^5))";

/**
 * Loss coefficient [-] of a conical contraction, on the smaller bore: friction in the cone
 * and the squeeze of the jet.
 *
 * Source: Rennels and Hudson (2012), chapter 10.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 12 to 8 mm along a 20 degree cone
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = conicalContraction({
 *   boreRatio: 8 / 12,
 *   coneAngle: Math.PI / 9,
 *   frictionFactor: 0.025,
 * });
 *
 * assertAlmostEquals(loss, 0.0342, 1e-4);
 * ```
 */
export const conicalContraction: Method<
  Record<"boreRatio" | "coneAngle" | "frictionFactor", MethodInput>
> = method({
  id: "conical-contraction",
  title: "Loss coefficient of a conical contraction",
  inputs: { boreRatio: BORE_RATIO, coneAngle: CONE, frictionFactor: TURBULENT_FRICTION },
  output: LOSS,
  formula: "frictionFactor * (1 - boreRatio^4) / (8 * sin(coneAngle / 2)) + " +
    `0.0696 * sin(coneAngle / 2) * (1 - boreRatio^5) * ${JET}^2 + (${JET} - 1)^2`,
  source: RENNELS,
  compute: ({ boreRatio, coneAngle, frictionFactor }) => {
    const slope = Math.sin(coneAngle / 2);
    const jet = 1 +
      0.622 * (coneAngle / Math.PI) ** 0.8 * (1 - 0.215 * boreRatio ** 2 - 0.785 * boreRatio ** 5);
    return frictionFactor * (1 - boreRatio ** 4) / (8 * slope) +
      0.0696 * slope * (1 - boreRatio ** 5) * jet ** 2 + (jet - 1) ** 2;
  },
});

/**
 * Loss coefficient [-] of a conical expansion by Crane, on the smaller bore. From 45
 * degrees on it is no better than a step.
 *
 * Source: Crane TP-410 (2009) A-27.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 8 to 12 mm along a 20 degree cone
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = conicalExpansionCrane({ boreRatio: 8 / 12, coneAngle: Math.PI / 9 });
 *
 * assertAlmostEquals(loss, 0.1393, 1e-4);
 * ```
 */
export const conicalExpansionCrane: Method<Record<"boreRatio" | "coneAngle", MethodInput>> = method(
  {
    id: "conical-expansion-crane",
    title: "Loss coefficient of a conical expansion, Crane",
    inputs: { boreRatio: BORE_RATIO, coneAngle: CONE },
    output: LOSS,
    formula: "coneAngle <= pi / 4 ? 2.6 * sin(coneAngle / 2) * (1 - boreRatio^2)^2 : " +
      "(1 - boreRatio^2)^2",
    source: CRANE,
    compute: ({ boreRatio, coneAngle }) => {
      const share = coneAngle <= Math.PI / 4 ? 2.6 * Math.sin(coneAngle / 2) : 1;
      return share * (1 - boreRatio ** 2) ** 2;
    },
  },
);

/**
 * Loss coefficient [-] of a conical expansion, on the smaller bore: friction in the cone
 * and the stream's parting from its wall. For cones to 60 degrees, bores to twice as wide.
 *
 * Source: Rennels and Hudson (2012), chapter 11.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 8 to 12 mm along a 7 degree cone
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = conicalExpansion({
 *   boreRatio: 8 / 12,
 *   coneAngle: 7 * Math.PI / 180,
 *   frictionFactor: 0.025,
 * });
 *
 * assertAlmostEquals(loss, 0.0603, 1e-4);
 * ```
 */
export const conicalExpansion: Method<
  Record<"boreRatio" | "coneAngle" | "frictionFactor", MethodInput>
> = method({
  id: "conical-expansion",
  title: "Loss coefficient of a conical expansion",
  inputs: {
    boreRatio: { ...BORE_RATIO, min: 0.5 },
    coneAngle: { ...CONE, max: Math.PI / 3 },
    frictionFactor: TURBULENT_FRICTION,
  },
  output: { ...LOSS, max: 2 },
  formula: `(coneAngle <= ${SLENDER_TO} ? 8.3 * tan(coneAngle / 2)^1.75 : ` +
    "1.366 * sqrt(sin(2 * coneAngle - pi / 6)) - 0.17) * (1 - boreRatio^2)^2 + " +
    "frictionFactor * (1 - boreRatio^4) / (8 * sin(coneAngle / 2))",
  source: RENNELS,
  compute: ({ boreRatio, coneAngle, frictionFactor }) => {
    const parting = coneAngle <= SLENDER_TO
      ? 8.3 * Math.tan(coneAngle / 2) ** 1.75
      : 1.366 * Math.sqrt(Math.sin(2 * coneAngle - Math.PI / 6)) - 0.17;
    return parting * (1 - boreRatio ** 2) ** 2 +
      frictionFactor * (1 - boreRatio ** 4) / (8 * Math.sin(coneAngle / 2));
  },
});
