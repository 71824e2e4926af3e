/** Where a pocket or port opens into the gallery. */
import { type CrossSection, crossSection, insideTunnel, squareInside } from "./cross_section.ts";
import { frustaOf, type Frustum } from "./frustum.ts";
import { type Meeting, meeting, type Tunnel, tunnelOf } from "./gallery_axis.ts";
import { leastBetween } from "./least_distance.ts";
import type { Hole, Stretch } from "./model.ts";
import { largestOverTurn } from "./over_a_turn.ts";

/** Where a hole opens into the gallery. Depths are from the hole's entry along its axis. */
export interface Opening {
  /** Where it begins to open [m]; undefined when it ends before. */
  readonly first_m?: number;
  /** Where it is open all round [m]; undefined when it stands out of the gallery's width. */
  readonly last_m?: number;
  /** How far the drill that opens it keeps inside the gallery's width [m]; below 0 it stands out. */
  readonly margin_m: number;
  /** How far that drill's full diameter goes beyond the last opening [m]; below 0 a lip is left. */
  readonly beyond_m?: number;
  /** How much deeper the hole could go before it cuts the gallery's far wall [m]. */
  readonly toFarWall_m?: number;
  /**
   * Metal between the gallery and what the pilot goes on from [m]: a bore, a seat, a thread.
   * Undefined for a port that needs no pilot. Below 0 the gallery cuts into it.
   */
  readonly above_m?: number;
}

/**
 * Finds where a hole opens into a gallery that crosses it. The gallery is taken by the bore
 * that it begins with; only `above_m` knows a wider place, as one that drift makes.
 *
 * @param hole The pocket or port.
 * @param gallery The gallery.
 * @returns The opening; undefined when the hole runs along the gallery, or past its end.
 *
 * @example A 9 mm hole into the middle of a 12.7 mm gallery, 12.5 mm down
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import type { Hole } from "./model.ts";
 *
 * const gallery: Hole = {
 *   id: "gallery",
 *   title: "Gallery",
 *   feature: "gallery",
 *   face: "datum-end",
 *   entry: [0, 0, 0.0125],
 *   into: [1, 0, 0],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.4, fromDiameter_m: 0.0127, toDiameter_m: 0.0127 },
 *   ],
 *   opensInto: [],
 * };
 * const opening = openingOf({
 *   id: "port",
 *   title: "Port",
 *   feature: "port",
 *   face: "opposite",
 *   entry: [0.2, 0, 0.025],
 *   into: [0, 0, -1],
 *   profile: [
 *     { cut: "bore", from_m: 0, to_m: 0.0125, fromDiameter_m: 0.009, toDiameter_m: 0.009 },
 *   ],
 *   opensInto: ["gallery"],
 * }, gallery);
 *
 * assertAlmostEquals(opening?.first_m ?? 0, 6.15e-3, 1e-9);
 * assertAlmostEquals(opening?.last_m ?? 0, 8.019766e-3, 1e-9);
 * assertAlmostEquals(opening?.margin_m ?? 0, 1.85e-3, 1e-12);
 * ```
 */
export function openingOf(hole: Hole, gallery: Hole): Opening | undefined {
  const opening = openingAside(hole, gallery);
  if (opening === undefined) return undefined;
  const above_m = metalAbove(hole, gallery);
  return above_m === undefined ? opening : { ...opening, above_m };
}

/** The opening but for the metal above, which is dearer to find. */
export function openingAside(hole: Hole, gallery: Hole): Omit<Opening, "above_m"> | undefined {
  const tunnel = tunnelOf(gallery);
  const drill = openerOf(hole);
  const cross = tunnel === undefined ? undefined : meetingWithin(hole, tunnel);
  if (tunnel === undefined || drill === undefined || cross === undefined) return undefined;
  const view = crossSection(hole, tunnel);
  const radius_m = drill.toDiameter_m / 2;
  const first_m = firstOpening(hole, view);
  const last_m = lastOpening(view, radius_m);
  const toFarWall_m = farWall(hole, drill, view);
  return {
    margin_m: tunnel.radius_m - cross.aside_m - radius_m,
    ...(first_m === undefined ? {} : { first_m }),
    ...(last_m === undefined ? {} : { last_m, beyond_m: drill.to_m - last_m }),
    ...(toFarWall_m === undefined ? {} : { toFarWall_m }),
  };
}

/** Where a hole meets a tunnel; undefined when it runs along it or past its end. */
function meetingWithin(hole: Hole, tunnel: Tunnel): Meeting | undefined {
  const cross = meeting(hole, tunnel);
  if (cross === undefined) return undefined;
  return cross.at_m < tunnel.begins_m || cross.at_m > tunnel.ends_m ? undefined : cross;
}

/** The stretch whose full diameter opens the gallery: the last but for the drill's point. */
export function openerOf(hole: Hole): Stretch | undefined {
  return hole.profile.filter(({ cut }) => cut !== "tip").at(-1);
}

/** Deeper than any bar [m]: what misses the gallery is kept finite, so that it can be compared. */
const NEVER_m = 1e3;

/** Where any side line of any stretch first meets the gallery. */
function firstOpening(hole: Hole, view: CrossSection): number | undefined {
  for (const stretch of hole.profile) {
    // Stretches follow each other in depth, so the first that meets the gallery is the one.
    const first_m = firstOf(stretch, view);
    if (first_m !== undefined && first_m <= stretch.to_m) return Math.max(first_m, stretch.from_m);
  }
  return undefined;
}

/** Where a stretch first touches the hollow, between its own ends if it is a cone. */
function firstOf(stretch: Stretch, view: CrossSection): number | undefined {
  const { from_m, to_m, fromDiameter_m, toDiameter_m } = stretch;
  const square = squareInside(view, Math.max(fromDiameter_m, toDiameter_m) / 2);
  // A cone touches no sooner than a cylinder as wide as its wider end.
  if (square !== undefined) {
    const { first_m } = square;
    if (first_m === undefined || first_m > to_m || fromDiameter_m === toDiameter_m) return first_m;
  }
  const growth = (toDiameter_m - fromDiameter_m) / 2 / (to_m - from_m);
  const side = { radius_m: fromDiameter_m / 2 - growth * from_m, growth };
  const first_m = -largestOverTurn((turn) => {
    const [enters, leaves] = insideTunnel(view, side, turn) ?? [NEVER_m, NEVER_m];
    return enters > to_m || leaves < from_m ? -NEVER_m : -Math.max(from_m, enters);
  }).value;
  return first_m < NEVER_m ? first_m : undefined;
}

/** Where the whole rim of the drill is inside the gallery, however deep the drill goes. */
function lastOpening(view: CrossSection, radius_m: number): number | undefined {
  const square = squareInside(view, radius_m);
  if (square !== undefined) return square.last_m;
  const side = { radius_m, growth: 0 };
  const last_m = largestOverTurn((turn) => insideTunnel(view, side, turn)?.[0] ?? NEVER_m).value;
  return last_m < NEVER_m ? last_m : undefined;
}

/** How much deeper the end of the drill and its point may go before they leave the gallery. */
function farWall(hole: Hole, drill: Stretch, view: CrossSection): number | undefined {
  const rooms = hole.profile.filter((s) => s.cut === "tip" || s === drill)
    .flatMap(({ to_m, toDiameter_m }) => {
      const leaves_m = leaving(view, toDiameter_m / 2);
      return leaves_m === undefined ? [] : [leaves_m - to_m];
    });
  return rooms.length === 0 ? undefined : Math.min(...rooms);
}

/** Where the rim of a drill first leaves the gallery again. */
function leaving(view: CrossSection, radius_m: number): number | undefined {
  const square = squareInside(view, radius_m);
  if (square !== undefined) return square.leaves_m;
  const side = { radius_m, growth: 0 };
  const leaves_m = -largestOverTurn((turn) => -(insideTunnel(view, side, turn)?.[1] ?? -NEVER_m))
    .value;
  return leaves_m > -NEVER_m ? leaves_m : undefined;
}

/** Metal between the gallery and all that lies above the pilot. */
function metalAbove(hole: Hole, gallery: Hole): number | undefined {
  const above = abovePilot(hole);
  return above.length === 0 ? undefined : leastBetween(above, frustaOf(gallery));
}

/** What lies above a hole's pilot; all of a pocket without one, as its bore opens then. */
export function abovePilot(hole: Hole): readonly Frustum[] {
  const drill = openerOf(hole);
  if (drill?.cut !== "pilot") return hole.feature === "pocket" ? frustaOf(hole) : [];
  return frustaOf({ ...hole, profile: hole.profile.filter(({ to_m }) => to_m <= drill.from_m) });
}

/**
 * Gives a hole as far as it is cut into metal: what opens into a gallery ends where it is open
 * all round, as all beyond is hollow already. Two pilots from opposite sides don't clash there.
 *
 * @param hole The hole.
 * @param holes Holes that it may open into.
 * @returns The hole, shortened if it opens.
 */
export function inMetal(hole: Hole, holes: readonly Hole[]): Hole {
  const gallery = holes.find(({ id, feature }) =>
    feature === "gallery" && hole.opensInto.includes(id)
  );
  const tunnel = gallery === undefined ? undefined : tunnelOf(gallery);
  const drill = openerOf(hole);
  const cross = tunnel === undefined ? undefined : meetingWithin(hole, tunnel);
  if (tunnel === undefined || drill === undefined || cross === undefined) return hole;
  const last_m = lastOpening(crossSection(hole, tunnel), drill.toDiameter_m / 2);
  const ends_m = last_m ?? cross.depth_m;
  return { ...hole, profile: hole.profile.flatMap((stretch) => cutAt(stretch, ends_m)) };
}

function cutAt(stretch: Stretch, depth_m: number): readonly Stretch[] {
  const { from_m, to_m, fromDiameter_m, toDiameter_m } = stretch;
  if (to_m <= depth_m) return [stretch];
  if (from_m >= depth_m) return [];
  const share = (depth_m - from_m) / (to_m - from_m);
  const d_m = fromDiameter_m + share * (toDiameter_m - fromDiameter_m);
  return [{ ...stretch, to_m: depth_m, toDiameter_m: d_m }];
}
