/** The losses along a run, each recorded with the method that it comes from. */
import { meanVelocity, minorLoss, pipeFlow, reynoldsNumber, statedLoss } from "@/lib/flow/mod.ts";
import {
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
}

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
    result: flow_m3_s > LEAST_m3_s
      ? recordPiece(context, `${section}.${i}`, cost.piece, run, flow_m3_s)
      : undefined,
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
): string | undefined {
  const { kind, bore_m: bore } = piece;
  const { density_kg_m3: density, viscosity_Pa_s: viscosity } = liquid;
  if (isStated(kind)) {
    const power = pieceLoss(piece, liquid)?.power;
    if (power === undefined) return undefined;
    const { loss_Pa: loss, flow_m3_s: flow, exponent } = power;
    const inputs = { loss, flow, newFlow: flow_m3_s, exponent };
    working.run(`${at}.lost_Pa`, statedLoss, inputs);
    return `${at}.lost_Pa`;
  }
  if (isDuct(kind)) {
    const length_m = piece.length_m * piece.count;
    const roughness_m = kind === "tube" ? ROUGHNESS_M.tube : ROUGHNESS_M.hose;
    const pipe = { flow_m3_s, bore_m: bore, roughness_m, length_m };
    pipeFlow(working, at, { ...pipe, density_kg_m3: density, viscosity_Pa_s: viscosity });
    return `${at}.pressureDrop_Pa`;
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
  return `${at}.lost_Pa`;
}
