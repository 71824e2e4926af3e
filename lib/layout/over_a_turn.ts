/** The largest value of a function over a full turn. */

/** Samples to a turn: the functions here have two humps at most. */
const SAMPLES = 32;

/** Golden section: by then the angle is within a microradian, and the value far closer. */
const STEPS = 28;

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Finds the largest value of a smooth function over a full turn.
 *
 * @param f The function of an angle [rad], finite all round.
 * @returns The largest value and its angle.
 */
export function largestOverTurn(
  f: (turn_rad: number) => number,
): { readonly value: number; readonly turn_rad: number } {
  const step = 2 * Math.PI / SAMPLES;
  let top = 0;
  let value = -Infinity;
  for (let i = 0; i < SAMPLES; i++) {
    const here = f(i * step);
    if (here > value) [top, value] = [i, here];
  }
  let [low, high] = [(top - 1) * step, (top + 1) * step];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [f(left), f(right)];
  for (let i = 0; i < STEPS; i++) {
    if (atLeft < atRight) {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = f(right);
    } else {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = f(left);
    }
  }
  const best = Math.max(value, atLeft, atRight);
  if (best === value) return { value, turn_rad: top * step };
  return { value: best, turn_rad: atLeft > atRight ? left : right };
}
