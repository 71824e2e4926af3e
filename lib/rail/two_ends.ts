/** A gallery fed at both ends from one source. */
import { findRoot } from "@/lib/basics/mod.ts";
import { frictionLoss } from "@/lib/flow/mod.ts";
import { type RailSpec, requireOrder, sectionOf } from "./march.ts";

/** A line from the source to one end of the gallery. */
export interface FeedLine {
  /** Length [m]. */
  readonly length_m: number;
  /** Bore [m]. */
  readonly bore_m: number;
}

/** A gallery fed at both ends; take-offs are measured from end A. */
export interface TwoEndSpec extends Omit<RailSpec, "throughFlow_m3_s"> {
  /** Length of the gallery from end A to end B [m]. */
  readonly length_m: number;
  /** Line to end A. */
  readonly feedA: FeedLine;
  /** Line to end B. */
  readonly feedB: FeedLine;
}

/** What {@linkcode railTwoEnds} finds. */
export interface TwoEndFlow {
  /** Flow that comes by end A [m^3/s]. */
  readonly flowA_m3_s: number;
  /** Flow that comes by end B [m^3/s]. */
  readonly flowB_m3_s: number;
  /** Pressure at each take-off over that of the source, nothing recovered [Pa]. */
  readonly noRecovery_Pa: readonly number[];
}

/**
 * Finds how the flow splits between the two ends, so that both ways to a take-off lose the
 * same, by Brent's method. Friction alone, in the lines as in the gallery.
 *
 * @param spec The gallery and its lines; lines as rough as the gallery.
 * @returns The split and the pressures.
 * @throws {InputError} When there is no take-off, or they are not in order.
 *
 * @example Equal lines share equally
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const { flowA_m3_s } = railTwoEnds({
 *   bore_m: 8e-3,
 *   roughness_m: 1.5e-6,
 *   takeOffs_m: [0.05, 0.15, 0.25, 0.35],
 *   length_m: 0.4,
 *   flow_m3_s: 8e-5,
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 *   feedA: { length_m: 1, bore_m: 8e-3 },
 *   feedB: { length_m: 1, bore_m: 8e-3 },
 * });
 *
 * assertAlmostEquals(flowA_m3_s, 4e-5, 1e-12);
 * ```
 */
export function railTwoEnds(spec: TwoEndSpec): TwoEndFlow {
  requireOrder(spec.takeOffs_m);
  const total = spec.flow_m3_s;
  const atTakeOffs = new Array<number>(spec.takeOffs_m.length).fill(0);
  /** Loss from the source by A through the gallery and back to the source by B. */
  const round = (flowA: number): number => {
    const each = total / spec.takeOffs_m.length;
    let lost = lineLoss(spec, spec.feedA, flowA);
    let at = 0;
    spec.takeOffs_m.forEach((position, i) => {
      lost += frictionLoss(sectionOf(spec, flowA - each * i, position - at));
      atTakeOffs[i] = -lost;
      at = position;
    });
    lost += frictionLoss(sectionOf(spec, flowA - total, spec.length_m - at));
    return lost + lineLoss(spec, spec.feedB, flowA - total);
  };
  const flowA_m3_s = findRoot(round, { from: 0, to: total, tolerance: 1e-12 * total });
  round(flowA_m3_s);
  return { flowA_m3_s, flowB_m3_s: total - flowA_m3_s, noRecovery_Pa: atTakeOffs };
}

function lineLoss(spec: TwoEndSpec, line: FeedLine, flow_m3_s: number): number {
  return frictionLoss({ ...sectionOf(spec, flow_m3_s, line.length_m), bore_m: line.bore_m });
}
