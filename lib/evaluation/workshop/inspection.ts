/** What is measured on the finished bar, as data. */
import type { InspectionPointId } from "@/lib/inspect/mod.ts";
import type { Kind } from "@/lib/units/mod.ts";

/** A number that a measured value is held against. */
export interface InspectionFigure {
  /** What it is of: `Pocket 1, from the datum end`. */
  readonly name: string;
  /** The kind of quantity. */
  readonly kind: Kind;
  /** What it should be, in the SI unit of its kind; undefined where only limits count. */
  readonly nominal: number | undefined;
  /** The least that will do; undefined where less is better. */
  readonly least: number | undefined;
  /** The most that will do; undefined where more is better. */
  readonly most: number | undefined;
  /** True where its limits are told apart by micrometres. */
  readonly isFine: boolean;
}

/** When a point is looked at: on the bare bar, or as the rail is fitted. */
export type InspectionTime = "bar" | "fitting";

/** One thing to look at, with the plan's own limits. */
export interface Inspection {
  /** Its name; a point may come twice, for pockets and for other holes. */
  readonly id: InspectionPointId | "place-others";
  /** When. */
  readonly time: InspectionTime;
  /** What to do and what is right. */
  readonly says: string;
  /** The instrument. */
  readonly with: string;
  /** What goes wrong otherwise. */
  readonly why: string;
  /** What to know of the limits, lengths in the plan's units. */
  readonly notes: readonly string[];
  /** The limits; each has a blank for what was measured. */
  readonly figures: readonly InspectionFigure[];
  /** Where it comes from. */
  readonly source: string;
}

/** A figure with a tolerance either way. */
export function plusMinus(name: string, nominal: number, off: number): InspectionFigure {
  return {
    name,
    kind: "length",
    nominal,
    least: nominal - off,
    most: nominal + off,
    isFine: false,
  };
}

/** A length that may not be less. */
export function atLeast(name: string, least: number, nominal?: number): InspectionFigure {
  return { name, kind: "length", nominal, least, most: undefined, isFine: false };
}

/** A quantity between two limits. */
export function within(
  name: string,
  kind: Kind,
  [least, most]: readonly [least: number, most: number],
  isFine = false,
): InspectionFigure {
  return { name, kind, nominal: undefined, least, most, isFine };
}
