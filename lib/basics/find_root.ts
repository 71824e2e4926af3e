/** Where a function of one variable crosses zero. */
import { InputError } from "./input_error.ts";

/** Where to look for a root and how closely to place it. */
export interface RootSearch {
  /** One end of the bracket. */
  readonly from: number;
  /** The other end; the function has the other sign here. */
  readonly to: number;
  /** The root is placed at least this closely [in the variable's unit]. */
  readonly tolerance: number;
}

/** Brent's method halves the bracket at worst every few steps: 200 always suffice for doubles. */
const MOST_STEPS = 200;

/**
 * Finds where a continuous function crosses zero within a bracket, by Brent's
 * method: inverse quadratic steps, bisection where they do not help.
 *
 * Source: R. P. Brent, "Algorithms for Minimization without Derivatives" (1973), chapter 4.
 *
 * @param f The function.
 * @param search The bracket and the tolerance.
 * @returns The root.
 * @throws {InputError} When the function has the same sign at both ends, or none.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const root = findRoot((x) => x * x - 2, { from: 0, to: 2, tolerance: 1e-12 });
 *
 * assertAlmostEquals(root, Math.SQRT2, 1e-12);
 * ```
 */
export function findRoot(f: (x: number) => number, search: RootSearch): number {
  let a = search.from;
  let b = search.to;
  let fa = f(a);
  let fb = f(b);
  if (!(fa * fb <= 0)) {
    throw new InputError(
      "root",
      "bracket",
      "must have a sign change",
      `f(${a}) = ${fa}, f(${b}) = ${fb}`,
    );
  }
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let i = 0; i < MOST_STEPS; i++) {
    if (Math.abs(fc) < Math.abs(fb)) [a, b, c, fa, fb, fc] = [b, c, b, fb, fc, fb];
    const near = 2 * Number.EPSILON * Math.abs(b) + search.tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    const trial = interpolated(a, b, c, fa, fb, fc);
    const useful = Math.abs(before) >= near && Math.abs(fa) > Math.abs(fb) &&
      trial * Math.sign(half) > 0 &&
      2 * Math.abs(trial) < Math.min(3 * Math.abs(half) - near, Math.abs(before));
    [before, step] = useful ? [step, trial] : [half, half];
    a = b;
    fa = fb;
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = f(b);
    if (fb * fc > 0) {
      c = a;
      fc = fa;
      before = step = b - a;
    }
  }
  return b;
}

/** The step from b that inverse quadratic interpolation (secant with two points) proposes. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return (c - b) * s / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
