/** The rails as part of the network: where fuel comes in, where it is taken off, where it runs on. */
import { addFriction, type Liquid, type Run } from "@/lib/line/mod.ts";
import type { FlowLaw, NetworkLink, NetworkNode } from "@/lib/network/mod.ts";

/** Rails, all alike. */
export interface RailsSpec {
  /** How many. */
  readonly count: number;
  /** Length of one [m]. */
  readonly length_m: number;
  /** Bore of the gallery [m]. */
  readonly bore_m: number;
  /** Roughness of its wall [m]. */
  readonly roughness_m: number;
  /** Places of the injectors of one rail, from its first end, rising [m]. */
  readonly stations_m: readonly number[];
  /** Where fuel comes into each rail. */
  readonly feed: "one-end" | "both-ends" | "middle";
  /** Each on its own branch; one after the other; or each on its own branch with the far ends joined. */
  readonly connection: "parallel" | "series" | "loop";
}

/** Runs that belong to the rails; a missing one costs nothing. */
export interface RailRuns {
  /** From the junction to where fuel comes into a rail. */
  readonly branch: Run | undefined;
  /** Between rails, or from each rail's far end to where they join. */
  readonly crossover: Run | undefined;
}

/** A stretch of a gallery. */
export interface Stretch {
  /** Which rail, from nought. */
  readonly rail: number;
  /** Its link. */
  readonly link: number;
  /** Node at its first end. */
  readonly from: number;
  /** Node at its other end. */
  readonly to: number;
}

/** An injector's place in the network. */
export interface Station {
  /** Which rail, from nought. */
  readonly rail: number;
  /** Its place along the rail [m]. */
  readonly at_m: number;
  /** Its node. */
  readonly node: number;
}

/** The rails laid out as nodes and links; the first three nodes are tank, manifold and junction. */
export interface RailNet {
  /** Names of the nodes. */
  readonly nodes: readonly NetworkNode[];
  /** Links of branches, galleries and crossovers. */
  readonly links: readonly NetworkLink[];
  /** Where injectors take off. */
  readonly stations: readonly Station[];
  /** Where the fuel that is not burnt leaves the rails; the junction where nothing runs through. */
  readonly outlet: number;
  /** The stretches of gallery. */
  readonly stretches: readonly Stretch[];
  /** Nodes at which fuel comes into the galleries. */
  readonly inlets: readonly number[];
}

/** The tank's place among the nodes. */
export const TANK = 0;
/** The manifold's place. */
export const MANIFOLD = 1;
/** The place of the junction before the rails. */
export const JUNCTION = 2;

/** Places nearer than this are one [m]. */
const SAME_PLACE_m = 1e-6;

/**
 * Lays out the rails.
 *
 * @param rails The rails.
 * @param runs Branches and crossovers.
 * @param liquid What runs through them.
 * @param isThrough Whether fuel that is not burnt runs on through the rails.
 * @returns Nodes and links.
 *
 * @example Four injectors on one rail, with fuel running through
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const net = layRails(
 *   {
 *     count: 1, length_m: 0.4, bore_m: 0.012, roughness_m: 2e-5,
 *     stations_m: [0.05, 0.15, 0.25, 0.35], feed: "one-end", connection: "parallel",
 *   },
 *   { branch: undefined, crossover: undefined },
 *   { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 },
 *   true,
 * );
 *
 * assertEquals([net.stations.length, net.links.length], [4, 5]);
 * ```
 */
export function layRails(
  rails: RailsSpec,
  runs: RailRuns,
  liquid: Liquid,
  isThrough: boolean,
): RailNet {
  const lay = new Lay(rails, runs, liquid);
  const isJoined = rails.connection !== "parallel" && rails.count > 1;
  const ends = endsOf(rails, isJoined);
  const outlets: number[] = [];
  for (let rail = 0; rail < rails.count; rail++) {
    const before = outlets.at(-1);
    const comesFrom = rails.connection === "series" && before !== undefined ? before : JUNCTION;
    const way = comesFrom === JUNCTION ? runs.branch : runs.crossover;
    const inlets = ends.inlets_m.map((at_m) => ({ at_m, node: lay.inlet(rail, comesFrom, way) }));
    const isOpen = isThrough || isJoined;
    outlets.push(lay.gallery(rail, inlets, isOpen ? ends.outlets_m : []));
  }
  return lay.done(outlets, isThrough, isJoined);
}

interface Ends {
  readonly inlets_m: readonly number[];
  readonly outlets_m: readonly number[];
}

/** Rails that are joined are fed at one end and left by the other. */
function endsOf({ feed, length_m }: RailsSpec, isJoined: boolean): Ends {
  if (feed === "both-ends" && !isJoined) {
    return { inlets_m: [0, length_m], outlets_m: [length_m / 2] };
  }
  if (feed === "middle" && !isJoined) return { inlets_m: [length_m / 2], outlets_m: [0, length_m] };
  return { inlets_m: [0], outlets_m: [length_m] };
}

interface Placed {
  readonly at_m: number;
  readonly node: number;
}

/** Nodes and links as they are laid. */
class Lay {
  readonly #nodes: NetworkNode[] = [
    { name: "tank" },
    { name: "manifold" },
    { name: "junction" },
  ];
  readonly #links: NetworkLink[] = [];
  readonly #stations: Station[] = [];
  readonly #stretches: Stretch[] = [];
  readonly #inlets: number[] = [];

  constructor(
    readonly rails: RailsSpec,
    readonly runs: RailRuns,
    readonly liquid: Liquid,
  ) {}

  /** The node where fuel comes into a rail; without a run on the way it is the one it comes from. */
  inlet(rail: number, from: number, run: Run | undefined): number {
    if (run === undefined) return from;
    const to = this.#node(`inlet of rail ${rail + 1}`);
    this.#links.push({
      name: from === JUNCTION ? `branch to rail ${rail + 1}` : `crossover to rail ${rail + 1}`,
      from,
      to,
      law: run.law,
    });
    return to;
  }

  /** Lays the gallery of one rail and gives the node it is left by, or an inlet where it is a dead end. */
  gallery(rail: number, inlets: readonly Placed[], outlets_m: readonly number[]): number {
    const placed: Placed[] = [...inlets];
    this.#inlets.push(...inlets.map(({ node }) => node));
    const nodeAt = (at_m: number, name: string): number => {
      const known = placed.find((other) => Math.abs(other.at_m - at_m) < SAME_PLACE_m);
      if (known) return known.node;
      const node = this.#node(name);
      placed.push({ at_m, node });
      return node;
    };
    for (const at_m of this.rails.stations_m) {
      const node = nodeAt(at_m, `rail ${rail + 1}, injector ${this.#stations.length + 1}`);
      this.#stations.push({ rail, at_m, node });
    }
    const [first, ...others] = outlets_m;
    let outlet = inlets[0]?.node ?? JUNCTION;
    if (first !== undefined) {
      outlet = nodeAt(first, `outlet of rail ${rail + 1}`);
      // Both ends of a rail fed in its middle lead to the same place.
      for (const at_m of others) placed.push({ at_m, node: outlet });
    }
    placed.sort((a, b) => a.at_m - b.at_m);
    placed.forEach((to, i) => {
      const from = placed[i - 1];
      if (from === undefined || from.node === to.node) return;
      this.#stretch(rail, from, to);
    });
    return outlet;
  }

  done(outlets: readonly number[], isThrough: boolean, isJoined: boolean): RailNet {
    const { rails, runs } = this;
    let outlet = isThrough ? outlets.at(-1) ?? JUNCTION : JUNCTION;
    const several = rails.count > 1;
    if (several && isJoined && rails.connection === "loop") {
      const meeting = this.#node("meeting of the far ends");
      for (const from of outlets) this.#join(from, meeting, runs.crossover?.law);
      outlet = isThrough ? meeting : JUNCTION;
    } else if (several && isThrough && !isJoined) {
      const meeting = this.#node("meeting of the rails");
      for (const from of outlets) this.#join(from, meeting, undefined);
      outlet = meeting;
    }
    return {
      nodes: this.#nodes,
      links: this.#links,
      stations: this.#stations,
      outlet,
      stretches: this.#stretches,
      inlets: this.#inlets,
    };
  }

  #node(name: string): number {
    this.#nodes.push({ name });
    return this.#nodes.length - 1;
  }

  #join(from: number, to: number, law: FlowLaw = hardlyAnything): void {
    this.#links.push({ name: "crossover", from, to, law });
  }

  #stretch(rail: number, from: Placed, to: Placed): void {
    const { bore_m, roughness_m } = this.rails;
    const length_m = to.at_m - from.at_m;
    const add = addFriction({ bore_m, roughness_m, length_m, frictionTimes: 1 }, this.liquid);
    this.#stretches.push({ rail, link: this.#links.length, from: from.node, to: to.node });
    this.#links.push({
      name: `gallery of rail ${rail + 1}`,
      from: from.node,
      to: to.node,
      law: (flow_m3_s, into) => {
        into.drop_Pa = 0;
        into.slope_Pa_s_m3 = 0;
        add(flow_m3_s, into);
      },
    });
  }
}

/** A way that costs a pascal at most. */
const hardlyAnything: FlowLaw = (flow_m3_s, into) => {
  into.drop_Pa = 1e4 * flow_m3_s;
  into.slope_Pa_s_m3 = 1e4;
};
