/** The form of every port that a rail may have. */
import { FACE_PORTS, type FaceThread } from "./face_ports.ts";
import { nptHoleThread, nptMinorAtFace } from "./npt_hole.ts";
import { O_RING_PORTS, type ORingThread } from "./oring_ports.ts";
import { nptFace, nptHeight, nptSmallEnd } from "./pipe_geometry.ts";
import { NPT_THREADS } from "./pipe_threads.ts";
import { tapRunOut } from "./port_geometry.ts";
import type { PortId, SealKind } from "./ports.ts";
import { threadOf } from "./thread_of.ts";

/** Ids of the ports: those of a sensor and those of feed, return, gauge and crossover. */
export type PortShapeId =
  | PortId
  | "9/16-18-oring"
  | "3/4-16-oring"
  | "7/8-14-oring"
  | "1 1/16-12-oring"
  | "M8x1-oring"
  | "M16x1.5-oring"
  | "M18x1.5-oring"
  | "M22x1.5-oring"
  | "1/4-NPT"
  | "3/8-NPT"
  | "G1/4-face"
  | "G3/8-face"
  | "M10x1-face"
  | "M16x1.5-face"
  | "M18x1.5-face"
  | "M22x1.5-face";

/** The cone at the mouth of an O-ring port. */
export interface PortMouth {
  /** Diameter at the face [m]. */
  readonly wide_m: number;
  /** Depth [m]. */
  readonly deep_m: number;
  /** Angle from the axis, half of the whole cone [rad]. */
  readonly fromAxis_rad: number;
}

/** The form of a port. Depths count from the spotted face. */
export interface PortShape {
  /** Its id. */
  readonly id: PortShapeId;
  /** Its name on paper. */
  readonly title: string;
  /** The thread as a drawing calls it out: `M10x1`, `1/8-27 NPT`. */
  readonly thread: string;
  /** Where it seals. */
  readonly seal: SealKind;
  /** Major diameter of the thread; of a pipe thread, its outside diameter [m]. */
  readonly nominal_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
  /** Tapping drill of the list [m]. */
  readonly drill_m: number;
  /** Name of the tapping drill. */
  readonly drillName: string;
  /** Least diameter of the face to be spotted [m]; undefined where the seal needs none. */
  readonly flat_m: number | undefined;
  /** The O-ring's cone; undefined for other ports. */
  readonly mouth: PortMouth | undefined;
  /** Minor diameter at the face of a taper thread [m]; undefined for parallel ones. */
  readonly taperFace_m: number | undefined;
  /** Least depth to which the thread is full [m]. */
  readonly fullThread_m: number;
  /** Least depth of the tapping drill to its full diameter [m]; with a cone seat, where it begins. */
  readonly drillDepth_m: number;
  /** Where the numbers are published. */
  readonly source: string;
}

/** Full thread of a cone-seat port where none is given [m]: as deep as an M10x1 with a washer. */
const CONE_THREAD_m = FACE_PORTS["M10x1"].fullThread_m;

type Parallel = Pick<
  PortShape,
  "thread" | "nominal_m" | "pitch_m" | "drill_m" | "drillName" | "taperFace_m"
>;

function parallel(designation: string): Parallel {
  const { nominal_m, pitch_m, tappingDrill_m, tappingDrillName } = threadOf(designation);
  return {
    thread: designation,
    nominal_m,
    pitch_m,
    drill_m: tappingDrill_m,
    drillName: tappingDrillName,
    taperFace_m: undefined,
  };
}

function oRing(thread: ORingThread & string): Omit<PortShape, "id"> {
  const { spotface_m, seat_m, coneAngle_rad, coneDepth_m, fullThread_m, drillDepth_m, source } =
    O_RING_PORTS[thread];
  return {
    ...parallel(thread),
    title: `${thread}, O-ring in the mouth`,
    seal: "o-ring",
    flat_m: spotface_m,
    mouth: { wide_m: seat_m, deep_m: coneDepth_m, fromAxis_rad: coneAngle_rad },
    fullThread_m,
    drillDepth_m,
    source,
  };
}

function washer(thread: FaceThread): Omit<PortShape, "id"> {
  return {
    ...parallel(thread),
    ...FACE_PORTS[thread],
    title: `${thread}, washer on the face`,
    seal: "face",
    mouth: undefined,
  };
}

/** Threads of a pipe tap's lead, and clear below it; with the turn below full thread. */
const NPT_RUN_OUT = { leadThreads: 3.5, clearThreads: 2 } as const;

function npt(size: "1/8" | "1/4" | "3/8"): Omit<PortShape, "id"> {
  const { outside_m, pitch_m, handTight_m, straightDrills } = NPT_THREADS[size];
  const [drill] = straightDrills;
  if (drill === undefined) throw new RangeError(`port shape: ${size} NPT has no drill`);
  const smallEnd = nptSmallEnd({ outside: outside_m, pitch: pitch_m });
  const fullThread_m = nptHoleThread({ handTight: handTight_m, pitch: pitch_m });
  return {
    title: `${size} NPT, taper thread`,
    thread: `${size}-${Math.round(0.0254 / pitch_m)} NPT`,
    seal: "taper",
    nominal_m: outside_m,
    pitch_m,
    drill_m: drill.diameter_m,
    drillName: drill.name,
    flat_m: undefined,
    mouth: undefined,
    taperFace_m: nptMinorAtFace({
      atFace: nptFace({ smallEnd, handTight: handTight_m }),
      height: nptHeight({ pitch: pitch_m }),
    }),
    fullThread_m,
    drillDepth_m: fullThread_m + tapRunOut({ pitch: pitch_m, ...NPT_RUN_OUT }),
    source: "ASME B1.20.1; leads of pipe taps by ASME B94.9",
  };
}

function cone(): Omit<PortShape, "id"> {
  const thread = parallel("M10x1");
  return {
    ...thread,
    title: "M10x1, 45 degree cone seat at the bottom",
    seal: "cone",
    flat_m: undefined,
    mouth: undefined,
    fullThread_m: CONE_THREAD_m,
    drillDepth_m: CONE_THREAD_m +
      tapRunOut({ pitch: thread.pitch_m, leadThreads: 2, clearThreads: 1 }),
    source: "seat: common practice, no source; thread: ISO 965-2",
  };
}

const SHAPES: Readonly<Record<PortShapeId, Omit<PortShape, "id">>> = {
  "M10x1-cone": cone(),
  "M10x1-face": washer("M10x1"),
  "M12x1.5-face": washer("M12x1.5"),
  "M14x1.5-face": washer("M14x1.5"),
  "M16x1.5-face": washer("M16x1.5"),
  "M18x1.5-face": washer("M18x1.5"),
  "M22x1.5-face": washer("M22x1.5"),
  "G1/8-face": washer("G 1/8"),
  "G1/4-face": washer("G 1/4"),
  "G3/8-face": washer("G 3/8"),
  "1/8-NPT": npt("1/8"),
  "1/4-NPT": npt("1/4"),
  "3/8-NPT": npt("3/8"),
  "7/16-20-oring": oRing("7/16-20"),
  "9/16-18-oring": oRing("9/16-18"),
  "3/4-16-oring": oRing("3/4-16"),
  "7/8-14-oring": oRing("7/8-14"),
  "1 1/16-12-oring": oRing("1 1/16-12"),
  "M8x1-oring": oRing("M8x1"),
  "M10x1-oring": oRing("M10x1"),
  "M12x1.5-oring": oRing("M12x1.5"),
  "M14x1.5-oring": oRing("M14x1.5"),
  "M16x1.5-oring": oRing("M16x1.5"),
  "M18x1.5-oring": oRing("M18x1.5"),
  "M22x1.5-oring": oRing("M22x1.5"),
};

/**
 * The ports of a rail by id: sensor ports as in {@linkcode PORTS}, and those for feed, return,
 * gauge and crossover.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(PORT_SHAPES["M10x1-cone"].drillName, "9.0 mm");
 * assertEquals(PORT_SHAPES["9/16-18-oring"].flat_m, 0.025);
 * ```
 */
export const PORT_SHAPES: Readonly<Record<PortShapeId, PortShape>> = Object.fromEntries(
  Object.entries(SHAPES).map(([id, shape]) => [id, { ...shape, id }]),
) as Record<PortShapeId, PortShape>;
