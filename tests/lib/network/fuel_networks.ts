/** Pipe networks as fuel systems have them, by chance. */
import type { Pipe, PipeNetwork, PipeNode } from "../../helpers/pipes.ts";
import { Seeded } from "../../helpers/seeded.ts";

/** How one is drawn. */
export interface Drawn {
  /** Reynolds number that the feed is made for, least and most [-]. */
  readonly reynolds: readonly [number, number];
  /** Whether rails may be joined at their far ends or fed at both: loops, with near to no flow somewhere. */
  readonly isLooped: boolean;
}

/** Density [kg/m^3] and viscosity [Pa s] at both ends of petrol, alcohol and cold. */
const LIQUIDS = [
  { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 },
  { density_kg_m3: 790, viscosity_Pa_s: 1.2e-3 },
  { density_kg_m3: 720, viscosity_Pa_s: 2.9e-4 },
  { density_kg_m3: 806, viscosity_Pa_s: 1.8e-3 },
];

/** As good as none; EPANET refuses none [m]. */
const SMOOTH_m = 1e-9;

/**
 * Draws a tank, a feed in pieces, a tee and one to four rails with two to eight take-offs.
 *
 * @param seed What tells it from others.
 * @param drawn How.
 */
export function fuelNetwork(seed: number, drawn: Drawn): PipeNetwork {
  return new Drawing(new Seeded(seed), drawn).network;
}

class Drawing {
  readonly network: PipeNetwork;
  readonly #by: Seeded;
  readonly #nodes: PipeNode[] = [];
  readonly #pipes: Pipe[] = [];

  constructor(by: Seeded, { reynolds, isLooped }: Drawn) {
    this.#by = by;
    const liquid = by.oneOf(LIQUIDS);
    const feedBore_m = by.between(5e-3, 19e-3);
    const total_m3_s = by.decades(...reynolds) * Math.PI / 4 * feedBore_m *
      liquid.viscosity_Pa_s / liquid.density_kg_m3;
    const rails = by.whole(1, 4);
    let tee = this.#node("tank");
    for (let i = by.whole(1, 4); i > 0; i--) tee = this.#on(tee, "feed", feedBore_m);
    const isJoined = isLooped && rails > 1 && by.chance(0.7);
    const isFedTwice = isLooped && (rails === 1 || !isJoined || by.chance(0.3));
    const farEnds = Array.from({ length: rails }, (_, rail) => {
      const bore_m = by.between(5e-3, 19e-3);
      const branch = this.#on(tee, `branch ${rail}`, by.between(5e-3, 19e-3));
      const far = this.#rail(rail, branch, { bore_m, flow_m3_s: total_m3_s / rails });
      if (isFedTwice) this.#pipe(`second branch ${rail}`, tee, far, by.between(5e-3, 19e-3));
      return far;
    });
    if (isJoined) {
      farEnds.slice(1).forEach((far, i) =>
        this.#pipe(`crossover ${i}`, farEnds[i] ?? NaN, far, by.between(5e-3, 19e-3))
      );
    }
    this.network = {
      liquid,
      source_Pa: by.between(2e5, 8e5),
      nodes: this.#nodes,
      pipes: this.#pipes,
    };
  }

  /** Take-offs in a row; gives the last one. */
  #rail(rail: number, inlet: number, { bore_m, flow_m3_s }: { bore_m: number; flow_m3_s: number }) {
    const takeOffs = this.#by.whole(2, 8);
    let end = inlet;
    for (let i = 0; i < takeOffs; i++) {
      const node = this.#node(`take-off ${rail}.${i}`, flow_m3_s / takeOffs);
      this.#pipe(`gallery ${rail}.${i}`, end, node, bore_m);
      end = node;
    }
    return end;
  }

  /** A pipe that leads on to a new node. */
  #on(from: number, name: string, bore_m: number): number {
    const to = this.#node(`end of ${name}`);
    this.#pipe(name, from, to, bore_m);
    return to;
  }

  #node(name: string, taken_m3_s = 0): number {
    const height_m = this.#nodes.length === 0 ? 0 : this.#by.between(-0.3, 0.8);
    return this.#nodes.push({ name, height_m, taken_m3_s }) - 1;
  }

  #pipe(name: string, from: number, to: number, bore_m: number): void {
    const by = this.#by;
    this.#pipes.push({
      name,
      from,
      to,
      bore_m,
      length_m: by.decades(0.05, 4),
      roughness_m: by.chance(0.2) ? SMOOTH_m : by.between(1e-6, 20e-6),
      lossCoefficient: by.chance(0.3) ? 0 : by.between(0, 10),
    });
  }
}
