/** The sensor ports that a plan can choose. */
import { FACE_PORTS, type FaceThread } from "./face_ports.ts";
import type { SayLength } from "./millimetres.ts";
import { O_RING_PORTS, type ORingThread } from "./oring_ports.ts";
import { NPT_THREADS } from "./pipe_threads.ts";
import { threadOf } from "./thread_of.ts";

/** Ids of the ports, as in a plan. */
export type PortId =
  | "M10x1-cone"
  | "M12x1.5-face"
  | "1/8-NPT"
  | "G1/8-face"
  | "7/16-20-oring"
  | "M14x1.5-face"
  | "M10x1-oring"
  | "M12x1.5-oring"
  | "M14x1.5-oring";

/** Where a port seals. */
export type SealKind = "cone" | "face" | "taper" | "o-ring";

/** How a port of a kind seals. */
export interface Seal {
  /** What touches what. */
  readonly contact: string;
  /** Whether the thread takes sealant. */
  readonly threadSealant: boolean;
  /** Whether an elastomer ring seals. */
  readonly oRing: boolean;
  /** Whether the seat must be cut in one set-up with the thread. */
  readonly concentric: boolean;
}

/**
 * How each kind of port seals.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(SEALS.cone.threadSealant, false);
 * ```
 */
export const SEALS: Readonly<Record<SealKind, Seal>> = {
  cone: {
    contact: "metal line contact on the cone",
    threadSealant: false,
    oRing: false,
    concentric: true,
  },
  face: { contact: "washer on the face", threadSealant: false, oRing: false, concentric: false },
  taper: { contact: "taper thread", threadSealant: true, oRing: false, concentric: false },
  "o-ring": {
    contact: "O-ring in the cone at the mouth",
    threadSealant: false,
    oRing: true,
    concentric: true,
  },
};

/** A sensor port. */
export interface Port {
  /** Its id in the plan. */
  readonly id: PortId;
  /** Its name on paper. */
  readonly title: string;
  /** Designation of the thread. */
  readonly thread: string;
  /** Where it seals. */
  readonly seal: SealKind;
  /** Tapping drill of the list [m]. */
  readonly tappingDrill_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
  /** Nominal diameter of the thread; of a pipe thread, its outside diameter [m]. */
  readonly nominal_m: number;
  /** Smallest hole allowed [m]; undefined where the standard gives none. */
  readonly minorMin_m: number | undefined;
  /** Largest hole allowed [m]; undefined where the standard gives none. */
  readonly minorMax_m: number | undefined;
  /** Depth of the O-ring's cone at the mouth, where full thread begins [m]; 0 for the others. */
  readonly mouth_m: number;
  /** Flat that the seal takes around the thread, a diameter [m]; undefined where it takes none. */
  readonly flat_m: number | undefined;
  /** What to know at the bench, with lengths as the reader wants them. */
  readonly remarks: (say: SayLength) => readonly string[];
  /** Where the numbers are published. */
  readonly source: string;
}

type Named = Pick<Port, "id" | "title" | "seal" | "remarks">;

function straight(
  port: Named,
  designation: string,
  seat: { readonly mouth_m?: number; readonly flat_m?: number; readonly source?: string },
): Port {
  const { tappingDrill_m, pitch_m, nominal_m, hole, source } = threadOf(designation);
  return {
    ...port,
    thread: designation,
    tappingDrill_m,
    pitch_m,
    nominal_m,
    minorMin_m: hole.minorMin_m,
    minorMax_m: hole.minorMax_m,
    mouth_m: seat.mouth_m ?? 0,
    flat_m: seat.flat_m,
    source: seat.source === undefined ? source : `${source}; ${seat.source}`,
  };
}

/** An O-ring port by its thread; the cone's angle is told from the axis. */
function oRing(id: PortId, thread: ORingThread): Port {
  const { standard, seat_m, coneAngle_rad, coneDepth_m, spotface_m } = O_RING_PORTS[thread];
  const degrees = Math.round(coneAngle_rad / Math.PI * 180);
  return straight(
    {
      id,
      title: `${thread}, O-ring in the mouth`,
      seal: "o-ring",
      remarks: (say) => [
        `The mouth is a cone for the O-ring: ${degrees} degrees from the axis, ${
          say(seat_m)
        } wide, ${say(coneDepth_m)} deep, ring marks only.`,
        `Spot the face to ${say(spotface_m)}. Depths count from the spotted face.`,
        "O-ring by the fuel: FKM for petrol and blends; never EPDM.",
        ONE_SET_UP,
      ],
    },
    thread,
    { mouth_m: coneDepth_m, flat_m: spotface_m, source: `mouth: ${standard}, from memory` },
  );
}

/** A port with a washer, by its thread. */
function washer(port: Omit<Named, "seal">, thread: FaceThread): Port {
  const { flat_m, source } = FACE_PORTS[thread];
  return straight({ ...port, seal: "face" }, thread, {
    flat_m,
    source: `flat for the washer: ${source}`,
  });
}

function nptDrills(say: SayLength): string {
  const { straightDrills, reamedDrill } = NPT_THREADS["1/8"];
  const [first, ...others] = straightDrills.map(({ name, diameter_m }) =>
    `${name}, ${say(diameter_m)}`
  );
  const too = others.length === 0 ? "" : ` (${others.join("; ")}, is published too)`;
  return `Drill ${first}, tapped without a reamer${too}; ${reamedDrill.name}, ${
    say(reamedDrill.diameter_m)
  }, before a taper reamer.`;
}

const ONE_SET_UP =
  "Cut seat and tapping hole in one set-up: the seat must run true with the thread.";
const FACE = "Spot the face square to the thread; use a new washer rated for the fuel each time.";

/**
 * The sensor ports by id.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(PORTS["M10x1-cone"].tappingDrill_m, 0.009);
 * ```
 */
export const PORTS: Readonly<Record<PortId, Port>> = {
  "M10x1-cone": straight(
    {
      id: "M10x1-cone",
      title: "M10x1, 45 degree cone seat at the bottom",
      seal: "cone",
      remarks: () => [
        "A 9 mm drill serves M10x1: the pilot comes first, all through into the gallery; then a 90 degree spotting drill of 9 mm leaves the 45 degree seat.",
        "Metal seals on metal in a line on the cone: no sealant on the thread, no washer, no O-ring.",
        ONE_SET_UP,
        "Whatever the spotting drill goes too deep, the seat's diameter grows by twice as much.",
      ],
    },
    "M10x1",
    { source: "seat: common practice, no source" },
  ),
  "M12x1.5-face": washer(
    {
      id: "M12x1.5-face",
      title: "M12x1.5, washer on the face",
      remarks: () => [FACE, "The thread only clamps: no sealant."],
    },
    "M12x1.5",
  ),
  "1/8-NPT": {
    id: "1/8-NPT",
    title: "1/8 NPT, taper thread",
    seal: "taper",
    thread: "1/8-27 NPT",
    tappingDrill_m: NPT_THREADS["1/8"].straightDrills[0]?.diameter_m ?? 0,
    pitch_m: NPT_THREADS["1/8"].pitch_m,
    nominal_m: NPT_THREADS["1/8"].outside_m,
    minorMin_m: undefined,
    minorMax_m: undefined,
    mouth_m: 0,
    flat_m: undefined,
    remarks: (say) => [
      `1/8 is no diameter: the thread is ${say(NPT_THREADS["1/8"].outside_m)} outside.`,
      nptDrills(say),
      "Takes a sealant rated for the fuel, first two threads bare; no tape, its shreds stop injectors.",
      "A taper thread wedges a thin aluminium bar open: prefer a straight port.",
      "Never mixes with G 1/8 or R 1/8.",
    ],
    source: "ASME B1.20.1; drills: charts of the trade, from memory",
  },
  "G1/8-face": washer(
    {
      id: "G1/8-face",
      title: "G 1/8, washer on the face",
      remarks: () => [
        FACE,
        "Never mixes with 1/8 NPT: 55 against 60 degrees, 28 against 27 to the inch.",
      ],
    },
    "G 1/8",
  ),
  "7/16-20-oring": oRing("7/16-20-oring", "7/16-20"),
  "M14x1.5-face": washer(
    {
      id: "M14x1.5-face",
      title: "M14x1.5, washer on the face",
      remarks: () => [FACE, "The thread only clamps: no sealant."],
    },
    "M14x1.5",
  ),
  "M10x1-oring": oRing("M10x1-oring", "M10x1"),
  "M12x1.5-oring": oRing("M12x1.5-oring", "M12x1.5"),
  "M14x1.5-oring": oRing("M14x1.5-oring", "M14x1.5"),
};
