/** Curves through measured points, without overshoot and without extrapolation. */
import { InputError } from "./input_error.ts";

/** One measured point: the abscissa, then the ordinate. */
export type Point = readonly [x: number, y: number];

/**
 * Builds the monotone cubic curve through points: smooth, and never beyond its
 * neighbours, so a falling pump curve stays falling.
 *
 * Source: F. N. Fritsch, J. Butland, "A method for constructing local monotone
 * piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5 (1984) 300-304,
 * doi:10.1137/0905021; three-point end slopes kept monotone.
 *
 * @param points At least two points, abscissas strictly rising.
 * @returns The curve; it throws an {@linkcode InputError} outside the points.
 * @throws {InputError} When there are fewer than two points, or they do not rise.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertThrows } from "@std/assert";
 *
 * const curve = monotoneCurve([[0, 0], [1, 1], [2, 1]]);
 *
 * assertAlmostEquals(curve(1), 1);
 * assertAlmostEquals(curve(1.5), 1); // flat, where a plain cubic would bulge
 * assertThrows(() => curve(2.1), RangeError, "must be >= 0 and <= 2");
 * ```
 */
export function monotoneCurve(points: readonly Point[]): (x: number) => number {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  requireRising(xs);
  const slopes = slopesOf(xs, ys);
  return (x) => {
    const i = intervalOf(xs, x);
    const x0 = xs[i] as number;
    const width = (xs[i + 1] as number) - x0;
    const t = (x - x0) / width;
    const [y0, y1] = [ys[i] as number, ys[i + 1] as number];
    const [m0, m1] = [(slopes[i] as number) * width, (slopes[i + 1] as number) * width];
    const rise = y1 - y0;
    return y0 + t * (m0 + t * (3 * rise - 2 * m0 - m1 + t * (m0 + m1 - 2 * rise)));
  };
}

/**
 * Builds the straight-line curve through points.
 *
 * @param points At least two points, abscissas strictly rising.
 * @returns The curve; it throws an {@linkcode InputError} outside the points.
 * @throws {InputError} When there are fewer than two points, or they do not rise.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(linearCurve([[0, 0], [2, 4]])(0.5), 1);
 * ```
 */
export function linearCurve(points: readonly Point[]): (x: number) => number {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  requireRising(xs);
  return (x) => {
    const i = intervalOf(xs, x);
    const [x0, x1] = [xs[i] as number, xs[i + 1] as number];
    const [y0, y1] = [ys[i] as number, ys[i + 1] as number];
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
  };
}

function requireRising(xs: readonly number[]): void {
  if (xs.length < 2) {
    throw new InputError("curve", "points", "must be at least two", xs.length);
  }
  const at = xs.findIndex((x, i) => i > 0 && !(x > (xs[i - 1] as number)));
  if (at > 0) throw new InputError("curve", "points", "must rise strictly", xs[at]);
}

/** The index of the interval that holds x. */
function intervalOf(xs: readonly number[], x: number): number {
  const first = xs[0] as number;
  const last = xs[xs.length - 1] as number;
  if (!(x >= first && x <= last)) {
    throw new InputError("curve", "x", `must be >= ${first} and <= ${last}`, x);
  }
  let i = 0;
  while (i < xs.length - 2 && x >= (xs[i + 1] as number)) i++;
  return i;
}

/** The slope at each point: a weighted harmonic mean inside, nought at turning points. */
function slopesOf(xs: readonly number[], ys: readonly number[]): number[] {
  const widths = xs.slice(1).map((x, i) => x - (xs[i] as number));
  const chords = ys.slice(1).map((y, i) => (y - (ys[i] as number)) / (widths[i] as number));
  const last = chords.length - 1;
  if (last === 0) return [chords[0] as number, chords[0] as number];
  const inner = chords.slice(1).map((after, i) => {
    const before = chords[i] as number;
    if (before * after <= 0) return 0;
    const w1 = 2 * (widths[i + 1] as number) + (widths[i] as number);
    const w2 = (widths[i + 1] as number) + 2 * (widths[i] as number);
    return (w1 + w2) / (w1 / before + w2 / after);
  });
  return [
    endSlope(widths[0] as number, widths[1] as number, chords[0] as number, chords[1] as number),
    ...inner,
    endSlope(
      widths[last] as number,
      widths[last - 1] as number,
      chords[last] as number,
      chords[last - 1] as number,
    ),
  ];
}

function endSlope(h0: number, h1: number, chord0: number, chord1: number): number {
  const slope = ((2 * h0 + h1) * chord0 - h0 * chord1) / (h0 + h1);
  if (slope * chord0 <= 0) return 0;
  if (chord0 * chord1 <= 0 && Math.abs(slope) > 3 * Math.abs(chord0)) return 3 * chord0;
  return slope;
}
