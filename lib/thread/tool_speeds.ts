/** How fast each tool of the shop sheet cuts. */
import { type Band, type CutMaterial, CUTTING_SPEEDS } from "./drilling.ts";

/** Tools that a spindle turns. */
export type ShopTool =
  | "drill"
  | "spotting drill"
  | "form drill"
  | "reamer"
  | "countersink"
  | "tap"
  | "flexible hone";

/** How fast a tool cuts, how it is fed, and where that is published. */
export interface ToolSpeed {
  /** Cutting speed at its largest diameter, by material [m/s]. */
  readonly speeds: Readonly<Record<CutMaterial, Band>>;
  /** Feed as a share of a drill's of the same diameter [-]; undefined where it is felt by hand. */
  readonly feedShare: Band | undefined;
  /** What to know at the spindle. */
  readonly remark: string;
  /** Where it is published. */
  readonly source: string;
}

const MATERIALS = Object.keys(CUTTING_SPEEDS) as CutMaterial[];

const each = (band: (material: CutMaterial) => Band): Record<CutMaterial, Band> =>
  Object.fromEntries(MATERIALS.map((material) => [material, band(material)])) as Record<
    CutMaterial,
    Band
  >;

/** A share of what a drill takes in the same material. */
const ofDrill = (low: number, high: number): Record<CutMaterial, Band> =>
  each((material) => ({
    from: CUTTING_SPEEDS[material].from * low,
    to: CUTTING_SPEEDS[material].to * high,
  }));

const FOOT_A_MINUTE = 0.3048 / 60;

/** Machine taps of high-speed steel, feet a minute. */
const TAPS: Readonly<Record<CutMaterial, readonly [number, number]>> = {
  aluminium: [50, 70],
  brass: [60, 100],
  "mild steel": [30, 50],
  "stainless steel": [10, 20],
};

/** Surface of a flexible hone, metres a minute. */
const HONE = { from: 20 / 60, to: 45 / 60 } as const;

const NO_SOURCE = "common practice, no source";

/**
 * Cutting speeds and feeds by tool, all of high-speed steel. Published tables scatter widely, so
 * begin at the low end.
 *
 * @example A reamer takes half to two thirds of a drill's speed
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(TOOL_SPEEDS.reamer.speeds.aluminium.from * 60, 30, 1e-9); // m/min
 * assertAlmostEquals(TOOL_SPEEDS.reamer.speeds.aluminium.to * 60, 60, 1e-9);
 * ```
 */
export const TOOL_SPEEDS: Readonly<Record<ShopTool, ToolSpeed>> = {
  drill: {
    speeds: CUTTING_SPEEDS,
    feedShare: { from: 1, to: 1 },
    remark: "In holes deeper than three diameters, slow down and clear the chips.",
    source: "published tables of high-speed steel drills, which scatter widely",
  },
  "spotting drill": {
    speeds: ofDrill(0.5, 1),
    feedShare: { from: 0.5, to: 1 },
    remark: "Stop on the depth stop and lift at once: dwelling leaves chatter marks on the seat.",
    source: NO_SOURCE,
  },
  "form drill": {
    speeds: ofDrill(0.5, 1),
    feedShare: { from: 0.5, to: 1 },
    remark: "Speed by its largest diameter; clear the chips before the wide step cuts.",
    source: NO_SOURCE,
  },
  reamer: {
    speeds: ofDrill(1 / 2, 2 / 3),
    feedShare: { from: 2, to: 3 },
    remark: "Feed without stopping, with fluid; never turn it backwards.",
    source:
      "Machinery's Handbook, from memory: two thirds of a drill's speed, two to three times its " +
      "feed; TM 1-420 section 37: half the speed",
  },
  countersink: {
    speeds: ofDrill(1 / 4, 1 / 3),
    feedShare: undefined,
    remark: "Press lightly by hand; if it chatters, slower.",
    source: "handbooks of the trade: a quarter to a third of a drill's speed",
  },
  tap: {
    speeds: each((material) => ({
      from: TAPS[material][0] * FOOT_A_MINUTE,
      to: TAPS[material][1] * FOOT_A_MINUTE,
    })),
    feedShare: undefined,
    remark:
      "Goes one pitch deeper with each turn. Without a tapping head turn the spindle by hand, switched off and unplugged.",
    source: "published tapping speeds of high-speed steel machine taps",
  },
  "flexible hone": {
    speeds: each(() => HONE),
    feedShare: undefined,
    remark:
      "Turning before it enters and until it is out, with honing oil, up and down all the while; then wash the abrasive out.",
    source: NO_SOURCE,
  },
};

/** Holes up to a diameter, and the metal left for the reamer on diameter; inches. */
const ALLOWANCES: readonly (readonly [upTo: number, from: number, to: number])[] = [
  [0.170, 0.005, 0.010],
  [0.280, 0.008, 0.012],
  [0.880, 0.010, 0.016],
  [2.5, 0.015, 0.030],
];

/**
 * Metal to leave for a machine reamer [m], on diameter. Source: published tables of reamers, for
 * holes of 0.09 to 2.5 in.
 *
 * @param hole_m Diameter of the finished hole [m].
 * @returns The band; undefined outside the table.
 *
 * @example A 14 mm pocket is drilled 0.25 to 0.4 mm small
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const { from, to } = reamingAllowance(0.014) ?? { from: NaN, to: NaN };
 *
 * assertAlmostEquals(from, 0.254e-3, 1e-9);
 * assertAlmostEquals(to, 0.4064e-3, 1e-9);
 * ```
 */
export function reamingAllowance(hole_m: number): Band | undefined {
  if (!(hole_m >= 0.09 * 0.0254)) return undefined;
  const row = ALLOWANCES.find(([upTo]) => hole_m <= upTo * 0.0254);
  return row && { from: row[1] * 0.0254, to: row[2] * 0.0254 };
}
