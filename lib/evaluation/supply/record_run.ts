/** The losses along a run, each recorded with the method that it comes from. */
import { meanVelocity, minorLoss, pipeFlow, reynoldsNumber, statedLoss } from "@/lib/flow/mod.ts";
import {
  CORRUGATED_FRICTION,
  fittingLossCoefficient,
  FITTINGS,
  isDuct,
  isStated,
  type Piece,
  type PieceCost,
  pieceLoss,
  ROUGHNESS_M,
  type Run,
} from "@/lib/line/mod.ts";
import type { Context } from "../context.ts";

/** A piece's cost and where the working shows it. */
export interface RecordedCost extends PieceCost {
  /** The result in the working; undefined where nothing was to be worked out. */
  readonly result: string | undefined;
  /** What friction may take at the least and most, where the flow is between the regimes. */
  readonly bounds: Bounds | undefined;
}

/** Bounds of a loss. */
export interface Bounds {
  /** As laminar flow [Pa]. */
  readonly low_Pa: number;
  /** As turbulent flow [Pa]. */
  readonly high_Pa: number;
}

/** What was recorded of a piece. */
type Recorded = Pick<RecordedCost, "result" | "bounds">;

const NOTHING: Recorded = { result: undefined, bounds: undefined };

/**
 * Records what each piece of a run loses at a flow. What a check valve holds back, a step
 * of bore and a rise come on top in the costs, which are those the network was solved with.
 */
export function recordRun(
  context: Context,
  section: string,
  run: Run,
  flow_m3_s: number,
): RecordedCost[] {
  return run.costs(flow_m3_s).map((cost, i) => ({
    ...cost,
    ...(flow_m3_s > LEAST_m3_s
      ? recordPiece(context, `${section}.${i}`, cost.piece, run, flow_m3_s)
      : NOTHING),
  }));
}

/** Flow below which nothing runs [m^3/s]: a drop in minutes. */
const LEAST_m3_s = 1e-9;

function recordPiece(
  { working }: Context,
  at: string,
  piece: Piece,
  { liquid }: Run,
  flow_m3_s: number,
): Recorded {
  const { kind, bore_m: bore } = piece;
  const { density_kg_m3: density, viscosity_Pa_s: viscosity } = liquid;
  if (isStated(kind)) {
    const power = pieceLoss(piece, liquid)?.power;
    if (power === undefined) return NOTHING;
    const { loss_Pa: loss, flow_m3_s: flow, exponent } = power;
    const inputs = { loss, flow, newFlow: flow_m3_s, exponent };
    working.run(`${at}.lost_Pa`, statedLoss, inputs);
    return { result: `${at}.lost_Pa`, bounds: undefined };
  }
  if (isDuct(kind)) {
    // Corrugations resist like so much more of a plain hose.
    const times = kind === "corrugated" ? CORRUGATED_FRICTION : 1;
    const length_m = times * piece.length_m * piece.count;
    const roughness_m = kind === "tube" ? ROUGHNESS_M.tube : ROUGHNESS_M.hose;
    const pipe = { flow_m3_s, bore_m: bore, roughness_m, length_m };
    const found = pipeFlow(working, at, {
      ...pipe,
      density_kg_m3: density,
      viscosity_Pa_s: viscosity,
    });
    return {
      result: `${at}.pressureDrop_Pa`,
      bounds: found.regime === "transitional"
        ? { low_Pa: found.pressureDropLow_Pa, high_Pa: found.pressureDropHigh_Pa }
        : undefined,
    };
  }
  const velocity = working.run(`${at}.velocity_m_s`, meanVelocity, { flow: flow_m3_s, bore });
  const reynolds = working.run(`${at}.reynolds`, reynoldsNumber, {
    density,
    velocity,
    bore,
    viscosity,
  });
  const { laminar, turbulent } = FITTINGS[kind];
  const lossCoefficient = working.run(`${at}.lossCoefficient`, fittingLossCoefficient, {
    laminar,
    turbulent,
    reynolds,
  });
  working.run(`${at}.lost_Pa`, minorLoss, { lossCoefficient, density, velocity });
  return { result: `${at}.lost_Pa`, bounds: undefined };
}
