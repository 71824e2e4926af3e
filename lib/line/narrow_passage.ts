/** A hose whose bore is narrower for a stretch: the nipple inside each hose end, a barb. */
import { lossReferredTo, suddenContraction, suddenExpansion } from "@/lib/flow/mod.ts";

/** Shape of a narrow passage, told in bores of the hose before it, and its friction. */
export interface NarrowPassage {
  /** Narrow bore over the hose's, 0.5 to 1 [-]. */
  readonly boreRatio: number;
  /** Length of the narrow bore over the hose's bore [-]. */
  readonly lengthRatio: number;
  /** Bore after it over the hose's bore, at least `boreRatio` [-]. */
  readonly outletRatio: number;
  /** Darcy friction factor of the narrow bore in turbulent flow [-]. */
  readonly frictionFactor: number;
}

/** Loss of a fitting on the velocity in the hose. */
export interface FittingLoss {
  /** Loss coefficient at Re 1 of the hose: divided by Re it is the laminar part [-]. */
  readonly laminar: number;
  /** Loss coefficient in turbulent flow [-]. */
  readonly turbulent: number;
}

/**
 * Part of a laminar contraction's loss that goes with 1 / Re [-].
 * Source: W. B. Hooper, Chem. Eng. 95(16) (1988) 89-92.
 */
const LAMINAR_CONTRACTION = 160;

/**
 * Finds the loss of a narrow passage, on the velocity in the hose before it.
 *
 * Turbulent: sudden contraction, friction along the narrow bore, sudden expansion. Laminar:
 * friction by Hagen and Poiseuille, and the contraction's term that goes with 1 / Re by
 * W. B. Hooper, Chem. Eng. 95(16) (1988) 89-92. So near to each other the steps disturb one
 * another: within about 25 %. What Hooper adds for the steps in laminar flow, two to three
 * dynamic pressures of the hose that do not go with 1 / Re, is left out: below Re 2300 that
 * is less than 0.2 kPa in a fuel hose.
 *
 * @param passage The shape.
 * @returns The loss.
 * @throws {InputError} When a number lies outside the range of the method it goes into.
 *
 * @example A 7.5 mm barb, 20 mm long, on a 10 mm hose
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = narrowPassage({
 *   boreRatio: 0.75,
 *   lengthRatio: 2,
 *   outletRatio: 1,
 *   frictionFactor: 0.03,
 * });
 *
 * assertAlmostEquals(loss.turbulent, 1.788, 1e-3);
 * ```
 */
export function narrowPassage(passage: NarrowPassage): FittingLoss {
  const { boreRatio, lengthRatio, outletRatio, frictionFactor } = passage;
  const onNarrow = suddenContraction({ boreRatio }) +
    frictionFactor * lengthRatio / boreRatio +
    suddenExpansion({ boreRatio: boreRatio / outletRatio });
  // Only the ratio of the bores matters; a centimetre is within the method's range.
  const turbulent = lossReferredTo({
    lossCoefficient: onNarrow,
    bore: 0.01 * boreRatio,
    referenceBore: 0.01,
  });
  const faster = boreRatio ** -4;
  return { laminar: 64 * lengthRatio * faster + LAMINAR_CONTRACTION * (faster - 1), turbulent };
}
