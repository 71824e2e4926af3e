/**
 * A rail as geometry: a bar and the holes in it. Lengths in metres.
 *
 * Coordinates: x runs along the bar from its datum end, y across it with nought in the middle
 * of its width, z up from the face that the injectors sit in. The front is where y is least.
 */

/** A place or a direction. */
export type Vec3 = readonly [x: number, y: number, z: number];

/** The bar before anything is drilled. */
export interface Bar {
  /** Its section. */
  readonly shape: "rectangular" | "round";
  /** Along x [m]. */
  readonly length_m: number;
  /** Along z; of a round bar its diameter [m]. */
  readonly height_m: number;
  /** Along y; of a round bar its diameter [m]. */
  readonly width_m: number;
}

/** A face of the bar; a round bar has the same names for where its tangents lie. */
export type Face = "injectors" | "opposite" | "front" | "back" | "datum-end" | "far-end";

/** What a stretch of a hole is for, and so which tool cuts it. */
export type Cut = "bore" | "lead-in" | "spotface" | "thread" | "seat" | "pilot" | "tip";

/** A stretch of a hole along its axis: a cylinder, or a cone between two diameters. */
export interface Stretch {
  /** What it is for. */
  readonly cut: Cut;
  /** Where it begins, from the entry along the axis [m]. */
  readonly from_m: number;
  /** Where it ends [m]. */
  readonly to_m: number;
  /** Diameter at its begin [m]. */
  readonly fromDiameter_m: number;
  /** Diameter at its end; nought at a drill's tip [m]. */
  readonly toDiameter_m: number;
}

/** A thread cut into a stretch, whose own diameter is that of the tapping drill. */
export interface HoleThread {
  /** Its designation: `M10x1`. */
  readonly name: string;
  /** Major diameter [m]. */
  readonly major_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
  /** Where full thread begins, from the entry [m]. */
  readonly from_m: number;
  /** Where full thread ends [m]. */
  readonly to_m: number;
}

/** What a hole is. */
export type Feature = "gallery" | "pocket" | "port" | "screw" | "plug";

/** A hole: a solid of revolution taken out of the bar. */
export interface Hole {
  /** Unique in its rail: `pocket-1`. */
  readonly id: string;
  /** What it is called on a sheet: `Pocket 1`. */
  readonly title: string;
  /** What it is. */
  readonly feature: Feature;
  /** The face it is drilled from. */
  readonly face: Face;
  /** Where its axis meets that face. */
  readonly entry: Vec3;
  /** Direction of its axis into the bar, of length one. */
  readonly into: Vec3;
  /** The face that it comes out of again, when it is meant to. */
  readonly exit?: Face;
  /** Its stretches in order, each beginning where the one before ends. */
  readonly profile: readonly Stretch[];
  /** Its thread, if any. */
  readonly thread?: HoleThread;
  /** Ids of the holes that it is meant to open into; any other that it meets is a clash. */
  readonly opensInto: readonly string[];
}

/** A rail as geometry. */
export interface Layout {
  /** The bar. */
  readonly bar: Bar;
  /** The holes in the order of the table: gallery, plugs, pockets, ports, screws. */
  readonly holes: readonly Hole[];
}
