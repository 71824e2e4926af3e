/** What is to be known of a kind of quantity. */

/** The kinds of quantity that a plan or a result holds. */
export type Kind =
  | "power"
  | "pressure"
  | "flow"
  | "pumpFlow"
  | "massFlow"
  | "bsfc"
  | "length"
  | "area"
  | "volume"
  | "temperature"
  | "temperatureDifference"
  | "rotation"
  | "voltage"
  | "current"
  | "resistance"
  | "duration"
  | "mass"
  | "density"
  | "velocity"
  | "force"
  | "torque"
  | "angle"
  | "ratio"
  | "energy"
  | "heatingValue"
  | "leakRate"
  | "specificHeat"
  | "dynamicViscosity";

/** The units a plan is shown in. Trade usage wins where it is the same in both. */
export type System = "metric" | "inch";

/** One unit as it is shown: SI value = scale * shown value + offset. */
export interface DisplayUnit {
  /** As printed after the number, and as {@linkcode parseQuantity} reads it. */
  readonly symbol: string;
  /** SI value of one such unit. */
  readonly scale: number;
  /** SI value of zero in this unit; only temperatures have one. */
  readonly offset?: number;
  /** The least size [SI] shown in this unit; smaller ones take the next in the list. */
  readonly from?: number;
  /** Significant digits; whole digits are never cut. */
  readonly digits: number;
  /** Most decimals; the number of decimals itself where `fixed`. */
  readonly decimals: number;
  /** Whole numbers stand without decimals: a time that was set is not measured to a tenth. */
  readonly bareWhole?: boolean;
  /** Always that many decimals, as on a drawing. */
  readonly fixed?: boolean;
}

/** A kind of quantity: how it is named, read, shown and bounded. */
export interface KindInfo {
  /** With its article, for messages: `a pressure`. */
  readonly noun: string;
  /** The SI unit, in mathjs's writing; `-` where there is none. */
  readonly si: string;
  /** Three examples of what may be typed. */
  readonly examples: readonly [string, string, string];
  /** Smallest value [SI] where a field sets none. */
  readonly min: number;
  /** Why nothing smaller is taken. */
  readonly minBecause: string;
  /** Largest value [SI] where a field sets none. */
  readonly max: number;
  /** Why nothing larger is taken. */
  readonly maxBecause: string;
  /** Units of the metric sheet, the main one first, then those for smaller or larger sizes. */
  readonly metric: readonly DisplayUnit[];
  /** Units of the inch sheet, likewise. */
  readonly inch: readonly DisplayUnit[];
  /** The unit that a number alone is taken in; without it a unit is required. */
  readonly bare?: string;
  /** What a word means in this kind only, in mathjs's units: `lb` as a force in a pressure. */
  readonly reads?: Readonly<Record<string, string>>;
  /** The kind whose texts are read, where this one only shows them in other units. */
  readonly readAs?: Kind;
  /** The kind that one of the typed units must be of: a torque has a length, an energy none. */
  readonly part?: "length" | "pressure";
}
