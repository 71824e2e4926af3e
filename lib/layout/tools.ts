/** The tools that a rail's holes need. */
import type { Hole, Layout, Stretch } from "./model.ts";

/** What kind of tool. */
export type ToolKind =
  | "drill"
  | "tap"
  | "spotting drill"
  | "countersink"
  | "counterbore"
  | "bore";

/** A tool and the holes it serves. */
export interface Tool {
  /** What kind; `bore` is what sizes the bore that a ring seals in: reamer, form tool or hone. */
  readonly kind: ToolKind;
  /** Its diameter; of a tap the thread's major diameter [m]. */
  readonly diameter_m: number;
  /** The whole angle of the cone that it cuts, where that matters [rad]. */
  readonly included_rad?: number;
  /** The thread that it cuts, of a tap. */
  readonly thread?: string;
  /** Ids of the holes it serves, in the order of the layout. */
  readonly holes: readonly string[];
  /** How deep it goes at most, from the entry to the end of its full diameter [m]. */
  readonly deepest_m: number;
}

type Use = Omit<Tool, "holes" | "deepest_m"> & { readonly depth_m: number };

/**
 * Lists the distinct tools that cut a layout's holes. A seat that takes up the diameter of the
 * hole above it is cut by the same pointed drill, so such a port needs no drill besides.
 *
 * @param layout The layout.
 * @returns The tools, in the order in which the holes first need them.
 *
 * @example A port of M10x1 with a seat of 90 degrees at the bottom of 9 mm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const list = tools({
 *   bar: { shape: "rectangular", length_m: 0.1, height_m: 0.025, width_m: 0.025 },
 *   holes: [{
 *     id: "port",
 *     title: "Port",
 *     feature: "port",
 *     face: "opposite",
 *     entry: [0.04, 0, 0.025],
 *     into: [0, 0, -1],
 *     profile: [
 *       { cut: "thread", from_m: 0, to_m: 0.008, fromDiameter_m: 0.009, toDiameter_m: 0.009 },
 *       { cut: "seat", from_m: 0.008, to_m: 0.0105, fromDiameter_m: 0.009, toDiameter_m: 0.004 },
 *       { cut: "pilot", from_m: 0.0105, to_m: 0.0125, fromDiameter_m: 0.004, toDiameter_m: 0.004 },
 *     ],
 *     thread: { name: "M10x1", major_m: 0.01, pitch_m: 0.001, from_m: 0, to_m: 0.006 },
 *     opensInto: [],
 *   }],
 * });
 *
 * assertEquals(list.map(({ kind, diameter_m }) => [kind, diameter_m]), [
 *   ["spotting drill", 0.009],
 *   ["drill", 0.004],
 *   ["tap", 0.01],
 * ]);
 * ```
 */
export function tools(layout: Layout): readonly Tool[] {
  const found = new Map<string, Tool>();
  for (const hole of layout.holes) {
    for (const { depth_m, ...tool } of usesOf(hole)) {
      const key = keyOf(tool);
      const known = found.get(key) ?? { ...tool, holes: [], deepest_m: 0 };
      const holes = known.holes.includes(hole.id) ? known.holes : [...known.holes, hole.id];
      found.set(key, { ...known, holes, deepest_m: Math.max(known.deepest_m, depth_m) });
    }
  }
  return [...found.values()];
}

/** Tools that differ by less than a micrometre or a thousandth of a radian are one. */
function keyOf({ kind, diameter_m, included_rad, thread }: Omit<Use, "depth_m">): string {
  const micrometres = Math.round(diameter_m * 1e6);
  return `${kind} ${micrometres} ${Math.round((included_rad ?? 0) * 1e3)} ${thread ?? ""}`;
}

function usesOf(hole: Hole): readonly Use[] {
  const { profile, thread } = hole;
  const cuts = profile.flatMap((stretch) =>
    madeByPoint(profile, stretch) ? [] : cutBy(hole, stretch)
  );
  if (thread === undefined) return cuts;
  const { name, major_m, to_m } = thread;
  return [...cuts, { kind: "tap", diameter_m: major_m, thread: name, depth_m: to_m }];
}

/** Whether the pointed drill that leaves a seat below has made this much of the hole already. */
function madeByPoint(profile: readonly Stretch[], { to_m, toDiameter_m }: Stretch): boolean {
  const seat = profile.find(({ cut, from_m }) => cut === "seat" && from_m > 0);
  return seat !== undefined && to_m <= seat.from_m && toDiameter_m === seat.fromDiameter_m;
}

function cutBy(hole: Hole, stretch: Stretch): readonly Use[] {
  const { cut, fromDiameter_m: diameter_m, to_m: depth_m } = stretch;
  switch (cut) {
    case "tip":
      return [];
    case "seat":
      return [{ kind: "spotting drill", diameter_m, included_rad: coneOf(stretch), depth_m }];
    case "lead-in":
      return [{ kind: "countersink", diameter_m, included_rad: coneOf(stretch), depth_m }];
    case "spotface":
      return [{ kind: "counterbore", diameter_m, depth_m }];
    case "bore":
      return borer(hole, stretch);
    case "thread":
    case "pilot":
      return [{ kind: "drill", diameter_m, depth_m }];
  }
}

/** Pockets and ringed plugs have a bore that something seals in; any other bore is drilled. */
function borer(hole: Hole, stretch: Stretch): readonly Use[] {
  const { fromDiameter_m, toDiameter_m, to_m: depth_m } = stretch;
  const sealing = hole.feature === "pocket" || hole.feature === "plug";
  if (!sealing) return [{ kind: "drill", diameter_m: fromDiameter_m, depth_m }];
  // The cone at a form tool's end belongs to the tool that cuts the bore above it.
  if (fromDiameter_m !== toDiameter_m) return [];
  return [{ kind: "bore", diameter_m: fromDiameter_m, depth_m }];
}

function coneOf({ from_m, to_m, fromDiameter_m, toDiameter_m }: Stretch): number {
  return 2 * Math.atan(Math.abs(fromDiameter_m - toDiameter_m) / 2 / (to_m - from_m));
}
