/** The first of a list that reaches something, in few looks. */

/** A list in which a stretch reaches something, mostly from some index to the end. */
export interface Ordered {
  /** How many there are. */
  readonly length: number;
  /** Whether the one at an index reaches it. */
  readonly reaches: (index: number) => boolean;
  /** Where the first is guessed to be, once index 0 was looked at; undefined where it leads nowhere. */
  readonly guess: () => number | undefined;
}

/**
 * Finds the first that reaches: index 0, then the guess, then farther and farther above it and
 * from the start up to it, then by halves between two that differ. Without a guess only the last
 * is looked at, which tells a dead end.
 *
 * @returns Its index; the one before it was looked at and does not reach. Undefined where none was found.
 */
export function firstThat({ length, reaches, guess }: Ordered): number | undefined {
  if (length === 0) return undefined;
  if (reaches(0)) return 0;
  const last = length - 1;
  if (last === 0) return undefined;
  const guessed = guess();
  const at = Math.min(last, Math.max(1, guessed ?? last));
  const between = reaches(at)
    ? downFrom(at, reaches)
    : upTo(last, at, reaches) ?? (guessed === undefined ? undefined : upTo(at - 1, 0, reaches));
  if (between === undefined) return undefined;
  let { low, high } = between;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** An index that does not reach, and a higher one that does. */
interface Between {
  readonly low: number;
  readonly high: number;
}

/** From one that reaches down, farther each time; index 0 does not reach. */
function downFrom(from: number, reaches: (index: number) => boolean): Between {
  let high = from;
  for (let step = 1; high > 1; step *= 2) {
    const probe = Math.max(1, high - step);
    if (!reaches(probe)) return { low: probe, high };
    high = probe;
  }
  return { low: 0, high };
}

/** From one that does not reach up to an end, farther each time. */
function upTo(end: number, from: number, reaches: (index: number) => boolean): Between | undefined {
  let low = from;
  for (let step = 1; low < end; step *= 2) {
    const probe = Math.min(end, low + step);
    if (reaches(probe)) return { low, high: probe };
    low = probe;
  }
  return undefined;
}
