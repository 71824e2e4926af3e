/** Losses where a stream divides. All coefficients are on the velocity before the tee. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { CRANE, LOSS } from "./loss_limits.ts";

const FLOW_SHARE: MethodInput = {
  unit: "-",
  min: 0,
  max: 1,
  says: "Flow into the branch over flow before the tee",
  symbol: "q",
};
const AREA_RATIO: MethodInput = {
  unit: "-",
  min: 0.04,
  max: 1,
  says: "Area of the branch's bore over the run's",
  symbol: "\\beta^2",
};

/**
 * Loss coefficient [-] of what turns off into the branch of a 90 degree tee. To 20 % at best.
 *
 * Source: Crane TP-410 (2009) chapter 2.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Half of the flow, equal bores
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(teeBranchLoss({ flowShare: 0.5, areaRatio: 1 }), 1.155625, 1e-9);
 * ```
 */
export const teeBranchLoss: Method<Record<"flowShare" | "areaRatio", MethodInput>> = method({
  id: "tee-branch-loss",
  title: "Loss coefficient into the branch of a tee",
  inputs: { flowShare: FLOW_SHARE, areaRatio: AREA_RATIO },
  output: { ...LOSS, max: 700 },
  formula: "areaRatio > 2 / 3 ? " +
    "(1 + 0.3 * flowShare^2) * (1 + 0.3 * (flowShare / areaRatio)^2) : " +
    "1 + (flowShare / areaRatio)^2",
  words: "Tees scatter by 20 % and more.",
  source: CRANE,
  compute: ({ flowShare, areaRatio }) => {
    const faster = (flowShare / areaRatio) ** 2;
    return areaRatio > 2 / 3 ? (1 + 0.3 * flowShare ** 2) * (1 + 0.3 * faster) : 1 + faster;
  },
});

/**
 * Loss coefficient [-] of what runs straight on through a dividing tee. Below nought while
 * the branch draws off the slow liquid at the wall. To 20 % at best.
 *
 * Source: Crane TP-410 (2009) chapter 2.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A quarter of the flow turns off, equal bores
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(teeRunLoss({ flowShare: 0.25, areaRatio: 1 }), -0.0625);
 * ```
 */
export const teeRunLoss: Method<Record<"flowShare" | "areaRatio", MethodInput>> = method({
  id: "tee-run-loss",
  title: "Loss coefficient straight through a dividing tee",
  inputs: { flowShare: FLOW_SHARE, areaRatio: AREA_RATIO },
  output: { ...LOSS, min: -0.1, max: 0.5 },
  formula: "(areaRatio <= 0.4 ? 0.4 : flowShare <= 0.5 ? 2 * (2 * flowShare - 1) : " +
    "0.3 * (2 * flowShare - 1)) * flowShare^2",
  words: "Tees scatter by 20 % and more; a negative coefficient is real.",
  source: CRANE,
  compute: ({ flowShare, areaRatio }) => {
    const turned = 2 * flowShare - 1;
    const factor = areaRatio <= 0.4 ? 0.4 : flowShare <= 0.5 ? 2 * turned : 0.3 * turned;
    return factor * flowShare ** 2;
  },
});

/**
 * Loss coefficient [-] of what turns off into the slanting branch of a dividing wye. For
 * branches not much smaller than the run that take up to 0.6 of the flow.
 *
 * Source: Crane TP-410 (2009) chapter 2.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 45 degrees, equal bores, 0.385 of the flow
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = wyeBranchLoss({ flowShare: 0.38535, areaRatio: 1, angle: Math.PI / 4 });
 *
 * assertAlmostEquals(loss, 0.464, 1e-4);
 * ```
 */
export const wyeBranchLoss: Method<Record<"flowShare" | "areaRatio" | "angle", MethodInput>> =
  method({
    id: "wye-branch-loss",
    title: "Loss coefficient into the branch of a wye",
    inputs: {
      flowShare: { ...FLOW_SHARE, max: 0.6 },
      areaRatio: { ...AREA_RATIO, min: 0.4 },
      angle: {
        unit: "rad",
        min: 0.35,
        max: 1.04,
        says: "Angle between branch and run",
        symbol: "\\theta",
      },
    },
    output: { ...LOSS, max: 3 },
    formula: "(1 - 0.6 * flowShare) * (1 + (flowShare / areaRatio)^2 - " +
      "2 * flowShare / areaRatio * cos(angle))",
    source: CRANE,
    compute: ({ flowShare, areaRatio, angle }) => {
      const faster = flowShare / areaRatio;
      return (1 - 0.6 * flowShare) * (1 + faster ** 2 - 2 * faster * Math.cos(angle));
    },
  });
