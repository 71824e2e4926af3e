/** Metric and unified threads: basic sizes, limits of tapped holes and of screws, tapping drills. */

/** Limits of a tapped hole. */
export interface HoleLimits {
  /** Tolerance class. */
  readonly class: "6H" | "2B" | "ISO 228-1";
  /** Smallest minor diameter [m]. */
  readonly minorMin_m: number;
  /** Largest minor diameter [m]. */
  readonly minorMax_m: number;
  /** Smallest pitch diameter [m]. */
  readonly pitchMin_m: number;
  /** Largest pitch diameter [m]. */
  readonly pitchMax_m: number;
}

/** Limits of the thread of a screw. */
export interface ScrewLimits {
  /** Tolerance class. */
  readonly class: "6g" | "2A" | "ISO 228-1 A";
  /** Largest major diameter [m]. */
  readonly majorMax_m: number;
  /** Smallest major diameter [m]. */
  readonly majorMin_m: number;
  /** Largest pitch diameter [m]. */
  readonly pitchMax_m: number;
  /** Smallest pitch diameter [m]. */
  readonly pitchMin_m: number;
}

/** A parallel thread. */
export interface StraightThread {
  /** As drawings have it: `M10x1`, `7/16-20`, `G 1/8`. */
  readonly designation: string;
  /** Family of threads. */
  readonly family: "metric" | "unified" | "G";
  /** Nominal diameter [m]. */
  readonly nominal_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
  /** Half of the angle between the flanks [rad]. */
  readonly flank_rad: number;
  /** Limits of the tapped hole. */
  readonly hole: HoleLimits;
  /** Limits of the screw. */
  readonly screw: ScrewLimits;
  /** Tapping drill of the list [m]. */
  readonly tappingDrill_m: number;
  /** Name of the tapping drill: `9.0 mm`, `25/64 in`, `I`. */
  readonly tappingDrillName: string;
  /** Where the numbers are published. */
  readonly source: string;
}

/** Half the flank angle of ISO and unified threads [rad]. */
export const FLANK_60_rad: number = Math.PI / 6;

const METRIC_SOURCE =
  "ISO 965-2 limits of 6H and 6g; ISO 2306 tapping drills; typed from memory, held against " +
  "ISO 965-1 formulas";
const UNIFIED_SOURCE =
  "ASME B1.1 limits of 2B and 2A; common tapping-drill charts; typed from memory, held against " +
  "its formulas";

/** Nominal and pitch; 6H minor min, max, pitch min, max; 6g major max, min, pitch max, min; drill; all mm. */
type MetricRow = readonly [
  nominal: number,
  pitch: number,
  hole: readonly [number, number, number, number],
  screw: readonly [number, number, number, number],
  drill: number,
];

const METRIC: readonly MetricRow[] = [
  [3, 0.5, [2.459, 2.599, 2.675, 2.775], [2.980, 2.874, 2.655, 2.580], 2.5],
  [4, 0.7, [3.242, 3.422, 3.545, 3.663], [3.978, 3.838, 3.523, 3.433], 3.3],
  [5, 0.8, [4.134, 4.334, 4.480, 4.605], [4.976, 4.826, 4.456, 4.361], 4.2],
  [6, 1, [4.917, 5.153, 5.350, 5.500], [5.974, 5.794, 5.324, 5.212], 5],
  [8, 1, [6.917, 7.153, 7.350, 7.500], [7.974, 7.794, 7.324, 7.212], 7],
  [8, 1.25, [6.647, 6.912, 7.188, 7.348], [7.972, 7.760, 7.160, 7.042], 6.8],
  [10, 1, [8.917, 9.153, 9.350, 9.500], [9.974, 9.794, 9.324, 9.212], 9],
  [10, 1.25, [8.647, 8.912, 9.188, 9.348], [9.972, 9.760, 9.160, 9.042], 8.8],
  [10, 1.5, [8.376, 8.676, 9.026, 9.206], [9.968, 9.732, 8.994, 8.862], 8.5],
  [12, 1.25, [10.647, 10.912, 11.188, 11.368], [11.972, 11.760, 11.160, 11.028], 10.8],
  [12, 1.5, [10.376, 10.676, 11.026, 11.216], [11.968, 11.732, 10.994, 10.854], 10.5],
  [12, 1.75, [10.106, 10.441, 10.863, 11.063], [11.966, 11.701, 10.829, 10.679], 10.2],
  [14, 1.5, [12.376, 12.676, 13.026, 13.216], [13.968, 13.732, 12.994, 12.854], 12.5],
  [14, 2, [11.835, 12.210, 12.701, 12.913], [13.962, 13.682, 12.663, 12.503], 12],
  [16, 1.5, [14.376, 14.676, 15.026, 15.216], [15.968, 15.732, 14.994, 14.854], 14.5],
  [16, 2, [13.835, 14.210, 14.701, 14.913], [15.962, 15.682, 14.663, 14.503], 14],
  [18, 1.5, [16.376, 16.676, 17.026, 17.216], [17.968, 17.732, 16.994, 16.854], 16.5],
  [20, 2.5, [17.294, 17.744, 18.376, 18.600], [19.958, 19.623, 18.334, 18.164], 17.5],
  [22, 1.5, [20.376, 20.676, 21.026, 21.216], [21.968, 21.732, 20.994, 20.854], 20.5],
  [24, 3, [20.752, 21.252, 22.051, 22.316], [23.952, 23.577, 22.003, 21.803], 21],
];

/** Name; major [in] and threads to the inch; 2B and 2A limits as above [in]; drill's name and diameter [in]. */
type UnifiedRow = readonly [
  name: string,
  major: number,
  perInch: number,
  hole: readonly [number, number, number, number],
  screw: readonly [number, number, number, number],
  drillName: string,
  drill: number,
];

const UNIFIED: readonly UnifiedRow[] = [
  [
    "10-32",
    0.19,
    32,
    [0.156, 0.164, 0.1697, 0.1736],
    [0.1891, 0.1831, 0.1688, 0.1658],
    "#21",
    0.159,
  ],
  [
    "1/4-20",
    1 / 4,
    20,
    [0.196, 0.207, 0.2175, 0.2224],
    [0.2489, 0.2408, 0.2164, 0.2127],
    "#7",
    0.201,
  ],
  [
    "1/4-28",
    1 / 4,
    28,
    [0.211, 0.22, 0.2268, 0.2311],
    [0.249, 0.2425, 0.2258, 0.2225],
    "#3",
    0.213,
  ],
  [
    "5/16-18",
    5 / 16,
    18,
    [0.252, 0.265, 0.2764, 0.2817],
    [0.3113, 0.3026, 0.2752, 0.2712],
    "F",
    0.257,
  ],
  [
    "5/16-24",
    5 / 16,
    24,
    [0.267, 0.277, 0.2854, 0.2902],
    [0.3114, 0.3042, 0.2843, 0.2806],
    "I",
    0.272,
  ],
  ["3/8-24", 3 / 8, 24, [0.33, 0.34, 0.3479, 0.3528], [0.3739, 0.3667, 0.3468, 0.343], "Q", 0.332],
  [
    "7/16-20",
    7 / 16,
    20,
    [0.383, 0.395, 0.405, 0.4104],
    [0.4362, 0.4281, 0.4037, 0.3995],
    "25/64 in",
    25 / 64,
  ],
  [
    "1/2-20",
    1 / 2,
    20,
    [0.446, 0.457, 0.4675, 0.4731],
    [0.4987, 0.4906, 0.4662, 0.4619],
    "29/64 in",
    29 / 64,
  ],
  [
    "9/16-18",
    9 / 16,
    18,
    [0.502, 0.515, 0.5264, 0.5323],
    [0.5611, 0.5524, 0.525, 0.5205],
    "33/64 in",
    33 / 64,
  ],
  [
    "3/4-16",
    3 / 4,
    16,
    [0.682, 0.696, 0.7094, 0.7159],
    [0.7485, 0.7391, 0.7079, 0.7029],
    "11/16 in",
    11 / 16,
  ],
  [
    "7/8-14",
    7 / 8,
    14,
    [0.798, 0.814, 0.8286, 0.8356],
    [0.8734, 0.8631, 0.827, 0.8216],
    "13/16 in",
    13 / 16,
  ],
  [
    "1 1/16-12",
    17 / 16,
    12,
    [0.972, 0.99, 1.0084, 1.0158],
    [1.0608, 1.0494, 1.0067, 1.001],
    "63/64 in",
    63 / 64,
  ],
];

function metric([nominal, pitch, hole, screw, drill]: MetricRow): StraightThread {
  return {
    designation: `M${nominal}x${pitch}`,
    family: "metric",
    nominal_m: nominal / 1000,
    pitch_m: pitch / 1000,
    flank_rad: FLANK_60_rad,
    hole: {
      class: "6H",
      minorMin_m: hole[0] / 1000,
      minorMax_m: hole[1] / 1000,
      pitchMin_m: hole[2] / 1000,
      pitchMax_m: hole[3] / 1000,
    },
    screw: {
      class: "6g",
      majorMax_m: screw[0] / 1000,
      majorMin_m: screw[1] / 1000,
      pitchMax_m: screw[2] / 1000,
      pitchMin_m: screw[3] / 1000,
    },
    tappingDrill_m: drill / 1000,
    tappingDrillName: `${drill.toFixed(1)} mm`,
    source: METRIC_SOURCE,
  };
}

function unified(
  [designation, major, perInch, hole, screw, drillName, drill]: UnifiedRow,
): StraightThread {
  return {
    designation,
    family: "unified",
    nominal_m: major * 0.0254,
    pitch_m: 0.0254 / perInch,
    flank_rad: FLANK_60_rad,
    hole: {
      class: "2B",
      minorMin_m: hole[0] * 0.0254,
      minorMax_m: hole[1] * 0.0254,
      pitchMin_m: hole[2] * 0.0254,
      pitchMax_m: hole[3] * 0.0254,
    },
    screw: {
      class: "2A",
      majorMax_m: screw[0] * 0.0254,
      majorMin_m: screw[1] * 0.0254,
      pitchMax_m: screw[2] * 0.0254,
      pitchMin_m: screw[3] * 0.0254,
    },
    tappingDrill_m: drill * 0.0254,
    tappingDrillName: drillName,
    source: UNIFIED_SOURCE,
  };
}

/**
 * Metric threads from M3 to M24 and unified threads from no. 10 to 1 1/16 inch that rails,
 * ports, fittings and hold-downs use.
 *
 * Source: ISO 965-2, ISO 2306, ASME B1.1, named in each.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(STRAIGHT_THREADS.some(({ designation }) => designation === "M10x1"));
 * ```
 */
export const STRAIGHT_THREADS: readonly StraightThread[] = [
  ...METRIC.map(metric),
  ...UNIFIED.map(unified),
];
