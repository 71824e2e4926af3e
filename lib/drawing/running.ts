/** Running dimensions from one datum, ISO 129-1: one line, an arrow and a figure at each place. */
import { widthOf } from "./boxes.ts";
import type { Say } from "./figures.ts";
import { arrow, line, text } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import type { Dimension, Mark, Measure, Point } from "./shapes.ts";
import { spread } from "./spread.ts";

/** A place to dimension. */
export interface Stop {
  /** Along the line, on paper [mm]. */
  readonly at: number;
  /** From the datum, on the rail [mm]. */
  readonly value: number;
  /** Where its extension line begins, across the line on paper. */
  readonly from: number;
  /** Ids of the holes there; none of the bar's own ends. */
  readonly holes: readonly string[];
  /** What is measured: `along`, `length`. */
  readonly of: string;
  readonly measure?: Measure;
}

/** Where running dimensions go. */
export interface Chain {
  /** The datum's place along the line, and where its extension line begins. */
  readonly datum: { readonly at: number; readonly from: number };
  readonly stops: readonly Stop[];
  /** Where the line lies, across. */
  readonly line: number;
  /** Whether figures stand on the side of greater or lesser coordinates across. */
  readonly away: 1 | -1;
  /** Along x with upright figures, or along y with level ones. */
  readonly axis: "x" | "y";
  /** The piece of the line that this sheet holds; nothing outside is drawn. */
  readonly room: readonly [least: number, most: number];
  readonly say: Say;
}

/** Between the middles of neighbouring figures [mm]. */
const PITCH = 1.6 * TEXT_mm;
/** From the line to the figures [mm]. */
const LEAD = 3;

/** How far figures reach from the line [mm]. */
export function chainReach(stops: readonly Stop[], say: Say): number {
  const widest = Math.max(0, ...stops.map(({ value }) => widthOf(say(value), TEXT_mm)));
  return LEAD + 0.8 + widest;
}

/** The dimensions of a chain; the first carries the line and the datum's circle. */
export function running(chain: Chain): Dimension[] {
  const { datum, line: across, away, axis, room, say } = chain;
  const place = (along: number, aside: number): Point =>
    axis === "x" ? [along, aside] : [aside, along];
  const within = chain.stops.filter(({ at }) => at >= room[0] - 1e-6 && at <= room[1] + 1e-6);
  const stops = merged(within, across).sort((a, b) => a.at - b.at);
  const stands = spread(
    stops.map(({ at }) => at),
    stops.map(() => PITCH),
    [room[0] - PITCH, room[1] + PITCH],
  );
  const sorted = chain.stops.map(({ at }) => at);
  const [least, most] = [Math.min(datum.at, ...sorted), Math.max(datum.at, ...sorted)];
  const base: Mark[] = [
    line(place(Math.max(least, room[0]), across), place(Math.min(most, room[1]), across)),
  ];
  if (datum.at >= room[0] && datum.at <= room[1]) {
    const overshoot = across + away * 1;
    base.push(
      line(place(datum.at, datum.from), place(datum.at, overshoot)),
      {
        kind: "circle",
        layer: "dimensions",
        type: "01.1",
        centre: place(datum.at, across),
        radius: 0.9,
      },
    );
  }
  return stops.map((stop, i) => {
    const stand = stands[i] ?? stop.at;
    const end = across + away * LEAD;
    const says = say(stop.value);
    const marks: Mark[] = [
      ...(i === 0 ? base : []),
      line(place(stop.at, stop.from), place(stop.at, across)),
      line(place(stop.at, across), place(stand, end)),
    ];
    const from = stop.at > datum.at ? -1 : 1;
    const near = Math.abs(stop.at - datum.at);
    if (near > 0.1) marks.push(arrow(place(stop.at, across), place(stop.at + from, across)));
    marks.push(figure(axis, away, stand, end, says));
    return {
      kind: "dimension",
      layer: "dimensions",
      measure: stop.measure ?? "place",
      value: stop.value,
      of: stop.of,
      says,
      holes: stop.holes,
      marks,
    };
  });
}

function figure(axis: "x" | "y", away: 1 | -1, along: number, end: number, says: string): Mark {
  const middle = along + (axis === "x" ? 0.5 : -0.5) * TEXT_mm;
  const at: Point = axis === "x" ? [middle, end + away * 0.8] : [end + away * 0.8, middle];
  const outwards = away > 0 ? "start" : "end";
  return text(says, at, { anchor: outwards, turned: axis === "x" ? 90 : 0, layer: "dimensions" });
}

/** Holes at one place share a figure; its extension line begins at the farthest. */
function merged(stops: readonly Stop[], across: number): Stop[] {
  const kept: Stop[] = [];
  for (const stop of stops) {
    const same = kept.findIndex(({ at }) => Math.abs(at - stop.at) < 0.01);
    const other = kept[same];
    if (other === undefined) {
      kept.push(stop);
      continue;
    }
    const farther = Math.abs(stop.from - across) > Math.abs(other.from - across) ? stop : other;
    kept[same] = { ...other, from: farther.from, holes: [...other.holes, ...stop.holes] };
  }
  return kept;
}
