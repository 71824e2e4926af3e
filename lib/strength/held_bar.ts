/** The statics of a bar that screws hold down and injectors lift. */
import { InputError } from "@/lib/basics/mod.ts";

/** A lift at a place along the bar. */
export interface Lift {
  /** Where [m]. */
  readonly x_m: number;
  /** How hard [N]. */
  readonly force_N: number;
}

/** Part of the bar between neighbouring screws, or beyond the last one. */
export interface Gap {
  /** Where it begins [m]. */
  readonly from_m: number;
  /** Where it ends: the next screw, or the outermost injector [m]. */
  readonly to_m: number;
  /** Deflection times stiffness, the most at any injector in it or at its middle [N m^3]. */
  readonly flexure_N_m3: number;
}

/** What the screws and the bar bear. */
export interface HeldBar {
  /** Pull on each screw, in the order given, over stands that don't yield [N]. */
  readonly pulls_N: readonly number[];
  /** The least pull on each over stands that yield by any amount, all alike [N]. */
  readonly pullsLeast_N: readonly number[];
  /** The most pull on each over stands that yield by any amount, all alike [N]. */
  readonly pullsMost_N: readonly number[];
  /** The greatest bending moment over stands that don't yield [N m]. */
  readonly moment_Nm: number;
  /** The parts of the bar, from its datum end; an end part only where an injector overhangs. */
  readonly gaps: readonly Gap[];
}

/** Screws nearer than this stand at one place and share its pull [m]. */
const SAME_PLACE_m = 1e-6;

/**
 * How much stands yield against the bar, E I over their stiffness as a share of the cube of the
 * length between the end screws: from stiffer than any to softer than any.
 */
const YIELDS: readonly number[] = [0, ...Array.from({ length: 25 }, (_, i) => 10 ** (i / 4 - 5))];

/**
 * Bends a bar over its stands: what each screw must hold, and what bends the bar. No stiffness
 * is asked for: deflections come out times E I, and pulls are given for stands that don't yield
 * and as bounds for all others, since the bar's share of the bending decides who holds what.
 *
 * The bar is as stiff all along; a pocket that takes metal away is not counted. The screws are
 * tight, so that a stand holds both ways: a negative pull is the bar pressing down.
 *
 * Source: L. F. Menabrea's least work (1858), as in S. Timoshenko, Strength of Materials I.
 *
 * @param screws Places of the screws, in any order [m].
 * @param lifts The lifts.
 * @returns Pulls, greatest moment and what bends each part.
 * @throws {InputError} When all screws stand at one place: such a bar rocks.
 *
 * @example One lift in the middle of two screws: F L / 4 and F L^3 / 48
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * const bar = heldBar([0, 0.2], [{ x_m: 0.1, force_N: 60 }]);
 *
 * assertEquals(bar.pulls_N, [30, 30]);
 * assertAlmostEquals(bar.moment_Nm, 3, 1e-12);
 * assertAlmostEquals(bar.gaps[0]?.flexure_N_m3 ?? NaN, 60 * 0.2 ** 3 / 48, 1e-12);
 * ```
 */
export function heldBar(screws: readonly number[], lifts: readonly Lift[]): HeldBar {
  const stands = standsOf(screws);
  if (stands.length < 2) {
    throw new InputError("hold-down", "screws", "must stand at two places or more", stands.length);
  }
  const bar = leastWork(stands, lifts);
  const pullsAt = YIELDS.map((share) => bar.pulls(share * bar.length ** 3));
  const unyielding = pullsAt[0] ?? [];
  const standOf = screws.map((x) => stands.findIndex((s) => Math.abs(x - s.x_m) <= SAME_PLACE_m));
  const each = (pick: (stand: number) => number): number[] =>
    standOf.map((stand) => pick(stand) / (stands[stand]?.screws ?? 1));
  const down: Lift[] = stands.map(({ x_m }, i) => ({ x_m, force_N: -(unyielding[i] ?? 0) }));
  return {
    pulls_N: each((stand) => unyielding[stand] ?? 0),
    pullsLeast_N: each((stand) => Math.min(...pullsAt.map((pulls) => pulls[stand] ?? 0))),
    pullsMost_N: each((stand) => Math.max(...pullsAt.map((pulls) => pulls[stand] ?? 0))),
    moment_Nm: greatestMoment([...lifts, ...down]),
    gaps: gapsOf(stands, lifts).map(({ from_m, to_m, at }) => ({
      from_m,
      to_m,
      flexure_N_m3: Math.max(...at.map((x) => Math.abs(bar.flexure([...lifts, ...down], x)))),
    })),
  };
}

/** A place with one screw or more. */
interface Stand {
  readonly x_m: number;
  readonly screws: number;
}

function standsOf(screws: readonly number[]): Stand[] {
  const stands: { x_m: number; screws: number }[] = [];
  for (const x_m of screws.toSorted((a, b) => a - b)) {
    const last = stands.at(-1);
    if (last !== undefined && x_m - last.x_m <= SAME_PLACE_m) last.screws++;
    else stands.push({ x_m, screws: 1 });
  }
  return stands;
}

/** A bar on its end stands, the others found by least work. */
interface Worked {
  readonly length: number;
  /** Pulls at the stands for E I over the stiffness of a screw's stand [m^3]. */
  readonly pulls: (yielding: number) => number[];
  /** Deflection times E I under lifts that the end stands hold. */
  readonly flexure: (lifts: readonly Lift[], x: number) => number;
}

function leastWork(stands: readonly Stand[], lifts: readonly Lift[]): Worked {
  const from = stands[0]?.x_m ?? 0;
  const length = (stands.at(-1)?.x_m ?? 0) - from;
  const inner = stands.slice(1, -1);
  /** What a lift of 1 takes off the first stand and off the last. */
  const ends = (x: number): readonly [first: number, last: number] => {
    const share = (x - from) / length;
    return [1 - share, share];
  };
  const flexure = (loads: readonly Lift[], x: number): number =>
    loads.reduce((sum, { x_m, force_N }) => sum + force_N * unitFlexure(from, length, x_m, x), 0);
  const whole = lifts.reduce((sum, { force_N }) => sum + force_N, 0);
  const onLast = lifts.reduce((sum, { x_m, force_N }) => sum + force_N * ends(x_m)[1], 0);
  const onEnds: readonly [number, number] = [whole - onLast, onLast];
  const give = [1 / (stands[0]?.screws ?? 1), 1 / (stands.at(-1)?.screws ?? 1)] as const;
  const shares = inner.map(({ x_m }) => ends(x_m));
  const bent = inner.map(({ x_m: x }) => inner.map((s) => unitFlexure(from, length, s.x_m, x)));
  const lifted = inner.map(({ x_m }) => flexure(lifts, x_m));
  const pulls = (yielding: number): number[] => {
    const through = (i: number, by: readonly [number, number]): number => {
      const [a = 0, b = 0] = shares[i] ?? [];
      return yielding * (a * by[0] * give[0] + b * by[1] * give[1]);
    };
    const held = solve(
      bent.map((row, i) =>
        row.map((value, j) =>
          value + through(i, shares[j] ?? [0, 0]) +
          (i === j ? yielding / (inner[i]?.screws ?? 1) : 0)
        )
      ),
      lifted.map((value, i) => value + through(i, onEnds)),
    );
    const off = (end: 0 | 1): number =>
      held.reduce((sum, pull, i) => sum - pull * (shares[i]?.[end] ?? 0), onEnds[end]);
    return [off(0), ...held, off(1)];
  };
  return { length, pulls, flexure };
}

/** Deflection times E I at a place of a bar on two stands under a lift of 1; beyond them too. */
function unitFlexure(from: number, length: number, lift: number, x: number): number {
  const share = (lift - from) / length;
  const cubed = (distance: number): number => distance > 0 ? distance ** 3 : 0;
  const curve = (at: number): number =>
    cubed(at - lift) - (1 - share) * cubed(at - from) - share * cubed(at - from - length);
  const [first, last] = [curve(from), curve(from + length)];
  return (curve(x) - first - (x - from) / length * (last - first)) / 6;
}

/** Few equations with a symmetric, positive definite matrix, by elimination. */
function solve(matrix: number[][], right: number[]): number[] {
  const n = right.length;
  for (let column = 0; column < n; column++) {
    const pivot = matrix[column] ?? [];
    for (let r = column + 1; r < n; r++) {
      const row = matrix[r] ?? [];
      const factor = (row[column] ?? 0) / (pivot[column] ?? 1);
      for (let c = column; c < n; c++) row[c] = (row[c] ?? 0) - factor * (pivot[c] ?? 0);
      right[r] = (right[r] ?? 0) - factor * (right[column] ?? 0);
    }
  }
  for (let r = n - 1; r >= 0; r--) {
    const row = matrix[r] ?? [];
    let value = right[r] ?? 0;
    for (let c = r + 1; c < n; c++) value -= (row[c] ?? 0) * (right[c] ?? 0);
    right[r] = value / (row[r] ?? 1);
  }
  return right;
}

/** The greatest moment, which is at one of the forces. */
function greatestMoment(forces: readonly Lift[]): number {
  return Math.max(
    ...forces.map(({ x_m: x }) =>
      Math.abs(forces.reduce((sum, { x_m, force_N }) => sum + force_N * Math.max(0, x - x_m), 0))
    ),
  );
}

/** The parts of the bar, each with the places where its deflection is looked at. */
function gapsOf(
  stands: readonly Stand[],
  lifts: readonly Lift[],
): { from_m: number; to_m: number; at: number[] }[] {
  const places = lifts.map(({ x_m }) => x_m);
  const [first, last] = [stands[0]?.x_m ?? 0, stands.at(-1)?.x_m ?? 0];
  const within = (from: number, to: number): number[] => places.filter((x) => x >= from && x <= to);
  const spans = stands.slice(1).map(({ x_m: to_m }, i) => {
    const from_m = stands[i]?.x_m ?? to_m;
    return { from_m, to_m, at: [(from_m + to_m) / 2, ...within(from_m, to_m)] };
  });
  const [least, greatest] = [Math.min(first, ...places), Math.max(last, ...places)];
  return [
    ...(least < first ? [{ from_m: least, to_m: first, at: within(least, first) }] : []),
    ...spans,
    ...(greatest > last ? [{ from_m: last, to_m: greatest, at: within(last, greatest) }] : []),
  ];
}
