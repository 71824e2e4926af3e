/** What a rail is laid out from. */
import type { Bar, Face, Stretch } from "./model.ts";

/** A place on a face of the bar. */
export interface Place {
  /** Along the bar from the datum end [m]; on an end of the bar: along y from its middle. */
  readonly at_m: number;
  /**
   * Across that face [m]: on the injectors' and the opposite face along y from the middle, on
   * front, back and ends along z from the injectors' face.
   */
  readonly across_m: number;
}

/** A thread that is to be cut. */
export interface ThreadCut {
  /** Its designation: `M10x1`. */
  readonly name: string;
  /** Major diameter [m]. */
  readonly major_m: number;
  /** Pitch [m]. */
  readonly pitch_m: number;
}

/** A thread to a depth, in a hole of its tapping drill. */
export interface TappedHole {
  /** The thread. */
  readonly thread: ThreadCut;
  /** Diameter of its tapping drill [m]. */
  readonly drill_m: number;
  /** Full thread from the face [m]. */
  readonly threadDepth_m: number;
  /** Full diameter of the tapping drill from the face [m]. */
  readonly drillDepth_m: number;
}

/** How an end of the gallery is closed. */
export type GalleryEnd =
  | ThreadedEnd
  | RingEnd
  | CapEnd;

/** A screwed plug, with a cone at the mouth where it seals on one. */
export interface ThreadedEnd extends TappedHole {
  /** What it is. */
  readonly kind: "thread";
  /** A seat at the mouth, if any. */
  readonly seat?: {
    /** Diameter on the face [m]. */
    readonly mouth_m: number;
    /** The whole angle of the cone [rad]. */
    readonly included_rad: number;
  };
}

/** A plug that a ring seals in a plain bore. */
export interface RingEnd {
  /** What it is. */
  readonly kind: "ring";
  /** The bore that the ring seals in [m]. */
  readonly bore_m: number;
  /** Its depth from the face [m]. */
  readonly depth_m: number;
  /** Mouth of the lead-in [m]. */
  readonly leadMouth_m: number;
  /** Angle of the lead-in's side from the axis [rad]. */
  readonly leadAngle_rad: number;
}

/** A welded cap, let into the end by so much. */
export interface CapEnd {
  /** What it is. */
  readonly kind: "cap";
  /** Diameter of the recess [m]. */
  readonly recess_m: number;
  /** Its depth [m]. */
  readonly depth_m: number;
}

/** The gallery. */
export interface GallerySpec {
  /** Bore [m]. */
  readonly bore_m: number;
  /** Place of its axis along y from the middle [m]. */
  readonly across_m: number;
  /** Place of its axis along z from the injectors' face [m]. */
  readonly up_m: number;
  /** Where it is drilled from. */
  readonly drilledFrom: "datum-end" | "far-end" | "both";
  /** Depth of the full bore when it ends in the bar [m]; without it, it goes through. */
  readonly blindDepth_m?: number;
  /** How its ends are closed; an end that nothing is said of stays a plain bore. */
  readonly ends: {
    /** The end that x runs from. */
    readonly datum?: GalleryEnd;
    /** The other. */
    readonly far?: GalleryEnd;
  };
}

/** The pocket that an injector sits in. */
export interface PocketSpec {
  /** The bore that the ring seals in [m]. */
  readonly bore_m: number;
  /** Depth of that bore's full diameter from the face [m]. */
  readonly depth_m: number;
  /** Mouth of the lead-in [m]. */
  readonly leadMouth_m: number;
  /** Angle of the lead-in's side from the axis [rad]. */
  readonly leadAngle_rad: number;
  /** The pilot that goes on into the gallery [m]. */
  readonly pilot_m: number;
  /** The bore's bottom: flat, or the cone of a form tool by its whole angle [rad]. */
  readonly bottom: "flat" | { readonly included_rad: number };
}

/** An injector's place and pocket. */
export interface StationSpec extends Place {
  /** How far its axis leans along the bar, towards the far end as it goes in [rad]. */
  readonly tilt_rad: number;
  /** Its pocket. */
  readonly pocket: PocketSpec;
}

/** A port for a sensor, feed, return, gauge or crossover. */
export interface PortSpec extends Place {
  /** Unique in the rail. */
  readonly id: string;
  /** What it is called on a sheet. */
  readonly title: string;
  /** The face it is drilled from. */
  readonly face: Face;
  /** Its shape from the face, without what opens the gallery. */
  readonly profile: readonly Stretch[];
  /** Its thread, if any. */
  readonly thread?: ThreadCut & {
    /** Where full thread begins, from the face [m]. */
    readonly from_m: number;
    /** Where it ends [m]. */
    readonly to_m: number;
  };
  /** Whether it is to open into the gallery. */
  readonly intoGallery: boolean;
  /** The drill that goes on from its end to the gallery [m]; none where the profile does. */
  readonly pilot_m?: number;
}

/** A hole for a screw that holds the rail down or holds something to it. */
export interface ScrewSpec extends Place {
  /** The face it is drilled from. */
  readonly face: "injectors" | "opposite";
  /** A hole right through for the screw's shank [m], or a thread. */
  readonly hole: { readonly clearance_m: number } | TappedHole;
  /** A flat-bottomed recess for its head, if any. */
  readonly counterbore?: {
    /** Diameter [m]. */
    readonly diameter_m: number;
    /** Depth [m]. */
    readonly depth_m: number;
  };
}

/** A rail as its holes are asked for. */
export interface RailLayoutSpec {
  /** The bar. */
  readonly bar: Bar;
  /** The gallery. */
  readonly gallery: GallerySpec;
  /** The injectors, in order along the bar. */
  readonly stations: readonly StationSpec[];
  /** The ports. */
  readonly ports: readonly PortSpec[];
  /** The screws. */
  readonly screws: readonly ScrewSpec[];
}
