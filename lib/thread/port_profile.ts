/** A port as a list of coaxial stretches, from the face down. */
import { InputError, type Limits, requireWithin } from "@/lib/basics/mod.ts";
import { pointLength } from "./port_geometry.ts";
import { PORT_SHAPES, type PortShape, type PortShapeId } from "./port_shapes.ts";

/** What a stretch is for, and so which tool cuts it. */
export type PortCut = "spotface" | "seat" | "thread" | "bore" | "pilot" | "tip";

/** A stretch of a port: a cylinder, or a cone between two diameters. */
export interface PortSegment {
  /** What it is for. */
  readonly cut: PortCut;
  /** What is there, in words. */
  readonly what: string;
  /** Depth where it begins [m]. */
  readonly from_m: number;
  /** Depth where it ends [m]. */
  readonly to_m: number;
  /** Diameter at its begin [m]. */
  readonly fromDiameter_m: number;
  /** Diameter at its end; nought at a drill's tip [m]. */
  readonly toDiameter_m: number;
}

/** The thread of a port; the hole's own diameter there is that of the tapping drill. */
export interface PortThread {
  /** As a drawing calls it out: `M10x1`. */
  readonly name: string;
  /** Major diameter; of a pipe thread, its outside diameter [m]. */
  readonly major_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
  /** Depth where full thread begins [m]. */
  readonly from_m: number;
  /** Depth where full thread ends [m]. */
  readonly to_m: number;
}

/** A port as a drawing needs it. Depths count from the face before it is spotted. */
export interface PortProfile {
  /** The stretches in order, each beginning where the one before ends. */
  readonly segments: readonly PortSegment[];
  /** The thread; undefined where nothing of it is left. */
  readonly thread: PortThread | undefined;
}

/** What may be said of a port besides its kind. All in metres. */
export interface PortProfileOptions {
  /** Tapping drill at hand; the list's drill unless given. */
  readonly drill_m?: number;
  /** Depth that spotting takes off the face; 0 unless given. */
  readonly spotted_m?: number;
  /** Depth below the spotted face to which the thread is full; the standard's least unless given. */
  readonly threadTo_m?: number;
  /** Depth below the spotted face where a cone seat begins; below the tap's run-out unless given. */
  readonly seatDepth_m?: number;
  /**
   * Bore that goes on into the gallery, narrower than the tapping drill. Unless given, a cone
   * seat has one of 4 mm and any other port goes on with its tapping drill.
   */
  readonly pilot_m?: number;
  /** Depth below the unspotted face where the hole ends in the gallery; blind unless given. */
  readonly through_m?: number;
}

/** Pilot of a cone seat where none is given [m]; ours. */
const PILOT_m = 0.004;

/** Angle of a common drill's point [rad]. */
const POINT_rad = 118 / 180 * Math.PI;

const DEPTH = { unit: "m", min: 0, max: 0.2 } as const;
const BORE = { unit: "m", min: 5e-4, max: 0.06 } as const;
const LIMITS: Limits<Required<PortProfileOptions>> = {
  drill_m: BORE,
  spotted_m: DEPTH,
  threadTo_m: DEPTH,
  seatDepth_m: { ...DEPTH, min: -0.2 },
  pilot_m: BORE,
  through_m: { ...DEPTH, open: true },
};

/** A stretch before it is put at its depth. */
type Piece = Omit<PortSegment, "from_m" | "to_m"> & { readonly length_m: number };

/**
 * Lays a port out as stretches. A thread or seat that would reach beyond `through_m` ends
 * there, and a cone seat that would begin above the face begins at it: such a port does not
 * fit, which its checks say, and is drawn as far as it goes.
 *
 * @param id Which port.
 * @param options What is given besides.
 * @returns The profile.
 * @throws {InputError} When a number lies outside its range, or the pilot is not narrower than the drill.
 *
 * @example The usual pressure sensor's port, into a gallery at 20 mm
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const { segments, thread } = portProfile("M10x1-cone", { seatDepth_m: 0.0085, through_m: 0.02 });
 *
 * assertEquals(segments.map(({ cut }) => cut), ["thread", "bore", "seat", "pilot"]);
 * assertEquals(thread?.name, "M10x1");
 * ```
 */
export function portProfile(id: PortShapeId, options: PortProfileOptions = {}): PortProfile {
  const { spotted_m = 0, through_m = Infinity } = options;
  const shape = PORT_SHAPES[id];
  check(shape, options);
  const threadTo = threadEnd(shape, options);
  const pieces: Piece[] = [
    ...(shape.flat_m === undefined
      ? []
      : [cylinder("spotface", "face spotted for the seal", shape.flat_m, spotted_m)]),
    ...mouth(shape),
    ...(shape.seal === "cone" ? ontoSeat(shape, options, threadTo) : drilled(
      shape,
      options,
      threadTo,
    )),
  ];
  const from_m = spotted(shape, spotted_m) + (shape.mouth?.deep_m ?? 0);
  const to_m = Math.min(spotted(shape, spotted_m) + threadTo, through_m);
  const { thread: name, nominal_m: major_m, pitch_m } = shape;
  return {
    segments: stacked(pieces, through_m),
    thread: to_m > from_m ? { name, major_m, pitch_m, from_m, to_m } : undefined,
  };
}

function check(shape: PortShape, options: PortProfileOptions): void {
  const given = Object.fromEntries(Object.entries(options).filter(([, v]) => v !== undefined));
  const limits = Object.fromEntries(
    Object.entries(LIMITS).filter(([name]) => name in given),
  ) as Limits<typeof given>;
  requireWithin("profile of the port", given, limits);
  const { drill_m = shape.drill_m, pilot_m } = options;
  if (pilot_m !== undefined && pilot_m >= drill_m) {
    const rule = `must be narrower than the tapping drill, ${drill_m} m`;
    throw new InputError("profile of the port", "pilot_m", rule, pilot_m);
  }
}

/** A port that needs no flat is not lowered by one. */
const spotted = (shape: PortShape, spotted_m: number): number =>
  shape.flat_m === undefined ? 0 : spotted_m;

/** No thread goes beyond a seat at the bottom. */
function threadEnd(shape: PortShape, { threadTo_m, seatDepth_m }: PortProfileOptions): number {
  if (shape.seal !== "cone" || seatDepth_m === undefined) return threadTo_m ?? shape.fullThread_m;
  return Math.max(0, Math.min(threadTo_m ?? seatDepth_m - runOut(shape), seatDepth_m));
}

/** What the tap leaves without full thread above the drill's full depth. */
const runOut = (shape: PortShape): number => shape.drillDepth_m - shape.fullThread_m;

const cylinder = (cut: PortCut, what: string, diameter: number, length_m: number): Piece => ({
  cut,
  what,
  fromDiameter_m: diameter,
  toDiameter_m: diameter,
  length_m,
});

function mouth({ mouth }: PortShape): Piece[] {
  if (mouth === undefined) return [];
  const { wide_m, deep_m, fromAxis_rad } = mouth;
  return [{
    cut: "seat",
    what: "cone for the O-ring",
    fromDiameter_m: wide_m,
    toDiameter_m: wide_m - 2 * deep_m * Math.tan(fromAxis_rad),
    length_m: deep_m,
  }];
}

const LEAD = "tap lead and clearance, no full thread";

/** A seat at the bottom: the tapping drill's own 90 degree point cuts it, so it is as deep as wide. */
function ontoSeat(shape: PortShape, options: PortProfileOptions, threadTo: number): Piece[] {
  const { drill_m: drill = shape.drill_m, pilot_m = PILOT_m, through_m, spotted_m = 0 } = options;
  const seatDepth = Math.max(0, options.seatDepth_m ?? threadTo + runOut(shape));
  const end = through_m === undefined ? 0 : Math.min(pilot_m, drill);
  const cone = (drill - end) / 2;
  return [
    cylinder("thread", "full thread", drill, threadTo),
    cylinder("bore", LEAD, drill, seatDepth - threadTo),
    {
      cut: "seat",
      what: "45 degree seat",
      fromDiameter_m: drill,
      toDiameter_m: end,
      length_m: cone,
    },
    cylinder(
      "pilot",
      "pilot",
      end,
      (through_m ?? 0) - spotted(shape, spotted_m) - seatDepth - cone,
    ),
  ];
}

/** A port whose tapping drill ends blind, in a narrower pilot, or in the gallery. */
function drilled(shape: PortShape, options: PortProfileOptions, threadTo: number): Piece[] {
  const { drill_m: drill = shape.drill_m, pilot_m, through_m, spotted_m = 0 } = options;
  const through = through_m === undefined ? undefined : through_m - spotted(shape, spotted_m);
  const stopsAt = through === undefined || pilot_m !== undefined
    ? threadTo + runOut(shape)
    : Math.max(through, threadTo);
  const end = through === undefined ? 0 : pilot_m ?? drill;
  const point = pointLength({ drill, included: POINT_rad }) * (drill - end) / drill;
  return [
    ...threaded(shape, drill, threadTo),
    cylinder("bore", LEAD, drill, stopsAt - threadTo),
    {
      cut: "tip",
      what: "point of the tapping drill",
      fromDiameter_m: drill,
      toDiameter_m: end,
      length_m: point,
    },
    cylinder("pilot", "bore into the gallery", end, (through ?? 0) - stopsAt - point),
  ];
}

/** The threaded stretch; of a taper thread the part that is wider than the drill, then the rest. */
function threaded(shape: PortShape, drill: number, threadTo: number): Piece[] {
  const length = threadTo - (shape.mouth?.deep_m ?? 0);
  const { taperFace_m: face } = shape;
  const conical = face === undefined ? 0 : Math.max(0, Math.min(length, 16 * (face - drill)));
  return [
    {
      cut: "thread",
      what: "full taper thread",
      fromDiameter_m: face ?? drill,
      toDiameter_m: (face ?? drill) - conical / 16,
      length_m: conical,
    },
    cylinder("thread", "full thread", drill, length - conical),
  ];
}

/** Puts the pieces one below another, leaves out what has no length, ends at a depth. */
function stacked(pieces: readonly Piece[], end: number): PortSegment[] {
  const segments: PortSegment[] = [];
  let from_m = 0;
  for (const { length_m, ...piece } of pieces) {
    const length = Math.min(length_m, end - from_m);
    if (!(length > 1e-9)) continue;
    const { fromDiameter_m, toDiameter_m } = piece;
    const to_m = from_m + length;
    segments.push({
      ...piece,
      from_m,
      to_m,
      toDiameter_m: fromDiameter_m + (toDiameter_m - fromDiameter_m) * length / length_m,
    });
    from_m = to_m;
  }
  return segments;
}
