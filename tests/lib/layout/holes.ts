/** Holes and rails in millimetres, short to write. */
import type {
  Bar,
  Face,
  Hole,
  PocketSpec,
  RailLayoutSpec,
  StationSpec,
  Stretch,
  Vec3,
} from "@/lib/layout/mod.ts";

export const MM = 1e-3;

/** A stretch; a cone when a second diameter is given. */
export const cut = (
  what: Stretch["cut"],
  from: number,
  to: number,
  d0: number,
  d1 = d0,
): Stretch => ({
  cut: what,
  from_m: from * MM,
  to_m: to * MM,
  fromDiameter_m: d0 * MM,
  toDiameter_m: d1 * MM,
});

/** A hole from a point in a direction. */
export function holeAt(
  id: string,
  entry: Vec3,
  into: Vec3,
  profile: readonly Stretch[],
  more: Partial<Hole> = {},
): Hole {
  const length = Math.hypot(...into);
  return {
    id,
    title: id,
    feature: "screw",
    face: "opposite" satisfies Face,
    entry: [entry[0] * MM, entry[1] * MM, entry[2] * MM],
    into: [into[0] / length, into[1] / length, into[2] / length],
    profile,
    opensInto: [],
    ...more,
  };
}

/** A rectangular bar. */
export const barOf = (length: number, height: number, width = height): Bar => ({
  shape: "rectangular",
  length_m: length * MM,
  height_m: height * MM,
  width_m: width * MM,
});

/** A gallery along a bar of a length, its axis in the middle of y. */
export const galleryOf = (length: number, bore: number, up: number): Hole =>
  holeAt("gallery", [0, 0, up], [1, 0, 0], [cut("bore", 0, length, bore)], {
    feature: "gallery",
    face: "datum-end",
    exit: "far-end",
  });

/** The pocket of a 14 mm ring. */
export const POCKET: PocketSpec = {
  bore_m: 14 * MM,
  depth_m: 8 * MM,
  leadMouth_m: 15 * MM,
  leadAngle_rad: Math.PI / 12,
  pilot_m: 6 * MM,
  bottom: "flat",
};

/** A station with that pocket. */
export const stationAt = (at: number, tilt_rad = 0): StationSpec => ({
  at_m: at * MM,
  across_m: 0,
  tilt_rad,
  pocket: POCKET,
});

/** A bar of 30 mm with two pockets and a gallery 19 mm up. */
export const RAIL: RailLayoutSpec = {
  bar: barOf(200, 30),
  gallery: { bore_m: 10 * MM, across_m: 0, up_m: 19 * MM, drilledFrom: "datum-end", ends: {} },
  stations: [stationAt(60), stationAt(140)],
  ports: [],
  screws: [],
};
