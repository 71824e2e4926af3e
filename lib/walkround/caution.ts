/** What a caution is. */
import type { ProofFuel } from "./context.ts";
import type { Line } from "./line.ts";

/** The names of all cautions. */
export type CautionId =
  | "ignition-sources"
  | "covered-containers"
  | "no-air-transfer"
  | "bonding"
  | "ventilation"
  | "zones"
  | "depressurise"
  | "leaking"
  | "battery"
  | "hot-work"
  | "extinguisher-ready"
  | "alcohol-foam"
  | "alcohol-headspace"
  | "methanol-flame"
  | "pale-flame"
  | "methanol-toxic"
  | "skin-eyes"
  | "first-start"
  | "prime-limit"
  | "inertia"
  | "pump-wiring"
  | "hose-routing"
  | "hose-life"
  | "hose-rating"
  | "hot-engine"
  | "pressure-test-person"
  | "proof-liquid"
  | "never-valved-off"
  | "air-limits"
  | "tanks"
  | "insurance-road"
  | "scope-DI";

/** One thing that a caution says. */
export interface CautionPoint extends Line {
  /** Unique within its caution. */
  readonly id: string;
}

/** A caution, to be printed beside the step that names it. */
export interface Caution {
  /** Its name. */
  readonly id: CautionId;
  /** What it is about, in a few words. */
  readonly title: string;
  /** What it says. */
  readonly points: readonly CautionPoint[];
  /** Where it is from, or `common practice, no source`. */
  readonly source: string;
  /** Who comes before it; the same line for every caution. */
  readonly defers: string;
  /** When it is called for; always, when absent. */
  readonly when?: (fuel: ProofFuel) => boolean;
}

/** Who comes before anything that a sheet says. */
export const DEFERS: string =
  "Local codes, the rules of the place where the vehicle is used, and the judgement of licensed or " +
  "qualified people come first.";

/** The source of what everybody in the trade does and nobody has published. */
export const COMMON_PRACTICE = "common practice, no source";

/** A caution as it is typed: the line that defers is the same for all. */
export type TypedCaution = Omit<Caution, "defers" | "id">;
