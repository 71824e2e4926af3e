/** A long bar in pieces that fit on sheets, cut where no hole is. */
import type { Body } from "./body.ts";

/** A piece of the bar, from the datum end [mm]. */
export type Piece = readonly [from: number, to: number];

/** A hole with a place along the bar. */
interface Placed {
  readonly entry: readonly [x: number, y: number, z: number];
}

/** The first pieces, up to the last that holes begin in; the first one at least. */
export function withHoles(pieces: readonly Piece[], holes: readonly Placed[]): Piece[] {
  const last = Math.max(
    0,
    ...holes.map(({ entry }) => pieces.findIndex(([, to]) => entry[0] <= to)),
  );
  return pieces.slice(0, last + 1);
}

/** A cut farther than this from every hole is as good as any [mm]. */
const FREE_mm = 9;

/**
 * Cuts a bar into as few pieces as fit, about equally long, with the cuts as far from holes as can be.
 *
 * @param body The rail.
 * @param most The longest that a piece may be [mm].
 * @returns The pieces, from the datum end.
 */
export function piecesOf(body: Body, most: number): Piece[] {
  const { length } = body;
  const count = Math.ceil(length / most - 1e-9);
  const cuts = [0];
  for (let i = 1; i < count; i++) {
    const least = Math.max(cuts.at(-1) ?? 0, length - (count - i) * most);
    const greatest = Math.min(length, (cuts.at(-1) ?? 0) + most);
    cuts.push(bestCut(body, least, greatest, length * i / count));
  }
  cuts.push(length);
  return cuts.slice(1).map((to, i) => [cuts[i] ?? 0, to] as const);
}

function bestCut(body: Body, least: number, most: number, even: number): number {
  let best = least;
  let score = -Infinity;
  const steps = Math.max(1, Math.round((most - least) * 2));
  for (let i = 0; i <= steps; i++) {
    const x = least + (most - least) * i / steps;
    const here = Math.min(FREE_mm, clearance(body, x)) - 0.02 * Math.abs(x - even);
    if (here > score) [best, score] = [x, here];
  }
  return best;
}

/** From a place along the bar to the nearest hole across it. */
function clearance({ holes }: Body, x: number): number {
  return Math.min(
    ...holes.filter(({ into }) => Math.abs(into[0]) < 0.9)
      .map(({ entry, into, depth, widest }) => {
        const ends = [entry[0], entry[0] + into[0] * depth];
        return Math.max(Math.min(...ends) - x, x - Math.max(...ends)) - widest;
      }),
    1e6,
  );
}
