/** A tool of the workshop sheet. */
import type { Band, Spindle } from "@/lib/thread/mod.ts";

/** What kind of tool. */
export type WorkshopToolKind =
  | "drill"
  | "tap"
  | "spotting drill"
  | "port form tool"
  | "taper reamer"
  | "countersink"
  | "counterbore"
  | "bore"
  | "reamer"
  | "flexible hone";

/** A drill of the shop in place of the one asked for. */
export interface ToolEquivalent {
  /** As stamped on it: `9.0 mm`, `23/64 in`, `T`. */
  readonly name: string;
  /** Its diameter [m]. */
  readonly diameter_m: number;
  /** Its diameter less the one asked for [m]. */
  readonly error_m: number;
  /** Thread height that it leaves on the ISO base [-]; of drills for parallel threads. */
  readonly heightIso: number | undefined;
  /** The same on the US base [-]. */
  readonly heightUs: number | undefined;
  /** Whether it keeps to the hole's limits; undefined where the hole has none. */
  readonly inside: boolean | undefined;
}

/** How chips leave the hole, by its depth: at once, pecking, or with a drill made for it. */
export type ChipClearing = "straight" | "peck" | "deep";

/** What to set on the press. */
export interface ToolSetting {
  /** Speed to set, within what the press turns [rev/s]. */
  readonly speed_rev_s: number;
  /** True where that is less than the tool takes elsewhere, as the hole is deep. */
  readonly slowedForDepth: boolean;
  /** What the tool wants, what limits it, and what to know. */
  readonly spindle: Spindle;
}

/** A tool and what to do with it. */
export interface WorkshopTool {
  /** Unique on its sheet. */
  readonly id: string;
  /** What kind. */
  readonly kind: WorkshopToolKind;
  /** Its diameter; of a tap the thread's major diameter [m]. */
  readonly diameter_m: number;
  /** The whole angle of the cone that it cuts, where that matters [rad]. */
  readonly included_rad: number | undefined;
  /** The thread that it cuts, or drills for. */
  readonly thread: string | undefined;
  /** Ids of the holes it serves, in the order of the layout. */
  readonly holes: readonly string[];
  /** What they are called: `Pockets 1 to 4; Sensor port`. */
  readonly serves: string;
  /** How deep it goes at most, from where it enters; half a gallery that is drilled from both ends [m]. */
  readonly deepest_m: number;
  /** That depth in diameters [-]. */
  readonly depthRatio: number;
  /** How the chips leave; of drills only. */
  readonly clearing: ChipClearing | undefined;
  /** Limits of the finished hole [m]; undefined where the plan has none. */
  readonly limits: { readonly least_m: number; readonly most_m: number } | undefined;
  /** What of the shop's drills does instead, the nearest of each kind; may be outside the limits. */
  readonly equivalents: readonly ToolEquivalent[];
  /** Why none is named; undefined where one is. */
  readonly noEquivalent: string | undefined;
  /** Metal to leave for it, on diameter [m]; of reamers and sealing bores. */
  readonly leave: Band | undefined;
  /** Drills of the shop that leave that much. */
  readonly before: readonly ToolEquivalent[];
  /** What to set; undefined for a tool that no table has a speed for. */
  readonly setting: ToolSetting | undefined;
  /** What to know about it, lengths in the plan's units. */
  readonly notes: readonly string[];
  /** Where speed and way of working are published. */
  readonly source: string;
}

/** What a tool's holes ask of it. */
export type Served = Pick<
  WorkshopTool,
  "thread" | "limits" | "equivalents" | "noEquivalent" | "leave" | "before" | "notes"
>;

/** A tool that no drill of the shop stands in for. */
export const NOT_DRILLED: Served = {
  thread: undefined,
  limits: undefined,
  equivalents: [],
  noEquivalent: undefined,
  leave: undefined,
  before: [],
  notes: [],
};
