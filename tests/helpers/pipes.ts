/** Networks of plain pipes as data, for our solver and for others. */
import { addFriction, type FrictionLaw, type Liquid } from "@/lib/line/mod.ts";
import type { Network, NetworkLink } from "@/lib/network/mod.ts";

/** A place where pipes meet. */
export interface PipeNode {
  /** What it is called. */
  readonly name: string;
  /** Height over that of the first node [m]. */
  readonly height_m: number;
  /** Flow that is taken off [m^3/s]. */
  readonly taken_m3_s: number;
}

/** A pipe between two nodes. */
export interface Pipe {
  /** What it is called. */
  readonly name: string;
  /** Where it starts, by the node's place. */
  readonly from: number;
  /** Where it ends. */
  readonly to: number;
  /** Length [m]. */
  readonly length_m: number;
  /** Bore [m]. */
  readonly bore_m: number;
  /** Roughness of its wall [m]. */
  readonly roughness_m: number;
  /** Loss coefficient of all its fittings, on its own dynamic pressure [-]. */
  readonly lossCoefficient: number;
}

/** Pipes that are fed by their first node. */
export interface PipeNetwork {
  /** What runs through them. */
  readonly liquid: Liquid;
  /** Pressure of the first node [Pa]. */
  readonly source_Pa: number;
  /** The nodes. */
  readonly nodes: readonly PipeNode[];
  /** The pipes. */
  readonly pipes: readonly Pipe[];
}

/** What any solver says, in the order of nodes and pipes. */
export interface PipeSolution {
  /** Pressures [Pa]. */
  readonly pressures_Pa: readonly number[];
  /** Flows from start to end [m^3/s]. */
  readonly flows_m3_s: readonly number[];
}

/**
 * The same pipes for our solver, their laws made of `addFriction` and K rho/2 V^2.
 *
 * @param pipes The pipes.
 * @param gravity_m_s2 What height weighs.
 * @param friction The friction law; ours when left out.
 */
export function networkOf(
  { liquid, source_Pa, nodes, pipes }: PipeNetwork,
  gravity_m_s2: number,
  friction?: FrictionLaw,
): Network {
  const weight = liquid.density_kg_m3 * gravity_m_s2;
  const heightOf = (node: number): number => nodes[node]?.height_m ?? NaN;
  return {
    nodes: nodes.map(({ name, taken_m3_s }, i) =>
      i === 0 ? { name, pressure_Pa: source_Pa } : { name, taken_m3_s }
    ),
    links: pipes.map((pipe): NetworkLink => {
      const add = addFriction({ ...pipe, frictionTimes: 1 }, liquid, friction);
      const area_m2 = Math.PI / 4 * pipe.bore_m ** 2;
      const square = pipe.lossCoefficient * liquid.density_kg_m3 / 2 / area_m2 ** 2;
      const rise_Pa = weight * (heightOf(pipe.to) - heightOf(pipe.from));
      return {
        name: pipe.name,
        from: pipe.from,
        to: pipe.to,
        law: (flow_m3_s, into) => {
          const speed = Math.abs(flow_m3_s);
          into.drop_Pa = rise_Pa + square * speed * flow_m3_s;
          into.slope_Pa_s_m3 = 2 * square * speed;
          add(flow_m3_s, into);
        },
      };
    }),
  };
}

/** Reynolds number of a flow in a pipe, written out from its definition [-]. */
export function reynoldsOf(pipe: Pipe, liquid: Liquid, flow_m3_s: number): number {
  const velocity_m_s = Math.abs(flow_m3_s) / (Math.PI / 4 * pipe.bore_m ** 2);
  return velocity_m_s * pipe.bore_m * liquid.density_kg_m3 / liquid.viscosity_Pa_s;
}
