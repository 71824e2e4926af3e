/** Finds the pressures and flows of a network at rest. */
import { InputError } from "@/lib/basics/mod.ts";
import type { LawPoint, Network } from "./network.ts";
import { solveSymmetric } from "./solve_symmetric.ts";

/** What {@linkcode solveNetwork} finds. */
export type NetworkSolution =
  | {
    readonly ok: true;
    /** Pressure of each node, in their order [Pa]. */
    readonly pressures_Pa: Float64Array;
    /** Flow of each link, in their order [m^3/s]. */
    readonly flows_m3_s: Float64Array;
    /** The most by which a link's law misses the pressures at its ends [Pa]. */
    readonly residual_Pa: number;
    /** Newton steps taken. */
    readonly steps: number;
  }
  | {
    readonly ok: false;
    /** The link whose law is missed most. */
    readonly worst: string;
    /** By how much [Pa]. */
    readonly residual_Pa: number;
  };

/** How to go about it. */
export interface SolveOptions {
  /** The most by which a law may be missed [Pa]. */
  readonly tolerance_Pa: number;
  /** Flows to begin from, as of a solution near by [m^3/s]. */
  readonly start_m3_s?: Float64Array | undefined;
}

/** Steps after which it is given up; a few suffice for Newton, some more find which valves are shut. */
const MOST_STEPS = 120;

/** Flow to begin with where none is given [m^3/s]: a tenth of a small pump's. */
const FIRST_FLOW_m3_s = 1e-5;

/** The flattest that a law is taken to be in a step, so that nothing divides by nought [Pa s/m^3]. */
const FLATTEST_Pa_s_m3 = 1e4;

/** How much of the descent may be left after a step along a line [-]. */
const LEFT = 0.5;

/** Halvings of a step's bracket; kinks as sharp as a shutting valve are met within these. */
const MOST_HALVINGS = 60;

/**
 * Finds pressures and flows so that every link obeys its law and no flow is lost at a node.
 *
 * As no law ever falls, the flows sought are those at the lowest point of a convex function,
 * the content of the network: the work done on the flow summed over all links. Each step is
 * Newton's; where it would overshoot, it is shortened along its line to where the content
 * stops falling. So every step goes down towards the one lowest point, from wherever it starts.
 *
 * Sources: E. Todini, S. Pilati, "A gradient algorithm for the analysis of pipe networks"
 * (1988); C. Cherry, W. Millar, Phil. Mag. 42 (1951) 1150 (content).
 *
 * @param network The network.
 * @param options How closely.
 * @returns Pressures and flows; or the link that could not be brought to its law, with no numbers.
 * @throws {InputError} When no pressure is given anywhere, or a node is joined to none.
 *
 * @example Two like pipes side by side share the flow
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import type { FlowLaw } from "./network.ts";
 *
 * const law: FlowLaw = (flow, into) => {
 *   into.drop_Pa = 1e12 * flow * Math.abs(flow);
 *   into.slope_Pa_s_m3 = 2e12 * Math.abs(flow);
 * };
 * const found = solveNetwork({
 *   nodes: [{ name: "tank", pressure_Pa: 1e5 }, { name: "tap", taken_m3_s: 2e-4 }],
 *   links: [
 *     { name: "left", from: 0, to: 1, law },
 *     { name: "right", from: 0, to: 1, law },
 *   ],
 * }, { tolerance_Pa: 1e-3 });
 *
 * assert(found.ok);
 * assertAlmostEquals(found.flows_m3_s[0] ?? 0, 1e-4, 1e-12);
 * assertAlmostEquals(found.pressures_Pa[1] ?? 0, 9e4, 1e-2);
 * ```
 */
export function solveNetwork(network: Network, options: SolveOptions): NetworkSolution {
  const search = new Search(network, options.start_m3_s);
  let residual_Pa = Infinity;
  for (let step = 1; step <= MOST_STEPS; step++) {
    search.step(step > 1);
    residual_Pa = search.residual_Pa();
    if (!Number.isFinite(residual_Pa)) break;
    if (residual_Pa > options.tolerance_Pa) continue;
    const { pressures_Pa, flows_m3_s } = search;
    return { ok: true, pressures_Pa, flows_m3_s, residual_Pa, steps: step };
  }
  return { ok: false, worst: network.links[search.worst]?.name ?? "", residual_Pa };
}

/** Refuses nodes from which no link leads on to a given pressure: nothing would tell theirs. */
function requireJoined({ nodes, links }: Network): void {
  const isJoined = nodes.map(({ pressure_Pa }) => pressure_Pa !== undefined);
  for (let isGrowing = true; isGrowing;) {
    isGrowing = false;
    for (const { from, to } of links) {
      if (isJoined[from] === isJoined[to]) continue;
      isJoined[from] = true;
      isJoined[to] = true;
      isGrowing = true;
    }
  }
  const alone = nodes[isJoined.indexOf(false)];
  if (alone === undefined) return;
  throw new InputError(
    "flows of a network",
    "links",
    "must join every node to a pressure",
    alone.name,
  );
}

/** One search under way. */
class Search {
  readonly pressures_Pa: Float64Array;
  readonly flows_m3_s: Float64Array;
  worst = 0;
  readonly #network: Network;
  /** Place of each node among those whose pressure is sought, or -1. */
  readonly #place: Int32Array;
  readonly #unknowns: number;
  readonly #matrix: Float64Array;
  readonly #right: Float64Array;
  readonly #drops: Float64Array;
  readonly #ease: Float64Array;
  readonly #change: Float64Array;
  readonly #at: LawPoint = { drop_Pa: 0, slope_Pa_s_m3: 0 };

  constructor(network: Network, start_m3_s: Float64Array | undefined) {
    const { nodes, links } = network;
    this.#network = network;
    this.pressures_Pa = Float64Array.from(nodes, (node) => node.pressure_Pa ?? 0);
    this.flows_m3_s = start_m3_s?.length === links.length
      ? start_m3_s.slice()
      : new Float64Array(links.length).fill(FIRST_FLOW_m3_s);
    let unknowns = 0;
    this.#place = Int32Array.from(
      nodes,
      (node) => node.pressure_Pa === undefined ? unknowns++ : -1,
    );
    if (unknowns === nodes.length) {
      throw new InputError("flows of a network", "nodes", "must have a given pressure", "none");
    }
    requireJoined(network);
    this.#unknowns = unknowns;
    this.#matrix = new Float64Array(unknowns * unknowns);
    this.#right = new Float64Array(unknowns);
    this.#drops = new Float64Array(links.length);
    this.#ease = new Float64Array(links.length);
    this.#change = new Float64Array(links.length);
    this.#readLaws();
  }

  /** One Newton step, shortened where it would overshoot; the first brings the flows into balance. */
  step(isBalanced: boolean): void {
    this.#findPressures();
    for (let i = 0; i < this.#change.length; i++) {
      this.#change[i] = (this.#ease[i] as number) * this.#missed(i);
    }
    const before = this.#slopeHere();
    this.#go(1);
    if (isBalanced && this.#slopeHere() > LEFT * Math.abs(before)) this.#shorten(before);
  }

  /** The most by which a law is missed; infinite where a law gives what is no number. */
  residual_Pa(): number {
    let most = 0;
    for (let i = 0; i < this.#drops.length; i++) {
      const missed = Math.abs(this.#missed(i));
      if (missed <= most) continue;
      most = Number.isFinite(missed) ? missed : Infinity;
      this.worst = i;
    }
    return most;
  }

  #readLaws(): void {
    const { links } = this.#network;
    for (let i = 0; i < links.length; i++) {
      links[i]?.law(this.flows_m3_s[i] as number, this.#at);
      this.#drops[i] = this.#at.drop_Pa;
      this.#ease[i] = 1 / Math.max(this.#at.slope_Pa_s_m3, FLATTEST_Pa_s_m3);
    }
  }

  /** How much more pressure lies across a link than its law asks for [Pa]. */
  #missed(i: number): number {
    const link = this.#network.links[i] as Network["links"][number];
    return (this.pressures_Pa[link.from] as number) - (this.pressures_Pa[link.to] as number) -
      (this.#drops[i] as number);
  }

  /** Finds the pressures with which the straightened laws lose no flow at any node. */
  #findPressures(): void {
    const { nodes, links } = this.#network;
    const n = this.#unknowns;
    const matrix = this.#matrix.fill(0);
    const right = this.#right.fill(0);
    for (let i = 0; i < nodes.length; i++) {
      const at = this.#place[i] as number;
      if (at >= 0) right[at] = -(nodes[i]?.taken_m3_s ?? 0);
    }
    for (let i = 0; i < links.length; i++) {
      const { from, to } = links[i] as Network["links"][number];
      const ease = this.#ease[i] as number;
      // What the link carries when there is no pressure across it.
      const idle = (this.flows_m3_s[i] as number) - ease * (this.#drops[i] as number);
      const a = this.#place[from] as number;
      const b = this.#place[to] as number;
      if (a >= 0) {
        matrix[a * n + a] = (matrix[a * n + a] as number) + ease;
        right[a] = (right[a] as number) - idle +
          (b < 0 ? ease * (this.pressures_Pa[to] as number) : 0);
      }
      if (b >= 0) {
        matrix[b * n + b] = (matrix[b * n + b] as number) + ease;
        right[b] = (right[b] as number) + idle +
          (a < 0 ? ease * (this.pressures_Pa[from] as number) : 0);
      }
      if (a >= 0 && b >= 0) {
        const at = Math.max(a, b) * n + Math.min(a, b);
        matrix[at] = (matrix[at] as number) - ease;
      }
    }
    if (!solveSymmetric(matrix, right)) {
      throw new InputError("flows of a network", "links", "must join every node to a pressure", "");
    }
    for (let i = 0; i < nodes.length; i++) {
      const at = this.#place[i] as number;
      if (at >= 0) this.pressures_Pa[i] = right[at] as number;
    }
  }

  /** Moves along the step by a share of it, back where that is negative, and reads the laws there. */
  #go(share: number): void {
    for (let i = 0; i < this.#change.length; i++) {
      this.flows_m3_s[i] = (this.flows_m3_s[i] as number) + share * (this.#change[i] as number);
    }
    this.#readLaws();
  }

  /** Slope of the content along the step, where the flows are now [W]. */
  #slopeHere(): number {
    let sum = 0;
    for (let i = 0; i < this.#change.length; i++) {
      sum -= this.#missed(i) * (this.#change[i] as number);
    }
    return sum;
  }

  /**
   * Goes back from the end of the step to about where the content is lowest along it: by
   * regula falsi with the Illinois weight, so that neither end is kept for long.
   */
  #shorten(before: number): void {
    let low = 0;
    let slopeLow = before;
    let high = 1;
    let slopeHigh = this.#slopeHere();
    let at = 1;
    let kept = 0;
    for (let i = 0; i < MOST_HALVINGS; i++) {
      const share = low + (high - low) * slopeLow / (slopeLow - slopeHigh);
      this.#go(share - at);
      at = share;
      const slope = this.#slopeHere();
      if (Math.abs(slope) <= LEFT * Math.abs(before)) return;
      const side = Math.sign(slope);
      if (side < 0) {
        low = share;
        slopeLow = slope;
        if (kept === side) slopeHigh /= 2;
      } else {
        high = share;
        slopeHigh = slope;
        if (kept === side) slopeLow /= 2;
      }
      kept = side;
    }
    this.#go(low - at);
  }
}
