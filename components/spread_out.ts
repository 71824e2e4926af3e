/** Moves marks apart that would cover each other, each as little as it takes. */

/** Neighbours that stand side by side: where their first would stand, and how many they are. */
interface Block {
  readonly start: number;
  readonly count: number;
}

/**
 * Finds places for marks at least so far apart, in the same order, by least squares
 * (pooling of adjacent violators).
 *
 * @param wanted Where each would best stand, as a share of the width [0 to 1], rising.
 * @param pitch The least distance between two.
 * @returns Where they stand, within 0 and 1 as far as they find room there.
 */
export function spreadOut(wanted: readonly number[], pitch: number): number[] {
  const blocks: Block[] = [];
  wanted.forEach((at, i) => {
    let last: Block = { start: at - i * pitch, count: 1 };
    for (let before = blocks.at(-1); before && before.start > last.start; before = blocks.at(-1)) {
      blocks.pop();
      const count = before.count + last.count;
      last = { start: (before.start * before.count + last.start * last.count) / count, count };
    }
    blocks.push(last);
  });
  const room = Math.max(0, 1 - (wanted.length - 1) * pitch);
  return blocks.flatMap(({ start, count }) => Array<number>(count).fill(start))
    .map((start, i) => Math.min(Math.max(start, 0), room) + i * pitch);
}
