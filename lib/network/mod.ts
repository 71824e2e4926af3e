/**
 * Networks of pressures and flows, whatever flows: links with laws, nodes, and their solver.
 *
 * @module
 */
export {
  type FlowLaw,
  type LawPoint,
  type Network,
  type NetworkLink,
  type NetworkNode,
  oneWay,
  SHUT_Pa_s_m3,
} from "./network.ts";
export { type NetworkSolution, solveNetwork, type SolveOptions } from "./solve_network.ts";
