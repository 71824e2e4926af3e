/** What to set on the press for a tool, and how its chips leave. */
import { InputError } from "@/lib/basics/mod.ts";
import {
  CUTTING_SPEEDS,
  DEEP_FROM_DIAMETERS,
  PECK_FROM_DIAMETERS,
  type ShopTool,
  spindleFor,
  spindleSpeed,
} from "@/lib/thread/mod.ts";
import type { Bench } from "./bench.ts";
import type { ChipClearing, ToolSetting, WorkshopToolKind } from "./tool.ts";

/** Under which name the table of speeds has each kind. */
const SPEED_AS: Readonly<Record<WorkshopToolKind, ShopTool>> = {
  drill: "drill",
  tap: "tap",
  "spotting drill": "spotting drill",
  "port form tool": "form drill",
  "taper reamer": "reamer",
  countersink: "countersink",
  counterbore: "countersink",
  bore: "reamer",
  reamer: "reamer",
  "flexible hone": "flexible hone",
};

/** A tool as its speed is asked for. */
export interface Turned {
  /** What kind. */
  readonly kind: WorkshopToolKind;
  /** Its diameter [m]. */
  readonly diameter_m: number;
  /** Its depth in diameters [-]. */
  readonly depthRatio: number;
}

/** The speed to set; undefined where the tool is outside of what the tables take. */
export function settingOf(
  { material, values }: Bench,
  { kind, diameter_m, depthRatio }: Turned,
): ToolSetting | undefined {
  const press = { least_rev_s: values.shop.leastSpeed, most_rev_s: values.shop.mostSpeed };
  try {
    const spindle = spindleFor(material, SPEED_AS[kind], diameter_m, press);
    const deep_rev_s = kind === "drill" && depthRatio > PECK_FROM_DIAMETERS
      ? spindleSpeed({ cuttingSpeed: CUTTING_SPEEDS[material].deep, drill: diameter_m })
      : Infinity;
    const speed_rev_s = Math.max(press.least_rev_s, Math.min(spindle.speed_rev_s, deep_rev_s));
    return { speed_rev_s, slowedForDepth: speed_rev_s < spindle.speed_rev_s, spindle };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}

/** How the chips leave a hole of so many diameters. */
export function clearingOf(depthRatio: number): ChipClearing {
  if (depthRatio > DEEP_FROM_DIAMETERS) return "deep";
  return depthRatio > PECK_FROM_DIAMETERS ? "peck" : "straight";
}
