/** Labels along a line: as near to where they belong as their sizes let them, in order. */

/**
 * Spreads labels along an axis so that none overlaps its neighbour.
 *
 * @param wanted Where the middle of each belongs, in rising order.
 * @param sizes How much room each takes along the axis.
 * @param room From where to where they may reach; what doesn't fit goes beyond its end.
 * @returns Where the middle of each stands.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(spread([10, 10, 30], [4, 4, 4], [0, 100]), [8, 12, 30]);
 * assertEquals(spread([0, 1], [4, 4], [0, 100]), [2, 6]);
 * ```
 */
export function spread(
  wanted: readonly number[],
  sizes: readonly number[],
  room: readonly [least: number, most: number],
): number[] {
  // Neighbours that meet become one group, which stands where its members are least moved.
  const groups: { from: number; count: number; size: number; sum: number }[] = [];
  wanted.forEach((middle, i) => {
    const size = sizes[i] ?? 0;
    groups.push({ from: i, count: 1, size, sum: middle - size / 2 });
    for (;;) {
      const [before, last] = [groups.at(-2), groups.at(-1)];
      if (!before || !last || start(before, room) + before.size <= start(last, room)) break;
      groups.splice(-2, 2, {
        from: before.from,
        count: before.count + last.count,
        size: before.size + last.size,
        sum: before.sum + last.sum - last.count * before.size,
      });
    }
  });
  return groups.flatMap((group) => {
    let at = start(group, room);
    return sizes.slice(group.from, group.from + group.count).map((size) => {
      at += size;
      return at - size / 2;
    });
  });
}

function start(
  { count, size, sum }: { readonly count: number; readonly size: number; readonly sum: number },
  [least, most]: readonly [number, number],
): number {
  return Math.max(least, Math.min(most - size, sum / count));
}

/**
 * The lowest row for each interval in which it overlaps none before it.
 *
 * @param intervals From where to where each reaches, with the gap it wants.
 * @returns A row for each, from nought.
 */
export function rowsFor(intervals: readonly (readonly [from: number, to: number])[]): number[] {
  const rows: (readonly [number, number])[][] = [];
  return intervals.map((each) => {
    const free = rows.findIndex((row) => row.every(([a, b]) => each[1] <= a || each[0] >= b));
    if (free >= 0) {
      rows[free]?.push(each);
      return free;
    }
    return rows.push([each]) - 1;
  });
}
