/** The plan's rail as its holes are asked for. */
import type {
  GalleryEnd,
  PortSpec,
  RailLayoutSpec,
  ScrewSpec,
  StationSpec,
} from "@/lib/layout/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import {
  CLEARANCE_HOLES,
  PORT_SHAPES,
  type PortProfile,
  portProfile,
  PORTS,
  type PortShapeId,
} from "@/lib/thread/mod.ts";
import type { PortResults } from "../subjects/port.ts";
import { type PlaceAt, portTitle, screwPlaces, stationPlaces } from "./places.ts";

/** What was found before the rail can be laid out. */
export interface FoundBefore {
  /** The sensor's port; undefined while it can't be drawn. */
  readonly port: PortResults | undefined;
  /** Mouth of a pocket's lead-in [m]. */
  readonly leadMouth_m: number;
}

/** What is left of a hole that ends where the gallery begins, so that it still is one [m]. */
const LEAST_DEPTH_m = 1e-4;

/** Where the gallery's axis lies, in the layout's coordinates. */
interface Axis {
  readonly up_m: number;
  readonly across_m: number;
}

/**
 * The rail as its holes are asked for.
 *
 * @param values The plan in numbers.
 * @param found What other subjects found.
 * @returns What to lay out; undefined until bar and gallery are known.
 */
export function railLayoutSpec(
  values: PlanValues,
  found: FoundBefore,
): RailLayoutSpec | undefined {
  const { rail } = values;
  const { bore: bore_m, height: height_m } = rail;
  if (bore_m === undefined || height_m === undefined) return undefined;
  const isBlind = rail.ends === "blind";
  const axis = { up_m: rail.galleryUp ?? height_m / 2, across_m: -rail.galleryAcross };
  return {
    bar: {
      shape: rail.shape === "round" ? "round" : "rectangular",
      length_m: rail.length,
      height_m,
      width_m: widthOf(rail, height_m),
    },
    gallery: {
      bore_m,
      ...axis,
      drilledFrom: rail.drilledFrom === "both" && !isBlind ? "both" : "datum-end",
      ...(isBlind && { blindDepth_m: blindDepth(values, bore_m) }),
      ends: {
        ...held("datum", endOf(values, "datum-end")),
        ...(!isBlind && held("far", endOf(values, "far-end"))),
      },
    },
    stations: stationPlaces(values).map((place) => stationOf(values, place, found.leadMouth_m)),
    ports: [...sensorPort(values, found.port, axis), ...listedPorts(values, axis, height_m)],
    screws: screwsOf(values),
  };
}

function widthOf(rail: PlanValues["rail"], height_m: number): number {
  return rail.shape === "round" ? height_m : rail.width ?? height_m;
}

function held<Key extends string>(
  key: Key,
  end: GalleryEnd | undefined,
): Partial<Record<Key, GalleryEnd>> {
  return end === undefined ? {} : { [key]: end } as Record<Key, GalleryEnd>;
}

/** Just past the last injector, unless the plan says more. */
function blindDepth(values: PlanValues, bore_m: number): number {
  const { rail } = values;
  const last_m = Math.max(...stationPlaces(values).map(({ at_m }) => at_m), rail.length / 2);
  return Math.min(rail.galleryDepth ?? last_m + bore_m, rail.length - bore_m / 2);
}

function stationOf(
  { rail, pockets }: PlanValues,
  place: StationSpec | (PlaceAt & { readonly tilt_rad: number }),
  leadMouth_m: number,
): StationSpec {
  const bore_m = rail.pocketBore;
  const { at_m, across_m, tilt_rad } = place;
  return {
    at_m,
    across_m,
    tilt_rad,
    pocket: {
      bore_m,
      depth_m: pockets.depth,
      leadMouth_m,
      leadAngle_rad: pockets.leadAngle,
      pilot_m: pockets.pilot,
      bottom: "flat",
    },
  };
}

/** The thread that an end is tapped with: of a port that stands there, else of the plug. */
export function endThread(
  { rail, ports }: PlanValues,
  face: "datum-end" | "far-end",
): { readonly id: PortShapeId; readonly depth_m: number } | undefined {
  if (rail.ends === "welded") return undefined;
  const port = ports.holes.find((row) => row.face === face);
  const id = port?.thread ?? rail.plugThread;
  if (id === undefined) return undefined;
  const given_m = port?.thread === undefined ? rail.plugEngagement : port.depth;
  return { id, depth_m: given_m ?? PORT_SHAPES[id].fullThread_m };
}

/** An end tapped for a plug; none where the gallery is wider than its tapping drill. */
function endOf(values: PlanValues, face: "datum-end" | "far-end"): GalleryEnd | undefined {
  const end = endThread(values, face);
  if (end === undefined) return undefined;
  const shape = PORT_SHAPES[end.id];
  const { thread, nominal_m, pitch_m, drill_m, mouth } = shape;
  if (drill_m < (values.rail.bore ?? 0)) return undefined;
  return {
    kind: "thread",
    thread: { name: thread, major_m: nominal_m, pitch_m },
    drill_m,
    threadDepth_m: Math.max(end.depth_m, (mouth?.deep_m ?? 0) + pitch_m),
    drillDepth_m: end.depth_m + shape.drillDepth_m - shape.fullThread_m,
    ...(mouth && { seat: { mouth_m: mouth.wide_m, included_rad: 2 * mouth.fromAxis_rad } }),
  };
}

/** The sensor's port as it was found; none while it does not fit. */
function sensorPort(values: PlanValues, port: PortResults | undefined, axis: Axis): PortSpec[] {
  const { sensor, rail } = values;
  if (port === undefined || port.stack.length === 0) return [];
  const [first, second] = stationPlaces(values);
  const between_m = first && second ? (first.at_m + second.at_m) / 2 : undefined;
  const face = sensor.face === "opposite" ? "opposite" : "front";
  return [portSpec("port-sensor", "Sensor port", {
    face,
    at_m: sensor.at ?? between_m ?? rail.length / 4,
    across_m: acrossOn(face, sensor.across, axis, rail.height ?? 0),
    profile: portProfile(sensor.port, {
      drill_m: port.drill_m,
      ...(PORTS[sensor.port].seal === "cone" && port.pilot_m !== undefined && {
        pilot_m: port.pilot_m,
        seatDepth_m: Math.max(0, port.seatDepth_m),
      }),
      through_m: Math.max(LEAST_DEPTH_m, port.stack.at(-1)?.to_m ?? port.firstOpening_m),
    }),
  })];
}

/** Across a face: what the plan says, else over the gallery. */
function acrossOn(
  face: PortSpec["face"],
  across: number | undefined,
  axis: Axis,
  height_m: number,
): number {
  if (face === "front" || face === "back") {
    return across === undefined ? axis.up_m : height_m / 2 + across;
  }
  return across === undefined ? axis.across_m : -across;
}

interface Placed extends PlaceAt {
  readonly face: PortSpec["face"];
  readonly profile: PortProfile;
}

function portSpec(id: string, title: string, placed: Placed): PortSpec {
  const { face, at_m, across_m, profile } = placed;
  return {
    id,
    title,
    face,
    at_m,
    across_m,
    profile: profile.segments.map(({ what: _, ...stretch }) => stretch),
    ...(profile.thread && { thread: profile.thread }),
    intoGallery: true,
  };
}

/** The ports that the plan lists in a long face; those in an end take the place of the plug. */
function listedPorts(values: PlanValues, axis: Axis, height_m: number): PortSpec[] {
  const { rail, ports } = values;
  const half_m = widthOf(rail, height_m) / 2;
  return ports.holes.flatMap(({ use, thread, face, at, across, depth }, i): PortSpec[] => {
    if (use === undefined || thread === undefined || face === undefined) return [];
    if (face === "datum-end" || face === "far-end" || at === undefined) return [];
    const toAxis_m = {
      opposite: height_m - axis.up_m,
      injectors: axis.up_m,
      front: half_m + axis.across_m,
      back: half_m - axis.across_m,
    }[face];
    return [portSpec(`port-${i + 1}`, portTitle(use), {
      face,
      at_m: at,
      across_m: acrossOn(face, across, axis, height_m),
      profile: portProfile(thread, {
        ...(depth !== undefined && { threadTo_m: depth }),
        through_m: Math.max(LEAST_DEPTH_m, toAxis_m),
      }),
    })];
  });
}

/** Holes through the bar for the screws that the plan lists; others hold it by brackets. */
function screwsOf(values: PlanValues): ScrewSpec[] {
  const { places, areListed } = screwPlaces(values);
  if (!areListed) return [];
  const clearance_m = CLEARANCE_HOLES[values.holdDown.thread].medium_m;
  return places.map((place) => ({ face: "opposite", ...place, hole: { clearance_m } }));
}
