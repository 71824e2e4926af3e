/** Where a drill first meets the gallery, and how far it keeps inside it: closed forms, no search in space. */
import { type Drift, driftAt } from "./drift.ts";
import { type Meeting, meeting, type Tunnel, tunnelOf } from "./gallery_axis.ts";
import type { Hole } from "./model.ts";
import { openerOf } from "./opening.ts";
import { dot } from "./vector.ts";

interface Crossing {
  readonly tunnel: Tunnel;
  readonly cross: Meeting;
}

/** A hole's axis and the gallery it crosses within its full bore. */
function crossing(hole: Hole, gallery: Hole): Crossing | undefined {
  const tunnel = tunnelOf(gallery);
  const cross = tunnel && meeting(hole, tunnel);
  if (tunnel === undefined || cross === undefined) return undefined;
  return cross.at_m < tunnel.begins_m || cross.at_m > tunnel.ends_m ? undefined : { tunnel, cross };
}

/**
 * Finds how far the drill that opens the gallery keeps inside its width, wherever the
 * gallery's drill has wandered.
 *
 * @param hole The pocket or port.
 * @param gallery The gallery as meant.
 * @param drift How far its drill may wander.
 * @returns The margin [m], below 0 the drill stands out and leaves a lip; undefined for a hole
 * that runs along the gallery or misses its full bore.
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
 * const margin_m = openingMargin(port, gallery, { drift_m: 0.001, drilledFrom: "one" });
 *
 * assertAlmostEquals(margin_m ?? 0, 1.35e-3, 1e-12);
 * ```
 */
export function openingMargin(hole: Hole, gallery: Hole, drift: Drift): number | undefined {
  const found = crossing(hole, gallery);
  const drill = openerOf(hole);
  if (found === undefined || drill === undefined) return undefined;
  const { tunnel, cross } = found;
  return tunnel.radius_m - cross.aside_m - drill.toDiameter_m / 2 -
    driftAt(tunnel.ends_m, drift, cross.at_m);
}

/** The most that the gallery wanders beneath a drill: at its nearer or farther side, or mid-way. */
function mostDrift(
  { begins_m, ends_m }: Tunnel,
  drift: Drift,
  at_m: number,
  drill: number,
): number {
  const inside = (along_m: number): number => Math.min(ends_m, Math.max(begins_m, along_m));
  const middle_m = Math.min(at_m + drill, Math.max(at_m - drill, ends_m / 2));
  return Math.max(
    ...[at_m - drill, middle_m, at_m + drill].map((x) => driftAt(ends_m, drift, inside(x))),
  );
}

/** Steps of the search, each of which leaves two thirds. */
const STEPS = 60;

/**
 * Finds where a flat-ended drill along a hole's axis first meets the gallery.
 *
 * @param hole The hole; only its axis counts.
 * @param gallery The gallery.
 * @param drill_m Diameter of the drill [m].
 * @param drift How far the gallery's drill may have wandered, towards the hole; not unless given.
 * @returns The depth from the hole's entry [m]; undefined when the drill passes by.
 *
 * @example A pocket of 14 mm below a gallery of 12.7 mm
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
 *   entry: [0, 0, 0.02],
 *   into: [1, 0, 0],
 *   profile: [bore(0.4, 0.0127)],
 *   opensInto: [],
 * };
 * const pocket: Hole = {
 *   id: "pocket-1",
 *   title: "Pocket 1",
 *   feature: "pocket",
 *   face: "injectors",
 *   entry: [0.2, 0, 0],
 *   into: [0, 0, 1],
 *   profile: [bore(0.012, 0.014)],
 *   opensInto: ["gallery"],
 * };
 *
 * assertAlmostEquals(firstTouch(pocket, gallery, 0.014) ?? 0, 0.02 - 0.00635, 1e-12);
 * ```
 */
export function firstTouch(
  hole: Hole,
  gallery: Hole,
  drill_m: number,
  drift: Drift = { drift_m: 0, drilledFrom: "one" },
): number | undefined {
  const found = crossing(hole, gallery);
  if (found === undefined) return undefined;
  const { tunnel, cross } = found;
  const drill = drill_m / 2;
  const radius = tunnel.radius_m + mostDrift(tunnel, drift, cross.at_m, drill);
  // Seen along the gallery its bore is a circle, and the drill's end an ellipse as wide as the drill.
  const lean = Math.abs(dot(hole.into, tunnel.axis));
  const steep = Math.sqrt(1 - lean * lean);
  const from = Math.max(-radius, cross.aside_m - drill);
  const to = Math.min(radius, cross.aside_m + drill);
  if (!(from < to)) return undefined;
  const depthAt = (aside: number): number => {
    const into = Math.sqrt(Math.max(0, radius ** 2 - aside ** 2));
    const edge = lean * Math.sqrt(Math.max(0, drill ** 2 - (aside - cross.aside_m) ** 2));
    return cross.depth_m - (into + edge) / steep;
  };
  // Both arcs bulge, so their sum has one lowest place.
  let [low, high] = [from, to];
  for (let step = 0; step < STEPS; step++) {
    const third = (high - low) / 3;
    if (depthAt(low + third) < depthAt(high - third)) high -= third;
    else low += third;
  }
  return depthAt((low + high) / 2);
}
