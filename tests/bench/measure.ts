/** Small measures that hold on a busy machine: medians, and both sides of a ratio turn by turn. */

/** The middle one of some numbers. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const low = sorted[Math.floor((sorted.length - 1) / 2)] ?? NaN;
  const high = sorted[Math.ceil((sorted.length - 1) / 2)] ?? NaN;
  return (low + high) / 2;
}

/** What is timed, by name. It may give a promise. */
export type Works = Readonly<Record<string, () => unknown>>;

/**
 * Times some works turn by turn, so that what else the machine does meets all alike.
 *
 * @param works What to time.
 * @param milliseconds How long each works in one turn.
 * @param turns How often each has its turn; the first only warms up.
 * @returns The median time of one call of each, in milliseconds.
 */
export async function timed<W extends Works>(
  works: W,
  milliseconds = 200,
  turns = 9,
): Promise<Record<keyof W, number>> {
  const times = Object.keys(works).map((name) => ({ name, values: [] as number[] }));
  for (let turn = 0; turn <= turns; turn++) {
    for (const { name, values } of times) {
      const value = await once(works[name] ?? (() => {}), milliseconds);
      if (turn > 0) values.push(value);
    }
  }
  const entries = times.map(({ name, values }) => [name, median(values)]);
  return Object.fromEntries(entries) as Record<keyof W, number>;
}

async function once(work: () => unknown, milliseconds: number): Promise<number> {
  const start = performance.now();
  let now = start;
  let calls = 0;
  while (now - start < milliseconds) {
    const result = work();
    if (result instanceof Promise) await result; // awaiting a plain value would cost its own time
    calls++;
    now = performance.now();
  }
  return (now - start) / calls;
}
