/** Where the drill that makes the gallery may have wandered. */
import { meeting, tunnelOf } from "./gallery_axis.ts";
import type { Hole, Layout, Stretch } from "./model.ts";
import { type Opening, openingAside, openingOf } from "./opening.ts";
import { along, scaled, squareTo } from "./vector.ts";

/** How far a drill wanders. */
export interface Drift {
  /** At the end of its way: the far end, or mid-way when drilled from both ends [m]. */
  readonly drift_m: number;
  /** Whether the gallery is drilled from one end or from both. */
  readonly drilledFrom: "one" | "both";
}

/**
 * Gives a layout whose galleries fill all the space that a wandering drill may take: in every
 * direction, growing evenly from the entry, or from both ends to the middle. So walls, clashes
 * and the metal above the gallery found in it are the least over all directions.
 *
 * The drill leans by a few milliradians at most, which is left out: what is found here may be a
 * tenth of a micrometre above the truth, or a few micrometres below it.
 *
 * @param layout The layout as meant.
 * @param drift How far the drill wanders.
 * @returns The layout with galleries that widen.
 *
 * @example 1 mm over a gallery of 300 mm, 6.15 mm of wall
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const gallery: Hole = {
 *   id: "gallery",
 *   title: "Gallery",
 *   feature: "gallery",
 *   face: "datum-end",
 *   exit: "far-end",
 *   entry: [0, 0, 0.0125],
 *   into: [1, 0, 0],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.3, fromDiameter_m: 0.0127, toDiameter_m: 0.0127 },
 *   ],
 *   opensInto: [],
 * };
 * const bar = { shape: "rectangular", length_m: 0.3, height_m: 0.025, width_m: 0.025 } as const;
 *
 * const { holes } = withDrift(
 *   { bar, holes: [gallery] },
 *   { drift_m: 0.001, drilledFrom: "one" },
 * );
 *
 * assertAlmostEquals(holes[0]?.profile[0]?.toDiameter_m ?? 0, 0.0147, 1e-12);
 * ```
 */
export function withDrift(layout: Layout, drift: Drift): Layout {
  return {
    ...layout,
    holes: layout.holes.map((hole) => hole.feature === "gallery" ? drifted(hole, drift) : hole),
  };
}

/** A gallery that fills all that its drill may take. */
export function drifted(gallery: Hole, drift: Drift): Hole {
  const full_m = tunnelOf(gallery)?.ends_m ?? 0;
  const breaks = drift.drilledFrom === "both" ? [full_m / 2] : [];
  const wider = (at_m: number) => 2 * driftAt(full_m, drift, at_m);
  const widened = (s: Stretch): Stretch => ({
    ...s,
    fromDiameter_m: s.fromDiameter_m + wider(s.from_m),
    toDiameter_m: s.toDiameter_m + wider(Math.min(s.to_m, full_m)),
  });
  const profile = gallery.profile.flatMap((s) => splitAt(s, breaks)).map(widened);
  return { ...gallery, profile };
}

/** How far the drill may be off at a depth [m]. */
export function driftAt(full_m: number, { drift_m, drilledFrom }: Drift, at_m: number): number {
  if (full_m <= 0) return 0;
  const share = Math.min(1, Math.max(0, at_m / full_m));
  return drift_m * (drilledFrom === "one" ? share : 1 - Math.abs(2 * share - 1));
}

function splitAt(stretch: Stretch, breaks: readonly number[]): readonly Stretch[] {
  const { from_m, to_m, fromDiameter_m, toDiameter_m } = stretch;
  const inside = breaks.filter((at_m) => at_m > from_m && at_m < to_m);
  const at = [from_m, ...inside, to_m];
  const wide = (at_m: number) =>
    fromDiameter_m + (toDiameter_m - fromDiameter_m) * (at_m - from_m) / (to_m - from_m);
  return at.slice(1).map((end_m, i) => {
    const begin_m = at[i] as number;
    return {
      ...stretch,
      from_m: begin_m,
      to_m: end_m,
      fromDiameter_m: wide(begin_m),
      toDiameter_m: wide(end_m),
    };
  });
}

/** Directions that a drill is let wander in, around: the worst of a smooth function lies near one. */
const DIRECTIONS = 16;

/**
 * Finds the worst opening of a hole when the gallery has wandered: first opening soonest, last
 * deepest, least margins, each over all directions.
 *
 * @param hole The pocket or port.
 * @param gallery The gallery as meant.
 * @param drift How far the drill wanders.
 * @returns The worst of each; what is missing in any direction is missing here. Undefined as
 * for {@linkcode openingOf}.
 *
 * @example Half a millimetre off takes half a millimetre of the margin
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const bore = (to_m: number, d_m: number) =>
 *   ({ cut: "bore", from_m: 0, to_m, fromDiameter_m: d_m, toDiameter_m: d_m }) as const;
 * const gallery: Hole = {
 *   id: "gallery",
 *   title: "Gallery",
 *   feature: "gallery",
 *   face: "datum-end",
 *   entry: [0, 0, 0.0125],
 *   into: [1, 0, 0],
 *   profile: [bore(0.4, 0.0127)],
 *   opensInto: [],
 * };
 * const port: Hole = {
 *   id: "port",
 *   title: "Port",
 *   feature: "port",
 *   face: "opposite",
 *   entry: [0.2, 0, 0.025],
 *   into: [0, 0, -1],
 *   profile: [bore(0.0125, 0.009)],
 *   opensInto: ["gallery"],
 * };
 *
 * const worst = worstOpening(port, gallery, { drift_m: 0.001, drilledFrom: "one" });
 *
 * assertAlmostEquals(worst?.margin_m ?? 0, 1.35e-3, 1e-9);
 * assertAlmostEquals(worst?.first_m ?? 0, 5.65e-3, 1e-9);
 * ```
 */
export function worstOpening(hole: Hole, gallery: Hole, drift: Drift): Opening | undefined {
  const tunnel = tunnelOf(gallery);
  const cross = tunnel === undefined ? undefined : meeting(hole, tunnel);
  if (tunnel === undefined || cross === undefined) return undefined;
  const off_m = driftAt(tunnel.ends_m, drift, cross.at_m);
  const [first, second] = squareTo(gallery.into);
  const openings = Array.from({ length: DIRECTIONS }, (_, i) => {
    const turn = 2 * Math.PI * i / DIRECTIONS;
    const aside = along(scaled(first, Math.cos(turn)), second, Math.sin(turn));
    return openingAside(hole, { ...gallery, entry: along(gallery.entry, aside, off_m) });
  });
  const above_m = openingOf(hole, drifted(gallery, drift))?.above_m;
  return worstOf(openings, above_m);
}

function worstOf(
  openings: readonly (Opening | undefined)[],
  above_m: number | undefined,
): Opening | undefined {
  const list = (pick: (one: Opening) => number | undefined): readonly number[] | undefined => {
    const values = openings.map((one) => one === undefined ? undefined : pick(one));
    return values.some((value) => value === undefined) ? undefined : values as number[];
  };
  const margins = list(({ margin_m }) => margin_m);
  if (margins === undefined) return undefined;
  const first = list(({ first_m }) => first_m);
  const last = list(({ last_m }) => last_m);
  const beyond = list(({ beyond_m }) => beyond_m);
  const far = list(({ toFarWall_m }) => toFarWall_m);
  return {
    margin_m: Math.min(...margins),
    ...(first === undefined ? {} : { first_m: Math.min(...first) }),
    ...(last === undefined ? {} : { last_m: Math.max(...last) }),
    ...(beyond === undefined ? {} : { beyond_m: Math.min(...beyond) }),
    ...(far === undefined ? {} : { toFarWall_m: Math.min(...far) }),
    ...(above_m === undefined ? {} : { above_m }),
  };
}
