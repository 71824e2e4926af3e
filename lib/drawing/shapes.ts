/**
 * What a drawing is made of: plain shapes in millimetres on paper, y up.
 *
 * Nothing here knows SVG or DXF; both are written from these.
 */

/** A place on paper [mm]. */
export type Point = readonly [x: number, y: number];

/** What a shape belongs to; a DXF file has a layer of each name. */
export type Layer =
  | "outline"
  | "hidden"
  | "centre"
  | "gallery"
  | "pockets"
  | "ports"
  | "screws"
  | "threads"
  | "hatching"
  | "dimensions"
  | "text"
  | "trouble"
  | "frame";

/**
 * A line type by its number in ISO 128-2: basic type, then 1 for narrow and 2 for wide.
 * 01 is continuous, 02 dashed, 04 long-dashed dotted. Frames of ISO 5457 have a width of their own.
 */
export type LineType = "01.1" | "01.2" | "02.1" | "04.1" | "frame";

/** A straight line. */
export interface Line {
  /** What kind of shape it is. */
  readonly kind: "line";
  /** What it belongs to. */
  readonly layer: Layer;
  /** Its line type. */
  readonly type: LineType;
  /** Where it begins. */
  readonly from: Point;
  /** Where it ends. */
  readonly to: Point;
}

/** A full circle. */
export interface Circle {
  /** What kind of shape it is. */
  readonly kind: "circle";
  /** What it belongs to. */
  readonly layer: Layer;
  /** Its line type. */
  readonly type: LineType;
  /** Its centre. */
  readonly centre: Point;
  /** Its radius [mm]. */
  readonly radius: number;
}

/** A part of a circle, counter-clockwise. */
export interface Arc {
  /** What kind of shape it is. */
  readonly kind: "arc";
  /** What it belongs to. */
  readonly layer: Layer;
  /** Its line type. */
  readonly type: LineType;
  /** Its centre. */
  readonly centre: Point;
  /** Its radius [mm]. */
  readonly radius: number;
  /** Where it begins, counter-clockwise from the right [°]. */
  readonly from_deg: number;
  /** Where it ends, above `from_deg` by less than 360 [°]. */
  readonly to_deg: number;
}

/** A line through points. */
export interface Polyline {
  /** What kind of shape it is. */
  readonly kind: "polyline";
  /** What it belongs to. */
  readonly layer: Layer;
  /** Its line type. */
  readonly type: LineType;
  /** Its points, in order. */
  readonly points: readonly Point[];
  /** Whether the last point is joined to the first. */
  readonly closed: boolean;
}

/** An area filled with ink: an arrow head, a step of a scale bar. */
export interface Solid {
  /** What kind of shape it is. */
  readonly kind: "solid";
  /** What it belongs to. */
  readonly layer: Layer;
  /** Its points, in order. */
  readonly points: readonly Point[];
}

/** Cut material: what lies in the outline and in none of the holes, which may overlap. */
export interface Area {
  /** What kind of shape it is. */
  readonly kind: "area";
  /** What it belongs to. */
  readonly layer: "hatching";
  /** Its outer edge. */
  readonly outline: readonly Point[];
  /** What is left out. */
  readonly holes: readonly (readonly Point[])[];
  /** Between hatching lines [mm]. */
  readonly pitch: number;
}

/** A line of text. */
export interface Text {
  /** What kind of shape it is. */
  readonly kind: "text";
  /** What it belongs to. */
  readonly layer: Layer;
  /** On its base line, at the end that `anchor` names. */
  readonly at: Point;
  /** Of its capitals, from the series of ISO 3098 [mm]. */
  readonly height: number;
  /** Which end of it stands at its place. */
  readonly anchor: "start" | "middle" | "end";
  /** Level, or read from the right-hand side of the sheet. */
  readonly turned: 0 | 90;
  /** Its words. */
  readonly says: string;
}

/** What a single stroke or text is. */
export type Mark = Line | Circle | Arc | Polyline | Solid | Area | Text;

/** What a dimension measures. */
export type Measure = "place" | "length" | "depth" | "diameter" | "call-out";

/** A dimension: what it says of which hole, and the marks that say it. */
export interface Dimension {
  /** What kind of shape it is. */
  readonly kind: "dimension";
  /** What it belongs to. */
  readonly layer: "dimensions";
  /** What kind of measure it is. */
  readonly measure: Measure;
  /** The number dimensioned [mm], whatever unit its text has; a call-out has several, and none here. */
  readonly value?: number;
  /** The ids of the holes; none of the bar itself. */
  readonly holes: readonly string[];
  /** What is measured, for a machine: `along`, `across`, `bore`. */
  readonly of: string;
  /** Its words. */
  readonly says: string;
  /** The lines and words that say it. */
  readonly marks: readonly Mark[];
}

/** A mark of trouble at a hole: never colour alone, always a word. */
export interface Trouble {
  /** What kind of shape it is. */
  readonly kind: "trouble";
  /** What it belongs to. */
  readonly layer: "trouble";
  /** The hole's id. */
  readonly hole: string;
  /** Its words. */
  readonly says: string;
  /** The lines and words that say it. */
  readonly marks: readonly Mark[];
}

/** Anything that a drawing is made of. */
export type Shape = Mark | Dimension | Trouble;

/**
 * The single strokes and texts of shapes, with dimensions taken apart.
 *
 * @param shapes Any shapes.
 * @returns Their marks in order.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const line: Line = { kind: "line", layer: "outline", type: "01.2", from: [0, 0], to: [1, 0] };
 * assertEquals(marksOf([line]), [line]);
 * ```
 */
export function marksOf(shapes: readonly Shape[]): Mark[] {
  return shapes.flatMap((shape) =>
    shape.kind === "dimension" || shape.kind === "trouble" ? shape.marks : [shape]
  );
}
