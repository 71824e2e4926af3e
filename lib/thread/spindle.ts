/** The speed to set for a tool, on the machine there is. */
import { InputError } from "@/lib/basics/mod.ts";
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { type Band, type CutMaterial, feedBand, feedSpeed, spindleSpeed } from "./drilling.ts";
import { DRILL } from "./limits.ts";
import { type ShopTool, TOOL_SPEEDS } from "./tool_speeds.ts";

/**
 * Speed [m/s] at which a tool's edge runs.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1500 rev/min at 12.7 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(edgeSpeed({ speed: 25, diameter: 0.0127 }) * 60, 59.85, 0.01); // m/min
 * ```
 */
export const edgeSpeed: Method<Record<"speed" | "diameter", MethodInput>> = method({
  id: "edge-speed",
  title: "Speed of a tool's edge",
  inputs: {
    speed: feedSpeed.inputs.speed,
    diameter: { ...DRILL, says: "Largest diameter that cuts" },
  },
  output: { name: "edgeSpeed", unit: "m/s", min: 0, max: 200, says: "Cutting speed", symbol: "v" },
  formula: "pi * diameter * speed",
  source: "Kinematics: the edge runs pi d in a turn",
  compute: ({ speed, diameter }) => Math.PI * diameter * speed,
});

/** What a drill press turns [rev/s]. */
export interface Press {
  /** Its slowest speed. */
  readonly least_rev_s: number;
  /** Its fastest speed. */
  readonly most_rev_s: number;
}

/** The speed to set and what to know about it. */
export interface Spindle {
  /** What the tool wants [rev/s]. */
  readonly wanted: Band;
  /** What to set [rev/s]: the low end of that, as far as the press turns it. */
  readonly speed_rev_s: number;
  /** Cutting speed that this gives [m/s]. */
  readonly cutting_m_s: number;
  /** Feed to a turn [m]; undefined where it is felt by hand or set by the thread. */
  readonly feed: Band | undefined;
  /** Which end of the press's speeds keeps the tool from what it wants; undefined for neither. */
  readonly limitedBy: "slowest" | "fastest" | undefined;
  /** What to know, the limit first. */
  readonly says: readonly string[];
  /** Where the speeds are published. */
  readonly source: string;
}

/**
 * The speed of the spindle for a tool, limited to what the press turns.
 *
 * @param material Material of the bar.
 * @param tool The tool, of high-speed steel.
 * @param diameter_m Its largest diameter [m].
 * @param press What the press turns.
 * @returns The speed, and whether the press limits it.
 * @throws {InputError} When the diameter lies outside a drill's range, or the press's speeds are
 * not above nought and in order.
 *
 * @example 9 mm in aluminium on a press of 500 to 1500 rev/min
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const press = { least_rev_s: 500 / 60, most_rev_s: 25 };
 * const { speed_rev_s, limitedBy } = spindleFor("aluminium", "drill", 0.009, press);
 *
 * assertEquals(speed_rev_s, 25);
 * assertEquals(limitedBy, "fastest");
 * ```
 */
export function spindleFor(
  material: CutMaterial,
  tool: ShopTool,
  diameter_m: number,
  press: Press,
): Spindle {
  checkPress(press);
  const { speeds, feedShare, remark, source } = TOOL_SPEEDS[tool];
  const turns = (cuttingSpeed: number): number => spindleSpeed({ cuttingSpeed, drill: diameter_m });
  const wanted = { from: turns(speeds[material].from), to: turns(speeds[material].to) };
  const speed = Math.min(Math.max(wanted.from, press.least_rev_s), press.most_rev_s);
  const drillFeed = feedBand(diameter_m);
  const limitedBy = speed < wanted.from ? "fastest" : speed > wanted.to ? "slowest" : undefined;
  return {
    wanted,
    speed_rev_s: speed,
    cutting_m_s: edgeSpeed({ speed, diameter: diameter_m }),
    feed: feedShare === undefined || drillFeed === undefined
      ? undefined
      : { from: drillFeed.from * feedShare.from, to: drillFeed.to * feedShare.to },
    limitedBy,
    says: [...limit(limitedBy, speed, wanted, tool), remark],
    source,
  };
}

function checkPress({ least_rev_s, most_rev_s }: Press): void {
  if (!(least_rev_s >= 0.1 && least_rev_s <= 1000)) {
    const rule = "must be >= 0.1 and <= 1000 rev/s";
    throw new InputError("speed of the spindle", "least_rev_s", rule, least_rev_s);
  }
  if (!(most_rev_s >= least_rev_s && most_rev_s <= 1000)) {
    const rule = `must be >= ${least_rev_s}, the slowest, and <= 1000 rev/s`;
    throw new InputError("speed of the spindle", "most_rev_s", rule, most_rev_s);
  }
}

const perMinute = (turns: number): number => Math.round(turns * 60);

function limit(
  by: Spindle["limitedBy"],
  speed: number,
  wanted: Band,
  tool: ShopTool,
): string[] {
  if (by === undefined) return [];
  const band = `${perMinute(wanted.from)} to ${perMinute(wanted.to)} rev/min`;
  const has = `${perMinute(speed)} rev/min`;
  if (by === "fastest") {
    return [`The press turns no faster than ${has}; the ${tool} wants ${band}. It takes longer.`];
  }
  return [
    `The press turns no slower than ${has}; the ${tool} wants ${band}. ` +
    "Turn it by hand, or use a slower machine.",
  ];
}
