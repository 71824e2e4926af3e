/** Names set into their lines, as heights on contours are. */
import { type Placed, roomOf } from "./plot_place.ts";

/** A line with the name to be set into it. */
export interface NamedLine {
  readonly name: string;
  /** By rising x. */
  readonly points: readonly Placed[];
}

/** A name and its middle. */
export interface PlacedName extends Placed {
  readonly name: string;
}

/** Height of a line of text [pixels]. */
const TEXT_HEIGHT = 20;
/** Shares of a line's length along x that are tried, the best first. */
const TRIED = [0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75];
/** Beyond this many times the text's size, more room is no gain. */
const ENOUGH = 1.2;
/** Parts that a line is cut into where others have to keep away from it. */
const PARTS = 16;

/**
 * Finds a place for each name on its line, with room around it even on a phone.
 *
 * @param lines All lines; one with an empty name is only kept away from.
 * @param marks Points to keep away from too.
 * @returns The names that have a line, each where it has most room.
 */
export function plotNames(lines: readonly NamedLine[], marks: readonly Placed[]): PlacedName[] {
  const drawn = lines.filter(({ points }) => points.length > 0);
  const cut = drawn.map(({ points }) => partsOf(points));
  const taken = [...marks];
  return drawn.flatMap(({ name, points }, i) => {
    if (name === "") return [];
    const others = cut.flatMap((parts, j) => j === i ? [] : parts);
    const at = roomiest(points, roomOf(name), [...taken, ...others]);
    taken.push(at);
    return [{ name, ...at }];
  });
}

function roomiest(
  line: readonly Placed[],
  room: number,
  obstacles: readonly Placed[],
): Placed {
  const within = (x: number): number => Math.min(Math.max(x, room / 2), 1 - room / 2);
  let best = pointAt(line, within(alongOf(line, 0)));
  let most = -1;
  for (const share of TRIED) {
    const at = pointAt(line, within(alongOf(line, share)));
    const clear = Math.min(
      ENOUGH,
      ...obstacles.map(({ x, y }) =>
        Math.max(2 * Math.abs(x - at.x) / room, Math.abs(y - at.y) / TEXT_HEIGHT)
      ),
    );
    if (clear > most) [best, most] = [at, clear];
  }
  return best;
}

function partsOf(line: readonly Placed[]): Placed[] {
  return Array.from({ length: PARTS + 1 }, (_, i) => pointAt(line, alongOf(line, i / PARTS)));
}

function alongOf(line: readonly Placed[], share: number): number {
  const [first = 0, last = 0] = [line.at(0)?.x, line.at(-1)?.x];
  return first + share * (last - first);
}

/** The point of a line at a place along x; the nearer end where the line does not reach so far. */
function pointAt(line: readonly Placed[], x: number): Placed {
  const next = line.findIndex((each) => each.x >= x);
  const after = next < 0 ? line.at(-1) : line[next];
  if (after === undefined) throw new RangeError("a line needs a point");
  const before = line[next - 1];
  if (before === undefined) return after;
  const part = (x - before.x) / (after.x - before.x);
  return { x, y: before.y + part * (after.y - before.y) };
}
