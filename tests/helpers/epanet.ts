/**
 * EPANET, a network solver made by others, as a check on ours; and its friction law.
 *
 * Source: L. A. Rossman et al., EPANET 2.2 User Manual, EPA/600/R-20/133 (2020), chapter
 * "Analysis Algorithms".
 */
import {
  AnalysisStatistic,
  FlowUnits,
  HeadLossType,
  LinkProperty,
  LinkType,
  NodeProperty,
  NodeType,
  Option,
  Project,
  Workspace,
} from "epanet-js";
import type { FrictionLaw } from "@/lib/line/mod.ts";
import type { PipeNetwork, PipeSolution } from "./pipes.ts";

const FOOT_m = 0.3048;

/** EPANET's own gravity, 32.2 ft/s^2: heads turned into pressures with any other would be off [m/s^2]. */
export const EPANET_GRAVITY_m_s2 = 32.2 * FOOT_m;

/** What viscosity is stated relative to: EPANET's water, 1.1e-5 ft^2/s [m^2/s]. */
const EPANET_WATER_m2_s = 1.1e-5 * FOOT_m ** 2;

/** Litres a minute, as EPANET rounds them to 1699.0 in a cubic foot a second. */
const LPM_PER_M3_S = 1699.0 / FOOT_m ** 3;

/** Head and flow that EPANET may be off when it stops [m], [L/min]. */
const HEAD_ERROR_m = 1e-6;
const FLOW_CHANGE_LPM = 1e-6;

let loading: Promise<Workspace> | undefined;

async function load(): Promise<Workspace> {
  const workspace = new Workspace();
  await workspace.loadModule();
  return workspace;
}

/**
 * Solves pipes with EPANET, by Darcy and Weisbach.
 *
 * @param network The pipes.
 * @returns Pressures and flows.
 * @throws {Error} When EPANET stops before it is as close as asked.
 */
export async function solveWithEpanet(network: PipeNetwork): Promise<PipeSolution> {
  const project = new Project(await (loading ??= load()));
  project.init("report.rpt", "out.bin", FlowUnits.LPM, HeadLossType.DW);
  try {
    return solve(project, network);
  } finally {
    project.close();
  }
}

function solve(project: Project, network: PipeNetwork): PipeSolution {
  const { liquid, source_Pa, nodes, pipes } = network;
  const weight = liquid.density_kg_m3 * EPANET_GRAVITY_m_s2;
  nodes.forEach(({ height_m, taken_m3_s }, i) => {
    const id = project.addNode(`N${i}`, i === 0 ? NodeType.Reservoir : NodeType.Junction);
    if (i === 0) project.setNodeValue(id, NodeProperty.Elevation, height_m + source_Pa / weight);
    else project.setJunctionData(id, height_m, taken_m3_s * LPM_PER_M3_S, "");
  });
  const pipeIds = pipes.map((pipe, i) => {
    const id = project.addLink(`P${i}`, LinkType.Pipe, `N${pipe.from}`, `N${pipe.to}`);
    const { length_m, bore_m, roughness_m, lossCoefficient } = pipe;
    project.setPipeData(id, length_m, bore_m * 1000, roughness_m * 1000, lossCoefficient);
    return id;
  });
  const kinematic_m2_s = liquid.viscosity_Pa_s / liquid.density_kg_m3;
  project.setOption(Option.SpViscos, kinematic_m2_s / EPANET_WATER_m2_s);
  project.setOption(Option.Trials, 500);
  project.setOption(Option.Accuracy, 1e-5);
  project.setOption(Option.HeadError, HEAD_ERROR_m);
  project.setOption(Option.FlowChange, FLOW_CHANGE_LPM);
  project.openH();
  project.initH(0);
  project.runH();
  const off_m = project.getStatistic(AnalysisStatistic.MaxHeadError);
  if (!(off_m <= HEAD_ERROR_m)) throw new Error(`EPANET stopped ${off_m} m off`);
  const solution = {
    pressures_Pa: nodes.map(({ height_m }, i) => {
      // Looked up only now: junctions push the tank's place in EPANET's list further back.
      const head_m = project.getNodeValue(project.getNodeIndex(`N${i}`), NodeProperty.Head);
      return (head_m - height_m) * weight;
    }),
    flows_m3_s: pipeIds.map((id) => project.getLinkValue(id, LinkProperty.Flow) / LPM_PER_M3_S),
  };
  project.closeH();
  return solution;
}

/**
 * EPANET's friction: Hagen and Poiseuille to Re 2000, Swamee and Jain above 4000, between
 * them the cubic of E. J. Dunlop, WADI Users Manual (1991), that meets both in value and slope.
 */
export const EPANET_FRICTION: FrictionLaw = {
  factor: epanetFactor,
  elasticity: (reynolds, roughness) => {
    const step = 1e-5;
    const [less, more] = [reynolds * (1 - step), reynolds * (1 + step)];
    return Math.log(epanetFactor(more, roughness) / epanetFactor(less, roughness)) /
      Math.log(more / less);
  },
};

function epanetFactor(reynolds: number, roughness: number): number {
  if (reynolds <= 2000) return 64 / reynolds;
  if (reynolds >= 4000) return 0.25 / Math.log10(roughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
  const y2 = roughness / 3.7 + 5.74 / 4000 ** 0.9;
  const y3 = -0.86859 * Math.log(y2);
  const fa = y3 ** -2;
  const fb = fa * (2 - 0.00514215 / (y2 * y3));
  const r = reynolds / 2000;
  const x1 = 7 * fa - fb;
  const x2 = 0.128 - 17 * fa + 2.5 * fb;
  const x3 = -0.128 + 13 * fa - 2 * fb;
  const x4 = 0.032 - 3 * fa + 0.5 * fb;
  return x1 + r * (x2 + r * (x3 + r * x4));
}
