/** Pipe threads: tables of NPT, G and R, and how each family seals. */
import type { StraightThread } from "./straight_threads.ts";

/** A family of pipe threads and how it seals. */
export interface PipeFamily {
  /** The standard. */
  readonly standard: string;
  /** Angle between the flanks [rad]. */
  readonly flanks_rad: number;
  /** Growth of diameter to a length [-]; 0 for a parallel thread. */
  readonly taper: number;
  /** What makes the joint tight. */
  readonly sealsOn: "thread and sealant" | "thread alone" | "face";
  /** Whether the thread takes sealant. */
  readonly sealant: boolean;
  /** How it is tightened. */
  readonly madeUp: "wrench-tight" | "to the face's torque";
  /** What else to know at the bench. */
  readonly remarks: readonly string[];
}

const DEGREE = Math.PI / 180;
const WEDGES = "A taper thread wedges a thin aluminium boss open: prefer a straight port.";

/**
 * Families of pipe threads. They never mix: flank angles and pitches differ.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 *
 * assert(PIPE_FAMILIES.G.flanks_rad < PIPE_FAMILIES.NPT.flanks_rad);
 * ```
 */
export const PIPE_FAMILIES: Readonly<Record<"NPT" | "NPTF" | "G" | "R", PipeFamily>> = {
  NPT: {
    standard: "ASME B1.20.1",
    flanks_rad: 60 * DEGREE,
    taper: 1 / 16,
    sealsOn: "thread and sealant",
    sealant: true,
    madeUp: "wrench-tight",
    remarks: [
      "Takes a sealant rated for the fuel, first two threads bare; no tape, its shreds stop injectors (common practice, no source).",
      WEDGES,
    ],
  },
  NPTF: {
    standard: "ASME B1.20.3 / SAE J476",
    flanks_rad: 60 * DEGREE,
    taper: 1 / 16,
    sealsOn: "thread alone",
    sealant: false,
    madeUp: "wrench-tight",
    remarks: [
      "Basic sizes of NPT, other crests, roots and gauges: metal meets at crest and root first.",
      "Dry only against its own kind; with NPT it takes sealant. It may gall in aluminium.",
      WEDGES,
    ],
  },
  G: {
    standard: "ISO 228-1",
    flanks_rad: 55 * DEGREE,
    taper: 0,
    sealsOn: "face",
    sealant: false,
    madeUp: "to the face's torque",
    remarks: ["Seals by washer or O-ring on the face, never on the thread."],
  },
  R: {
    standard: "ISO 7-1",
    flanks_rad: 55 * DEGREE,
    taper: 1 / 16,
    sealsOn: "thread and sealant",
    sealant: true,
    madeUp: "wrench-tight",
    remarks: [WEDGES],
  },
};

/** Sizes of pipe threads; the name is no diameter. */
export type PipeSize = "1/16" | "1/8" | "1/4" | "3/8" | "1/2" | "3/4";

/** An NPT thread: what the standard tabulates and the drills of the charts. */
export interface NptThread {
  /** Outside diameter of the pipe [m]. */
  readonly outside_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
  /** Hand-tight engagement, L1 [m]. */
  readonly handTight_m: number;
  /** Drills published for tapping without a reamer; the second one where charts differ. */
  readonly straightDrills: readonly { readonly name: string; readonly diameter_m: number }[];
  /** Drill before a taper reamer. */
  readonly reamedDrill: { readonly name: string; readonly diameter_m: number };
}

type Named = readonly [name: string, inches: number];

function npt(
  outside: number,
  perInch: number,
  handTight: number,
  straight: readonly Named[],
  reamed: Named,
): NptThread {
  const drill = ([name, inches]: Named) => ({ name, diameter_m: inches * 0.0254 });
  return {
    outside_m: outside * 0.0254,
    pitch_m: 0.0254 / perInch,
    handTight_m: handTight * 0.0254,
    straightDrills: straight.map(drill),
    reamedDrill: drill(reamed),
  };
}

/**
 * NPT threads by size. Source: ASME B1.20.1 with the tap-drill charts of the trade, from memory.
 *
 * @example 1/8 NPT is 10.3 mm outside
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(NPT_THREADS["1/8"].outside_m, 0.010287, 1e-9);
 * ```
 */
export const NPT_THREADS: Readonly<Record<PipeSize, NptThread>> = {
  "1/16": npt(0.3125, 27, 0.16, [["C", 0.242], ["D", 0.246]], ["15/64 in", 15 / 64]),
  "1/8": npt(0.405, 27, 0.1615, [["Q", 0.332], ["R", 0.339]], ["21/64 in", 21 / 64]),
  "1/4": npt(0.54, 18, 0.2278, [["7/16 in", 7 / 16]], ["27/64 in", 27 / 64]),
  "3/8": npt(0.675, 18, 0.24, [["37/64 in", 37 / 64]], ["9/16 in", 9 / 16]),
  "1/2": npt(0.84, 14, 0.32, [["45/64 in", 45 / 64], ["23/32 in", 23 / 32]], [
    "11/16 in",
    11 / 16,
  ]),
  "3/4": npt(1.05, 14, 0.339, [["59/64 in", 59 / 64]], ["57/64 in", 57 / 64]),
};

/** A G thread, with the taper thread R of the same size. */
export interface WhitworthPipeThread extends StraightThread {
  /** Gauge length of the R thread [m]. */
  readonly gaugeLength_m: number;
}

/** Sizes of G and R threads. */
export type WhitworthSize = Exclude<PipeSize, "1/16">;

function whitworth(
  size: WhitworthSize,
  perInch: number,
  [major, pitchDiameter, minor]: readonly [number, number, number],
  [screwMajor, pitch, holeMinor]: readonly [number, number, number],
  drill: number,
  gauge: number,
): WhitworthPipeThread {
  return {
    designation: `G ${size}`,
    family: "G",
    nominal_m: major / 1000,
    pitch_m: 0.0254 / perInch,
    flank_rad: 27.5 * DEGREE,
    hole: {
      class: "ISO 228-1",
      minorMin_m: minor / 1000,
      minorMax_m: (minor + holeMinor) / 1000,
      pitchMin_m: pitchDiameter / 1000,
      pitchMax_m: (pitchDiameter + pitch) / 1000,
    },
    screw: {
      class: "ISO 228-1 A",
      majorMax_m: major / 1000,
      majorMin_m: (major - screwMajor) / 1000,
      pitchMax_m: pitchDiameter / 1000,
      pitchMin_m: (pitchDiameter - pitch) / 1000,
    },
    tappingDrill_m: drill / 1000,
    tappingDrillName: `${drill} mm`,
    gaugeLength_m: gauge / 1000,
    source: "ISO 228-1 table 1, ISO 7-1 table 1 (gauge length), from memory",
  };
}

/**
 * G threads by size: threads to the inch; major, pitch and minor diameter; tolerances of the
 * screw's major, of both pitch and of the hole's minor diameter; drill; gauge length of R [mm].
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(G_THREADS["1/8"].hole.minorMax_m, 8.848e-3, 1e-9);
 * ```
 */
export const G_THREADS: Readonly<Record<WhitworthSize, WhitworthPipeThread>> = {
  "1/8": whitworth("1/8", 28, [9.728, 9.147, 8.566], [0.214, 0.107, 0.282], 8.8, 4),
  "1/4": whitworth("1/4", 19, [13.157, 12.301, 11.445], [0.25, 0.125, 0.445], 11.8, 6),
  "3/8": whitworth("3/8", 19, [16.662, 15.806, 14.95], [0.25, 0.125, 0.445], 15.25, 6.4),
  "1/2": whitworth("1/2", 14, [20.955, 19.793, 18.631], [0.284, 0.142, 0.541], 19, 8.2),
  "3/4": whitworth("3/4", 14, [26.441, 25.279, 24.117], [0.284, 0.142, 0.541], 24.5, 9.5),
};
