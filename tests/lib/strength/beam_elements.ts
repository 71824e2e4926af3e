/** A bar on springs by beam elements: another way to the same numbers. */
import type { Lift } from "@/lib/strength/mod.ts";

/** What the elements give. */
export interface BeamSolution {
  /** Pull on each screw [N]. */
  readonly pulls: number[];
  /** Deflection at a node's place [m]. */
  readonly at: (x: number) => number;
  /** Greatest moment [N m]. */
  readonly moment: number;
}

/**
 * Solves a bar of stiffness E I on springs by Hermite's cubic elements, exact for loads at nodes.
 *
 * @param screws Places of the springs.
 * @param lifts The loads.
 * @param stiffness E I.
 * @param spring Stiffness of each spring.
 * @param more Places that shall be nodes too.
 */
export function beamOnSprings(
  screws: readonly number[],
  lifts: readonly Lift[],
  stiffness: number,
  spring: number,
  more: readonly number[] = [],
): BeamSolution {
  const nodes = [...new Set([...screws, ...lifts.map((l) => l.x_m), ...more])]
    .toSorted((a, b) => a - b);
  const size = 2 * nodes.length;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  const add = (row: number, column: number, value: number): void => {
    const line = matrix[row] as Float64Array;
    line[column] = (line[column] as number) + value;
  };
  for (let i = 0; i + 1 < nodes.length; i++) {
    element(length(nodes, i), stiffness).forEach((line, r) =>
      line.forEach((value, c) => add(2 * i + r, 2 * i + c, value))
    );
  }
  for (const x of screws) add(2 * nodes.indexOf(x), 2 * nodes.indexOf(x), spring);
  for (const { x_m, force_N } of lifts) {
    const row = 2 * nodes.indexOf(x_m);
    right[row] = (right[row] as number) + force_N;
  }
  const found = eliminate(matrix, right);
  const at = (x: number): number => found[2 * nodes.indexOf(x)] as number;
  let moment = 0;
  for (let i = 0; i + 1 < nodes.length; i++) {
    const part = found.slice(2 * i, 2 * i + 4);
    for (const row of [1, 3]) {
      const line = element(length(nodes, i), stiffness)[row] ?? [];
      moment = Math.max(moment, Math.abs(line.reduce((s, v, c) => s + v * (part[c] as number), 0)));
    }
  }
  return { pulls: screws.map((x) => spring * at(x)), at, moment };
}

const length = (nodes: readonly number[], i: number): number =>
  (nodes[i + 1] as number) - (nodes[i] as number);

function element(l: number, ei: number): number[][] {
  const k = ei / l ** 3;
  return [
    [12, 6 * l, -12, 6 * l],
    [6 * l, 4 * l * l, -6 * l, 2 * l * l],
    [-12, -6 * l, 12, -6 * l],
    [6 * l, 2 * l * l, -6 * l, 4 * l * l],
  ].map((line) => line.map((v) => v * k));
}

/** Gauss's elimination with pivots. */
function eliminate(matrix: Float64Array[], right: Float64Array): Float64Array {
  const n = right.length;
  const rows = matrix.map((line, i) => Float64Array.of(...line, right[i] as number));
  for (let column = 0; column < n; column++) {
    let best = column;
    for (let r = column; r < n; r++) {
      if (Math.abs(rows[r]?.[column] as number) > Math.abs(rows[best]?.[column] as number)) {
        best = r;
      }
    }
    const [a, b] = [rows[column], rows[best]];
    if (a === undefined || b === undefined) break;
    rows[column] = b;
    rows[best] = a;
    for (let r = column + 1; r < n; r++) {
      const line = rows[r] as Float64Array;
      const factor = (line[column] as number) / (b[column] as number);
      for (let c = column; c <= n; c++) line[c] = (line[c] as number) - factor * (b[c] as number);
    }
  }
  const found = new Float64Array(n);
  for (let r = n - 1; r >= 0; r--) {
    const line = rows[r] as Float64Array;
    let value = line[n] as number;
    for (let c = r + 1; c < n; c++) value -= (line[c] as number) * (found[c] as number);
    found[r] = value / (line[r] as number);
  }
  return found;
}
