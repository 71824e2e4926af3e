/** What a network of pressures and flows is made of. */

/** What a law says at one flow. A solver hands one in to be written, so that inner loops allocate nothing. */
export interface LawPoint {
  /** Pressure at the start less pressure at the end [Pa]. */
  drop_Pa: number;
  /** How fast the drop rises with flow, at least nought [Pa s/m^3]. */
  slope_Pa_s_m3: number;
}

/**
 * The law of a link: what it loses at a flow, from its start to its end. It is defined at
 * every flow, negative ones included, continuous, and never falls as the flow rises; a pump
 * loses a negative pressure that rises.
 */
export type FlowLaw = (flow_m3_s: number, into: LawPoint) => void;

/** Where links meet. */
export interface NetworkNode {
  /** What it is called, for whoever reads the answer. */
  readonly name: string;
  /** Its pressure, where that is given and not sought [Pa]. */
  readonly pressure_Pa?: number;
  /** Flow that is taken out here whatever the pressure; negative when it is put in [m^3/s]. */
  readonly taken_m3_s?: number;
}

/** A way for the flow from one node to another. */
export interface NetworkLink {
  /** What it is called. */
  readonly name: string;
  /** Where it starts, by the node's place in the list. */
  readonly from: number;
  /** Where it ends. */
  readonly to: number;
  /** What it loses. */
  readonly law: FlowLaw;
}

/** A network. Every node must be joined by links to one whose pressure is given. */
export interface Network {
  /** Its nodes. */
  readonly nodes: readonly NetworkNode[];
  /** Its links. */
  readonly links: readonly NetworkLink[];
}

/**
 * Slope of what is shut [Pa s/m^3]: at 10 bar it lets through 0.36 mL an hour, which is less
 * than a real valve does, and can still be reckoned with.
 */
export const SHUT_Pa_s_m3 = 1e16;

/**
 * Lets a law pass flow in its own direction only; against it the link is shut.
 *
 * @param law The law for flow in the link's direction.
 * @returns The law with a check valve in it.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 *
 * const valve = oneWay((flow, into) => {
 *   into.drop_Pa = 15e3 + 1e8 * flow;
 *   into.slope_Pa_s_m3 = 1e8;
 * });
 * const at = { drop_Pa: 0, slope_Pa_s_m3: 0 };
 *
 * valve(1e-5, at);
 * assertEquals(at.drop_Pa, 16e3);
 * valve(-1e-10, at);
 * assert(at.drop_Pa < -9e5);
 * ```
 */
export function oneWay(law: FlowLaw): FlowLaw {
  return (flow_m3_s, into) => {
    if (flow_m3_s >= 0) return law(flow_m3_s, into);
    law(0, into);
    into.drop_Pa += SHUT_Pa_s_m3 * flow_m3_s;
    into.slope_Pa_s_m3 = SHUT_Pa_s_m3;
  };
}
